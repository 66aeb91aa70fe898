import type {Catalog} from "../../lib/catalog.js";
import {toppedName} from "../../lib/deck/deckName.js";
import type {Design} from "../../lib/design/design.js";
import {evaluate, type Evaluation} from "../../lib/evaluate.js";
import {InputError} from "../../lib/errors.js";
import {placedStrands} from "../../lib/prestress/layout.js";
import {feetAndInches} from "../../lib/units.js";
import type {CompareView, Entry} from "../../components/compare/view.js";
import {element} from "../../components/dom.js";
import {beamSection} from "../../components/drawings/beamSection.js";
import {crossSection} from "../../components/drawings/crossSection.js";
import {girderSection} from "../../components/drawings/girderSection.js";
import {drawingsAtOneScale, type DrawAtMost} from "../../components/drawings/oneScale.js";
import {storySection} from "../../components/drawings/storySection.js";
import {figureOf} from "../../components/quantity.js";
import {girderPicture} from "../../components/shared/girderParts.js";
import {beamPicture, storyPicture} from "../../components/shared/pictures.js";

/** What of a design is drawn. */
export type SectionKind = "deck" | "story" | "edge beam" | "girder";

/** Least width of one drawing, and the width from which it is drawn with its dimensions, px. */
const LEAST_PX = 158;
const DIMENSIONED_FROM_PX = 330;
const MOST_PX = 520;
const GAP_PX = 20;
/** Room shown inside the wall of a story, in: the same for all. */
const INSIDE_IN = 150;

/** A design that can be drawn, with its results. */
interface Drawn {
  readonly entry: Entry;
  readonly result: Evaluation;
}

const atOneScale = drawingsAtOneScale();

/** One part of the open design and of each pin, cut, all at one scale; a design that has not the part says so. */
export function sideBySide(view: CompareView, catalog: Catalog, kind: SectionKind, widthPx: number): HTMLElement {
  const all = [view.open, ...view.pinned].flatMap((entry): Drawn[] => {
    const result = resultOf(entry.design, catalog);
    return result ? [{entry, result}] : [];
  });
  const columns = Math.max(1, Math.min(all.length, Math.floor((widthPx + GAP_PX) / (LEAST_PX + GAP_PX))));
  const cellPx = Math.min(MOST_PX, Math.floor((widthPx - (columns - 1) * GAP_PX) / columns));
  const having = all.filter(({result}) => kind !== "girder" || result.girder !== undefined);
  const structureIn = Math.max(...having.map(({result}) => structureOf(result)));
  const pictures = atOneScale(having.map(({entry, result}) => {
    const own = entry.pin === undefined;
    return {of: entry.design, paper: `${kind} ${cellPx} ${structureIn} ${own}`, draw: drawing(kind, result, {cellPx, structureIn, own})};
  }));
  const pictureOf = new Map(having.map(({entry}, i) => [entry, pictures[i] as SVGSVGElement]));
  const node = element("div", {class: "side-by-side"}, ...all.map(({entry, result}) => {
    const picture = pictureOf.get(entry);
    if (picture) nameFor(picture, entry);
    return element("div", {class: "side-cell"}, picture ?? element("p", {class: "side-none"}, "no girder: one bay across"),
      element("p", {class: "side-words"}, element("span", {class: "pin-letter"}, entry.letter || "Open"), " ", ...factsOf(kind, result, entry.pin === undefined)));
  }));
  node.style.setProperty("--side-columns", String(columns));
  node.style.setProperty("--side-cell", `${cellPx}px`);
  return node;
}

/** Results of a design; undefined where it can no longer be computed. */
function resultOf(design: Design, catalog: Catalog): Evaluation | undefined {
  try {
    return evaluate(design, catalog);
  } catch (problem) {
    if (problem instanceof InputError) return undefined;
    throw problem;
  }
}

/** Names a picture by its design as well, once; a pin that has another letter or name by now is named anew. */
function nameFor(picture: SVGSVGElement, {letter, name}: Entry): void {
  const what = (picture.dataset["drawn"] ??= picture.getAttribute("aria-label") ?? "");
  picture.setAttribute("aria-label", `${letter ? `Pinned design ${letter}, ${name}` : "The open design"}: ${what}`);
}

interface Place {
  readonly cellPx: number;
  readonly structureIn: number;
  readonly own: boolean;
}

function drawing(kind: SectionKind, result: Evaluation, {cellPx, structureIn, own}: Place): DrawAtMost {
  const {member, design, girder} = result;
  const sheet = {widthPx: cellPx, bare: cellPx < DIMENSIONED_FROM_PX};
  switch (kind) {
    case "deck": return (mostPxPerIn) => crossSection({...sheet, mostPxPerIn, shape: member.shape, strands: placedStrands(member.shape, member.layout, 0.5), toppingIn: design.deck.toppingIn, mostHeightPx: MOST_PX});
    case "story": return (mostPxPerIn) => storySection({...storyPicture(result), ...sheet, mostPxPerIn, own, insideIn: INSIDE_IN, structureIn, mostHeightPx: 2 * MOST_PX});
    case "edge beam": return (mostPxPerIn) => beamSection({...beamPicture(result), ...sheet, mostPxPerIn, mostHeightPx: MOST_PX});
    case "girder": return (mostPxPerIn) => girderSection({...girderPicture(result, girder as NonNullable<typeof girder>), ...sheet, mostPxPerIn, mostHeightPx: MOST_PX});
  }
}

/** Depth of all that lies below a finished floor, in. */
function structureOf({design, member, story}: Evaluation): number {
  return story.finishIn + design.deck.toppingIn + member.shape.depthIn + story.ledgeDepthIn;
}

/** Names of the number that each drawing is looked at for. */
function factsOf(kind: SectionKind, {design, member, story, edgeBeam, girder}: Evaluation, own: boolean): (string | Node)[] {
  const told = (name: Parameters<typeof figureOf>[0], lengthIn: number) => (own ? figureOf(name, feetAndInches(lengthIn)) : feetAndInches(lengthIn));
  switch (kind) {
    case "deck": return [`${toppedName(member.shape.designation, design.deck.toppingIn)}, ${feetAndInches(member.compression.depthIn)} deep${design.deck.toppingIn > 0 ? " in all" : ""}, spans `, told("span, in", 12 * design.bay.spanFt)];
    case "story": return [told("floor to floor, in", story.floorToFloorIn), ` from floor to floor, ${design.story.ceiling === "none" ? "clear height" : "ceiling"} `, told("ceiling, in", story.ceilingHeightIn)];
    case "edge beam": return [told("beam depth, in", edgeBeam.depthIn), ` deep, spans ${feetAndInches(12 * edgeBeam.spanFt)}`];
    case "girder": return girder ? [told("girder depth, in", girder.depthIn), " deep, ", told("girder below deck, in", girder.belowDeckIn), " of it below the deck"] : ["has no girder"];
  }
}
