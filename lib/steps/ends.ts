import type {DeckState} from "../deck/deckResult.js";
import {developedStressKsi, developmentOf} from "../member/development.js";
import type {Member} from "../member/member.js";
import {memberStrength} from "../member/strength.js";
import {TOP_STEEL_STRESS_KSI, pulledBands} from "../member/topSteel.js";
import type {TransferStress} from "../member/transfer.js";
import {JACKING_STRESS_KSI} from "../prestress/losses.js";
import {holdDownShare} from "../prestress/layout.js";
import {IN_PER_FT} from "../units.js";
import {given, type Step, type Working} from "../step.js";

/** How strands take hold: transfer and development length, and the stress that they reach where development is used most. */
export function developmentWorking(member: Member, spanFt: number, {midspan, service}: DeckState): Working {
  const {layout} = member;
  const {diameterIn} = layout.strand;
  const fse = midspan.losses.effectiveStressKsi;
  const developed = memberStrength(member, 0.5, fse);
  const fps = developed.compressionKip / layout.areaIn2;
  const {transferIn, developmentIn} = developmentOf(fse, fps, diameterIn);
  const {share} = service.development;
  const distanceIn = Math.min(share, 1 - share) * spanFt * IN_PER_FT;
  const f_se = given(fse, "ksi", "effective prestress");
  const f_ps = given(fps, "ksi", "stress in the strands at nominal strength");
  const d_b = given(diameterIn, "in", "strand diameter");
  const l_t = given(transferIn, "in", "transfer length");
  const x = given(distanceIn, "in", "distance from the end");
  // Stryker disable next-line EqualityOperator: at the transfer length both expressions give the effective prestress
  const within = distanceIn < transferIn;
  return {
    title: "How the strands develop",
    steps: [
      {symbol: "l_t", label: "transfer length", expression: "f_se / 3 * d_b", values: {f_se, d_b}, result: transferIn, unit: "in", source: "ACI 318-19 25.4.8.1"},
      {
        symbol: "f_ps", label: "stress in the strands at nominal strength", expression: "T / A_ps",
        values: {T: given(developed.compressionKip, "kip", "tension in the strands at midspan"), A_ps: given(layout.areaIn2, "in2", "area of all strands")},
        result: fps, unit: "ksi", source: "ACI 318-19 22.2",
      },
      {
        symbol: "l_d", label: "development length", expression: "l_t + max(0, f_ps - f_se) * d_b", values: {l_t, f_ps, f_se, d_b},
        result: developmentIn, unit: "in", source: "ACI 318-19 25.4.8.1",
      },
      {
        symbol: "f_x", label: "stress that bond can develop where development is used most",
        expression: within ? "f_se * x / l_t" : "f_se + (x - l_t) / d_b", values: within ? {f_se, x, l_t} : {f_se, x, l_t, d_b},
        result: developedStressKsi(distanceIn, fse, diameterIn), unit: "ksi", source: "ACI 318-19 R25.4.8.3",
      },
    ],
  };
}

/** The place at which the tension of the top is greatest as the strands are cut; undefined where it is in compression everywhere. */
export function mostPulledTop({transfer}: Pick<DeckState, "transfer">): TransferStress | undefined {
  // Stryker disable next-line EqualityOperator: of two alike either may be told
  const place = transfer.places.reduce((most, one) => (one.topSteelIn2 > most.topSteelIn2 ? one : most));
  return place.topSteelIn2 > 0 ? place : undefined;
}

/** Bars that take the tension of the top as the strands are cut; without steps where the top is in compression. */
export function topSteelWorking(member: Member, deck: Pick<DeckState, "transfer">): Working {
  const place = mostPulledTop(deck);
  if (!place) return {title: "Steel in the top as the strands are cut", steps: []};
  const {topKsi, bottomKsi} = place.stresses;
  const bands = pulledBands(member, place.stresses);
  const [{fromIn: zeroIn}] = bands as [(typeof bands)[number]];
  // The strands press the section as a whole, so where its top is pulled its soffit is pressed.
  const steps: Step[] = [{
    symbol: "y_0", label: "height at which compression turns to tension", expression: "h * f_b / (f_b - f_t)",
    values: {
      h: given(member.section.depthIn, "in", "depth of the member"), f_b: given(bottomKsi, "ksi", "stress of the soffit, compression positive"),
      f_t: given(topKsi, "ksi", "stress of the top, compression positive"),
    },
    result: zeroIn, unit: "in", source: "plane sections",
  }];
  bands.forEach((band, i) => steps.push({
    symbol: `T_${i + 1}`, label: `tension between ${band.fromIn.toFixed(1)} and ${band.toIn.toFixed(1)} in above the soffit`,
    expression: "(y_2 - y_1) / 6 * (t_1 * b_1 + (t_1 + t_2) * (b_1 + b_2) + t_2 * b_2)",
    values: {
      y_1: given(band.fromIn, "in", "lower edge of the band in tension"), y_2: given(band.toIn, "in", "upper edge of the band in tension"),
      t_1: given(band.tensionFromKsi, "ksi", "tension at the lower edge"), t_2: given(band.tensionToKsi, "ksi", "tension at the upper edge"),
      b_1: given(band.widthFromIn, "in", "width at the lower edge"), b_2: given(band.widthToIn, "in", "width at the upper edge"),
    },
    result: band.pullKip, unit: "kip", source: "Simpson\u2019s rule, exact here",
  }));
  const pulls = bands.map((_, i) => `T_${i + 1}`);
  steps.push({
    symbol: "A_s", label: `steel in the top, ${place.place === "end" ? "at the end" : `at ${place.place === "midspan" ? "midspan" : "the hold-down"}`}`,
    expression: `(${pulls.join(" + ")}) / f_s`,
    values: {...Object.fromEntries(bands.map((band, i) => [`T_${i + 1}`, given(band.pullKip, "kip", "pull")])), f_s: given(TOP_STEEL_STRESS_KSI, "ksi", "stress that the bars may take")},
    result: place.topSteelIn2, unit: "in2", source: "ACI 318-19 24.5.3.2.1",
  });
  return {title: "Steel in the top as the strands are cut", steps};
}

/** Pull of depressed strands on their hold-downs; without steps for straight strands. */
export function holdDownWorking(member: Member, spanFt: number, {service}: DeckState): Working {
  const title = "Uplift at a hold-down";
  const {layout, shape} = member;
  const {holdDown} = service;
  if (!holdDown) return {title, steps: []};
  const stems = Math.max(1, shape.webCentersIn.length);
  return {
    title,
    steps: [
      {
        symbol: "t", label: "slope of the strands", expression: "(y_e - y_c) / (12 * k * L)",
        values: {
          y_e: given(layout.centroidEndIn, "in", "strands above the soffit at the end"), y_c: given(layout.centroidCenterIn, "in", "strands above the soffit between the hold-downs"),
          k: given(holdDownShare(layout.profile), "", "hold-down as a share of the span"), L: given(spanFt, "ft", "span"),
        },
        result: holdDown.slope, unit: "", source: "geometry",
      },
      {
        symbol: "H", label: "uplift at each hold-down of a stem", expression: `${holdDown.points === 1 ? "2 * " : ""}A_ps * f_pj * abs(t) / sqrt(1 + t^2) / n_s`,
        values: {
          A_ps: given(layout.areaIn2, "in2", "area of all strands"), f_pj: given(JACKING_STRESS_KSI, "ksi", "jacking stress"),
          t: given(holdDown.slope, "", "slope of the strands"), n_s: given(stems, "", "stems"),
        },
        result: holdDown.forcePerStemKip, unit: "kip", source: "statics",
        note: holdDown.points === 1 ? "At a single point the strands pull from both sides." : undefined,
      },
    ],
  };
}
