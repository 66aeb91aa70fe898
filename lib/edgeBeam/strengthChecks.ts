import {atLeast, atMost, requires, type Check} from "../checks.js";
import type {Design} from "../design/design.js";
import {TENSION_CONTROLLED_STRAIN} from "../member/flexure.js";
import {mostCoverIn, LEAST_STIRRUP_SPACING_IN} from "./twist.js";
import type {UncheckedBeam} from "./unchecked.js";

/** Cover that leaves strands of the usual grid, 2 in from every face, inside #4 stirrups, in. */
const COVER_WITH_STRANDS_IN = 2 - 0.5 - 0.25;

/** The beam's bending: strength, minimum steel, ductility, and torsion's pull on the same bars. */
export function bendingChecks({edgeBeam: input}: Design, beam: UncheckedBeam): Check[] {
  const {bars, strands, strength} = beam;
  const barWords = `${bars.count} ${bars.bar.size} bars`;
  const steel = strands ? `${strands.member.layout.count} strands${bars.count > 0 ? ` and ${barWords}` : ""}` : barWords;
  return [
    atMost({
      id: "beam strength", label: "Beam in bending", unit: "kip-in", clause: "ACI 318-19 22.3, 21.2.2",
      holds: `${steel} carry the factored moment.`,
      fails: "No practical number of bars carries the factored moment: make the beam deeper or its bars larger.",
    }, beam.momentKipIn, strength.designMomentKipIn),
    // Bars are put beside the strands until they reach the least, so only a beam with too much steel falls short of it.
    strands
      ? atLeast({
        id: "beam least steel", label: "Strength beyond cracking", unit: "kip-in", clause: "ACI 318-19 9.6.2.1",
        holds: "The beam would crack before it breaks.",
        fails: "The beam could break as it first cracks: fewer strands, or stronger concrete.",
      }, strength.designMomentKipIn, strands.leastKipIn)
      : atLeast({
        id: "beam least steel", label: "Minimum steel in the beam", unit: "in2", clause: beam.leastSteel.areaIn2 < beam.leastSteel.crackingIn2 ? "ACI 318-19 9.6.1.3" : "ACI 318-19 9.6.1.2",
        holds: "The beam would crack before it breaks.",
        fails: "The beam could break as it first cracks: larger bars.",
      }, bars.areaIn2, beam.leastSteel.areaIn2),
    // A prestressed beam may break with less warning; its reduction factor pays for that.
    ...(strands
      ? [atMost({
        id: "beam strands", label: "Strands in the bottom of the beam", unit: "", clause: "common practice", meetingIsEnough: true,
        holds: "The strands fit in the bottom of the web.",
        fails: `The bottom of the web has room for ${strands.places} strands, and only these are counted: use fewer strands or a wider web.`,
      }, strands.asked, strands.places), atMost({
        id: "beam strand cover", label: "Cover, with strands inside the stirrups", unit: "in", clause: "geometry", meetingIsEnough: true,
        holds: "The outer strands fit inside the stirrups.",
        fails: "The outer strands, 2 in from the beam's faces, would hit the stirrups: use 1.25 in of cover.",
      }, input.coverIn, COVER_WITH_STRANDS_IN)]
      : [atLeast({
        id: "beam ductility", label: "Strain in the steel as the beam fails", unit: "", clause: "ACI 318-19 9.3.3.1",
        holds: "The bars stretch far before the concrete crushes: the beam gives warning.",
        fails: "The concrete would crush with little warning: make the beam deeper or wider.",
      }, strength.tensileStrain, TENSION_CONTROLLED_STRAIN)]),
    atMost({
      id: "beam bottom steel", label: "Bending and torsion on the bottom steel", unit: "", clause: "ACI 318-19 9.5.4.3",
      holds: "The bottom steel carries bending and its share of the torsion everywhere along the beam.",
      fails: "Where bending and torsion combine, there is too little bottom steel for both: make the beam deeper or its bars larger.",
    }, beam.bottomUse, 1),
  ];
}

/** The beam in shear and torsion, and the stirrups for both. */
export function shearTorsionChecks({edgeBeam: input}: Design, beam: UncheckedBeam): Check[] {
  const {twist, stirrups} = beam;
  const shear = atMost({
    id: "beam shear", label: beam.kind === "pockets" ? "Web beside a pocket in shear, with stirrups" : "Beam in shear, with stirrups", unit: "kip", clause: "ACI 318-19 22.5.1.2",
    holds: beam.shearKip > beam.concreteShearKip ? "Stirrups can carry what the concrete does not." : "The concrete carries the shear; minimum stirrups are enough.",
    fails: "The web is too small for the shear, whatever the stirrups: widen or deepen it.",
  }, beam.shearKip, beam.greatestShearKip);
  const cage = atMost({
    id: "beam cage", label: "Cover that leaves room for stirrups and hangers", unit: "in", clause: "geometry", meetingIsEnough: true,
    holds: "The web has room for its stirrups.",
    fails: "So much cover leaves no room for stirrups in the web, so torsion and ledge are not designed: widen the web or use less cover.",
  }, input.coverIn, mostCoverIn(beam));
  if (!twist || !stirrups) return [shear, cage];
  const [together] = twist.design.checks as [Check];
  if (together.verdict === "fails" && twist.slender.applies) {
    return [shear, cage, requires({
      id: together.id, label: together.label, unit: together.unit, clause: "ACI 318-19 9.5.4.7", word: "as a slender beam",
      message: "Closed stirrups could not carry shear and torsion together in so thin a web, but the beam lies within the limits of the slender edge beam's method, which needs none.",
    }, together.demand, together.capacity)];
  }
  return [
    shear, cage, together,
    atLeast({
      id: "beam stirrups", label: `${stirrups.bar.size} stirrups, spacing`, unit: "in", clause: "common practice", meetingIsEnough: true,
      holds: "The stirrups for shear, torsion and ledge are far enough apart for concrete to flow between them.",
      fails: "Stirrups for shear, torsion and ledge would be so close that concrete could not flow between them: deepen the beam or widen its web.",
    }, stirrups.spacingIn, LEAST_STIRRUP_SPACING_IN),
  ];
}
