import type {Catalog} from "../../lib/catalog.js";
import {carbonFactorName, carbonFactorRule, withOwnFactors, type CarbonFactor} from "../../lib/materials/carbon.js";
import {button} from "../../components/controls.js";
import {labelOf} from "../../components/controls/frame.js";
import {numberBox, type NumberBox} from "../../components/controls/numberBox.js";
import {element} from "../../components/dom.js";
import {OWN_FACTORS_KEY, keptFactors} from "../../components/shared/ownFactors.js";
import {keep} from "../../components/store/kept.js";

/** The carbon factors with the reader's own in their place; these are kept in the browser, not in the design. */
export interface CarbonTable {
  readonly node: HTMLElement;
  /** The reader's own factors by id. */
  own(): Readonly<Record<string, number>>;
  /** The table as it counts now. */
  factors(): readonly CarbonFactor[];
  /** Calls after each change. */
  observe(change: () => void): () => void;
  /** Tells the factors as they count now, and again after each change. */
  follow(tell: (factors: readonly CarbonFactor[]) => void): () => void;
}

/** A table of the carbon factors in which each number can be changed, and changed back. */
export function carbonTable(catalog: Catalog): CarbonTable {
  const listeners = new Set<() => void>();
  let own = keptFactors(catalog);
  let factors = withOwnFactors(catalog.carbonFactors, own);
  const boxes = new Map<string, {box: NumberBox; row: HTMLElement}>();

  const take = (next: Readonly<Record<string, number>>) => {
    factors = withOwnFactors(catalog.carbonFactors, next);
    own = next;
    keep(OWN_FACTORS_KEY, own);
    show();
    for (const listener of listeners) listener();
  };
  const back = button("Back to the table's", () => take({}), {quiet: true, name: "Back to the table's own factors"});
  const show = () => {
    for (const [id, {box, row}] of boxes) {
      box.show();
      row.classList.toggle("is-changed", Object.hasOwn(own, id));
    }
    back.disabled = Object.keys(own).length === 0;
  };

  const rowFor = (factor: CarbonFactor): HTMLElement => {
    const {id, unit, stage, source, date, confidence, kgPerUnit, material} = factor;
    const box = numberBox({
      rule: {...carbonFactorRule(factor), step: kgPerUnit < 10 ? 0.1 : 10}, name: `${carbonFactorName(factor)}, kgCO2e per ${unit}`,
      get: () => own[id] ?? kgPerUnit,
      usual: () => kgPerUnit,
      set(value) {
        const {[id]: _, ...others} = own;
        take(value === undefined || value === kgPerUnit ? others : {...others, [id]: value});
      },
    });
    const row = element("tr", {},
      element("th", {scope: "row"}, labelOf(carbonFactorName(factor)), material === "reinforcing bars" && element("span", {class: "carbon-note"}, "not in the total: bars and mesh of the deck are not designed here")),
      element("td", {class: "numeric"}, box.input), element("td", {}, unit === "yd3" ? "yd³" : "lb"), element("td", {}, stage.replace("-", "\u2013")),
      element("td", {class: "carbon-source"}, `${source} (${date}; ${confidence})`));
    boxes.set(id, {box, row});
    return row;
  };
  const head = ["Material", "kgCO₂e", "per", "Stage", "Source, year, and how far to trust it"];
  const node = element("div", {class: "carbon-table control"},
    element("div", {class: "scrolls", role: "region", tabindex: 0, "aria-label": "Carbon factors"},
      element("table", {},
        element("thead", {}, element("tr", {}, ...head.map((words, i) => element("th", {scope: "col", class: i === 1 ? "numeric" : undefined}, words)))),
        element("tbody", {}, ...catalog.carbonFactors.map(rowFor)))),
    ...[...boxes.values()].map(({box}) => box.message.node), element("p", {class: "row"}, back));
  show();
  return {
    node,
    own: () => own,
    factors: () => factors,
    observe(change) {
      listeners.add(change);
      return () => listeners.delete(change);
    },
    follow(tell) {
      tell(factors);
      const again = () => tell(factors);
      listeners.add(again);
      return () => listeners.delete(again);
    },
  };
}
