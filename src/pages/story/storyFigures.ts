import {designedDepthBelowIn} from "../../lib/story/schemes.js";
import {schemeViews, type SchemeView} from "../../lib/daylight/schemeViews.js";
import {SEATED_EYE_IN} from "../../lib/daylight/view.js";
import type {Catalog} from "../../lib/catalog.js";
import type {Evaluation} from "../../lib/evaluate.js";
import {clearAtTopIn} from "../../lib/air/ductRoom.js";
import {GREATEST_VELOCITY_FPM, greatestFlowCfm} from "../../lib/air/ducts.js";
import {buildingEnvelope} from "../../lib/story/envelope.js";
import {leastFloorToFloor, type StoryStepIn} from "../../lib/story/solve.js";
import {decimals, feetAndInches, percent} from "../../lib/units.js";
import {seatedView} from "../../components/drawings/skyView.js";
import {stemsSection} from "./stemsSection.js";
import {storySection} from "../../components/drawings/storySection.js";
import {element} from "../../components/dom.js";
import {dataTable, figure} from "../../components/figure.js";
import {figureOf} from "../../components/quantity.js";
import {height, inches} from "../../components/shared/part.js";
import {said} from "../../components/shared/said.js";
import {servicePicture, storyPicture} from "../../components/shared/pictures.js";

/** The story cut through, with all that is in it. */
export function storyFigure(result: Evaluation, widthPx: number): HTMLElement {
  const {design, story, topping} = result;
  const thick = topping ? topping.points[0]?.thicknessIn ?? topping.leastIn : 0;
  const varies = topping && thick - topping.leastIn > 0.1
    ? ` The topping is drawn at its actual thickness, ${inches(topping.leastIn)} at the least and ${inches(thick)} over the supports; the heights count the minimum, and the ends of the deck are ${inches(thick - topping.leastIn)} lower.` : "";
  return figure(storySection({...storyPicture(result), widthPx, mostHeightPx: 600}), {
    title: said`${figureOf("ceiling, in", feetAndInches(story.ceilingHeightIn))} to ${design.story.ceiling === "none" ? "the deck" : "the ceiling"}, ${story.glassIn > 0 ? figureOf("glass, in", feetAndInches(story.glassIn)) : "nothing"} of glass`,
    caption: `A cut through the edge of the building, true to scale. The person is 5'-8" tall.${varies}`,
  });
}

/** The deck cut across its stems, with the ducts between and below. */
export function stemsFigure(result: Evaluation, widthPx: number): HTMLElement {
  const {design, member, services, story} = result;
  const {ducts} = services;
  const tee = member.shape.family === "double tee";
  const gapIn = tee && ducts ? clearAtTopIn(member.shape, "between stems", design.services.branchDepthIn) : undefined;
  const drawing = stemsSection({
    shape: member.shape, toppingIn: design.deck.toppingIn, finishIn: story.finishIn, roomIn: Math.max(0, services.roomIn), open: design.story.ceiling === "none",
    services: servicePicture(result), ...(gapIn === undefined ? {} : {gapIn}), widthPx,
  });
  return figure(drawing, {
    wide: true,
    title: !ducts ? "No air comes through ducts here"
      : tee ? `A branch runs between the stems of each tee; the main passes below all of them`
      : "A flat deck has no stems to hide a duct between: everything hangs below",
    caption: `The deck cut across${ducts?.mainPlace === "along the ledge" ? " along the ledge, where the main has its strip without pipes and lights" : ""}, true to scale.${tee && ducts ? " The clear width is what the stems, wider toward the flange, leave at the top of the branch, with an inch of air on either side." : ""}`,
  });
}

/** Ducts and what they leave, row by row. */
export function ductTable({services: {ducts}, member, design}: Evaluation): HTMLElement {
  if (!ducts) return element("p", {}, "No air is required, so there are no ducts to fit. Sprinkler pipes and lights keep their heights.");
  const tee = member.shape.family === "double tee";
  const row = (name: string, found: string | Node, limit: string) => [name, found, limit];
  const most = tee ? greatestFlowCfm(member.shape, "between stems", "branch") : 0;
  const [smallest] = ducts.result.fits;
  return dataTable({columns: ["Air", "Found", "Limit"], rows: [
    row(`flow in the main, ${decimals(design.services.airCfmPerFt2, 1)} cfm per ft\u00b2 for ${decimals(ducts.servedFt2)} ft\u00b2`, figureOf("duct flow, cfm", `${decimals(ducts.flowCfm)} cfm`), ""),
    row(`mains that the whole floor takes, ${decimals(ducts.floorFt2)} ft\u00b2 in all`, decimals(ducts.mains), ""),
    row("velocity in the main", figureOf("duct velocity, ft/min", `${decimals(ducts.result.mainVelocityFpm)} ft/min`), `at most ${decimals(GREATEST_VELOCITY_FPM.main)} ft/min`),
    row(`velocity in each of ${ducts.branches} ${ducts.branches === 1 ? "branch" : "branches"}`, `${decimals(ducts.result.branchVelocityFpm)} ft/min`, `at most ${decimals(GREATEST_VELOCITY_FPM.branch)} ft/min`),
    ...(tee ? [row("through the room between two stems", `${decimals(ducts.branchFlowCfm)} cfm`, `at most ${decimals(most)} cfm`)] : []),
    ...(tee && smallest?.size.kind === "rectangular" && ducts.branch.kind === "rectangular" ? [row("inside size of a branch, and the smallest that is quiet", `${decimals(ducts.branch.widthIn)} \u00d7 ${decimals(ducts.branch.depthIn)} in`, `${smallest.size.widthIn} \u00d7 ${smallest.size.depthIn} in would do`)] : []),
    row("floor that this main serves", `${decimals(ducts.servedFt2)} ft\u00b2`, `at most ${decimals(ducts.quietFt2)} ft\u00b2`),
  ]});
}

/** Where the main runs, in a sentence. */
export function mainSentence({services: {ducts, roomIn, pipesUnderIn, sprinklerIn}, story, design}: Evaluation): string {
  if (!ducts) return "";
  if (ducts.casing) return ducts.casing.dropIn > 0 ? `The main runs ${ducts.mainPlace} in a ${ducts.casing.kind} that hangs ${inches(ducts.casing.dropIn)} below ${design.story.ceiling === "none" ? "the deck" : "the ceiling"}.${sprinklerIn > 0 && pipesUnderIn !== undefined && pipesUnderIn < story.clearUnderDeckIn - sprinklerIn - 1e-9 ? ` The sprinkler pipes pass under it, ${height(pipesUnderIn)} above the floor.` : ""}` : `The main runs ${ducts.mainPlace}, and the plenum is deep enough for it.`;
  if (ducts.mainPlace === "down the middle" || ducts.mainPlace === "across the floor") return `The main runs ${ducts.mainPlace}: with its hangers it is ${inches(ducts.hungIn)} high where there is room for ${inches(Math.max(0, roomIn))}${ducts.stackedIn <= roomIn + 1e-9 ? ", pipes and lights under it included" : "; pipes and lights keep out of its way"}.`;
  if (ducts.mainPlace === "below the deck") return `Hangers, main, pipes and lights together are ${inches(ducts.stackedIn)} high, and there is room for ${inches(roomIn)}: the main may cross the room anywhere.`;
  const over = `Hangers, main, pipes and lights together are ${inches(ducts.stackedIn)} high where there is room for ${inches(Math.max(0, roomIn))}, so the main keeps to the strip along the ledge, which has neither pipes nor lights.`;
  return ducts.hungIn > roomIn + 1e-9 ? `${over} Even there it is ${inches(ducts.hungIn - roomIn)} too deep.` : `${over} There it ${design.story.ceiling === "none" ? "leaves headroom" : "fits"}, with its hangers ${inches(ducts.hungIn)} high.`;
}

/** Both ways to carry the edge, side by side at one scale. */
export function schemesFigure(result: Evaluation, catalog: Catalog, distanceIn: number, widthPx: number): HTMLElement {
  const pair = schemesOf(result, catalog, distanceIn);
  const side = widthPx >= 640;
  const each = side ? Math.floor((widthPx - 24) / 2) : widthPx;
  const structureIn = Math.max(...pair.map(({scheme}) => scheme.belowDeckIn)) + result.story.finishIn + result.story.deckDepthIn;
  const drawn = pair.map((seen) => element("div", {class: "scheme"},
    element("p", {class: "scheme-name"}, seen.scheme.kind === "beside the deck" ? "Beam beside the deck, which rests on its ledge" : "Beam entirely under the deck"),
    schemeDrawing(result, seen, each, structureIn)));
  const [beside, below] = pair;
  const lostIn = beside.scheme.stack.headIn - below.scheme.stack.headIn;
  return figure(element("div", {class: side ? "schemes is-pair" : "schemes"}, ...drawn), {
    wide: true,
    title: lostIn > 0 ? `Under the deck, the beam lowers the head of the window by ${feetAndInches(lostIn)} and takes ${decimals(beside.eye.skyDeg - below.eye.skyDeg)}\u00b0 of sky from a seated eye` : "Here the beam under the deck hangs no lower than the ledge",
    caption: `Both at one scale, with the same sill, deck and story. The eye is ${feetAndInches(SEATED_EYE_IN)} above the floor and ${feetAndInches(distanceIn)} inside the wall; tinted: the view, and within it the sky above the skyline.`,
  });
}

/** The same in numbers. */
export function schemesTable(pair: readonly SchemeView[]): HTMLElement {
  const row = (name: string, read: (one: SchemeView) => string) => [name, ...pair.map(read)];
  return element("div", {class: "scrolls unbroken", tabindex: 0, role: "region", "aria-label": "Two ways to carry the edge, in numbers"}, dataTable({columns: ["", "Beside the deck", "Under the deck"], rows: [
    row("depth of the beam", ({scheme}) => feetAndInches(scheme.beamDepthIn)),
    row("of it below the deck", ({scheme}) => feetAndInches(scheme.belowDeckIn)),
    row("window head above the floor", ({scheme}) => height(scheme.stack.headIn)),
    row("ceiling at the window", ({scheme}) => height(scheme.stack.ceilingHeightIn)),
    row("glass", ({scheme}) => feetAndInches(Math.max(0, scheme.stack.glassIn))),
    row("view from the eye", ({eye}) => `${decimals(eye.viewDeg, 1)}\u00b0`),
    row("sky in it", ({eye}) => `${decimals(eye.skyDeg, 1)}\u00b0`),
    row("sky seen from a desk there", ({desk}) => `${decimals(desk.skyDeg, 1)}\u00b0`),
    row("floor-to-floor height for the same head", ({scheme}) => feetAndInches(scheme.sameHeadFloorToFloorIn)),
  ]}));
}

/** Both schemes of a design; the beam below has the depth that its own design gives. */
export function schemesOf(result: Evaluation, catalog: Catalog, distanceIn: number): readonly [SchemeView, SchemeView] {
  return schemeViews(result.design, result.member.compression.depthIn, distanceIn, designedDepthBelowIn(result, catalog));
}

/** How far outside the wall the view is drawn, in. */
const SEEN_OUTSIDE_IN = 44;

function schemeDrawing(result: Evaluation, {scheme, eye, distanceIn}: SchemeView, widthPx: number, structureIn: number): SVGSVGElement {
  const {design} = result;
  const {stack} = scheme;
  const picture = storyPicture(result);
  const {services: _services, parts: _parts, ...plain} = picture;
  const {webWidthIn} = design.edgeBeam;
  return storySection({
    ...plain, own: false, widthPx, mostHeightPx: 400, structureIn, outsideIn: SEEN_OUTSIDE_IN, insideIn: Math.max(140, distanceIn + 62), furnished: false, standing: false, dimensioned: widthPx > 420,
    beamKind: scheme.kind === "under the deck" ? "below" : design.edgeBeam.kind === "below" ? "ledge" : design.edgeBeam.kind,
    ledgeDepthIn: scheme.belowDeckIn, ceilingHeightIn: stack.ceilingHeightIn,
    glass: {sillIn: stack.glassSillIn, headIn: Math.max(stack.glassSillIn, stack.glassHeadIn)},
    opening: {sillIn: stack.sillIn, headIn: Math.max(stack.sillIn, stack.headIn)},
    label: `The beam ${scheme.kind}: view of ${decimals(eye.viewDeg)} degrees, ${decimals(eye.skyDeg)} of them sky`,
    ...seatedView(eye, {x: webWidthIn + distanceIn, y: SEATED_EYE_IN}, -SEEN_OUTSIDE_IN),
  });
}

/** The least stories for a wanted ceiling, for every way to hang it. */
export function solvedTable(result: Evaluation, wantedIn: number, stepIn: StoryStepIn): HTMLElement {
  const {design, member, story} = result;
  const ways = {flush: "flush with the ledge", below: `${inches(design.story.ceilingDropIn)} below the ledge`, head: "at the window's head", none: "none: the deck itself"} as const;
  return dataTable({columns: ["Ceiling", "Least floor-to-floor height", "Ceiling then"], rows: (Object.keys(ways) as (keyof typeof ways)[]).map((ceiling) => {
    const {floorToFloorIn, ceilingHeightIn} = leastFloorToFloor({...design, story: {...design.story, ceiling}}, member.compression.depthIn, wantedIn, stepIn, story.ledgeDepthIn);
    return [`${ways[ceiling]}${ceiling === design.story.ceiling ? ", as now" : ""}`, feetAndInches(floorToFloorIn), feetAndInches(ceilingHeightIn)];
  })});
}

/** Height, wall and volume of the building. */
export function envelopeTable({design, story}: Evaluation, stories: number): HTMLElement {
  const one = buildingEnvelope(design, story, stories);
  return dataTable({columns: ["The building", ""], rows: [
    ["length and width", `${decimals(one.lengthFt)} \u00d7 ${decimals(one.widthFt)} ft`],
    ["height, lowest floor to roof", `${feetAndInches(one.heightFt * 12)} in ${one.stories} ${one.stories === 1 ? "story" : "stories"}`],
    ["floor", `${decimals(one.floorFt2)} ft\u00b2`],
    ["wall", `${decimals(one.wallFt2)} ft\u00b2, ${decimals(one.wallPerFloor, 2)} ft\u00b2 per ft\u00b2 of floor`],
    ...(one.parapetFt2 > 0 ? [["of it parapet", `${decimals(one.parapetFt2)} ft\u00b2`]] : []),
    ["glass in it", percent(one.glassShare)],
    ["volume", `${decimals(one.volumeFt3)} ft\u00b3, ${decimals(one.volumePerFloorFt, 1)} ft\u00b3 per ft\u00b2 of floor`],
    ["one inch of story adds", `${decimals(one.wallPerInchFt2)} ft\u00b2 of wall`],
  ]});
}
