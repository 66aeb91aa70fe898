import {padShapeFactor, shapedStressPsi} from "../../beams/bearing.js";
import {CORBEL_PHI, corbelPullKip, corbelSteel} from "../../beams/corbelSteel.js";
import {simpleSpanShearKip} from "../../beams/statics.js";
import {TORSION_PHI, crackingTorsion} from "../../beams/torsion.js";
import {torsionOutline} from "../../beams/torsionOutline.js";
import {concrete} from "../../materials/concrete.js";
import {BAR_YIELD_KSI} from "../../materials/reinforcement.js";
import {given} from "../../step.js";
import {kipFt} from "../../units.js";
import type {Draw} from "../draw.js";
import type {Content, Kind, Option} from "../item.js";
import {oneStep} from "../keys.js";
import {choicePart, numberAt, numberPart, slip} from "../parts.js";
import {measure, prose} from "../prose.js";
import {stated} from "./ground.js";

/** Torsion of a ledge beam at its end, and whether it may be left out. */
function ledgeTorsion(draw: Draw): Content {
  const ledgePlf = draw.from(1500, 5000, 50);
  const beamFt = draw.from(20, 40, 1);
  const webWidthIn = draw.from(10, 18, 2);
  const depthIn = draw.from(36, 80, 2);
  const strengthPsi = draw.from(5000, 7000, 500);
  const projectionIn = 8;
  const ledgeDepthIn = 12;
  const leverIn = webWidthIn / 2 + 0.75 * projectionIn;
  const outline = torsionOutline({ledges: 1, webWidthIn, depthIn, ledgeProjectionIn: projectionIn, ledgeDepthIn});
  const cracking = crackingTorsion(outline, concrete("normalweight", strengthPsi));
  const endKip = simpleSpanShearKip(ledgePlf, beamFt, 0);
  const torsion = (endKip * leverIn) / 12;
  const negligible = kipFt(TORSION_PHI * cracking.thresholdKipIn);
  return {
    question: [
      prose`The deck presses a ledge with ${measure(ledgePlf, "plf")}, factored and spread evenly, ${measure(leverIn, "in")} from the middle of the web. The beam spans ${measure(beamFt, "ft")}; its ends are held upright.`,
      prose`Web ${measure(webWidthIn, "in")} by ${measure(depthIn, "in")}, ledge ${measure(projectionIn, "in")} by ${measure(ledgeDepthIn, "in")}, concrete of ${measure(strengthPsi, "psi")}. The area of the outline squared over its perimeter is ${measure(stated(outline.modulusIn3, 0), "in3")}.`,
    ],
    givens: [{name: "factored load on the ledge", value: ledgePlf, unit: "plf"}, {name: "lever arm", value: leverIn, unit: "in"}, {name: "span of the beam", value: beamFt, unit: "ft"}, {name: "web", value: webWidthIn, unit: "in"}, {name: "depth", value: depthIn, unit: "in"}, {name: "concrete strength", value: strengthPsi, unit: "psi"}, {name: "area squared over perimeter", value: stated(outline.modulusIn3, 0), unit: "in3"}],
    parts: [
      numberPart({
        ask: prose`What torsion arrives at each end?`, label: "torsion", unit: "kip-ft", key: torsion,
        slips: [slip("the whole torsion at one end", 2 * torsion, "Half of it goes to each end."), slip("kip-in for kip-ft", 12 * torsion, "That is in kip-inches."), slip("load of one foot", torsion / (beamFt / 2), "That is the torsion of one foot of the beam: it adds up along it."), slip("forgot the lever arm", endKip, "That is the shear: the torsion is that times the lever arm.")],
        working: {title: "Torsion at the end", steps: [
          {symbol: "V_u", label: "load on the ledge that goes to one end", expression: "w_u * L / 2 / 1000", unit: "kip", source: "statics", result: endKip, values: {w_u: given(ledgePlf, "plf", "factored load on the ledge"), L: given(beamFt, "ft", "span of the beam")}},
          {symbol: "T_u", label: "torsion at the end", expression: "V_u * e / 12", unit: "kip-ft", source: "statics", result: torsion, values: {V_u: given(endKip, "kip", "load that goes to one end"), e: given(leverIn, "in", "lever arm")}},
        ]},
      }),
      numberPart({
        ask: prose`Below what torsion might it be left out?`, label: "negligible torsion", unit: "kip-ft", key: negligible,
        slips: [slip("forgot the reduction factor", negligible / TORSION_PHI, "The strength reduction factor of torsion, 0.75, multiplies the threshold."), slip("cracking for threshold", 4 * negligible, "At four times the threshold the section cracks; below the threshold torsion may be left out."), slip("kip-in for kip-ft", 12 * negligible, "That is in kip-inches.")],
        working: oneStep("Negligible torsion", {symbol: "T_n", label: "negligible torsion", expression: "phi * sqrt(f_cprime) * m / 12000", unit: "kip-ft", source: "ACI 318-19 22.7.4.1", result: negligible, values: {phi: given(TORSION_PHI, "", "strength reduction factor"), f_cprime: given(strengthPsi, "psi", "concrete strength"), m: given(outline.modulusIn3, "in3", "area squared over perimeter")}}),
      }),
      choicePart({
        ask: prose`Must the beam be designed for torsion?`, key: (earlier) => (numberAt(earlier, 0) >= numberAt(earlier, 1) ? "yes" : "no"),
        options: [{id: "yes", text: ["yes"], slip: {name: "took less for more", says: "By your numbers its torsion is below what may be left out."}}, {id: "no", text: ["no"], slip: {name: "took more for less", says: "By your numbers its torsion is not below what may be left out."}}],
      }),
    ],
  };
}

const RULES = [
  {id: "bending and pull", text: "bending and pull: A_f + A_n"}, {id: "shear friction and pull", text: "shear friction and pull: two thirds of A_vf, and A_n"}, {id: "least steel", text: "the least that the code wants: 0.04 f\u2032c/fy b d"},
] as const;

/** Main steel of a corbel by the three rules. */
function corbelMainSteel(draw: Draw): Content {
  const shearKip = draw.from(30, 90, 1);
  const armIn = draw.from(3, 8, 0.5);
  const effectiveDepthIn = draw.from(12, 20, 1);
  const widthIn = draw.one([14, 16, 18, 20]);
  const strengthPsi = 5000;
  const pullKip = corbelPullKip(shearKip);
  const momentKipIn = shearKip * armIn + pullKip * 2;
  const steel = corbelSteel({concrete: concrete("normalweight", strengthPsi), widthIn, effectiveDepthIn, armIn, shearKip, pullKip, momentKipIn});
  const steelKsi = CORBEL_PHI * BAR_YIELD_KSI;
  return {
    question: [
      prose`A corbel ${measure(widthIn, "in")} wide, with its main steel ${measure(effectiveDepthIn, "in")} above its foot, carries a factored reaction of ${measure(shearKip, "kip")}, ${measure(armIn, "in")} from the column\u2019s face. It is cast in one piece with the column, of ${measure(strengthPsi, "psi")} concrete.`,
      prose`Shrinkage pulls on it with the least that the code assumes. Bending wants ${measure(stated(steel.bendingIn2, 2), "in2")} (A_f), the least steel is ${measure(stated(steel.leastIn2, 2), "in2")}; bars yield at ${measure(BAR_YIELD_KSI, "ksi")} and the strength reduction factor is ${CORBEL_PHI}.`,
    ],
    givens: [{name: "factored reaction", value: shearKip, unit: "kip"}, {name: "arm", value: armIn, unit: "in"}, {name: "depth to the main steel", value: effectiveDepthIn, unit: "in"}, {name: "width", value: widthIn, unit: "in"}, {name: "steel for bending", value: stated(steel.bendingIn2, 2), unit: "in2"}, {name: "least steel", value: stated(steel.leastIn2, 2), unit: "in2"}],
    parts: [
      numberPart({
        ask: prose`What steel does the pull want (A_n)?`, label: "steel for the pull", unit: "in2", key: steel.pullIn2,
        slips: [slip("forgot the reduction factor", (pullKip / BAR_YIELD_KSI), "The strength reduction factor counts here too."), slip("reaction for pull", shearKip / steelKsi, "The pull is a fifth of the reaction at least, not all of it.")],
        working: {title: "Steel for the pull", steps: [
          {symbol: "N_uc", label: "least pull", expression: "0.2 * V_u", unit: "kip", source: "ACI 318-19 16.5.3.5", result: pullKip, values: {V_u: given(shearKip, "kip", "factored reaction")}},
          {symbol: "A_n", label: "steel for the pull", expression: "N_uc / (phi * f_y)", unit: "in2", source: "ACI 318-19 16.5.4.3", result: steel.pullIn2, values: {N_uc: given(pullKip, "kip", "pull"), phi: given(CORBEL_PHI, "", "strength reduction factor"), f_y: given(BAR_YIELD_KSI, "ksi", "yield strength")}},
        ]},
      }),
      numberPart({
        ask: prose`And shear friction, with 1.4 for concrete cast in one piece (A_vf)?`, label: "steel for shear friction", unit: "in2", key: steel.frictionIn2,
        slips: [slip("forgot the friction", shearKip / steelKsi, "Friction helps: steel needs less than the shear, by the friction\u2019s 1.4."), slip("friction the wrong way", (1.4 * shearKip) / steelKsi, "Friction divides the steel, it does not multiply it."), slip("forgot the reduction factor", shearKip / (BAR_YIELD_KSI * 1.4), "The strength reduction factor counts here too."), slip("rough joint for one piece", shearKip / steelKsi / 0.6, "0.6 is for a smooth joint.")],
        working: oneStep("Steel for shear friction", {symbol: "A_vf", label: "steel for shear friction", expression: "V_u / (phi * f_y * 1.4)", unit: "in2", source: "ACI 318-19 22.9.4.2", result: steel.frictionIn2, values: {V_u: given(shearKip, "kip", "factored reaction"), phi: given(CORBEL_PHI, "", "strength reduction factor"), f_y: given(BAR_YIELD_KSI, "ksi", "yield strength")}}),
      }),
      choicePart({ask: prose`Which rule governs the main steel?`, key: steel.rule, options: RULES.map(({id, text}): Option => ({id, text: [text], slip: {name: "not the greatest", says: "Another of the three rules asks for more."}}))}),
      numberPart({
        ask: prose`How much main steel is that?`, label: "main steel", unit: "in2", key: steel.topIn2,
        slips: [
          slip("all three added", steel.bendingIn2 + steel.pullIn2 + steel.frictionIn2, "Bending and shear friction do not add up: the greater of the two rules counts."), slip("forgot the pull", Math.max(steel.bendingIn2, (2 / 3) * steel.frictionIn2), "The pull\u2019s steel comes on top."),
          slip("all of the shear friction", steel.frictionIn2 + steel.pullIn2, "Two thirds of it stand at the top; the ties below carry the rest."),
        ],
        working: oneStep("Main steel", {
          symbol: "A_sc", label: "main steel", expression: "max(A_f + A_n, 2 / 3 * A_vf + A_n, A_m)", unit: "in2", source: "ACI 318-19 16.5.5.1", result: steel.topIn2,
          values: {A_f: given(steel.bendingIn2, "in2", "steel for bending"), A_n: given(steel.pullIn2, "in2", "steel for the pull"), A_vf: given(steel.frictionIn2, "in2", "steel for shear friction"), A_m: given(steel.leastIn2, "in2", "least steel")},
        }),
      }),
    ],
  };
}

/** What a bearing pad may carry. */
function padStress(draw: Draw): Content {
  const widthIn = draw.from(4, 8, 0.25);
  const lengthIn = draw.from(4, 8, 0.25);
  const thicknessIn = draw.one([0.25, 0.375, 0.5, 0.625]);
  const loadKip = draw.from(10, 30, 1);
  const pad = {widthIn, lengthIn, thicknessIn};
  const factor = padShapeFactor(pad);
  const area = widthIn * lengthIn;
  return {
    question: [prose`A pad with random fibers, ${measure(widthIn, "in")} by ${measure(lengthIn, "in")} and ${measure(thicknessIn, "in")} thick, lies under a stem that brings ${measure(loadKip, "kip")} without load factors.`],
    givens: [{name: "width", value: widthIn, unit: "in"}, {name: "length", value: lengthIn, unit: "in"}, {name: "thickness", value: thicknessIn, unit: "in"}, {name: "load of the stem", value: loadKip, unit: "kip"}],
    parts: [
      numberPart({
        ask: prose`What is its shape factor, the loaded area over the area that is free to bulge?`, label: "shape factor", unit: "", key: factor,
        slips: [slip("one face of the edge", 2 * factor, "It bulges on all four sides: twice width and length."), slip("forgot the thickness", factor * thicknessIn, "What bulges is the edge: its length times the thickness."), slip("upside down", 1 / factor, "Loaded area over free area.")],
        working: oneStep("Shape factor", {symbol: "S", label: "shape factor", expression: "w * l / (2 * t * (w + l))", unit: "", source: "geometry", result: factor, values: {w: given(widthIn, "in", "width"), l: given(lengthIn, "in", "length"), t: given(thicknessIn, "in", "thickness")}}),
      }),
      numberPart({
        ask: prose`What stress does that allow: 1,000 psi and 100 psi for each unit of the factor, 1,500 psi at most?`, label: "allowed stress", unit: "psi", key: (earlier) => shapedStressPsi(numberAt(earlier, 0)),
        slips: [slip("forgot the 1,000", 100 * factor, "The hundreds come on top of 1,000 psi."), slip("past the most", 1000 + 100 * factor, "1,500 psi is the most, whatever the shape.")],
        working: (earlier) => oneStep("Allowed stress", {symbol: "f_a", label: "allowed stress", expression: "min(1500, 1000 + 100 * S)", unit: "psi", source: "PCI Design Handbook, 7th ed., ch. 6 (from memory)", result: shapedStressPsi(numberAt(earlier, 0)), values: {S: given(numberAt(earlier, 0), "", "shape factor")}}),
      }),
      numberPart({
        ask: prose`What load could it carry at that stress?`, label: "load", unit: "kip", key: (earlier) => (numberAt(earlier, 1) * area) / 1000,
        slips: (earlier) => [slip("pounds for kips", numberAt(earlier, 1) * area, "That is in pounds."), slip("one side for the area", (numberAt(earlier, 1) * lengthIn) / 1000, "Length times width makes the area.")],
        working: (earlier) => oneStep("Load of the pad", {symbol: "P", label: "load of the pad", expression: "f_a * w * l / 1000", unit: "kip", source: "definition", result: (numberAt(earlier, 1) * area) / 1000, values: {f_a: given(numberAt(earlier, 1), "psi", "allowed stress"), w: given(widthIn, "in", "width"), l: given(lengthIn, "in", "length")}}),
      }),
    ],
  };
}

export const LEDGES_KINDS: readonly Kind[] = [
  {id: "pad-stress", topic: "edge-beam", level: 1, title: "What a bearing pad carries", make: padStress},
  {id: "ledge-torsion", topic: "edge-beam", level: 3, title: "How a ledge twists its beam", make: ledgeTorsion},
  {id: "corbel-steel", topic: "columns", level: 3, title: "Main steel of a corbel", make: corbelMainSteel},
];
