import {MAIN_NOISE_FPM, BRANCH_NOISE_SHARE, type DuctCover} from "../air/noise.js";
import type {DuctSize} from "../air/ducts.js";
import {ductFriction, equivalentDiameterIn, roundForFrictionIn} from "../air/friction.js";
import {IN2_PER_FT2} from "../units.js";

/** A duct of a key: "20" is round, "10x14" rectangular, in. */
function sizeOf(key: string | undefined): DuctSize {
  const [widthIn = NaN, depthIn] = (key ?? "").split("x").map(Number);
  return depthIn === undefined ? {kind: "round", diameterIn: widthIn} : {kind: "rectangular", widthIn, depthIn};
}

/** Friction of a key "cfm/duct". */
function frictionOf(key: string) {
  const [flowCfm, duct] = key.split("/");
  return ductFriction(Number(flowCfm), sizeOf(duct));
}

/** Our values of ducts by kind of published row. */
export const DUCT_KINDS: Readonly<Record<string, (key: string) => number>> = {
  "round equivalent": (key) => equivalentDiameterIn(sizeOf(key)),
  "duct friction": (key) => frictionOf(key).inPer100Ft,
  "duct velocity": (key) => frictionOf(key).equivalentFpm,
  "duct friction factor": (key) => frictionOf(key).factor,
  "duct loss": (key) => {
    const [flowCfm, duct, lengthFt] = key.split("/");
    return (frictionOf(`${flowCfm}/${duct}`).inPer100Ft * Number(lengthFt)) / 100;
  },
  "velocity at a rate": (key) => {
    const [flowCfm = NaN, rate = NaN] = key.split("/").map(Number);
    const diameterIn = roundForFrictionIn(flowCfm, rate);
    return flowCfm / ((Math.PI * diameterIn ** 2) / 4 / IN2_PER_FT2);
  },
  "noise velocity": (key) => {
    const [cover = "", criterion = ""] = key.split("/");
    return MAIN_NOISE_FPM[cover as DuctCover]?.[["25", "35", "45"].indexOf(criterion)] ?? NaN;
  },
  "noise of branches": () => BRANCH_NOISE_SHARE,
};
