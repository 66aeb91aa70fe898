import {deckName} from "../deck/deckName.js";
import type {Design, ReasonName} from "../design/design.js";
import {REASON_NAMES, choiceOf} from "../design/reasons.js";
import {decimals, feetAndInches, inches} from "../units.js";
import {DECK_KINDS, STORY_STEP_IN} from "./brief.js";
import {roofWords} from "./roofRule.js";
import type {Scheme} from "./scheme.js";

/** What each rule chose in a scheme and why, decision by decision, in the rule's words. */
export function ruleWords({choices, design, floor, found}: Scheme): Partial<Record<ReasonName, string>> {
  const {bay, deck, girder, story, services} = design;
  const {works, passedOver} = found.deck;
  const carries = works ? `it carries ${decimals(floor.deck.safe.safeLoadPsf)} psf where ${decimals(floor.deck.demandPsf)} are required` : "none of the kind does all that is required, and it comes nearest";
  const over = passedOver.length > 0 ? ` Passed over, as more of their checks fail, a stem would stand off its beam, or the deck's edge would reach too far: ${passedOver.join(", ")}.` : "";
  return {
    deck: `By rule: of the ${DECK_KINDS[choices.kind]}${choices.member ? ` the ${choices.member}` : ""}, ${deckName(deck.member, deck.toppingIn, deck.pattern)} is the best by the brief's preferences for a span of ${feet(bay.spanFt)}; ${carries}. The concrete is released at ${decimals(deck.releaseStrengthPsi)} psi, the least of those tried at which nothing of it fails.${over}`,
    edgeBeam: edgeWords(design, found),
    ...(found.girder ? {frame: `By rule: the girder is the shallowest with which everything of it holds: ${girder.kind === "rectangle" ? `a rectangle ${inch(girder.depthIn)} deep` : `an inverted tee with ledges ${inch(girder.ledgeDepthIn)} deep`}, its web ${inch(girder.webWidthIn)} wide, with ${girder.strands} strands, the fewest that do.${stopped(found.girder.depthStops())} Beams are cut to clear columns of ${inch(design.column.sideIn)}. ${roofWords(design)}`} : {frame: `By rule: one bay across needs no girder; the edge beams are cut to clear columns of ${inch(design.column.sideIn)}. ${roofWords(design)}`}),
    story: story.ceiling === "none"
      ? `By rule: ${feet(story.floorToFloorFt)} from floor to floor is the least, in steps of ${STORY_STEP_IN} in, that leaves the wanted height clear under all that hangs.${raisedWords(found.story)}${wayBackWords(found.story)}`
      : `By rule: ${feet(story.floorToFloorFt)} from floor to floor is the least, in steps of ${STORY_STEP_IN} in, that leaves the wanted ceiling. Of all that lies above the ceiling the ${found.story.plenumBy ?? "edge beam"} needs the most height, so the ceiling hangs ${story.ceiling === "flush" ? "flush with the edge beam's underside" : `${inch(story.ceilingDropIn)} below the edge beam`}.`
        + raisedWords(found.story)
        + (found.story.mains > 0 ? ` ${found.story.mains === 1 ? "One main" : `${found.story.mains} mains`} of ${inch(services.mainWidthIn)} by ${inch(services.mainDepthIn)} ${found.story.mains === 1 ? "brings" : "bring"} the air, no flatter than 4 to 1 and, of those tried, the first whose risers and return find their room.` : "")
        + wayBackWords(found.story),
  };
}

function raisedWords({raisedIn}: Scheme["found"]["story"]): string {
  return raisedIn > 0 ? ` The story is made for ${inch(raisedIn)} more than is wanted, so that the head of the glass is high enough for the depth of the room.` : "";
}

function wayBackWords({wayBack}: Scheme["found"]["story"]): string {
  return wayBack ? ` A flat deck has no stems between which air could go back: it goes ${wayBack === "plenum" ? "through the plenum" : "in a duct beside the supply"}.` : "";
}

function edgeWords({edgeBeam, bay}: Design, {edge}: Scheme["found"]): string {
  const steel = edgeBeam.steel === "bars" ? `${edgeBeam.barSize} bars` : `${edgeBeam.strands} strands`;
  const web = `${inch(edgeBeam.webWidthIn)} wide, with ${steel} and concrete of ${decimals(edgeBeam.strengthPsi)} psi`;
  if (edgeBeam.kind === "below") {
    return `By rule: the narrowest beam below the deck that is no deeper than a twelfth of its ${feet(bay.beamSpanFt)} where one is, ${inch(edge.beam.depthIn)} deep and ${web}.${stopped(edge.stops().web)}`;
  }
  const ledge = edgeBeam.kind === "ledge" ? "ledge" : "foot below its pockets";
  return `By rule: the shallowest ${ledge}, ${inch(edgeBeam.ledgeDepthIn)}, and then the narrowest web: the beam is ${inch(edge.beam.depthIn)} deep and ${web}.${stopped(edge.stops().ledge)} The ${edgeBeam.kind === "ledge" ? "ledge projects" : "pockets reach"} ${inch(edgeBeam.ledgeProjectionIn)}, for joint, tolerances and the code's least seat.`;
}

function stopped(check: string | undefined): string {
  return check === undefined ? "" : ` One step less fails: ${check.charAt(0).toLowerCase()}${check.slice(1)}.`;
}

/**
 * The design of a scheme with the rules' words as its reasons, written for what they chose; other reasons of its base are
 * blank, for nobody gave one for this building.
 */
export function designWithReasons(scheme: Scheme): Design {
  const words = ruleWords(scheme);
  const reasons = Object.fromEntries(REASON_NAMES.map((name) => [name, words[name] ?? ""])) as Design["reasons"];
  const design = {...scheme.design, reasons};
  const written = REASON_NAMES.filter((name) => reasons[name] !== "").map((name) => [name, {by: "rule", choice: choiceOf(design, name)}] as const);
  return {...design, writtenFor: Object.fromEntries(written)};
}

const feet = (lengthFt: number): string => feetAndInches(inches(lengthFt));
const inch = (lengthIn: number): string => `${decimals(lengthIn, Number.isInteger(lengthIn) ? 0 : 1)} in`;
