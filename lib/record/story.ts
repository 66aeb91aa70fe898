import type {AirResult} from "../air/result.js";
import type {DaylightResult} from "../daylight/daylight.js";
import {sharePercents} from "../daylight/shares.js";
import type {Design} from "../design/design.js";
import {reasonState} from "../design/reasons.js";
import type {Evaluation} from "../evaluate.js";
import {buildingEnvelope} from "../story/envelope.js";
import {shown, sentence, type Sentence} from "../sentence.js";
import {decimals, feetAndInches, percent} from "../units.js";
import {checksOf} from "./checkGroups.js";
import {NO_TABLES, type Fact, type RecordSection} from "./parts.js";

const fact = (label: string, value: Sentence): Fact => ({label, value});

/** The record's section on the story, its ducts, and what the building encloses. */
export function storySection({design, story, services, walls, endStrip, air}: Evaluation): RecordSection {
  const {ducts} = services;
  const around = buildingEnvelope(design, story);
  return {
    id: "story", title: "Story",
    decision: sentence`${shown("floor to floor, in", feetAndInches(story.floorToFloorIn))} floor to floor leaves ${shown("ceiling, in", feetAndInches(story.ceilingHeightIn))} ${design.story.ceiling === "none" ? "under the deck" : "under the ceiling"} and ${story.glassIn > 0 ? shown("glass, in", feetAndInches(story.glassIn)) : "nothing"} of glass.`,
    facts: [
      fact("Deck and topping", feetAndInches(story.deckDepthIn)),
      fact("Edge beam below the deck", feetAndInches(story.ledgeDepthIn)),
      fact("Plenum", story.plenumIn > 0 ? feetAndInches(story.plenumIn) : "none"),
      fact("Sill and head of the window", sentence`${shown("sill, in", feetAndInches(story.sillIn))} and ${shown("head, in", feetAndInches(story.headIn))} above the finished floor, frames of ${feetAndInches(story.frameIn)} within`),
      ...(ducts ? [
        fact("Main duct", sentence`${decimals(design.services.mainWidthIn)} by ${decimals(design.services.mainDepthIn)} in, ${ducts.mainPlace}, ${shown("duct velocity, ft/min", `${decimals(ducts.result.mainVelocityFpm)} ft/min`)} with ${shown("duct flow, cfm", `${decimals(ducts.flowCfm)} cfm`)} for ${decimals(ducts.servedFt2)} ft\u00b2; ${ducts.mains === 1 ? "it serves the whole floor" : `the floor takes ${decimals(ducts.mains)} such mains`}`),
        fact("Branches", `${ducts.branches} from a main, each ${decimals(design.services.branchWidthIn)} by ${decimals(design.services.branchDepthIn)} in, ${ducts.branchesBetweenStems ? "between the stems" : "below the deck"}`),
      ] : [fact("Ducts", "none: no air is required")]),
      ...(air ? [fact("Return", returnWords(air, design))] : []),
      fact("Building", `${decimals(around.lengthFt)} by ${decimals(around.widthFt)} ft, ${decimals(around.stories)} ${around.stories === 1 ? "story" : "stories"}, ${feetAndInches(12 * around.heightFt)} from the lowest floor to the roof`),
      fact("Outer wall", `${decimals(around.wallFt2)} ft\u00b2, of which ${percent(around.glassShare)} is glass: ${decimals(around.wallPerFloor, 2)} ft\u00b2 per ft\u00b2 of floor`),
      ...wallFacts(walls),
      fact("Roof", `${decimals(around.roofFt2)} ft\u00b2`),
    ],
    ...NO_TABLES, checks: checksOf("Story", [...story.checks, ...services.checks, ...air?.checks ?? [], ...walls.checks, ...endStrip?.checks ?? []]), reason: reasonState(design, "story"),
  };
}

/** What closes the short sides, and the parapet. */
function wallFacts({panels, spandrel, weights, footing, planes, counted}: Evaluation["walls"]): Fact[] {
  const parapet = planes.parapetIn > 0 ? [fact("Parapet", `${feetAndInches(planes.parapetIn)} above the roof; on the long sides' beams ${feetAndInches(planes.parapetAddedIn)} are built`)] : [];
  if (!counted) return parapet;
  const wall = panels
    ? `${panels.count} panels a side, ${feetAndInches(panels.thicknessIn)} thick, up to ${feetAndInches(panels.heaviest.widthIn)} by ${feetAndInches(panels.heaviest.heightIn)} and ${decimals(panels.heaviest.weightKip, 1)} kip; ${footing ? `${decimals(footing.plf)} plf on a strip footing ${feetAndInches(footing.widthIn)} wide` : `${decimals(weights.floorPlf)} plf on the columns at each floor`}`
    : spandrel ? `spandrels ${feetAndInches(spandrel.depthIn)} deep and ${feetAndInches(spandrel.thicknessIn)} thick, up to ${feetAndInches(spandrel.lengthIn)}${spandrel.pieces > 1 ? ` in ${spandrel.pieces} pieces a bay on posts, which are not designed,` : ""} and ${decimals(spandrel.weightKip, 1)} kip; ${decimals(weights.floorPlf)} plf with their windows`
    : `light cladding, ${decimals(weights.floorPlf)} plf on the columns at each floor`;
  return [fact("Short sides", `${wall}; wind is not designed`), ...parapet];
}

/** How the air goes back, and under what box the main hangs. */
function returnWords({plan, back, ducts: {casing}}: AirResult, {air}: Design): string {
  const box = casing && casing.dropIn > 0 ? `; the main hangs in a ${casing.kind} ${decimals(casing.widthIn)} in wide and ${decimals(casing.dropIn, casing.dropIn % 1 ? 1 : 0)} in deep` : "";
  const comes = `${decimals(plan.returnCfm)} cfm of ${decimals(plan.flowCfm)}`;
  const duct = back ? `in a duct of ${decimals(back.widthIn)} by ${decimals(back.depthIn, back.depthIn % 1 ? 1 : 0)} in inside` : "";
  const ways = {
    none: "not shown", trunk: `${comes} ${duct}`, stems: `${comes} through ${decimals(plan.returns.length)} spaces between stems, ${duct}`,
    plenum: `${comes} through the plenum`, rooms: `${comes} through the rooms`,
  } as const;
  return `${ways[air.way]}${box}`;
}

/** The record's section on daylight. */
export function lightSection({design, daylight, story}: Evaluation): RecordSection {
  const base = {id: "light", title: "Daylight", ...NO_TABLES, reason: reasonState(design, "light")} as const;
  if (!daylight) return {...base, decision: "No glass, and so no daylight.", facts: [], checks: []};
  const {input, result, wanted} = daylight;
  const {good, partial, little, dark, daylit} = sharePercents(result.shares);
  return {
    ...base,
    decision: sentence`Windows on ${design.daylight.sides === "two" ? "both long sides" : "one long side"} give ${shown("daylit, %", `${daylit}\u00a0%`)} of the floor's depth a daylight factor of 2 % or more; the average is ${shown("average daylight, %", `${decimals(result.average.averagePercent, 1)} %`)}.${wanted ? "" : " No one works there, so nothing is required of it."}`,
    facts: [
      fact("Glass", sentence`${shown("glass, in", feetAndInches(story.glassIn))} high, lets ${percent(input.window.transmittanceShare)} through; frames take ${percent(input.window.frameShare)}`),
      fact("Depth of the room", `${decimals(input.depthFt)} ft`),
      fact("Good, partial, little, dark", `${good}, ${partial}, ${little} and ${dark}\u00a0% of the depth`),
      fact("Least daylight factor", [shown("least daylight, %", `${decimals(result.leastPercent, 1)} %`)]),
      fact("No-sky line", noSkyWords(result, design.daylight.obstructionDeg)),
    ],
    checks: checksOf("Daylight", daylight.checks),
  };
}

/** Where the no-sky line lies; one that would fall behind the back wall, or in front of the glass, is no place in the room. */
function noSkyWords({noSkyFt, skySeenShare}: DaylightResult, skylineDeg: number): string {
  if (noSkyFt === undefined || skySeenShare >= 1) return "none: sky is seen from everywhere";
  return noSkyFt <= 0 ? "none: sky is seen from nowhere" : `${decimals(noSkyFt)} ft from a window, under a skyline of ${decimals(skylineDeg)} degrees`;
}
