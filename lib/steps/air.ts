import {BOARD_IN} from "../air/casing.js";
import {USUAL_CLEARANCE} from "../air/ductRoom.js";
import {ductAreaFt2} from "../air/ducts.js";
import {AIR_PCF, REYNOLDS_PER_IN_FPM, ROUGHNESS_FT, UNIT_PRESSURE_FPM} from "../air/friction.js";
import type {DrawnDuct} from "../air/result.js";
import {TRANSFER_FPM} from "../air/wayBack.js";
import type {Evaluation} from "../evaluate.js";
import {given, type Step, type Working} from "../step.js";

const ASHRAE = "ASHRAE Fundamentals, Duct Design (from memory)";

/** Friction of the main: equivalent round duct, its velocity, Reynolds number, friction factor and loss. */
export function mainFrictionWorking({air}: Evaluation): Working {
  return air ? {title: "Friction in the main", steps: frictionSteps(air.main)} : {title: "No air through ducts", steps: []};
}

function frictionSteps({flowCfm, widthIn, depthIn, velocityFpm, friction}: DrawnDuct): Step[] {
  const {equivalentIn, equivalentFpm, reynolds, factor, inPer100Ft} = friction;
  const sides = {a: given(widthIn, "in", "inside width of the duct"), b: given(depthIn, "in", "inside depth of the duct")};
  const d = given(equivalentIn, "in", "equivalent round duct");
  const v = given(equivalentFpm, "ft/min", "velocity in the equivalent round duct");
  return [
    {symbol: "v", label: "velocity in the duct", expression: "144 * Q / (a * b)", values: {Q: given(flowCfm, "cfm", "air in the duct"), ...sides}, result: velocityFpm, unit: "ft/min", source: "continuity"},
    {symbol: "D_e", label: "round duct of the same friction with the same air", expression: "1.30 * (a * b)^0.625 / (a + b)^0.25", values: sides, result: equivalentIn, unit: "in", source: "Huebscher, in ASHRAE Fundamentals, Duct Design"},
    {symbol: "v_e", label: "velocity in the equivalent round duct", expression: "Q / (pi * D_e^2 / 576)", values: {Q: given(flowCfm, "cfm", "air in the duct"), pi: given(Math.PI, "", "circumference of a circle over its diameter"), D_e: d}, result: equivalentFpm, unit: "ft/min", source: "continuity"},
    {symbol: "Re", label: "Reynolds number", expression: "n * D_e * v_e", values: {n: given(REYNOLDS_PER_IN_FPM, "", "of standard air"), D_e: d, v_e: v}, result: reynolds, unit: "", source: ASHRAE},
    reynolds < 2000
      ? {symbol: "f", label: "friction factor", expression: "64 / Re", values: {Re: given(reynolds, "", "Reynolds number")}, result: factor, unit: "", source: "laminar flow"}
      : {
        symbol: "f", label: "friction factor", expression: "1 / (2 * log10(12 * e / (3.7 * D_e) + 2.51 / (Re * sqrt(f_0))))^2",
        values: {e: given(ROUGHNESS_FT, "ft", "roughness of galvanized steel"), D_e: d, Re: given(reynolds, "", "Reynolds number"), f_0: given(factor, "", "the factor itself")},
        result: factor, unit: "", source: "Colebrook and White", note: "The factor stands on both sides; it is found by putting it in again and again until it stays.",
      },
    {
      symbol: "p", label: "loss in 100 ft of straight duct", expression: "f * 1200 / D_e * w * (v_e / u)^2", result: inPer100Ft, unit: "in", source: ASHRAE,
      values: {f: given(factor, "", "friction factor"), D_e: d, w: given(AIR_PCF, "lb/ft3", "unit weight of standard air"), v_e: v, u: given(UNIT_PRESSURE_FPM, "ft/min", "velocity of unit pressure")},
    },
  ];
}

/** Air that goes back, and by what: the return duct, the plenum or the walls' openings. */
export function wayBackWorking({air, design}: Evaluation): Working {
  if (!air || air.plan.returnCfm <= 0) return {title: "No return is shown", steps: []};
  const {plan, back, wayBack} = air;
  const [opening] = [...wayBack?.openings ?? []].sort((a, b) => b.flowCfm - a.flowCfm);
  return {title: "The way back", steps: [
    {
      symbol: "Q_r", label: "air that comes back", expression: "Q * (1 - s / 100)", result: plan.returnCfm, unit: "cfm", source: "continuity: what goes in comes back",
      values: {Q: given(plan.flowCfm, "cfm", "supply of the main"), s: given(design.air.exhaustPercent, "%", "share of the supply that is exhausted elsewhere")},
    },
    ...(back ? [{
      symbol: "v_r", label: "velocity in the return duct", expression: "Q_p / A_r", result: back.velocityFpm, unit: "ft/min", source: "continuity",
      values: {Q_p: given(back.flowCfm, "cfm", "air in the return duct beside the riser"), A_r: given(ductAreaFt2({kind: "rectangular", widthIn: back.widthIn, depthIn: back.depthIn}), "ft2", "inside of the return duct")},
    }] : []),
    ...(wayBack?.velocityFpm !== undefined ? [{
      symbol: "v_r", label: "velocity where the way is narrowest", expression: "Q_p / A_f", result: wayBack.velocityFpm, unit: "ft/min", source: "continuity",
      values: {Q_p: given(wayBack.velocityFpm * (wayBack.freeFt2 as number), "cfm", "return air where its way is narrowest"), A_f: given((wayBack.freeFt2 as number), "ft2", "free area where the way is narrowest")},
    }] : []),
    ...(opening ? [{
      symbol: "A_w", label: "free area through the busiest wall", expression: "Q_w / v_w", result: opening.freeFt2, unit: "ft2", source: "common practice (from memory)",
      values: {Q_w: given(opening.flowCfm, "cfm", "air through the busiest wall"), v_w: given(TRANSFER_FPM, "ft/min", "velocity through a wall's openings")},
    }] : []),
  ]};
}

/** What the main takes of the height, down to the underside of its box, or of the ceiling that hides it. */
export function mainHeightWorking({air, services, story, design}: Evaluation): Working {
  if (!air) return {title: "No air through ducts", steps: []};
  const {sprinklerIn, lightIn} = services;
  const {ducts} = air;
  const hung: Step = {
    symbol: "h_h", label: "ducts with their hangers", expression: "t_h + d_d", result: ducts.hungIn, unit: "in", source: "geometry",
    values: {t_h: given(USUAL_CLEARANCE.hangerIn, "in", "hangers"), d_d: given(ducts.hungIn - USUAL_CLEARANCE.hangerIn, "in", "ducts, one over another where they cross")},
  };
  const {casing} = ducts;
  if (casing && design.air.casing === "derived") {
    const zonesIn = casing.kind === "strip" ? sprinklerIn + lightIn : 0;
    return {title: `The ${casing.kind} below the ceiling`, steps: [hung,
      {
        symbol: "s", label: `drop of the ${casing.kind}`, expression: "max(0, h_h + z + b - p)", result: casing.dropIn, unit: "in", source: "geometry",
        values: {h_h: given(ducts.hungIn, "in", "ducts with their hangers"), z: given(zonesIn, "in", "pipes and lights over the strip of ceiling"), b: given(BOARD_IN, "in", "board around the box or strip"), p: given(story.plenumIn, "in", "plenum over the ceiling")},
      },
      {
        symbol: "h_u", label: "height under the box or strip", expression: "h_c - s", result: casing.footIn, unit: "in", source: "geometry",
        values: {h_c: given(story.ceilingHeightIn, "in", design.story.ceiling === "none" ? "height under the deck" : "ceiling height"), s: given(casing.dropIn, "in", "drop below the ceiling")},
      },
    ]};
  }
  const along = ducts.mainPlace === "along the ledge";
  return {title: "The least plenum", steps: [hung, {
    symbol: "p", label: "least plenum", expression: "max(h_l, z, h_h + z_m)", result: air.leastPlenumIn, unit: "in", source: "geometry",
    values: {
      h_l: given(story.ledgeDepthIn, "in", "edge beam below the deck"), z: given(sprinklerIn + lightIn, "in", "pipes and lights"), h_h: given(ducts.hungIn, "in", "ducts with their hangers"),
      z_m: given(along ? 0 : sprinklerIn + lightIn, "in", along ? "pipes and lights keep out of the strip along the ledge" : "pipes and lights under the main"),
    },
  }]};
}
