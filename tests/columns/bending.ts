import type {ColumnBending} from "../../lib/columns/columnBending.js";
import {NO_TWIST} from "../../lib/columns/endOnColumn.js";
import type {ColumnLevel} from "../../lib/columns/levels.js";
import {levelAdds} from "../../lib/columns/takedown.js";

/** Beams that bring all of each level on one corbel, or on two with half of the live load on one side alone; no twist. */
export function onCorbels(levels: readonly ColumnLevel[], seatIn: number, sides: "one" | "two", cutForIn = 0): ColumnBending {
  return {
    seat: {seatIn, cutForIn},
    patterns: [{
      words: `beams on ${sides === "one" ? "one corbel" : "two corbels"}`,
      levels: levels.map((level) => {
        const {deadKip, liveKip, roofKip} = levelAdds(level);
        return {along: sides === "one" ? {deadKip, liveKip, roofKip} : {deadKip: 0, liveKip: liveKip / 2, roofKip: roofKip / 2}, across: NO_TWIST};
      }),
      curvature: {along: sides === "one" ? "double" : "single", across: "double"},
    }],
  };
}

/** Beams that stand on the column's center line and bend nothing. */
export function centered(levels: readonly ColumnLevel[]): ColumnBending {
  return twisted(levels, 0);
}

/** Beams whose ends bring each level's load at a lever across their line alone, in, as a twist. */
export function twisted(levels: readonly ColumnLevel[], leverIn: number): ColumnBending {
  return {
    seat: {seatIn: 0, cutForIn: 0},
    patterns: [{
      words: "twist alone",
      levels: levels.map((level) => {
        const {deadKip, liveKip, roofKip} = levelAdds(level);
        return {along: {deadKip: 0, liveKip: 0, roofKip: 0}, across: {deadKipIn: deadKip * leverIn, liveKipIn: liveKip * leverIn, roofKipIn: roofKip * leverIn}};
      }),
      curvature: {along: "double", across: "double"},
    }],
  };
}
