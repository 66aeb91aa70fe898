import {LIMITS, type LimitName} from "../../lib/deck/limits.js";
import type {SweepRow} from "../../lib/deck/sweep.js";
import {feetText} from "../../lib/units.js";
import {button} from "../../components/controls.js";
import {element} from "../../components/dom.js";
import {KINDS} from "../../components/shared/deckWords.js";
import type {SweepFilter} from "./data.js";
import {listEntry, numberEntry, tick} from "../../components/tables/parts.js";

/** What hides rows of the table. */
export interface TableFilters {
  readonly node: HTMLElement;
  read(): SweepFilter;
  /** The spans at which a load can be asked for. */
  offerSpans(spansFt: readonly number[]): void;
}

/** The filters; `changed` is called after each change. */
export function tableFilters(changed: () => void): TableFilters {
  const kind = listEntry("Kind", [["", "all"], ...KINDS]);
  const depth = numberEntry("Depth at most", "in", {min: 4, max: 60});
  const strands = numberEntry("Strands at most", "", {min: 1, max: 60, step: 1});
  const straight = tick("Straight strand only");
  const span = listEntry("At", [["", "any span"]]);
  let spans: readonly number[] = [];
  const load = numberEntry("Carries at least", "psf", {min: 0, max: 2000});
  const governs = listEntry("Governed by", [["", "anything"], ...LIMITS.map((name): [string, string] => [name, name])]);
  const fields: readonly (HTMLInputElement | HTMLSelectElement)[] = [kind.select, depth.input, strands.input, straight.input, span.select, load.input, governs.select];
  for (const field of fields) field.addEventListener("input", changed);
  const clear = button("Show all", () => {
    for (const field of fields) {
      if (field instanceof HTMLInputElement && field.type === "checkbox") field.checked = false;
      else field.value = "";
    }
    changed();
  }, {quiet: true});
  return {
    node: element("div", {class: "table-choices sweep-filters no-print", role: "group", "aria-label": "Show only"},
      kind.node, depth.node, strands.node, straight.node, load.node, span.node, governs.node, clear),
    read: () => ({
      use: (kind.select.value || undefined) as SweepRow["use"] | undefined,
      mostDepthIn: depth.value(), mostStrands: strands.value(), straightOnly: straight.input.checked,
      spanIndex: span.select.value === "" ? undefined : spans.indexOf(Number(span.select.value)),
      leastPsf: load.value(), governs: (governs.select.value || undefined) as LimitName | undefined,
    }),
    offerSpans(spansFt) {
      spans = spansFt;
      span.offer([["", "any span"], ...spansFt.map((spanFt): [string, string] => [String(spanFt), feetText(spanFt)])]);
    },
  };
}
