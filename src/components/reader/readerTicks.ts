import {niceTicks, tickTexts} from "../../lib/reader/ticks.js";
import {shownUnit} from "./system.js";

/** A tick of an axis: where it stands, in the axis's own unit, and what it says. */
export interface ReaderTick {
  readonly at: number;
  readonly text: string;
}

/** Ticks of an axis that a page draws itself: those given, or as many at round numbers of SI where the page reads in SI alone. */
export function readerTicks(unit: string, low: number, high: number, own: readonly ReaderTick[]): readonly ReaderTick[] {
  const shown = unit === "" ? undefined : shownUnit(unit);
  if (!shown || shown.beside) return own;
  const ticks = niceTicks(low * shown.factor, high * shown.factor, own.length);
  const texts = tickTexts(ticks);
  return ticks.map((si, i) => ({at: si / shown.factor, text: texts[i] as string}));
}
