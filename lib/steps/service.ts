import type {DeckState} from "../deck/deckResult.js";
import type {WalkingUse} from "../design/design.js";
import {ruptureModulusKsi} from "../materials/concrete.js";
import {STRAND_MODULUS_KSI} from "../materials/strand.js";
import {crackedInertiaIn4} from "../member/deflection.js";
import type {Member} from "../member/member.js";
import {LASTING_MULTIPLIER, SAG_LIMITS, creepSagIn} from "../member/sagLimit.js";
import {DYNAMIC_STIFFNESS, FADING_PER_HZ, GRAVITY, STRIP_WIDTH, WALKING, movingWeightPlf} from "../member/vibration.js";
import type {DeckFamily} from "../sections/shape.js";
import {given, type Step, type Working} from "../step.js";

/** Sag under live load: whole up to cracking, cracked beyond; and what creep adds where partitions stand. */
export function sagWorking(member: Member, spanFt: number, deck: DeckState): Working {
  const {criteria, midspan, deadStresses, service} = deck;
  const {full, section, compression, layout} = member;
  const {deflectionIn, uncrackedShare} = service.liveDeflection;
  const livePlf = deck.livePsf * member.widthFt;
  const f_r = ruptureModulusKsi(member.concrete);
  const f_d = deadStresses.bottomKsi;
  const crackingPlf = (1000 * Math.max(0, f_d + f_r) * full.sbIn3) / (1.5 * spanFt ** 2);
  const I = given(full.inertiaIn4, "in4", "second moment of the full section");
  const L = given(spanFt, "ft", "span");
  const E_c = given(member.modulusKsi, "ksi", "modulus of the member");
  const w_L = given(livePlf, "plf", "live load on the member");
  const w_cr = given(crackingPlf, "plf", "live load that cracks the soffit");
  const cracks = uncrackedShare < 1;
  const steps: Step[] = [{
    symbol: "w_cr", label: "live load that cracks the soffit", expression: "1000 * max(0, f_d + f_r) * S_bf / (1.5 * L^2)",
    values: {
      f_d: given(f_d, "ksi", "stress of the soffit under dead load, compression positive"), f_r: given(f_r, "ksi", "rupture modulus"),
      S_bf: given(full.sbIn3, "in3", "modulus of the full section"), L,
    },
    result: crackingPlf, unit: "plf", source: "ACI 318-19 24.2.3.9",
  }];
  if (cracks) {
    const I_cr = given(crackedInertiaIn4(member, midspan), "in4", "second moment of the cracked section");
    const depthIn = compression.depthIn - (section.ybIn - midspan.eccentricityIn);
    const n = STRAND_MODULUS_KSI / member.modulusKsi;
    steps.push({
      symbol: "I_cr", label: "second moment of the cracked section", expression: "min(I, n * A_ps * d_p^2 * (1 - 1.6 * sqrt(n * A_ps / (b * d_p))))",
      values: {
        I, n: given(n, "", "modulus of the strand over the member\u2019s"), A_ps: given(layout.areaIn2, "in2", "area of all strands"),
        d_p: given(depthIn, "in", "depth to the strands"), b: given(member.shape.widthIn, "in", "width"),
      },
      result: I_cr.value, unit: "in4", source: "PCI Design Handbook, 7th ed., 5.8 (from memory)",
    }, {
      symbol: "d_L", label: "immediate sag under live load", expression: "5 * 12^3 * L^4 / (384 * 1000 * E_c) * (w_cr / I + (w_L - w_cr) / I_cr)",
      values: {L, E_c, w_cr, I, w_L, I_cr}, result: deflectionIn, unit: "in", source: "ACI 318-19 24.2.3.9",
      note: "The load up to cracking bends the whole section, the rest the cracked one.",
    });
  } else {
    steps.push({
      symbol: "d_L", label: "immediate sag under live load", expression: "5 * 12^3 * L^4 * w_L / (384 * 1000 * E_c * I)",
      values: {L, w_L, E_c, I}, result: deflectionIn, unit: "in", source: "elastic theory", note: "The soffit does not crack, so the whole section bends.",
    });
  }
  const {spanOver, counts} = SAG_LIMITS[criteria.sagLimit];
  if (counts === "attached") steps.push(...attachedSteps(deck));
  steps.push({
    symbol: "a", label: "deflection that is allowed", expression: `12 * L / ${spanOver}`, values: {L},
    result: service.allowedMovementIn, unit: "in", source: "ACI 318-19 Table 24.2.2",
  });
  return {title: counts === "attached" ? "Movement after partitions are in" : "Sag under live load", steps};
}

function attachedSteps({camber, criteria, service}: DeckState): Step[] {
  const creepIn = creepSagIn(camber);
  return [
    {
      symbol: "c", label: "sag that creep still brings under dead load", expression: "max(0, d_3 + d_s - d_4)",
      values: {
        d_3: given(camber.toppedIn, "in", "camber right after topping"), d_s: given(camber.superimposedIn, "in", "sag under superimposed dead load"),
        d_4: given(camber.longTermIn, "in", "long-term camber"),
      },
      result: creepIn, unit: "in", source: "Martin 1977, multipliers",
    },
    {
      symbol: "d_m", label: "deflection that counts against the limit", expression: `c + d_L * (1 + ${LASTING_MULTIPLIER - 1} * k)`,
      values: {
        c: given(creepIn, "in", "sag that creep still brings"), d_L: given(service.liveDeflection.deflectionIn, "in", "immediate sag under live load"),
        k: given(criteria.sustainedLiveShare, "", "share of the live load that stays"),
      },
      result: service.movementIn, unit: "in", source: "ACI 318-19 Table 24.2.2",
    },
  ];
}

/** Natural frequency, and what a walker makes of it; without steps where nobody minds. */
export function walkingWorking(member: Member, spanFt: number, {criteria, service}: DeckState): Working {
  const title = "Vibration from walking";
  const {superimposedDeadPsf} = criteria;
  if (!service.vibration) return {title, steps: []};
  const walking = criteria.walking as WalkingUse;
  const {frequencyHz, massSagIn, movingWeightLb, acceleration} = service.vibration;
  const {walkerLb, damping, dailyLivePsf} = WALKING[walking];
  const weightPlf = movingWeightPlf(member, superimposedDeadPsf * member.widthFt, walking);
  const b = given(member.widthFt, "ft", "width of the member");
  const L = given(spanFt, "ft", "span");
  const w_v = given(weightPlf, "plf", "weight that swings");
  const source = "AISC Design Guide 11, 1997, Table 4.1 (from memory)";
  return {
    title,
    steps: [
      {
        symbol: "w_v", label: "weight that vibrates, per foot of member", expression: "w_m + b * (w_sd + w_d)",
        values: {
          w_m: given(member.selfWeightPlf + member.toppingWeightPlf, "plf", "weight of member and topping"), b,
          w_sd: given(superimposedDeadPsf, "psf", "superimposed dead load"), w_d: given(dailyLivePsf, "psf", "live load of an ordinary day"),
        },
        result: weightPlf, unit: "plf", source,
      },
      {
        symbol: "d_v", label: "deflection under that weight", expression: "5 * 12^3 * L^4 * w_v / (384 * 1000 * k_d * E_c * I)",
        values: {
          L, w_v, k_d: given(DYNAMIC_STIFFNESS, "", "stiffness in quick movement over that at rest"), E_c: given(member.modulusKsi, "ksi", "modulus of the member"),
          I: given(member.full.inertiaIn4, "in4", "second moment of the full section"),
        },
        result: massSagIn, unit: "in", source: "elastic theory",
      },
      {
        symbol: "f_n", label: "first natural frequency", expression: "0.18 * sqrt(g / d_v)",
        values: {g: given(GRAVITY, "in/s2", "gravity"), d_v: given(massSagIn, "in", "deflection under the weight that vibrates")},
        result: frequencyHz, unit: "Hz", source,
      },
      {
        symbol: "W", label: "weight of the strip that moves with a step", expression: "w_v / b * k_s * L * L",
        values: {w_v, b, k_s: given(STRIP_WIDTH[member.shape.family as DeckFamily], "", "width of the strip over the span"), L},
        result: movingWeightLb, unit: "lb", source: "PCI Design Handbook, 7th ed., ch. 12 (from memory)",
      },
      {
        symbol: "a_w", label: "acceleration by a walker, share of gravity", expression: `P_w * exp(-${FADING_PER_HZ} * f_n) / (beta * W)`,
        values: {
          P_w: given(walkerLb, "lb", "force of a walker"), f_n: given(frequencyHz, "Hz", "first natural frequency"),
          beta: given(damping, "", "damping, as a share of what would stop all swinging"), W: given(movingWeightLb, "lb", "weight of the strip that moves"),
        },
        result: acceleration, unit: "", source,
      },
    ],
  };
}
