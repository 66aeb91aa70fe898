import {feederForRate, mainForRate, straightLossIn} from "../../lib/air/air.js";
import {airParts, structureParts, type AirModel} from "../../lib/air/parts.js";
import {mainCosts, type MainCost} from "../../lib/air/costs.js";
import {GREATEST_VELOCITY_FPM} from "../../lib/air/ducts.js";
import {NOISE_WORDS} from "../../lib/air/noise.js";
import type {DrawnDuct} from "../../lib/air/result.js";
import type {SizedDuct} from "../../lib/air/sizing.js";
import {TRANSFER_FPM} from "../../lib/air/wayBack.js";
import {otherMains} from "../../lib/air/zone.js";
import {boxDaylight} from "../../lib/daylight/boxDaylight.js";
import type {Evaluation} from "../../lib/evaluate.js";
import {decimals, feetAndInches} from "../../lib/units.js";
import {element} from "../../components/dom.js";
import {dataTable, figure} from "../../components/figure.js";
import {live} from "../../components/live.js";
import {quantity} from "../../components/quantity.js";
import {height, inches, part} from "../../components/shared/part.js";
import {said} from "../../components/shared/said.js";
import {floorPlan} from "./floorPlan.js";
import type {KeyRow} from "./airMarks.js";
import {sectionAcross, sectionAlong, type AirSectionOptions} from "./sections.js";

/** What the drawings of a design's air need; undefined where it has none. */
function modelOf({design, member, story, air}: Evaluation): AirModel | undefined {
  return air && {design, shape: member.shape, story, air};
}

function keyOf({air, design}: Evaluation): KeyRow[] {
  const back = design.air.way;
  return [
    {words: "supply", part: "main", mark: "supply"}, {words: "feeder", part: "branch", mark: "supply"},
    ...(back === "none" ? [] : [{words: back === "trunk" || back === "stems" ? "return" : "return riser", part: back === "trunk" || back === "stems" ? "return-main" : "return-riser", mark: "return"} as const]),
    ...(back === "stems" && (air?.plan.returns.length ?? 0) > 0 ? [{words: "open space for the return", part: "return-branch", mark: "space"} as const] : []),
  ];
}

/** The floor from above. */
export function planFigure(result: Evaluation, widthPx: number): HTMLElement {
  const model = modelOf(result);
  if (!model) return element("span", {});
  const {plan, ducts} = model.air;
  const key: KeyRow[] = [...keyOf(result), {words: "served by this main", mark: "zone"}, ...(ducts.mains > 1 ? [{words: "another main", mark: "other"} as const] : [])];
  const drawing = floorPlan({plan, parts: airParts(model), others: ducts.mains > 1 ? otherMains(result.design, plan.zone) : [], memberWidthFt: result.member.widthFt, key, widthPx});
  return figure(drawing, {
    wide: true,
    title: `${ducts.mains === 1 ? "One main serves" : `${decimals(ducts.mains)} mains serve`} the floor, ${plan.supply.length} ${plan.supply.length === 1 ? "feeder leaves" : "feeders leave"} each`,
    caption: "One floor from above, true to scale. Supply is tinted, return hatched; a riser has both diagonals where it brings air, one where it takes it away.",
  });
}

function sectionOptions(result: Evaluation, model: AirModel, widthPx: number): AirSectionOptions {
  const {design, member, story, services} = result;
  const {plan} = model.air;
  return {
    plan, parts: airParts(model), structure: structureParts(model), shape: member.shape, casing: services.ducts?.casing, widthPx, key: keyOf(result),
    ceilingIn: design.story.ceiling === "none" ? undefined : story.ceilingHeightIn,
    soffitIn: story.clearUnderDeckIn, topIn: story.floorToFloorIn - story.finishIn, floorToFloorIn: story.floorToFloorIn,
    ductsLowIn: story.clearUnderDeckIn - model.air.ducts.hungIn,
  };
}

/** The story cut across the building. */
export function acrossFigure(result: Evaluation, widthPx: number): HTMLElement {
  const model = modelOf(result);
  if (!model) return element("span", {});
  return figure(sectionAcross(sectionOptions(result, model, widthPx)), {
    wide: true, title: heightTitle(result),
    caption: `A cut across the building through a feeder, true to scale.${model.shape.family === "double tee" ? " The flange is cut; the stem beyond it is lighter." : ""}`,
  });
}

/** The story cut along the building. */
export function alongFigure(result: Evaluation, widthPx: number): HTMLElement {
  const model = modelOf(result);
  if (!model) return element("span", {});
  const tee = model.shape.family === "double tee";
  return figure(sectionAlong(sectionOptions(result, model, widthPx)), {
    wide: true, title: tee ? "Feeders take the spaces between stems; the main passes under them all" : "A flat deck has no spaces to offer: everything hangs below it",
    caption: "A cut along the building beside the main, true to scale: what is cut has diagonals, what is seen from its side has none.",
  });
}

function heightTitle({design, services, story}: Evaluation): string {
  const casing = services.ducts?.casing;
  if (casing && casing.dropIn > 0) return `${feetAndInches(casing.footIn)} under the ${casing.kind}, ${feetAndInches(story.ceilingHeightIn)} beside it`;
  return design.story.ceiling === "none" ? `${feetAndInches(story.clearUnderDeckIn - (services.ducts?.hungIn ?? 0))} under the ducts` : `${feetAndInches(story.ceilingHeightIn)} under the whole ceiling`;
}

/** Air, size, velocity, friction and noise of each duct. */
export function ductsTable({air, design}: Evaluation): HTMLElement {
  if (!air) return element("span", {});
  const {plan} = air;
  const row = (name: string, of: string, {flowCfm, widthIn, depthIn, velocityFpm, friction, noise}: DrawnDuct, mostFpm: number, rate: string) => [
    part(of, element("span", {tabindex: 0}, name)), `${decimals(flowCfm)} cfm`, `${decimals(widthIn, widthIn % 1 ? 1 : 0)} × ${decimals(depthIn, depthIn % 1 ? 1 : 0)} in`,
    `${decimals(velocityFpm)} of ${decimals(mostFpm)} ft/min`, `${decimals(friction.inPer100Ft, 3)} in`, noise, rate,
  ];
  const size = ({size: {widthIn, depthIn}}: SizedDuct) => `${decimals(widthIn)} × ${decimals(depthIn, depthIn % 1 ? 1 : 0)} in`;
  return element("div", {class: "scrolls unbroken throughout", tabindex: 0, role: "region", "aria-label": "Ducts, their air and their friction"}, dataTable({
    columns: ["Duct", "Most air", "Inside", "Velocity", "Friction in 100 ft", "Noise", `Inside for ${decimals(air.rateIn, 2)} in`],
    rows: [
      row("main", "main", air.main, GREATEST_VELOCITY_FPM.main, size(mainForRate(air))),
      row(plan.supply.length === 1 ? "the feeder" : `feeder, one of ${plan.supply.length * plan.sides.length}`, "branch", air.feeder, GREATEST_VELOCITY_FPM.branch, size(feederForRate(air))),
      ...(air.back ? [row("return duct", "return-main", air.back, GREATEST_VELOCITY_FPM.main, "found for it")] : []),
      ...(air.backFeeder ? [[part("return-branch", element("span", {tabindex: 0}, `return feeder, one of ${plan.returns.length * plan.sides.length}`)), `${decimals(air.backFeeder.flowCfm)} cfm`, size(air.backFeeder), `${decimals(air.backFeeder.velocityFpm)} of ${decimals(GREATEST_VELOCITY_FPM.branch)} ft/min`, `${decimals(air.backFeeder.friction.inPer100Ft, 3)} in`, "", "found for it"]] : []),
      ...plan.risers.slice(0, 1).flatMap(({supply, back}) => [
        [part("riser", element("span", {tabindex: 0}, plan.risers.length === 1 ? "riser" : "each riser")), `${decimals(supply.flowCfm)} cfm`, `${decimals(supply.size.depthIn, supply.size.depthIn % 1 ? 1 : 0)} × ${decimals(supply.size.widthIn)} in`, `${decimals(supply.velocityFpm)} of ${decimals(GREATEST_VELOCITY_FPM.main)} ft/min`, `${decimals(supply.friction.inPer100Ft, 3)} in`, "", "found for it"],
        ...(back ? [[part("return-riser", element("span", {tabindex: 0}, "return riser")), `${decimals(back.flowCfm)} cfm`, `${decimals(back.size.depthIn)} × ${decimals(back.size.widthIn)} in`, `${decimals(back.velocityFpm)} of ${decimals(GREATEST_VELOCITY_FPM.main)} ft/min`, `${decimals(back.friction.inPer100Ft, 3)} in`, "", "found for it"]] : []),
      ]),
    ],
  }), design.air.frictionInPer100Ft > 0 ? "" : element("p", {class: "after-table"}, "This design asks for no friction rate, so velocities alone are checked; the last column is for the usual one."));
}

/** Where the main lies and how it meets the frame. */
export function placeSentence({air, design, member}: Evaluation): HTMLElement {
  if (!air) return element("span", {});
  const {trunk, crossings, supply} = air.plan;
  const tee = member.shape.family === "double tee";
  const moved = trunk.movedIn > 0.5 && design.air.place !== "fit" ? ` A beam is in the way there, so it lies ${inches(Math.round(trunk.movedIn))} beside it.` : "";
  const stems = tee ? "It hangs below the stems and crosses none; the feeders lie above their soffits." : `Planks offer no spaces between stems: the feeders hang below them, one in every strip, and need as much height as the main.`;
  const [crossing] = crossings;
  const past = !crossing ? "No feeder has to pass a girder."
    : crossing.how === "over the girder" ? "The feeders pass over the girder, on which the deck sits."
    : crossing.how === "under the girder" ? `The feeders dip under the girder, where ${inches(Math.max(0, crossing.underIn))} are left to them.`
    : `Between girder and ceiling ${crossing.underIn > 0 ? `only ${inches(crossing.underIn)} are` : "nothing is"} left, so each feeder passes the girder's web through an opening, which the engineer must allow.`;
  return said`The ${part("main", live("main"))} lies ${part("main", live(feetAndInches(trunk.y0In)))} from the first edge's line of bearings, with ${supply.length === 1 ? "one feeder" : `${supply.length} feeders`}.${moved} ${stems} ${past}`;
}

/** How fast, how loud, how much pressure. */
export function soundSentence({air}: Evaluation): HTMLElement {
  if (!air) return element("span", {});
  const {main} = air;
  return said`Air rushes through the main at ${live(`${decimals(main.velocityFpm)} ft/min`)} at most: ${main.noise === "louder than RC 45" ? "louder than any of the usual classes" : `noise class ${main.noise}`}, ${NOISE_WORDS[main.noise]}. From a riser to the last feeder's end the straight ducts take ${live(`${decimals(straightLossIn(air), 2)} in`)} of water; elbows, take-offs and dampers often double that.`;
}

/** How the air goes back. */
export function backSentence({air, design}: Evaluation): HTMLElement {
  if (!air) return element("span", {});
  const {plan, wayBack, back} = air;
  if (design.air.way === "none") return said`This design does not say how the air goes back. What goes in must come back all the same: choose a way.`;
  const share = design.air.exhaustPercent > 0 ? `, ${decimals(design.air.exhaustPercent)} % less than goes in, which toilets and kitchens exhaust` : ", as much as goes in";
  const comes = said`${live(`${decimals(plan.returnCfm)} cfm`)} come back${share}.`;
  switch (design.air.way) {
    case "trunk": return said`${comes} ${plan.returns.length > 0 ? `${plan.returns.length} return feeders bring them to the return duct` : "Grilles in the return duct take them from the room"}${back ? said`, which is ${part("return-main", live(`${decimals(back.widthIn)} × ${decimals(back.depthIn, back.depthIn % 1 ? 1 : 0)} in`))} inside` : ""}.`;
    case "stems": return said`${comes} They drift through ${decimals(plan.returns.length)} open spaces between stems to the return duct${wayBack?.velocityFpm === undefined ? "" : said`, at ${live(`${decimals(wayBack.velocityFpm)} ft/min`)}`}. A girder's web closes such a space, and so does a wall built up to the flange.`;
    case "plenum": return said`${comes} ${wayBack?.velocityFpm === undefined ? "No plenum is left to them." : said`The plenum has ${live(`${decimals(wayBack.freeFt2 ?? 0, 1)} ft²`)} free for them, and they drift at ${live(`${decimals(wayBack.velocityFpm)} ft/min`)}.`} Whatever else lies in a plenum that carries air must not burn or smoke (IMC 602; from memory).`;
    case "rooms": return said`${comes} They find their way through the rooms to the riser. Corridors may not serve as return ducts, with few exceptions (IMC 601.2), and every opening in a wall lets sound through.`;
  }
}

/** Openings through the walls in the return's way. */
export function openingsTable({air}: Evaluation): HTMLElement {
  const openings = air?.wayBack?.openings ?? [];
  if (openings.length === 0) return element("span", {});
  return dataTable({columns: ["Wall", "Air through it", `Free area at ${TRANSFER_FPM} ft/min`, "For instance, free openings of 24 × 12 in"], rows: openings.map(({wall, flowCfm, freeFt2, openings: count}) => [String(wall), `${decimals(flowCfm)} cfm`, `${decimals(freeFt2, 1)} ft²`, decimals(count)])});
}

/** What a box or strip does to the light. */
export function lightSentence(result: Evaluation): HTMLElement {
  const casing = result.services.ducts?.casing;
  if (!casing || casing.dropIn <= 0) return said`${casing ? "The plenum is deep enough: nothing has to hang lower than the ceiling." : "The ducts stay above the ceiling, or where there is none above people's heads, and take nothing from the windows that the ceiling has not taken."}`;
  const light = boxDaylight(result.design, result.story, result.daylight, result.girder);
  if (!light) return said`There is no glass for the ${casing.kind} to shade.`;
  const takes = light.withoutPercent - light.withPercent;
  return said`The ${part("casing", live(casing.kind))} hangs ${live(inches(casing.dropIn))} below ${result.design.story.ceiling === "none" ? "the deck" : "the ceiling"}. ${takes < 0.005 ? "It takes nothing that matters from the daylight: it hangs higher than the head of the glass, or far from it." : said`It takes the average daylight factor from ${live(`${decimals(light.withoutPercent, 2)} %`)} to ${quantity("average daylight, %", live(`${decimals(light.withPercent, 1)} %`))}.`} ${light.headSeenIn < result.story.glassHeadIn - 0.5 ? said`To a person who sits 10 ft from the window it hides the glass above ${live(height(light.headSeenIn))}.` : ""}`;
}

/** What each depth of main costs. */
export function costsTable(result: Evaluation): HTMLElement {
  const rows = costsOf(result);
  const {design, services} = result;
  const casing = services.ducts?.casing;
  return element("div", {class: "scrolls unbroken throughout", tabindex: 0, role: "region", "aria-label": "What each inch of main costs"}, dataTable({
    columns: ["Main, depth", "width for its air", "below the deck", casing ? `under the ${casing.kind}` : design.story.ceiling === "none" ? "under the main" : "ceiling", "story for today's height", "wall of the building"],
    rows: rows.map(({depthIn, widthIn, tooFlat, takenIn, underIn, floorToFloorIn, wallFt2}) => [
      `${decimals(depthIn, depthIn % 1 ? 1 : 0)} in${depthIn === design.services.mainDepthIn ? ", open now" : ""}`, `${decimals(widthIn)} in${tooFlat ? ", too flat or too tall" : ""}`,
      `${decimals(takenIn, takenIn % 1 ? 2 : 0)} in`, feetAndInches(underIn), feetAndInches(floorToFloorIn), `${decimals(wallFt2)} ft²`,
    ]),
  }));
}

/** The same as rows; none where no air comes through ducts. */
export function costsOf(result: Evaluation): MainCost[] {
  const model = modelOf(result);
  return model ? mainCosts({...model, services: result.services}) : [];
}
