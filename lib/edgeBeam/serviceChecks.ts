import {atMost, outOfRange, requires, type Check} from "../checks.js";
import type {Design} from "../design/design.js";
import {allowables} from "../member/allowables.js";
import type {Member} from "../member/member.js";
import {SAG_LIMITS} from "../member/sagLimit.js";
import {transferChecks, type TransferRemedies} from "../member/transferChecks.js";
import type {EdgeBeamStrands} from "./bending.js";
import type {UncheckedBeam} from "./unchecked.js";
import type {StrandService} from "./service.js";

/** A beam's release strength follows its strength, and its strands are straight. */
const OF_BEAM: TransferRemedies = {end: "stronger concrete or fewer strands", elsewhere: "stronger concrete or fewer strands", pull: "more strands, or columns closer together"};

/** The beam in service: cracks or stresses, and how far it moves. */
export function serviceChecks({criteria}: Design, beam: UncheckedBeam): Check[] {
  const {service} = beam;
  const {spanOver, counts} = SAG_LIMITS[criteria.sagLimit];
  const sag = atMost({
    id: "beam sag", label: counts === "live" ? "Beam's sag under live load" : "Beam's sag after partitions", unit: "in", clause: "ACI 318-19 Table 24.2.2",
    holds: `The beam moves less than span/${spanOver}.`,
    fails: `The beam moves more than span/${spanOver}, and with it glass and cladding: make it deeper.`,
  }, service.countedIn, service.allowedIn);
  if (service.steel === "strands") return [...strandChecks((beam.strands as EdgeBeamStrands).member, service), sag];
  const cracks = atMost({
    id: "beam cracks", label: "Spacing of the bottom bars", unit: "in", clause: "ACI 318-19 24.3.2", meetingIsEnough: true,
    holds: "The bars stand close enough to keep cracks fine.",
    fails: "Cracks would be coarse: take more, smaller bars, or less cover.",
  }, service.spacingIn, service.greatestSpacingIn);
  return [cracks, sag];
}

function strandChecks(member: Member, {total, sustained, transfer}: StrandService): Check[] {
  const allowed = allowables(member, "T");
  const tensionKsi = Math.max(0, -total.bottomKsi);
  const tension = {id: "beam tension", label: "Tension of the beam's soffit in service", unit: "ksi", clause: "ACI 318-19 24.5.2.1"};
  return [
    tensionKsi > allowed.serviceTensionKsi
      ? outOfRange({...tension, message: "The beam would crack in service (class C), which is not worked out here: take more strands, or bars."}, tensionKsi, allowed.serviceTensionKsi)
      : atMost({...tension, holds: "The soffit stays uncracked, or all but uncracked.", fails: ""}, tensionKsi, allowed.serviceTensionKsi),
    atMost({
      id: "beam sustained compression", label: "Compression of the beam's top under what stays", unit: "ksi", clause: "ACI 318-19 24.5.4.1",
      holds: "The top bears what stays on it.", fails: "The top is squeezed too hard by what stays on it: make the beam deeper or stronger.",
    }, Math.max(0, sustained.topKsi, sustained.bottomKsi), allowed.sustainedCompressionKsi),
    atMost({
      id: "beam total compression", label: "Compression of the beam's top under all load", unit: "ksi", clause: "ACI 318-19 24.5.4.1",
      holds: "The top bears all load.", fails: "The top is squeezed too hard by all load together: make the beam deeper or stronger.",
    }, Math.max(0, total.topKsi, total.bottomKsi), allowed.totalCompressionKsi),
    ...transferChecks(member, transfer, OF_BEAM).map((check) => ({...check, id: `beam ${check.id}`, label: `Beam: ${check.label.charAt(0).toLowerCase()}${check.label.slice(1)}`})),
  ];
}

/** The beam on its way: stresses in the plant and on the road, and its weight. */
export function handlingChecks({handling, strands}: UncheckedBeam): Check[] {
  const {weightKip, payloadKip} = handling;
  const steps = handling.steps.flatMap(({moment, tensionKsi, compressionKsi, allowedTensionKsi, allowedCompressionKsi}) => {
    const how = moment === "stripping" ? "as it is lifted from its form" : "on the road";
    return [
      atMost({
        id: `beam ${moment} tension`, label: `Tension of the beam ${how}`, unit: "ksi", clause: "PCI Design Handbook (from memory)",
        holds: "The concrete does not crack.", fails: strands ? "The concrete could crack: fewer strands, or stronger concrete." : "The concrete could crack: lift it nearer to its middle, or take stronger concrete or a higher upstand.",
      }, tensionKsi, allowedTensionKsi),
      atMost({
        id: `beam ${moment} compression`, label: `Compression of the beam ${how}`, unit: "ksi", clause: "ACI 318-19 24.5.3.1, 24.5.4.1",
        holds: "The concrete bears the squeeze.", fails: "The concrete is squeezed too hard: stronger concrete or fewer strands.",
      }, compressionKsi, allowedCompressionKsi),
    ];
  });
  const weight = {id: "beam weight", label: "Weight of the beam on a truck", unit: "kip", clause: "common practice"};
  return [...steps, weightKip > payloadKip
    ? requires({...weight, word: "needs a permit", message: "One beam outweighs a legal load: each haul needs an overweight permit, and the crane has to reach with it."}, weightKip, payloadKip)
    : atMost({...weight, holds: "A legal truck can bring the beam.", fails: ""}, weightKip, payloadKip)];
}
