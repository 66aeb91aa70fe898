import {positionsOf} from "../../lib/columns/frame.js";
import type {Evaluation} from "../../lib/evaluate.js";
import {SHARED_PLACES} from "../../lib/walls/outline.js";
import {wallReach, type WallShare} from "../../lib/walls/weights.js";
import type {WallKind} from "../../lib/walls/areas.js";
import {workingOf} from "../../components/worked/workingOf.js";
import {decimals, feetAndInches, percent} from "../../lib/units.js";
import {element} from "../../components/dom.js";
import {dataTable} from "../../components/figure.js";
import {live, type MakeWorking} from "../../components/live.js";
import {inches} from "../../components/shared/part.js";
import {said} from "../../components/shared/said.js";

/** What closes the short sides, in a sentence. */
export function shortSideSentence(result: Evaluation): HTMLElement {
  const {design, walls: {panels, spandrel, footing, weights, planes}} = result;
  const working = () => workingOf("walls", result);
  if (panels) {
    const size = `${feetAndInches(panels.heaviest.widthIn)} by ${feetAndInches(panels.heaviest.heightIn)}`;
    const carried = footing
      ? said`They stand on a strip footing, which takes ${live(`${decimals(footing.plf)} plf`, working)} and is ${inches(footing.widthIn)} wide; the floors only hold them upright.`
      : said`They lie from column to column, and the columns carry ${live(`${decimals(weights.floorPlf)} plf`, working)} of them on each floor.`;
    return said`Each short side takes ${live(String(panels.count))} panels of ${decimals(panels.psf)} psf. The heaviest is ${size} and weighs ${live(`${decimals(panels.heaviest.weightKip, 1)} kip`, working)}. ${carried}`;
  }
  if (spandrel) {
    return said`Each short side takes ${live(String(spandrel.count))} spandrels ${inches(spandrel.depthIn)} deep, each up to ${feetAndInches(spandrel.lengthIn)} long and weighing ${live(`${decimals(spandrel.weightKip, 1)} kip`)}. Under ${spandrel.windowPlf > 0 ? "their own weight and the windows on them" : "their own weight"} they reach ${live(`${decimals(spandrel.tensionKsi, 2)} ksi`, () => workingOf("endSpandrel", result))} of tension; at ${decimals(spandrel.ruptureKsi, 2)} ksi they would crack.${spandrel.pieces > 1 ? " Where two pieces of a bay meet, a post from the ground up carries them; it is not designed here, and nothing of it is counted." : ""}`;
  }
  if (design.walls.shortSide === "cladding") return said`Light cladding on studs passes outside the columns; with its windows it weighs ${live(`${decimals(weights.withWindowsPsf, 1)} psf`, working)}, and the columns carry ${live(`${decimals(weights.floorPlf)} plf`, working)} of it on each floor.`;
  return said`This design does not say what closes its short sides: the building ends at its column lines, ${feetAndInches(planes.lengthIn)} apart, and no wall there has an area or a weight of its own.`;
}

/** How the deck's edge meets the short sides. */
export function deckEdgeSentence(result: Evaluation): HTMLElement {
  const {walls: {edge, counted}, member} = result;
  if (!counted) return said``;
  const working = () => workingOf("deckEdge", result);
  const piece = member.shape.family === "double tee" ? "tee" : "plank";
  const first = edge.firstStripIn > 0
    ? said`The wall passes outside the columns, so a strip ${live(inches(edge.firstStripIn))} wide, cast in place, closes the floor between the outermost ${piece} and the wall.`
    : said`The wall stands in the column line, a joint away from the edge of the outermost ${piece}, and no strip is needed.`;
  const {pieces} = edge;
  const last = pieces.stripFt > 0 ? said` At the far end it is ${live(feetAndInches(edge.lastStripIn))} wide, because whole ${piece}s do not cover the length.`
    : Math.abs(pieces.lastWidthFt - member.widthFt) < 1e-6 ? said` Whole ${piece}s cover the length.` : said` The last ${piece} of a row is cut to ${feetAndInches(pieces.lastWidthFt * 12)}.`;
  return said`${first}${last} ${edge.flangeIn > 0 ? said`The flange with its strip reaches ${live(inches(edge.reachIn), working)} past the outermost stem.` : ""}`;
}

/** What the strip beside the outermost pieces brings to these and to the ends of the beams. */
export function endStripSentence(result: Evaluation): HTMLElement {
  const {endStrip: strip} = result;
  if (!strip) return said``;
  const working = () => workingOf("endStrip", result);
  const more = strip.onStemKip > 0 ? said`, and ${live(`${decimals(strip.onStemKip, 1)} kip`, working)} more under the outermost stem, which carries it alone` : "";
  const plf = live(`${decimals(strip.deadPlf + strip.livePlf)} plf`, working);
  const psf = said`${live(`${decimals(strip.onPiecePsf, 1)} psf`, working)} more on ${strip.onStemKip > 0 ? "the outermost piece" : "the outermost planks"}`;
  const atEnd = strip.endKip > 0 ? said`, ${live(`${decimals(strip.endKip, 1)} kip`, working)} more, factored, at the near end of each edge beam` : "";
  return strip.widthIn === strip.beyondIn
    ? said`Beyond the column line the floor has live load like any other: ${plf} with its own weight. That is ${psf}${atEnd}${more}; the columns there carry it as well.`
    : said`The strip at the far end has live load like the rest of the floor: ${plf} with its own weight. The last whole piece carries it all: ${psf}${more}${atEnd}.`;
}

/** What stands above the roof. */
export function parapetSentence(result: Evaluation): HTMLElement {
  const {planes, weights} = result.walls;
  const working = () => workingOf("walls", result);
  if (result.roof && planes.parapetIn > 0) return ownRoofParapet(result, working);
  if (!planes.roofed) return said`No roof stands on the columns, so there is no parapet: the beams of the highest floor stand up past it.`;
  if (planes.parapetIn === 0) return said`There is no parapet.${planes.upstandIn > 0 ? ` The roof's edge beams stand ${inches(planes.upstandIn)} above the roof.` : ""}`;
  if (planes.parapetAddedIn === 0) return said`Along the long sides the roof's edge beams already stand ${inches(planes.upstandIn)} above the roof, as high as the parapet of ${inches(planes.parapetIn)} or higher; nothing is built on them.`;
  return said`The parapet stands ${live(inches(planes.parapetIn))} above the roof. ${planes.upstandIn > 0 ? `Along the long sides the edge beams make ${inches(planes.upstandIn)} of that, and` : "Along the long sides"} ${inches(planes.parapetAddedIn)} of concrete are built on, ${live(`${decimals(weights.parapetPlf)} plf`, working)}.`;
}

/** The parapet of a roof of its own, whose surface lies on layers and falls. */
function ownRoofParapet({walls: {planes, weights}, design}: Evaluation, working: MakeWorking): HTMLElement {
  const [one, other] = planes.top.sides;
  const lowIn = Math.min(one.builtOnIn, other.builtOnIn) - planes.topIn;
  const on = design.edgeBeam.kind === "below" ? "edge of the deck ends" : "edge beams end";
  const where = lowIn === 0 ? "in its plane" : `${inches(Math.abs(lowIn))} ${lowIn < 0 ? "below" : "above"} it`;
  if (planes.parapetAddedIn === 0) return said`The edge beams stand ${live(inches(lowIn))} above the roof's highest line, as high as the parapet of ${inches(planes.parapetIn)} or higher; nothing is built on them.`;
  return said`The parapet is level and stands ${live(inches(planes.parapetIn))} above the roof's highest line. Along the long sides the ${on} ${where}, so ${live(inches(planes.parapetAddedIn))} of concrete are built on, ${live(`${decimals(weights.parapetPlf)} plf`, working)}${one.addedIn === other.addedIn ? "" : `; where the bearings are higher, ${inches(Math.min(one.addedIn, other.addedIn))}`}.`;
}

/** How high the building is, and where a roof of its own makes a difference. */
export function heightSentence(result: Evaluation): HTMLElement {
  const {walls: {planes}, roof, design, story} = result;
  const top = !planes.roofed ? "open top floor" : roof && roof.plan.riseIn > 0 ? "roof's highest line" : "roof";
  const whole = said`From the lowest floor to the ${top} it is ${live(feetAndInches(planes.topIn), () => workingOf("buildingHeight", result))}`;
  if (!roof) return said`${whole}${planes.roofed ? ": the roof, given by its loads alone, is taken as deep as a floor" : ""}.`;
  const deepIn = planes.topIn - (planes.top.structureIn.reduce((least, one) => Math.min(least, one)) - planes.top.deckDepthIn);
  const floorIn = story.deckDepthIn + design.story.finishIn;
  const differs = deepIn - floorIn;
  return said`${whole}. Deck, layers and fall make the roof ${live(feetAndInches(deepIn))} deep, ${Math.abs(differs) < 0.05 ? "just as deep as a floor" : `${feetAndInches(Math.abs(differs))} ${differs > 0 ? "more" : "less"} than a floor`}; the room beneath it is as high as any other.`;
}

const KIND_WORDS: Readonly<Record<WallKind, string>> = {
  columns: "columns", spandrel: "spandrels and beams", "closing strip": "strips in front of the deck's ends", sill: "wall under the lowest windows", windows: "windows",
  "frames and wall": "frames and wall between", panels: "wall panels", cladding: "light cladding", parapet: "parapet", "not counted": "not counted",
};

/** Areas of the walls by side and kind. */
export function areaTable({walls: {areas, open}}: Evaluation): HTMLElement {
  const rows = areas.parts.map(({side, kind, ft2}) => [`${side} sides`, open && (kind === "windows" || kind === "frames and wall") ? "open" : KIND_WORDS[kind], decimals(ft2), percent(ft2 / areas.wallFt2)]);
  return numbersTable(["On both", "kind", "ft\u00b2", "of all"], [...rows, ["all sides", "", decimals(areas.wallFt2), "100 %"]], "Areas of the walls by kind");
}

/** Which column carries which piece, on a floor and on the roof. */
export function reachTable(evaluation: Evaluation): HTMLElement {
  const rows = positionsOf(evaluation).filter((position) => position !== "interior column").flatMap((position) => {
    const {floor, roof} = wallReach(evaluation.design, evaluation.walls, position);
    const row = (level: string) => ({name, lengthFt, plf, kip}: WallShare) => [position, level, name, feetAndInches(lengthFt * 12), decimals(plf), decimals(kip, 1)];
    return [...floor.map(row("each floor")), ...roof.map(row("the roof"))];
  });
  if (rows.length === 0) return element("p", {}, "No wall comes to a column.");
  return numbersTable(["Column", "level", "piece", "length", "plf", "kip"], rows, "Which column carries which wall");
}

/** Sizes of the panels of one short side. */
export function panelTable({walls: {panels}}: Evaluation): HTMLElement {
  if (!panels) return element("div", {});
  return numbersTable(["Panels of one side", "width", "height", "number", "kip each"],
    panels.sizes.map(({where, widthIn, heightIn, count, weightKip}) => [where, feetAndInches(widthIn), feetAndInches(heightIn), String(count), decimals(weightKip, 1)]), "Sizes of the panels");
}

function numbersTable(columns: readonly string[], rows: readonly (readonly string[])[], label: string): HTMLElement {
  return element("div", {class: "scrolls", tabindex: 0, role: "region", "aria-label": label}, dataTable({columns, rows}));
}

/** Where pieces share a place, in words. */
export const SHARED_WORDS = SHARED_PLACES.map(({how}) => how).join(" ");
