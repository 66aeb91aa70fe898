import type {Catalog} from "../catalog.js";
import type {Check} from "../checks.js";
import type {Design} from "../design/design.js";
import {fieldOf, type NumberPath} from "../design/fields.js";
import type {Member} from "../member/member.js";
import type {StoryHeights} from "../walls/areas.js";
import {deckEdge, type DeckEdge} from "../walls/deckEdge.js";
import {endInnerFaceIn} from "../walls/planes.js";
import {edgeChecks} from "../walls/wallChecks.js";
import {checkedWalls, walls, type WallsResult} from "../walls/walls.js";

type Walls = Design["walls"];

/** What a failed check of the walls makes grow or shrink, in the order in which it is tried, and the checks in the order in which they are mended; undefined where it is at its end. */
const MOVES: Readonly<Record<string, readonly ((walls: Walls) => Walls | undefined)[]>> = {
  "panel thickness": [by("panelThicknessIn", 1), by("innerWytheIn", 1)],
  "panel reach": [by("panelThicknessIn", 1), by("innerWytheIn", 1)],
  "panel hauled length": [by("panelStories", -1)],
  "panel hauled width": [by("panelWidthFt", -1)],
  "panel weight": [by("panelStories", -1), by("panelWidthFt", -1)],
  "end spandrel hauled length": [by("spandrelPieces", 1)],
  "end spandrel depth": [by("spandrelDepthIn", 2), by("spandrelPieces", 1)],
  "end spandrel cracking": [by("spandrelDepthIn", 2), by("spandrelPieces", 1)],
  "end spandrel over deck": [by("spandrelDepthIn", 2)],
  "end spandrel weight": [by("spandrelPieces", 1)],
  "deck edge": [between],
};
/** Steps that are taken at most. */
const MOST_STEPS = 24;

/**
 * The walls of the short sides by rule: the design's own, thicker, deeper, lower or in more pieces in steps until their checks hold, and the
 * deck's last piece cut or a strip cast, whichever holds; what no step mends is left to its check.
 */
export function ruledWalls(design: Design, catalog: Catalog, member: Member, heights: StoryHeights, open: boolean): RuledWalls {
  const tried = (input: Walls): Tried =>
    ({input, failed: failedOf(checkedWalls({...design, walls: input}, member, heights, open).checks)});
  const input = mended(design.walls, tried);
  return {input, result: walls({...design, walls: input}, catalog, member, heights, open)};
}

/**
 * The deck's edge that the walls by rule leave, which is known before beams and story are: it hangs on the columns, on the
 * deck's last piece, and on whether spandrels stand between the columns.
 */
export function ruledDeckEdge(design: Design, member: Member): DeckEdge {
  const edgeBy = (input: Walls): DeckEdge => {
    const walled: Design = {...design, walls: input};
    return deckEdge(walled, {member, toppingIn: design.deck.toppingIn}, {endInnerIn: endInnerFaceIn(walled)});
  };
  return edgeBy(mended(design.walls, (input) => ({input, failed: failedOf(edgeChecks({walls: input}, edgeBy(input)))})));
}

function failedOf(checks: readonly Check[]): string[] {
  return checks.filter(({verdict}) => verdict === "fails").map(({id}) => id);
}

/** Walls after all steps that mend something, from a design's own. */
function mended(own: Walls, tried: (input: Walls) => Tried): Walls {
  if (own.shortSide === "not counted") return own;
  let found = tried(own);
  const ofDeck = ({failed}: Tried) => failed.filter((id) => id === "deck edge" || id === "last piece").length;
  if (ofDeck(found) > 0) {
    const other = tried({...own, endFill: own.endFill === "piece" ? "strip" : "piece"});
    if (ofDeck(other) < ofDeck(found)) found = other;
  }
  for (let step = 0; step < MOST_STEPS; step++) {
    const next = firstMove(found.input, found.failed);
    if (!next) break;
    found = tried(next);
  }
  return found.input;
}

/** Walls by rule, and what they come to. */
export interface RuledWalls {
  readonly input: Walls;
  readonly result: WallsResult;
}

/** All that walls by rule depend on besides the brief. */
export function wallsKey({bay, deck, column, edgeBeam, story}: Design, {shape, selfWeightPlf}: Member, {deckDepthIn, ledgeDepthIn, glassIn}: StoryHeights): string {
  const plan = `${bay.spanFt} ${bay.baysAcross} ${bay.beamSpanFt} ${bay.baysAlong} ${column.sideIn} ${column.seatIn}`;
  return `${plan} ${shape.designation} ${selfWeightPlf} ${deck.toppingIn} ${edgeBeam.kind} ${edgeBeam.webWidthIn} ${story.floorToFloorFt} ${deckDepthIn} ${ledgeDepthIn} ${glassIn}`;
}

/** Walls that are tried, with the names of their checks that fail. */
interface Tried {
  readonly input: Walls;
  readonly failed: readonly string[];
}

function firstMove(walls: Walls, failed: readonly string[]): Walls | undefined {
  for (const [id, moves] of Object.entries(MOVES)) {
    if (!failed.includes(id)) continue;
    for (const move of moves) {
      const next = move(walls);
      if (next) return next;
    }
  }
  return undefined;
}

/** End spandrels between the columns rather than past them: no strip of floor is left to close. */
function between(walls: Walls): Walls | undefined {
  return walls.shortSide === "spandrel" && walls.spandrelPlace === "outside" ? {...walls, spandrelPlace: "between"} : undefined;
}

type WallNumber = "panelThicknessIn" | "innerWytheIn" | "panelStories" | "panelWidthFt" | "spandrelDepthIn" | "spandrelPieces";

/** A move by one step, where the walls use the number and its field allows it. */
function by(name: WallNumber, step: number): (walls: Walls) => Walls | undefined {
  return (walls) => {
    if ((name === "panelThicknessIn" && walls.shortSide !== "solid panel") || (name === "innerWytheIn" && walls.shortSide !== "insulated panel")) return undefined;
    const {min, max} = fieldOf(`walls.${name}` satisfies NumberPath);
    const value = walls[name] + step;
    return value < min || value > max ? undefined : {...walls, [name]: value};
  };
}
