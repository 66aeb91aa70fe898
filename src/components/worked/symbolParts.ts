import {limitPart} from "../drawings/parts.js";
import {SYMBOL_PARTS} from "./symbolPartsTable.js";

const BY_LABEL: ReadonlyMap<string, string> = new Map(Object.entries(SYMBOL_PARTS).flatMap(([part, labels]) => labels.map((label) => [label, part] as const)));

/** Rows of strands are many; each is of the strands. */
const ROW = /^(?:(?:depth|area|strain|stress) of (?:the )?row\b|area of row )/;

/** What each limit allows lights with the limit's curve. */
const LIMIT = /^load that (.+) allows$/;

/** The part of a drawing that a symbol's label speaks of; undefined where none is drawn. */
export function partOfLabel(label: string): string | undefined {
  const limit = LIMIT.exec(label)?.[1];
  return BY_LABEL.get(label) ?? (limit !== undefined ? limitPart(limit) : ROW.test(label) ? "strand" : undefined);
}
