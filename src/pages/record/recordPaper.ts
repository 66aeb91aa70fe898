import type {Check} from "../../lib/checks.js";
import type {ColumnsResult} from "../../lib/columns/columnsResult.js";
import type {Comment, ReasonName} from "../../lib/design/design.js";
import type {Evaluation} from "../../lib/evaluate.js";
import {changesSentence, reasonTitle} from "../../lib/record/reasonWords.js";
import type {Fact, RecordSection} from "../../lib/record/parts.js";
import type {DesignRecord} from "../../lib/record/record.js";
import {checkMark, checkWord} from "../../components/checks.js";
import {element} from "../../components/dom.js";
import {sentenceNodes} from "../../components/quantity.js";
import type {DesignStore} from "../../components/store.js";
import {reasonControl} from "../../components/shared/reasonControl.js";
import {recordDrawing} from "./recordDrawings.js";
import type {RecordForm} from "./recordForm.js";
import type {RecordRemedies} from "./recordRemedies.js";
import {recordInputs} from "./recordInputs.js";
import {recordComments} from "./recordComments.js";
import {checkTable, recordTable} from "./recordTables.js";

/** The record as a sheet of paper; it stays in place while the design changes, so that one can write on it. */
export interface RecordPaper {
  readonly node: HTMLElement;
  show(record: DesignRecord, result: Evaluation, columns: ColumnsResult, widthPx: number): void;
  /** Ends when all that the chosen form asks for stands on the paper. */
  complete(): Promise<void>;
}

const REASONS: readonly ReasonName[] = ["loads", "reduction", "deck", "topping", "edgeBeam", "roof", "frame", "story", "light"];

/** Width of a drawing, which shares the sheet with its facts, px. */
const DRAWING_WIDTH_PX = 360;

/** The record of the open design, ready to be printed; what it was compared with stands after the decisions. */
export function recordPaper(store: DesignStore, alternatives: HTMLElement, observeForm: (change: (form: RecordForm) => void) => void): RecordPaper {
  const head = element("header", {class: "record-head"});
  const open = element("section", {class: "record-open", tabindex: -1, "aria-label": "Open checks"});
  let remedies: Promise<RecordRemedies> | undefined;
  const sections = new Map(REASONS.map((id) => [id, sectionSlot(store, id)]));
  const tail = element("div", {});
  const steps = element("section", {class: "record-section record-worked", hidden: true});
  let form: RecordForm = "whole";
  let shown: {readonly record: DesignRecord; readonly result: Evaluation; readonly columns: ColumnsResult} | undefined;
  let work: Promise<void> = Promise.resolve();
  const workSteps = async () => {
    steps.hidden = form !== "worked";
    if (steps.hidden || !shown) return;
    const {record, result, columns} = shown;
    const [{recordWorkings}, {workedSections}] = await Promise.all([import("../../lib/record/worked.js"), import("./recordWorked.js")]);
    // A later change has asked again.
    if (shown?.record !== record) return;
    const titles = new Map(record.sections.map(({id, title}) => [id, title]));
    steps.replaceChildren(...workedSections(recordWorkings(result, columns, [...titles.keys()]).map((part) => ({...part, title: titles.get(part.id) ?? ""}))));
  };
  const node = element("article", {class: "record-paper", "aria-label": "The record"}, head, open, ...[...sections.values()].map((slot) => slot.node), alternatives, tail, steps);
  observeForm((chosen) => {
    form = chosen;
    node.dataset["form"] = chosen;
    work = workSteps();
  });
  return {
    node,
    complete: () => work,
    show(record, result, columns, widthPx) {
      shown = {record, result, columns};
      work = workSteps();
      head.replaceChildren(
        element("p", {class: "record-kind"}, "Record of a preliminary floor design"),
        element("h2", {}, record.title),
        element("p", {class: "record-author"}, named("Author", record.author), " ", named("Firm or class", record.firm)),
        element("p", {class: "record-date"}, `${record.dateText} \u00b7 Plank & Tee ${record.version}`),
        element("p", {}, record.setting),
        element("h3", {}, "Brief"),
        record.brief ? element("p", {}, record.brief) : blank("The brief", 3),
        ...recordComments(store, record.comments.whole, "Comments"),
      );
      open.replaceChildren(...openChecks(record.open));
      // Only a design that fails needs remedies, and fetches them.
      if (record.open.some(({verdict}) => verdict === "fails")) remedies ??= import("./recordRemedies.js").then(({recordRemedies}) => recordRemedies(store, open));
      void remedies?.then((shown) => shown.show(result.design));
      for (const section of record.sections) sections.get(section.id)?.show(section, record.comments[section.id] ?? [], result, widthPx);
      for (const [id, {node: slot}] of sections) slot.hidden = !record.sections.some((section) => section.id === id);
      tail.replaceChildren(...closing(record, result));
    },
  };
}

function openChecks(open: readonly Check[]): Node[] {
  return [
    element("h3", {}, "Open"),
    ...(open.length === 0
      ? [element("p", {}, "No check fails, and none is beyond its method.")]
      : [element("p", {}, `${open.length === 1 ? "One check does" : `${open.length} checks do`} not hold or lie${open.length === 1 ? "s" : ""} beyond the methods. Whoever takes this design further must settle ${open.length === 1 ? "it" : "them"}.`),
        element("ul", {class: "record-open-list"}, ...open.map((check) => element("li", {"data-verdict": check.verdict},
          checkMark(check.verdict), " ", element("strong", {}, `${check.label}, ${checkWord(check)}.`), ` ${check.message}`,
          check.verdict === "fails" ? element("div", {class: "record-remedy no-print", "data-remedy": check.id}) : null)))]),
  ];
}

interface SectionSlot {
  readonly node: HTMLElement;
  show(section: RecordSection, comments: readonly Comment[], result: Evaluation, widthPx: number): void;
}

function sectionSlot(store: DesignStore, id: ReasonName): SectionSlot {
  const above = element("div", {});
  const written = element("div", {class: "record-reason"});
  const said = element("div", {});
  const below = element("div", {});
  const node = element("section", {class: "record-section", id: `record-${id}`}, above,
    reasonControl(store, id, {label: "Reason", rows: 3, compact: true, placeholder: "Why this, and not something else?"}), written, said, below);
  return {
    node,
    show(section, comments, result, widthPx) {
      const drawing = recordDrawing(id, result, Math.min(widthPx, DRAWING_WIDTH_PX));
      above.replaceChildren(
        element("div", {class: "record-opening"}, element("h3", {}, section.title), element("p", {class: "record-decision"}, ...sentenceNodes(section.decision))),
        element("div", {class: "record-body"}, ...(drawing ? [element("div", {class: "record-drawing"}, drawing)] : []), factList(section.facts)),
      );
      written.dataset["standing"] = section.reason.standing;
      written.replaceChildren(...(section.reason.text
        ? [element("p", {}, element("strong", {}, `${reasonTitle(section.reason)} `), section.reason.text, element("em", {class: "record-changes"}, ` ${changesSentence(section.reason)}`))]
        : [blank("Reason", 2)]));
      said.replaceChildren(...recordComments(store, comments));
      below.replaceChildren(
        ...section.alternatives.map(({title, ways}) => element("div", {class: "record-alternatives"},
          element("h4", {}, title), element("ul", {}, ...ways.map(({name, outcome}) => element("li", {}, element("strong", {}, name), ` ${outcome}`))))),
        ...section.tables.map(recordTable),
        ...section.checks.map(checkTable),
      );
    },
  };
}

function factList(facts: readonly Fact[]): HTMLElement {
  return element("dl", {class: "record-facts"}, ...facts.map(({label, value}) => element("div", {}, element("dt", {}, capital(label)), element("dd", {}, ...sentenceNodes(value)))));
}

/** A name with what it is the name of; a line for a pen where the design does not give it. */
function named(label: string, name: string): HTMLElement {
  return element("span", {}, `${label}: `, name ? element("strong", {}, name) : element("span", {class: "record-pen", role: "img", "aria-label": "not yet written"}));
}

/** A line that waits for a pen, where the reader has written nothing. */
function blank(words: string, lines: number): HTMLElement {
  return element("p", {class: "record-blank"}, element("strong", {}, `${words}. `), element("span", {class: "record-invite"}, "not yet written"),
    ...Array.from({length: lines}, () => element("span", {class: "record-line", "aria-hidden": "true"})));
}

function closing(record: DesignRecord, result: Evaluation): Node[] {
  const list = (items: readonly string[]) => element("ul", {}, ...items.map((item) => element("li", {}, item)));
  return [
    element("section", {class: "record-assumptions"}, element("h3", {}, "What was assumed"), list(record.assumptions)),
    element("section", {class: "record-cautions"}, element("h3", {}, "Cautions"), list(record.cautions)),
    element("section", {class: "record-all"}, element("h3", {}, "All inputs"), element("div", {class: "record-inputs"}, ...recordInputs(result.design).filter(({inputs, without}) => without ?? inputs.length > 0)
      .map(({title, inputs, without}) => element("div", {class: "record-group"}, element("h4", {}, title), without ? element("p", {}, without) : factList(inputs))))),
  ];
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
