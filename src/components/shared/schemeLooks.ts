import {DECK_KINDS} from "../../lib/schemes/brief.js";

/** How a kind of deck looks in charts of schemes: its line, its color and its mark. */
export interface KindLook {
  readonly dash: string | undefined;
  readonly color: string;
  readonly symbol: "circle" | "square" | "triangle";
}

/** By the kind's words, as rows have them. */
export const KIND_LOOKS: Readonly<Record<string, KindLook>> = {
  [DECK_KINDS.fieldToppedTees]: {dash: undefined, color: "var(--ink)", symbol: "circle"},
  [DECK_KINDS.pretoppedTees]: {dash: "7 3", color: "var(--steel)", symbol: "square"},
  [DECK_KINDS.planks]: {dash: "2 3", color: "var(--pinned)", symbol: "triangle"},
};

export function kindLook(kind: string): KindLook {
  return KIND_LOOKS[kind] ?? {dash: undefined, color: "var(--ink)", symbol: "circle"};
}

/** How a scheme carries its edge, in words. */
export const EDGE_WORDS: Readonly<Record<string, string>> = {ledge: "deck on the edge beam\u2019s ledge", pockets: "stems in pockets of a spandrel", below: "edge beam below the deck"};
/** What carries the deck between two bays, in words. */
export const GIRDER_WORDS: Readonly<Record<string, string>> = {"inverted tee": "inverted-tee girder", rectangle: "girder below the deck"};
