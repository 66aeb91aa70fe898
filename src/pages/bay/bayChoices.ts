import type {Catalog} from "../../lib/catalog.js";
import type {Design} from "../../lib/design/design.js";
import {evaluate} from "../../lib/evaluate.js";
import {spansIn, type BayWindow} from "../../lib/schemes/bayWindow.js";
import {DECK_KINDS, briefOf, usualVary, type Brief, type DeckKind} from "../../lib/schemes/brief.js";
import {judged} from "../../lib/schemes/cells.js";
import {MEASURE_GROUPS, type MeasureEntry} from "../../lib/schemes/measures/measureList.js";
import type {MeasureKey} from "../../lib/schemes/measures/schemeMeasures.js";
import type {RowsAsked} from "../../lib/schemes/rows.js";
import {measureNamed} from "../../lib/schemes/schemeRow.js";
import {wantedCeilingFt} from "../../lib/schemes/wanted.js";
import {element, uniqueId} from "../../components/dom.js";
import {measureName} from "../../components/compare/words.js";
import {keptFactors} from "../../components/shared/ownFactors.js";
import {pageChoice} from "../../components/shared/pageValue.js";

/** What the reader chooses above the map: the measure that it shows, and what is tried. */
export interface BayChoices {
  readonly nodes: readonly HTMLElement[];
  /** The measure of the map. */
  entry(): MeasureEntry;
  /** Measures that schemes can be judged by now. */
  entries(): readonly MeasureEntry[];
  withColumns(): boolean;
  baysAcross(): number;
  /** What rows are to hold. */
  asked(): RowsAsked;
  /** The brief of a design, for the bays of a window. */
  brief(design: Design, window: BayWindow): Brief;
  /** Says whether cost is known; tells whether the list of measures is another by that. */
  offer(priced: boolean): boolean;
  /** Calls when another measure is chosen, and when other schemes are to be made. */
  observe(events: {readonly measure: () => void; readonly schemes: () => void; readonly columns: () => void}): void;
}

export function bayChoices(first: Design, catalog: Catalog): BayChoices {
  const counts = [...new Set([1, 2, 3, first.bay.baysAcross])].sort((a, b) => a - b);
  const kinds = pageChoice("Kinds of deck", [{value: "considered", label: "as the design considers"}, {value: "all", label: "all"}], "considered");
  const bays = pageChoice("Spans across the building", counts.map((value) => ({value: String(value), label: String(value)})), String(first.bay.baysAcross));
  const frames = pageChoice("Edge beams and girders", [{value: "own", label: "as in the design"}, {value: "all", label: "every kind"}], "own");
  const columns = pageChoice("Columns and footings", [{value: "no", label: "not counted"}, {value: "yes", label: "sized and counted"}], "no");
  const select = element("select", {id: uniqueId("measure"), class: "bay-measure"});
  const withColumns = () => columns.get() === "yes";
  let priced = false;
  let offered = "";
  const entries = () => judged(withColumns(), priced);
  const offer = () => {
    const list = entries();
    const key = list.map((entry) => entry.key).join();
    if (key === offered) return false;
    offered = key;
    const before = select.value;
    select.replaceChildren(...MEASURE_GROUPS.flatMap((group) => {
      const some = list.filter((entry) => entry.group === group);
      return some.length === 0 ? [] : [element("optgroup", {label: group}, ...some.map((entry) => element("option", {value: entry.key}, measureName(entry))))];
    }));
    select.value = list.some((entry) => entry.key === before) ? before : withColumns() ? "carbonKgPerFt2" : "carbonWithoutColumnsKgPerFt2";
    return true;
  };
  offer();
  return {
    nodes: [element("p", {class: "control"}, element("label", {for: select.id, class: "control-label"}, "Measure of the map"), select), kinds.node, bays.node, frames.node, columns.node],
    entry: () => measureNamed(select.value as MeasureKey),
    entries, withColumns,
    baysAcross: () => Number(bays.get()),
    // Cost is made of the amounts in the rows, at the prices of the moment.
    asked: () => ({columns: withColumns(), ownFactors: keptFactors(catalog), prices: {}, amounts: true, measures: [...judged(withColumns()).map(({column}) => column), measureNamed("parkingModules").column]}),
    brief(design, window) {
      const usual = usualVary(design);
      return briefOf(design, wantedCeilingFt(evaluate(design, catalog)), {
        ...spansIn(window), baysAcross: [Number(bays.get())],
        ...(kinds.get() === "all" ? {kinds: Object.keys(DECK_KINDS) as DeckKind[]} : {}),
        ...(frames.get() === "all" ? {edges: usual.edges, girders: usual.girders} : {}),
      });
    },
    offer(next) {
      priced = next;
      return offer();
    },
    observe({measure, schemes, columns: counted}) {
      select.addEventListener("change", measure);
      let ready = false;
      for (const choice of [kinds, bays, frames]) choice.observe(() => ready && schemes());
      columns.observe(() => {
        if (!ready) return;
        offer();
        counted();
      });
      ready = true;
    },
  };
}
