import type {Check} from "../checks.js";
import type {Catalog} from "../catalog.js";
import type {Design} from "../design/design.js";
import {isOfRoof, plainId} from "./checkNames.js";
import {COLUMN_REMEDIES} from "./columnRemedies.js";
import {DECK_REMEDIES} from "./deckRemedies.js";
import {EDGE_BEAM_REMEDIES} from "./edgeBeamRemedies.js";
import {GIRDER_REMEDIES} from "./girderRemedies.js";
import {PARKING_REMEDIES} from "./parkingRemedies.js";
import type {Remedies, Remedy} from "./remedy.js";
import {onRoof} from "./roofMoves.js";
import {ROOF_REMEDIES} from "./roofRemedies.js";
import {STORY_REMEDIES} from "./storyRemedies.js";
import {WALL_REMEDIES} from "./wallRemedies.js";
import type {Way} from "./way.js";

/** Remedies by the check whose failure names them; a check of a column, a roof or a room goes by its name without that ({@link plainId}). */
export const REMEDIES: Remedies = {
  ...DECK_REMEDIES, ...EDGE_BEAM_REMEDIES, ...GIRDER_REMEDIES, ...ROOF_REMEDIES, ...WALL_REMEDIES, ...STORY_REMEDIES, ...PARKING_REMEDIES, ...COLUMN_REMEDIES,
};

/** Checks whose every remedy is no field of a design, and what it is. */
export const OUTSIDE: Readonly<Record<string, string>> = {
  "deck contact": "ties across the joint, which are detailed later",
  "joint step": "how the pieces are sorted and set",
};

/** A remedy that a failed check names, ready to be tried on any design. */
export interface Named {
  readonly remedy: Remedy;
  /** Undefined where a design has no field for it. */
  readonly ways: ((design: Design) => readonly Way[]) | undefined;
}

/** The remedies that a failed check's words name, in the table's order. */
export function namedBy(check: Check, catalog: Catalog, remedies: readonly Remedy[] = REMEDIES[plainId(check)] ?? []): Named[] {
  return remedies.flatMap((remedy) => {
    const said = remedy.says.exec(check.message);
    if (!said) return [];
    const {move} = remedy;
    // What mends the floor's deck and beams mends the roof's where it is done there.
    const there = move && (isOfRoof(check) ? onRoof(move) : move);
    return [{remedy, ways: there && ((design: Design) => there(design, {check, said, catalog}))}];
  });
}
