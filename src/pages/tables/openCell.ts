import type {Catalog} from "../../lib/catalog.js";
import {changesForCandidate} from "../../lib/deck/choose.js";
import {deckRow} from "../../lib/deck/deckMember.js";
import type {SweepRow} from "../../lib/deck/sweep.js";
import {patternMember} from "../../lib/deck/table.js";
import {InputError} from "../../lib/errors.js";
import {cellWorking} from "../../lib/steps/cell.js";
import {decimals, feetText} from "../../lib/units.js";
import {button} from "../../components/controls.js";
import {element} from "../../components/dom.js";
import {openPopover} from "../../components/live.js";
import {patternWords} from "../../components/shared/deckWords.js";
import type {DesignStore} from "../../components/store.js";
import type {Chosen} from "./choices.js";
import {rowId} from "./data.js";

/** A cell that was opened: its row, the number of its span, and where it stands. */
export interface OpenedCell {
  readonly row: SweepRow;
  readonly spanIndex: number;
  readonly from: HTMLElement;
}

/** Opens a cell's worked steps, with its cambers and the way into the design. `said` is notified what came of it. */
export function openCell(
  catalog: Catalog, store: DesignStore, {input}: Chosen, {row, spanIndex, from}: OpenedCell, said: (words: string) => void,
): void {
  const cell = row.cells[spanIndex];
  if (!cell) return;
  const {spanFt, erectionCamberIn, longTermCamberIn} = cell;
  const working = () => {
    const member = patternMember(catalog, deckRow(catalog, row.member), row.pattern, {...input.conditions, toppingIn: row.toppingIn});
    return cellWorking(member, spanFt, input.criteria[row.toppingIn > 0 ? "topped" : "untopped"], `${rowId(row)} over ${feetText(spanFt)}`);
  };
  const put = button("Put this deck into the design", () => {
    try {
      store.setMany(changesForCandidate({designation: row.member, pattern: row.pattern, toppingIn: row.toppingIn}));
      said(`${rowId(row)} is in the design now.`);
    } catch (problem) {
      if (!(problem instanceof InputError)) throw problem;
      said(problem.message);
    }
    put.closest<HTMLElement>("[popover]")?.hidePopover();
  });
  const arch = (valueIn: number) => `${decimals(Math.abs(valueIn), 1)} in ${valueIn < 0 ? "of sag" : "of camber"}`;
  void openPopover(from, working, element("div", {class: "cell-facts"},
    element("p", {}, `${patternWords(row.pattern)}: ${arch(erectionCamberIn)} when it is set, ${arch(longTermCamberIn)} in the long term.`),
    element("p", {}, put),
    element("p", {class: "control-help"}, "Member, strands and topping go into the design; its span, loads and concrete stay the same.")));
}
