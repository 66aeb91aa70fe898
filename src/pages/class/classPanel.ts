import type {ClassRow} from "../../lib/classroom/classRow.js";
import {kinships, type Kinship, type NamedDesign} from "../../lib/classroom/kinship.js";
import {madeUpClass} from "../../lib/classroom/madeUpClass.js";
import type {Catalog} from "../../lib/catalog.js";
import type {NotComputed} from "../../lib/compare/column.js";
import type {RawTables} from "../../lib/tables.js";
import {measuredBy} from "../../components/compare/measuredBy.js";
import {button} from "../../components/controls.js";
import {element, uniqueId} from "../../components/dom.js";
import type {Seed} from "../../components/notebook.js";
import {pinDesign} from "../../components/pinned.js";
import {download, downloadBlob} from "../../components/store/browser.js";
import type {DesignStore} from "../../components/store.js";
import {workPlace} from "../../components/worker/work.js";
import {classCharts} from "./classCharts.js";
import {flatRows, type ClassFilter, type ClassSort, type Student} from "./classData.js";
import {classList, type ClassNow, type ClassStorage} from "./classList.js";
import {classTable} from "./classTable.js";
import {intake} from "./intake.js";
import {studentReader} from "./studentReader.js";
import {twoCompared} from "./twoCompared.js";

/** The page's parts, to be placed one by one. */
export interface ClassPanel {
  readonly intake: HTMLElement;
  readonly table: HTMLElement;
  readonly charts: HTMLElement;
  /** Draws the charts for a width, px. */
  resize(widthPx: number): void;
  /** The class as it stands, told anew when it changes. Fits `Generators.observe`. */
  observe(change: (students: readonly Student[]) => void): () => void;
}

/** How often what has been computed is shown at most, ms. */
const SHOW_MS = 250;
const AS_HANDED_IN: ClassSort = {by: "", down: false};

export function classPanel(store: DesignStore, catalog: Catalog, tables: RawTables, seeds: readonly Seed[]): ClassPanel {
  const list = classList(browserStorage());
  const start = workPlace(tables);
  const startKin = workPlace(tables);
  const starters: readonly NamedDesign[] = seeds.map(({design}) => ({name: design.name, design}));
  /** What is known of a file, for as long as its decisions are the same. */
  const found = new Map<string, ClassRow | NotComputed>();
  const watchers = new Set<(students: readonly Student[]) => void>();
  const ticked = new Set<string>();
  let kin: readonly Kinship[] = [];
  let students: readonly Student[] = [];
  let told: ClassNow | undefined;
  let sort = AS_HANDED_IN;
  let reading: string | undefined;
  let widthPx = 0;

  const bar = element("progress", {id: uniqueId("progress"), max: 1, value: 0});
  const far = element("span", {class: "sweep-far"});
  const progress = element("p", {class: "sweep-progress", hidden: true}, element("label", {for: bar.id}, "Computing"), bar, far);
  const keptLine = element("p", {class: "note", role: "status"});
  const forget = button("Forget the class", () => list.forget(), {quiet: true});
  const example = button("Try it with a made-up class", () => list.add(madeUpClass(seeds.map(({design}) => design))), {quiet: true});
  const entry = intake((files) => list.add(files), [example, forget]);
  const filterId = uniqueId("filter");
  const filter = element("select", {id: filterId});
  filter.addEventListener("change", () => void drawTable());
  const count = element("p", {class: "table-note", role: "status"});
  const compareTwo = button("Compare the two", () => compare());
  const two = element("div", {});
  const reader = studentReader({
    comment: list.comment, save: (fileName) => void save(fileName), open, close: () => read(undefined),
    remove(fileName) {
      read(undefined);
      list.remove(fileName);
    },
  });
  const grid = classTable({
    ticked, open, read,
    sort(by) {
      // A third press brings back the order in which they were handed in.
      sort = sort.by !== by ? {by, down: false} : sort.down ? AS_HANDED_IN : {by, down: true};
      void drawTable();
    },
    tick(fileName, on) {
      if (on) ticked.add(fileName);
      else ticked.delete(fileName);
      showTicks();
    },
  });
  const saveCsv = button("Save as CSV", async () => {
    const {savedTable} = await import("./classTableData.js");
    downloadBlob("class-designs.csv", new Blob([savedTable(flatRows(students)).toCSV()], {type: "text/csv"}));
  }, {quiet: true});
  const saveAll = button("Save all with comments", async () => {
    const {zipped} = await import("./classFilesSaved.js");
    downloadBlob("class-designs.zip", zipped(students.filter(({design}) => design.comments.length > 0)));
  }, {quiet: true});
  const acts = element("p", {class: "row no-print"}, compareTwo, saveCsv, saveAll);
  const above = element("div", {class: "sweep-above no-print"}, element("span", {class: "class-filter"}, element("label", {for: filterId, class: "control-label"}, "Show"), filter), count);
  const table = element("div", {class: "class-part", hidden: true}, above, grid.node, acts, two, reader.node);
  const charts = element("div", {class: "class-charts"});

  async function save(fileName: string): Promise<void> {
    const student = students.find((one) => one.fileName === fileName);
    const {designText} = await import("./classFilesSaved.js");
    if (student) download(/\.json$/i.test(fileName) ? fileName : `${fileName}.json`, designText(student));
  }

  function open(fileName: string): void {
    const student = students.find((one) => one.fileName === fileName);
    if (!student) return;
    store.replace(student.design);
    store.tell({kind: "done", message: `${fileName} is now the open design. Undo brings back the one before, and it is kept among the moments on the first page.`});
  }

  function read(fileName: string | undefined): void {
    const before = reading;
    reading = fileName;
    grid.mark(reading);
    reader.show(students.find((one) => one.fileName === reading));
    if (reading) reader.focus();
    else if (before) grid.node.querySelector<HTMLElement>(`tr[data-file="${CSS.escape(before)}"] .class-acts button`)?.focus();
  }

  function compare(): void {
    const [one, other] = students.filter(({fileName}) => ticked.has(fileName));
    if (!one || !other) return;
    for (const {design, who, fileName} of [one, other]) pinDesign(design, who, fileName);
    two.replaceChildren(twoCompared(one, other));
    two.querySelector("h3")?.focus();
  }

  function showTicks(): void {
    const shown = students.filter(({fileName}) => ticked.has(fileName)).length;
    compareTwo.disabled = shown !== 2;
    compareTwo.textContent = shown === 2 ? "Compare the two" : `Compare two: ${shown} ticked`;
  }

  let draws = 0;
  async function drawTable(): Promise<void> {
    const mine = ++draws;
    const chosen = (filter.value || "all") as ClassFilter;
    const asTheyCame = chosen === "all" && sort.by === "";
    const files = asTheyCame ? students.map(({fileName}) => fileName) : (await import("./classTableData.js")).shownFiles(flatRows(students), chosen, sort);
    // What was asked for since then is drawn in its place.
    if (mine !== draws) return;
    const byName = new Map(students.map((one) => [one.fileName, one]));
    grid.show(files.flatMap((fileName) => byName.get(fileName) ?? []), sort);
    const words = files.length === students.length ? `${files.length === 1 ? "1 design" : `${files.length} designs`}.` : `${files.length} of ${students.length} designs.`;
    if (count.textContent !== words) count.textContent = words;
  }

  function showFilters(): void {
    const families = [...new Set(kin.flatMap(({family}) => family ?? []))];
    const wanted: [ClassFilter, string][] = [
      ["all", "all designs"], ["fails", "those that fail a check"], ["holds", "those whose checks all hold"], ["reasons", "those with a reason missing"], ["uncommented", "those without a comment"],
      ...families.map((family): [ClassFilter, string] => [`family ${family}`, `the family of ${familyName(family)}`]),
    ];
    const was = filter.value;
    filter.replaceChildren(...wanted.map(([value, words]) => element("option", {value}, words)));
    filter.value = wanted.some(([value]) => value === was) ? was : "all";
  }

  function familyName(family: number): string {
    const of = kin.findIndex((one) => one.family === family && one.from);
    return kin[of]?.from?.name ?? students[of]?.fileName ?? String(family);
  }

  function show({charted = true} = {}): void {
    const {designs = []} = told ?? {};
    students = designs.map((one, i) => ({...one, who: one.design.author.trim() || one.fileName, found: found.get(one.fileName), kin: kin[i]}));
    table.hidden = students.length === 0;
    for (const fileName of ticked) if (!designs.some((one) => one.fileName === fileName)) ticked.delete(fileName);
    forget.hidden = students.length === 0;
    example.hidden = students.length > 0;
    const commented = students.filter(({design}) => design.comments.length > 0).length;
    saveAll.disabled = commented === 0;
    saveAll.textContent = commented === 0 ? "Save all with comments" : `Save the ${commented === 1 ? "one" : commented} with comments`;
    showTicks();
    void drawTable();
    reader.show(students.find((one) => one.fileName === reading));
    for (const watcher of watchers) watcher(students);
    if (charted) drawCharts();
  }

  function drawCharts(): void {
    if (widthPx > 0) charts.replaceChildren(...classCharts(students, widthPx));
  }

  /** Computes what is not yet known, beside the page, and shows it as it comes. */
  async function compute(): Promise<void> {
    const wanted = students.filter((one) => !one.found);
    progress.hidden = wanted.length === 0;
    if (wanted.length === 0) return;
    [bar.value, far.textContent] = [0, ""];
    let shownAt = performance.now();
    const mine = told?.designs;
    try {
      await start("classRows", {designs: wanted.map(({design}) => design), by: measuredBy(catalog)}, ({index, found: row}) => {
        const {fileName} = wanted[index] as Student;
        found.set(fileName, row);
        bar.value = (index + 1) / wanted.length;
        far.textContent = `${index + 1} of ${wanted.length}`;
        if (performance.now() - shownAt < SHOW_MS) return;
        show({charted: false});
        shownAt = performance.now();
      }).done;
    } catch (problem) {
      const message = problem instanceof Error ? problem.message : String(problem);
      for (const {fileName} of wanted) if (!found.has(fileName)) found.set(fileName, {problem: message});
    }
    // Other files have come meanwhile, and their work has taken the place of this.
    if (mine !== told?.designs && wanted.some(({fileName}) => !found.has(fileName))) return;
    progress.hidden = true;
    show();
  }

  /** Finds which designs come from one another, beside the page: it holds each against each. */
  async function findKin(designs: ClassNow["designs"]): Promise<void> {
    if (designs.length === 0) return;
    const files = designs.map(({fileName, design}) => ({name: fileName, design}));
    const of = await startKin("classKin", {files, starters}).done.catch(() => kinships(files, starters));
    // Canceled, or other files have come meanwhile.
    if (!of || told?.designs.some(({fileName}, i) => fileName !== files[i]?.name) || told?.designs.length !== files.length) return;
    kin = of;
    show({charted: false});
    showFilters();
  }

  list.observe((now) => {
    const names = (of: ClassNow | undefined) => of?.designs.map(({fileName}) => fileName).join("\n");
    const others = names(now) !== names(told);
    told = now;
    if (others) {
      for (const fileName of found.keys()) if (!now.designs.some((one) => one.fileName === fileName)) found.delete(fileName);
      kin = [];
      two.replaceChildren();
      if (!now.designs.some(({fileName}) => fileName === reading)) reading = undefined;
    }
    entry.show(now.refused);
    keptLine.textContent = now.designs.length === 0 ? "Files are read by this page alone; nothing is sent anywhere."
      : now.kept ? "The list, your comments in it, stays in this browser until you forget it; nothing is sent anywhere."
        : "The list is too long for this browser to keep: it is gone when the page closes, and so are comments that you have not saved. Nothing is sent anywhere.";
    show({charted: others});
    if (others) {
      showFilters();
      void compute();
      void findKin(now.designs);
    }
  });

  return {
    intake: element("div", {class: "no-print"}, entry.node, keptLine, progress), table, charts,
    resize(px) {
      if (px === widthPx) return;
      widthPx = px;
      drawCharts();
    },
    observe(change) {
      watchers.add(change);
      change(students);
      return () => watchers.delete(change);
    },
  };
}

function browserStorage(): ClassStorage | undefined {
  try {
    return window.localStorage;
  } catch {
    return undefined;
  }
}
