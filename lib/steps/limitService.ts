import {cellOf} from "../deck/cell.js";
import {lastingPsf} from "../deck/loadOf.js";
import {servicePlaces, type ServicePlace} from "../deck/servicePlaces.js";
import {TENSION_COEFFICIENT, allowables} from "../member/allowables.js";
import {camber, sag} from "../member/camber.js";
import {CRACK_CONTROL_KSI, crackedStateAt} from "../member/crackedSection.js";
import {liveLoadForSagPlf} from "../member/deflection.js";
import {uniformMomentKipIn} from "../member/moments.js";
import {prestressState} from "../member/prestressState.js";
import {LASTING_MULTIPLIER, SAG_LIMITS, allowedSagIn, creepSagIn} from "../member/sagLimit.js";
import {IN_PER_FT} from "../units.js";
import {UNIT_MOMENT, allows, common, lasting, type LimitCase} from "./limitSteps.js";
import {given, type Step, type StepValue} from "../step.js";

/** Tension in the soffit under all load. */
export function tensionLimit(limit: LimitCase): Step[] {
  const {member, criteria} = limit;
  const {serviceTensionKsi} = allowables(member, criteria.tensionClass);
  const place = governing(limit, ({own, perPsf}) => (own.bottomKsi + serviceTensionKsi) / perPsf);
  const {b, L, s} = common(limit, place.state.share);
  return [
    ...ownStress(limit, place, "bottom"),
    {
      symbol: "f_t", label: "tension that the class allows", expression: "k * sqrt(f_cprime) / 1000",
      values: {
        k: given(TENSION_COEFFICIENT[criteria.tensionClass], "", `coefficient of class ${criteria.tensionClass}`),
        f_cprime: given(member.concrete.strengthPsi, "psi", "concrete strength"),
      },
      result: serviceTensionKsi, unit: "ksi", source: "ACI 318-19 24.5.2.1",
    },
    allows(limit, `(f_o + f_t) * S_bf / ${UNIT_MOMENT}`, {
      f_o: given(place.own.bottomKsi, "ksi", "stress before the superimposed load"), f_t: given(serviceTensionKsi, "ksi", "tension that the class allows"),
      S_bf: given(member.full.sbIn3, "in3", "modulus of the full section"), b, L, s,
    }),
  ];
}

/** Stretch of the strands of a member that may crack. */
export function crackLimit(limit: LimitCase): Step[] {
  const {member} = limit;
  const stretched = ({state}: ServicePlace) => crackedStateAt(member, state, CRACK_CONTROL_KSI.most).momentKipIn;
  const place = governing(limit, (one) => stretched(one) / one.perPsf);
  const {b, L, s, w_o} = common(limit, place.state.share);
  return [allows(limit, `M_c / ${UNIT_MOMENT} - w_o`, {
    M_c: given(stretched(place), "kip-in", `moment that stretches the strands by ${CRACK_CONTROL_KSI.most} ksi`), b, L, s, w_o,
  }, {note: "The moment is found on the cracked section, by trial of its neutral axis."})];
}

/** Compression in the top under all load, or under what stays of it. */
export function compressionLimit(limit: LimitCase): Step[] {
  const {member, criteria, name} = limit;
  const {full, composite} = member;
  const allowed = allowables(member, criteria.tensionClass);
  const sustained = name === "sustained compression";
  const mostKsi = sustained ? allowed.sustainedCompressionKsi : allowed.totalCompressionKsi;
  const toppingKsi = sustained ? allowed.toppingSustainedKsi : allowed.toppingTotalKsi;
  const topIn = composite ? composite.interfaceAboveCentroidIn : full.ytIn;
  const whole = (psf: number) => (sustained ? (lastingPsf(psf, criteria) ?? Infinity) : psf);
  const ofMember = ({own, perPsf}: ServicePlace) => (topIn > 0 ? ((mostKsi - own.topKsi) * full.inertiaIn4) / (perPsf * topIn) : Infinity);
  const ofTopping = ({perPsf}: ServicePlace) => (composite && toppingKsi ? (toppingKsi * composite.stIn3) / (composite.modularRatio * perPsf) : Infinity);
  const place = governing(limit, (one) => Math.min(ofMember(one), ofTopping(one)));
  const inTopping = whole(ofTopping(place)) < whole(ofMember(place));
  const {b, L, s} = common(limit, place.state.share);
  const f_c: StepValue = given(inTopping ? (toppingKsi as number) : mostKsi, "ksi", "compression that is allowed");
  const steps: Step[] = inTopping ? [] : ownStress(limit, place, "top");
  steps.push({
    symbol: "f_c", label: `compression that the ${inTopping ? "topping" : "member"} is allowed`, expression: `${sustained ? 0.45 : 0.6} * f_cprime / 1000`,
    values: {f_cprime: given(inTopping ? (member.topping?.concrete.strengthPsi ?? 0) : member.concrete.strengthPsi, "psi", "concrete strength")},
    result: f_c.value, unit: "ksi", source: "ACI 318-19 24.5.4.1",
  });
  const [expression, values]: [string, Step["values"]] = inTopping
    ? [`f_c * S_tt / (n * ${UNIT_MOMENT})`, {
      f_c, S_tt: given(composite?.stIn3 ?? 0, "in3", "modulus at the topping's top"), n: given(composite?.modularRatio ?? 1, "", "modulus of the topping over the member's"), b, L, s,
    }]
    : [`(f_c - f_o) * I_f / (y * ${UNIT_MOMENT})`, {
      f_c, f_o: given(place.own.topKsi, "ksi", "stress before the superimposed load"), I_f: given(full.inertiaIn4, "in4", "second moment of the full section"),
      y: given(topIn, "in", "top of the member above the centroid"), b, L, s,
    }];
  if (!sustained) return [...steps, allows(limit, expression, values)];
  const lastingLoadPsf = inTopping ? ofTopping(place) : ofMember(place);
  return [...steps, {symbol: "w_s", label: "lasting load at the limit", expression, values, result: lastingLoadPsf, unit: "psf", source: "elastic theory"}, lasting(limit, lastingLoadPsf)];
}

/** Sag under live load, with what creep adds once partitions stand. */
export function sagLimit(limit: LimitCase): Step[] {
  const {member, spanFt, criteria} = limit;
  const deadPlf = criteria.superimposedDeadPsf * member.widthFt;
  const shape = camber(member, spanFt, deadPlf);
  const {spanOver, counts} = SAG_LIMITS[criteria.sagLimit];
  const attached = counts === "attached";
  const allowedIn = allowedSagIn(criteria.sagLimit, spanFt);
  const creepIn = attached ? creepSagIn(shape) : 0;
  const {b, L, w_sd} = common(limit);
  const a = given(allowedIn, "in", "movement that is allowed");
  const c = given(creepIn, "in", "sag that creep still brings");
  const steps: Step[] = [{
    symbol: "a", label: "movement that is allowed", expression: `12 * L / ${spanOver}`, values: {L}, result: allowedIn, unit: "in", source: "ACI 318-19 Table 24.2.2",
  }];
  if (attached) steps.push({
    symbol: "c", label: "sag that creep still brings under dead load", expression: "max(0, d_3 + d_s - d_4)",
    values: {
      d_3: given(shape.toppedIn, "in", "camber right after topping"), d_s: given(shape.superimposedIn, "in", "sag under superimposed dead load"),
      d_4: given(shape.longTermIn, "in", "camber after years"),
    },
    result: creepIn, unit: "in", source: "Martin 1977, multipliers",
  });
  const roomIn = allowedIn - creepIn;
  if (roomIn <= 0) {
    return [...steps, allows(limit, `w_sd + (a - c) / (${LASTING_MULTIPLIER - 1} * k)`, {w_sd, a, c, k: sagPerPsf(limit)}, {note: "Creep under dead load alone uses the limit up."})];
  }
  const k = attached ? criteria.sustainedLiveShare : 0;
  const liveIn = k === 0 ? roomIn : roomIn / (1 + (LASTING_MULTIPLIER - 1) * k);
  const livePlf = liveLoadForSagPlf(member, spanFt, prestressState(member, spanFt, 0.5, deadPlf), deadPlf, liveIn);
  return [
    ...steps,
    {
      symbol: "d_L", label: "immediate sag that is left to live load", expression: attached ? `(a - c) / (1 + ${LASTING_MULTIPLIER - 1} * k)` : "a",
      values: attached ? {a, c, k: given(k, "", "share of the live load that stays")} : {a}, result: liveIn, unit: "in", source: "definition",
    },
    allows(limit, "w_sd + w_L / b", {w_sd, w_L: given(livePlf, "plf", "live load that sags so far"), b}, {
      note: "Up to cracking the whole section bends, beyond it the cracked one (ACI 318-19 24.2.3.9).",
    }),
  ];
}

/** Lasting load that leaves the member level. */
export function camberLimit(limit: LimitCase): Step[] {
  const {member, spanFt, criteria} = limit;
  const {longTermIn} = camber(member, spanFt, criteria.superimposedDeadPsf * member.widthFt);
  const k = sagPerPsf(limit);
  const lastingLoadPsf = criteria.superimposedDeadPsf + longTermIn / (LASTING_MULTIPLIER * k.value);
  return [
    {
      symbol: "w_s", label: "lasting load at the limit", expression: `w_sd + d_4 / (${LASTING_MULTIPLIER} * k)`,
      values: {w_sd: common(limit).w_sd, d_4: given(longTermIn, "in", "camber after years"), k}, result: lastingLoadPsf, unit: "psf", source: "Martin 1977, multipliers",
    },
    lasting(limit, lastingLoadPsf),
  ];
}

function sagPerPsf({member, spanFt}: LimitCase): StepValue {
  return given(sag(member.widthFt, spanFt * IN_PER_FT, member.modulusKsi, member.full.inertiaIn4), "in", "immediate sag by one psf");
}

/** The place where a measure is least. */
function governing({member, spanFt, criteria}: LimitCase, measure: (place: ServicePlace) => number): ServicePlace {
  const places = servicePlaces(cellOf(member, spanFt, criteria), allowables(member, criteria.tensionClass));
  return places.reduce((least, place) => (measure(place) < measure(least) ? place : least));
}

/** Stress of a face under prestress, member and topping. */
function ownStress(limit: LimitCase, {state, own}: ServicePlace, face: "bottom" | "top"): Step[] {
  const {member, spanFt} = limit;
  const {section} = member;
  const {b, L, s, w_o} = common(limit, state.share);
  const momentKipIn = uniformMomentKipIn(member.selfWeightPlf + member.toppingWeightPlf, spanFt, state.share);
  const modulus = face === "bottom" ? "S_b" : "S_t";
  return [
    {
      symbol: "P", label: "effective prestress force", expression: "A_ps * f_se",
      values: {A_ps: given(member.layout.areaIn2, "in2", "area of all strands"), f_se: given(state.losses.effectiveStressKsi, "ksi", "effective prestress")},
      result: state.effectiveForceKip, unit: "kip", source: "definition",
    },
    {
      symbol: "M_o", label: "moment of member and topping, on the member alone", expression: `w_o * ${UNIT_MOMENT}`, values: {w_o, b, L, s},
      result: momentKipIn, unit: "kip-in", source: "statics",
    },
    {
      symbol: "f_o", label: `stress of the ${face === "bottom" ? "soffit" : "member\u2019s top"} before the superimposed load, compression positive`,
      expression: face === "bottom" ? "P / A + (P * e - M_o) / S_b" : "P / A - (P * e - M_o) / S_t",
      values: {
        P: given(state.effectiveForceKip, "kip", "effective prestress force"), A: given(section.areaIn2, "in2", "area of the member"),
        e: given(state.eccentricityIn, "in", "strands below the centroid"), M_o: given(momentKipIn, "kip-in", "moment of member and topping"),
        [modulus]: given(face === "bottom" ? section.sbIn3 : section.stIn3, "in3", face === "bottom" ? "modulus of the member" : "modulus of the member at its top"),
      },
      result: face === "bottom" ? own.bottomKsi : own.topKsi, unit: "ksi", source: "elastic theory",
    },
  ];
}
