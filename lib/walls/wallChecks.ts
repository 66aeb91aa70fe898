import {atLeast, atMost, type Check} from "../checks.js";
import type {Design} from "../design/design.js";
import {fieldOf} from "../design/fields.js";
import {countsShortSides} from "../design/used.js";
import {PAYLOAD_KIP, ROAD_WIDTH_FT} from "../member/handling.js";
import {feet, inches} from "../units.js";
import type {DeckEdge} from "./deckEdge.js";
import type {EndSpandrel} from "./endSpandrel.js";
import type {PanelRun} from "./panels.js";

/** Longest piece of wall that is hauled without a survey of the route, ft (common practice). */
export const LONGEST_PIECE_FT = 60;
/** Span over thickness of a prestressed panel between what holds it against wind (trade practice: 1/30 to 1/60; PCI MNL-122; from memory). */
export const PANEL_SPAN_OVER_THICKNESS = 60;

/** Checks of what closes the short sides; none where it is not counted. */
export function wallChecks(design: Design, of: {panels: PanelRun | undefined; spandrel: EndSpandrel | undefined; edge: DeckEdge; deckDepthIn: number}): Check[] {
  if (!countsShortSides(design)) return [];
  const {panels, spandrel, edge} = of;
  return [
    ...(panels ? panelChecks(panels) : []),
    ...(spandrel ? spandrelChecks(design, spandrel, of.deckDepthIn) : []),
    ...edgeChecks(design, edge),
  ];
}

function panelChecks(panels: PanelRun): Check[] {
  const upright = panels.support === "footing";
  const across = Math.max(...panels.sizes.map(({widthIn, heightIn}) => Math.min(widthIn, heightIn)));
  const along = Math.max(...panels.sizes.map(({widthIn, heightIn}) => Math.max(widthIn, heightIn)));
  return [
    upright ? atLeast({
      id: "panel thickness", label: "Panel from floor to floor, thickness that carries", unit: "in", clause: "ACI 318-19 Table 11.3.1.1", meetingIsEnough: true,
      holds: "The panel is thick enough for the height between floors, as a wall that carries no floor.",
      fails: "The panel is too thin for the height between floors, which hold it: thicken it, or lower the story.",
    }, panels.structuralIn, leastThicknessIn(panels.heldIn)) : atLeast({
      id: "panel reach", label: "Panel from column to column, thickness that carries", unit: "in", clause: "common practice: span/60, prestressed (PCI MNL-122)", meetingIsEnough: true,
      holds: "The panel is thick enough to reach from column to column.",
      fails: "The panel is too thin to reach from column to column: thicken it, set the columns of the short sides closer together, or stand the panels upright.",
    }, panels.structuralIn, panels.heldIn / PANEL_SPAN_OVER_THICKNESS),
    ...pieceChecks({
      name: "Panel", acrossIn: across, alongIn: along, weightKip: panels.heaviest.weightKip,
      narrower: `use ${upright ? "narrower panels" : "lower panels, in more rows"}`,
      shorter: upright ? "let fewer stories be in one panel" : "set the columns of the short sides closer together",
      lighter: `${upright ? "narrower" : "lower"} panels, ${upright ? "fewer stories in one" : "columns of the short sides closer together"}, or thinner ones`,
    }),
  ];
}

/** Minimum thickness of a wall that carries no floor, in: 4, and 1/30 of the height between its supports (ACI 318-19 Table 11.3.1.1). */
export function leastThicknessIn(heldIn: number): number {
  return Math.max(4, heldIn / 30);
}

/** Size and weight of the largest piece on the road. */
function pieceChecks(piece: {name: string; acrossIn: number; alongIn: number; weightKip: number; narrower: string; shorter: string; lighter: string}): Check[] {
  const id = piece.name.toLowerCase();
  return [
    atMost({
      id: `${id} hauled width`, label: `${piece.name} on the truck, width`, unit: "ft", clause: "state rules; common practice", meetingIsEnough: true,
      holds: "It travels on a routine permit.",
      fails: `It is too wide for a routine permit: ${piece.narrower}.`,
    }, feet(piece.acrossIn), ROAD_WIDTH_FT.permit),
    atMost({
      id: `${id} hauled length`, label: `${piece.name} on the truck, length`, unit: "ft", clause: "common practice", meetingIsEnough: true,
      holds: "It is no longer than what trucks usually haul.",
      fails: `It is longer than what trucks usually haul: ${piece.shorter}.`,
    }, feet(piece.alongIn), LONGEST_PIECE_FT),
    atMost({
      id: `${id} weight`, label: `${piece.name}, weight`, unit: "kip", clause: "common practice", meetingIsEnough: true,
      holds: "One is a legal load.",
      fails: `One outweighs a legal load, and each haul needs a permit: ${piece.lighter}.`,
    }, piece.weightKip, PAYLOAD_KIP),
  ];
}

function spandrelChecks(design: Design, spandrel: EndSpandrel, deckDepthIn: number): Check[] {
  const columns = "set the columns of the short sides closer together";
  const cut = design.walls.spandrelPieces < fieldOf("walls.spandrelPieces").max ? "cut it into more pieces, on posts between the columns, or " : "";
  return [
    atLeast({
      id: "end spandrel depth", label: "End spandrel, depth", unit: "in", clause: "ACI 318-19 Table 9.3.1.1", meetingIsEnough: true,
      holds: "It is deep enough that its sag need not be computed.",
      fails: `At span/16 or more its sag need not be computed; this one is shallower: deepen it, or ${columns}.`,
    }, spandrel.depthIn, spandrel.spanIn / 16),
    atMost({
      id: "end spandrel cracking", label: "End spandrel, tension at midspan", unit: "ksi", clause: "ACI 318-19 19.2.3.1, 24.2.3.5",
      holds: "Under its own weight and the windows on it, it does not crack.",
      fails: `It cracks under its own weight and the windows on it: deepen it, make it of stronger concrete, or ${columns}.`,
    }, spandrel.tensionKsi, spandrel.ruptureKsi),
    atLeast({
      id: "end spandrel over deck", label: "End spandrel, below the top of the structural floor", unit: "in", clause: "geometry", meetingIsEnough: true,
      holds: "It covers the edge of the deck.",
      fails: "The underside of the deck shows below it: deepen it, let it stand less above the floor, or take a shallower deck.",
    }, Math.max(0, design.walls.spandrelDepthIn - design.walls.spandrelUpstandIn), deckDepthIn),
    atMost({
      id: "end spandrel story", label: "End spandrel, depth within its story", unit: "in", clause: "geometry", meetingIsEnough: true,
      holds: "It leaves the next one its place.",
      fails: "It would run into the next story's spandrel: make it shallower, raise the story, or close the side with wall panels.",
    }, spandrel.depthIn, inches(design.story.floorToFloorFt)),
    ...pieceChecks({
      name: "End spandrel", acrossIn: spandrel.depthIn, alongIn: spandrel.lengthIn, weightKip: spandrel.weightKip,
      narrower: "make it shallower", shorter: `${cut}${columns}`, lighter: `make it shallower or thinner, ${cut}${cut ? "" : "or "}${columns}`,
    }),
  ];
}

/** Checks of the deck where the building ends: what reaches past the outermost piece, and a last tee that is cut. */
export function edgeChecks({walls}: Pick<Design, "walls">, edge: DeckEdge): Check[] {
  const {pieces} = edge;
  const tee = edge.flangeIn > 0;
  const whole = "columns at such a distance that whole pieces cover the length";
  const wall = walls.shortSide === "spandrel" && walls.spandrelPlace === "outside" ? ", or spandrels between the columns" : "";
  return [
    // A strip is cast on the flange of the last tee, or beside the last plank.
    atLeast({
      id: "deck edge", label: tee ? "Flange beyond the outermost stem, thickness" : "Strip beyond the outermost plank, thickness", unit: "in", clause: "ACI 318-19 Table 7.3.1.1", meetingIsEnough: true,
      holds: edge.lastStripIn > 0 ? "The deck carries the strip up to the wall." : "The deck's edge reaches the end line by itself.",
      fails: `The deck's edge reaches too far past ${tee ? "the outermost stem" : "the outermost plank"} for its thickness: thicken the topping${pieces.stripFt > 0 ? `, take a last piece cut narrower, or ${whole}` : ""}${wall}.`,
    }, edge.thicknessIn, edge.reachIn / 10),
    ...(tee ? [atLeast({
      id: "last piece", label: "Last tee of a row, width", unit: "ft", clause: "geometry", meetingIsEnough: true,
      holds: "The last tee of a row keeps both of its stems.",
      fails: `The last tee of a row would be too narrow for both stems: choose ${whole}${pieces.perRow > 1 ? ", or a strip cast in place" : ""}.`,
    }, pieces.lastWidthFt, pieces.stemsWidthFt)] : []),
  ];
}

/** Trial width of a footing: nothing narrower than the wall with 6 in of concrete on either side, in steps of 3 in (common practice). */
export function stripFootingIn(plf: number, allowablePsf: number, wallIn: number): number {
  const neededIn = inches(plf / allowablePsf);
  return Math.ceil(Math.max(neededIn, wallIn + 12) / 3 - 1e-9) * 3;
}
