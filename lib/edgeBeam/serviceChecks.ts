import {atMost, outOfRange, requires, type Check} from "../checks.js";
import {pressedFace, type PressedFace} from "../beams/pressedFace.js";
import type {Design} from "../design/design.js";
import {allowables} from "../member/allowables.js";
import {handledChecks} from "../member/handledChecks.js";
import type {Member} from "../member/member.js";
import {SAG_LIMITS} from "../member/sagLimit.js";
import {transferChecks, type TransferRemedies} from "../member/transferChecks.js";
import type {EdgeBeamStrands} from "./bending.js";
import type {BarStep} from "./handling.js";
import type {UncheckedBeam} from "./unchecked.js";
import type {StrandService} from "./service.js";

/** A beam's release strength follows its strength, and its strands are straight. */
const OF_BEAM: TransferRemedies = {end: "stronger concrete or fewer strands", elsewhere: "stronger concrete or fewer strands", pull: "more strands, or columns closer together"};

/** The beam in service: cracks or stresses, and how far it moves. */
export function serviceChecks({criteria}: Design, beam: Pick<UncheckedBeam, "service" | "strands">): Check[] {
  const {service} = beam;
  const {spanOver, counts} = SAG_LIMITS[criteria.sagLimit];
  const sag = atMost({
    id: "beam sag", label: counts === "live" ? "Beam deflection under live load" : "Beam deflection after partitions", unit: "in", clause: "ACI 318-19 Table 24.2.2",
    holds: `The beam deflects less than span/${spanOver}.`,
    fails: `The beam deflects more than span/${spanOver}, and glass and cladding move with it: make it deeper.`,
  }, service.countedIn, service.allowedIn);
  if (service.steel === "strands") return [...strandChecks((beam.strands as EdgeBeamStrands).member, service), sag];
  const cracks = atMost({
    id: "beam cracks", label: "Spacing of the bottom bars", unit: "in", clause: "ACI 318-19 24.3.2", meetingIsEnough: true,
    holds: "The bars are close enough to keep cracks fine.",
    fails: "Cracks would be wide: use more, smaller bars, or less cover.",
  }, service.spacingIn, service.greatestSpacingIn);
  return [cracks, sag];
}

function strandChecks(member: Member, service: StrandService): Check[] {
  return [...serviceStresses(member, service), ...ofBeam(transferChecks(member, service.transfer, OF_BEAM))];
}

/** The stresses of a beam with strands in service; none of one with bars. */
export function stressChecks({service, strands}: Pick<UncheckedBeam, "service" | "strands">): Check[] {
  return service.steel === "strands" ? serviceStresses((strands as EdgeBeamStrands).member, service) : [];
}

function serviceStresses(member: Member, {total, sustained, soffitNearEndKsi}: StrandService): Check[] {
  const allowed = allowables(member, "T");
  const tensionKsi = Math.max(0, -total.bottomKsi);
  return [
    tensionKsi > allowed.serviceTensionKsi
      ? outOfRange({...TENSION, message: "The beam would crack in service (class C), which is not covered here: use more strands, or bars."}, tensionKsi, allowed.serviceTensionKsi)
      : atMost(TENSION, tensionKsi, allowed.serviceTensionKsi),
    compression("sustained", pressedFace(sustained, soffitNearEndKsi), allowed.sustainedCompressionKsi),
    compression("total", pressedFace(total), allowed.totalCompressionKsi),
  ];
}

const TENSION = {
  id: "beam tension", label: "Tension in the beam's soffit in service", unit: "ksi", clause: "ACI 318-19 24.5.2.1",
  holds: "The soffit stays uncracked, or nearly so.", fails: "",
};

/** The face that is compressed most, by name: what mends the one may not mend the other. */
function compression(load: "sustained" | "total", {face, where, stressKsi}: PressedFace, allowedKsi: number): Check {
  const words = load === "total" ? "the total load" : "sustained load";
  return atMost({
    id: `beam ${load} compression`, label: `Compression in the beam's ${face} under ${load} load`, unit: "ksi", clause: "ACI 318-19 24.5.4.1",
    holds: `The ${face} can take ${words}.`,
    fails: face === "soffit" ? `The strands press the soffit too hard ${where} under ${words}: fewer strands, or stronger concrete.`
      : `The top is compressed too hard by ${words}: make the beam deeper or stronger.`,
  }, stressKsi, allowedKsi);
}

/** What is checked of any pretensioned piece, named as the beam's. */
function ofBeam(checks: readonly Check[]): Check[] {
  return checks.map((check) => ({...check, id: `beam ${check.id}`, label: `Beam: ${check.label.charAt(0).toLowerCase()}${check.label.slice(1)}`}));
}

/** The beam on its way: stresses in the plant and on the road, and its weight. */
export function handlingChecks({handling: {weightKip, payloadKip, way}}: UncheckedBeam): Check[] {
  const steps = way.steel === "strands" ? ofBeam(way.steps.flatMap((step) => handledChecks(step, OF_BEAM.elsewhere))) : barChecks(way.steps);
  return [...steps, weightKip > payloadKip
    ? requires({...WEIGHT, word: "needs a permit", message: "One beam outweighs a legal load: each haul needs an overweight permit, and the crane must be able to reach with it."}, weightKip, payloadKip)
    : atMost(WEIGHT, weightKip, payloadKip)];
}

const WEIGHT = {
  id: "beam weight", label: "Weight of the beam on a truck", unit: "kip", clause: "common practice", holds: "A legal load can deliver the beam.", fails: "",
};

function barChecks(steps: readonly BarStep[]): Check[] {
  return steps.flatMap(({moment, tensionKsi, compressionKsi, allowedTensionKsi, allowedCompressionKsi}) => [
    atMost(BAR_WORDS[moment].tension, tensionKsi, allowedTensionKsi), atMost(BAR_WORDS[moment].compression, compressionKsi, allowedCompressionKsi),
  ]);
}

/** Words of a beam with bars on its way, written once: most beams that are tried come here. */
const BAR_WORDS = {stripping: barWords("stripping", "as it is stripped from its form"), hauling: barWords("hauling", "on the road")};

function barWords(moment: BarStep["moment"], how: string) {
  return {
    tension: {
      id: `beam ${moment} tension`, label: `Tension in the beam ${how}`, unit: "ksi", clause: "PCI Design Handbook, 7th ed., ch. 8 (from memory)",
      holds: "The concrete does not crack.", fails: "The concrete could crack: lift it closer to its middle, or use stronger concrete or a higher upstand.",
    },
    compression: {
      id: `beam ${moment} compression`, label: `Compression in the beam ${how}`, unit: "ksi", clause: "ACI 318-19 24.5.3.1, 24.5.4.1",
      holds: "The concrete can take the compression.", fails: "The concrete is compressed too hard: stronger concrete or a higher upstand.",
    },
  };
}
