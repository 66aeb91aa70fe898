import type {Catalog} from "../../catalog.js";
import {sag} from "../../member/camber.js";
import {fireNeeds, fireRating} from "../../member/fire.js";
import {allowedSagIn} from "../../member/sagLimit.js";
import {DYNAMIC_STIFFNESS, GRAVITY, LEAST_FREQUENCY_HZ, frequencyOfSagHz, movingWeightPlf} from "../../member/vibration.js";
import {IN_PER_FT} from "../../units.js";
import {given, type Step, type StepValue} from "../../step.js";
import type {Draw} from "../draw.js";
import type {Content, Kind} from "../item.js";
import {oneStep} from "../keys.js";
import {choicePart, numberAt, numberPart, slip} from "../parts.js";
import {measure, prose} from "../prose.js";
import {article, catalogMember, planks, spanDrawn, stated, straightPattern, teeOnSpan} from "./ground.js";

/** 5 w L^4 / (384 E I) with its units. */
function sagStep(symbol: string, label: string, result: number, values: {readonly w: StepValue; readonly L: StepValue; readonly E: StepValue; readonly I: StepValue}): Step {
  return {symbol, label, expression: "5 * (w / 12000) * (12 * L)^4 / (384 * E * I)", unit: "in", source: "elastic theory", result, values};
}

/** Sag under live load against the limit. */
function liveSag(draw: Draw, catalog: Catalog): Content {
  const livePsf = draw.from(40, 100, 5);
  const {row, spanFt, toppingIn, member} = teeOnSpan(draw, catalog, "field-topped");
  const {widthFt, modulusKsi, full} = member;
  const livePlf = livePsf * widthFt;
  const inertiaIn4 = stated(full.inertiaIn4, 0);
  const key = sag(livePlf, spanFt * IN_PER_FT, modulusKsi, inertiaIn4);
  const allowedIn = allowedSagIn("L/360", spanFt);
  return {
    question: [
      prose`${article(row.designation, "A")} ${row.designation} with ${measure(toppingIn, "in")} of topping, ${measure(widthFt, "ft")} wide, spans ${measure(spanFt, "ft")} under ${measure(livePsf, "psf")} of live load. It stays uncracked.`,
      prose`With its topping its second moment of area is ${measure(inertiaIn4, "in4")}; its modulus is ${measure(stated(modulusKsi, 0), "ksi")}.`,
    ],
    givens: [{name: "span", value: spanFt, unit: "ft"}, {name: "width", value: widthFt, unit: "ft"}, {name: "live load", value: livePsf, unit: "psf"}, {name: "second moment of area", value: inertiaIn4, unit: "in4"}, {name: "modulus", value: stated(modulusKsi, 0), unit: "ksi"}],
    picture: {kind: "beam", spanFt, uniform: [{name: "live load", plf: livePlf}], points: []},
    parts: [
      numberPart({
        ask: prose`How far does it sag at midspan under the live load?`, label: "sag", unit: "in", key, tolerance: {percent: 3},
        slips: [
          slip("forgot the width", key / widthFt, "The live load is on a square foot: the tee carries as many of them side by side as it is wide in feet."),
          slip("feet for inches", key / 12 ** 3, "Load, span and section must all be in inches and kips."),
          slip("span in feet", key / 12 ** 4, "The span must be in inches, as the second moment is."),
          slip("fixed ends", key / 5, "Its ends turn freely: 5/384, not 1/384."),
        ],
        working: oneStep("Sag under live load", sagStep("d_L", "sag under live load", key, {w: given(livePlf, "plf", "live load on a foot of the tee"), L: given(spanFt, "ft", "span"), E: given(modulusKsi, "ksi", "modulus"), I: given(inertiaIn4, "in4", "second moment of area")})),
      }),
      numberPart({
        ask: prose`How far may it, by L/360?`, label: "allowed sag", unit: "in", key: allowedIn,
        slips: [slip("feet for inches", spanFt / 360, "That is in feet."), slip("L/480", allowedSagIn("L/480", spanFt), "L/480 is for what happens after partitions are attached."), slip("L/240", allowedSagIn("L/240", spanFt), "L/240 is for what happens after partitions are attached.")],
        working: oneStep("Allowed sag", {symbol: "a", label: "deflection that is allowed", expression: "12 * L / 360", unit: "in", source: "ACI 318-19 Table 24.2.2", result: allowedIn, values: {L: given(spanFt, "ft", "span")}}),
      }),
      choicePart({
        ask: prose`Is it stiff enough?`, key: (earlier) => (numberAt(earlier, 0) <= numberAt(earlier, 1) ? "yes" : "no"),
        options: [
          {id: "yes", text: ["yes"], slip: {name: "took more for less", says: "By your numbers it sags further than it may."}},
          {id: "no", text: ["no"], slip: {name: "took less for more", says: "By your numbers it sags less than it may."}},
        ],
      }),
    ],
  };
}

/** First natural frequency by the sag of the mass. */
function floorFrequency(draw: Draw, catalog: Catalog): Content {
  const deadPsf = draw.from(5, 25, 1);
  const {row, spanFt, toppingIn, member} = teeOnSpan(draw, catalog, "field-topped");
  const weightPlf = stated(movingWeightPlf(member, deadPsf * member.widthFt, "quiet"), 0);
  const inertiaIn4 = stated(member.full.inertiaIn4, 0);
  const modulusKsi = stated(DYNAMIC_STIFFNESS * member.modulusKsi, 0);
  const massSagIn = sag(weightPlf, spanFt * IN_PER_FT, modulusKsi, inertiaIn4);
  return {
    question: [
      prose`On an ordinary day a foot of ${article(row.designation)} ${row.designation} with ${measure(toppingIn, "in")} of topping and ${measure(deadPsf, "psf")} of finishes weighs ${measure(weightPlf, "plf")}. It spans ${measure(spanFt, "ft")}.`,
      prose`Its second moment of area is ${measure(inertiaIn4, "in4")}; for quick small movements its modulus is ${measure(modulusKsi, "ksi")}. Gravity is ${measure(GRAVITY, "in/s\u00b2")}.`,
    ],
    givens: [{name: "weight that moves", value: weightPlf, unit: "plf"}, {name: "span", value: spanFt, unit: "ft"}, {name: "second moment of area", value: inertiaIn4, unit: "in4"}, {name: "modulus for quick movements", value: modulusKsi, unit: "ksi"}, {name: "finishes", value: deadPsf, unit: "psf"}],
    parts: [
      numberPart({
        ask: prose`How far would that weight make it sag?`, label: "sag of the mass", unit: "in", key: massSagIn, tolerance: {percent: 3},
        slips: [slip("feet for inches", massSagIn / 12 ** 3, "Load, span and section must all be in inches and kips."), slip("fixed ends", massSagIn / 5, "Its ends turn freely: 5/384, not 1/384."), slip("span not to the fourth power", massSagIn / (12 * spanFt), "The sag grows with the fourth power of the span.")],
        working: oneStep("Sag of the mass", sagStep("d_m", "sag of the mass that moves", massSagIn, {w: given(weightPlf, "plf", "weight that moves"), L: given(spanFt, "ft", "span"), E: given(modulusKsi, "ksi", "modulus for quick movements"), I: given(inertiaIn4, "in4", "second moment of area")})),
      }),
      numberPart({
        ask: prose`At what frequency does it swing by itself?`, label: "frequency", unit: "Hz", key: (earlier) => frequencyOfSagHz(Math.max(1e-6, numberAt(earlier, 0))),
        slips: (earlier) => {
          const sagIn = Math.max(1e-6, numberAt(earlier, 0));
          const hz = frequencyOfSagHz(sagIn);
          return [slip("forgot the root", 0.18 * (GRAVITY / sagIn), "The frequency goes with the root of gravity over sag."), slip("cycles for radians", hz / 0.18, "That is without the 0.18, which makes cycles a second of it."), slip("gravity in feet", hz / Math.sqrt(12), "Gravity must be in inches, as the sag is.")];
        },
        working: (earlier) => oneStep("First natural frequency", {
          symbol: "f", label: "first natural frequency", expression: "0.18 * sqrt(g / d_m)", unit: "Hz", source: "AISC Design Guide 11, 1997, 2.2 (from memory)", result: frequencyOfSagHz(Math.max(1e-6, numberAt(earlier, 0))),
          values: {g: given(GRAVITY, "in/s2", "gravity"), d_m: given(Math.max(1e-6, numberAt(earlier, 0)), "in", "sag of the mass that moves")},
        }),
      }),
      choicePart({
        ask: prose`Below ${measure(LEAST_FREQUENCY_HZ, "Hz")} one person alone can set a floor swinging. Is it above that?`, key: (earlier) => (numberAt(earlier, 1) >= LEAST_FREQUENCY_HZ ? "yes" : "no"),
        options: [{id: "yes", text: ["yes"], slip: {name: "took less for more", says: "Your frequency is lower than that."}}, {id: "no", text: ["no"], slip: {name: "took more for less", says: "Your frequency is higher than that."}}],
      }),
    ],
  };
}

const AGGREGATES = ["siliceous", "carbonate"] as const;

/** Least topping that holds back the heat of a fire, from the code's table. */
function fireThickness(draw: Draw, catalog: Catalog): Content {
  const row = draw.one(planks(catalog));
  const hours = draw.one([1, 1.5, 2, 3]);
  const aggregate = draw.one(AGGREGATES);
  const toppingIn = draw.from(2, 4, 0.25);
  const spanFt = spanDrawn(draw, row);
  const member = catalogMember(catalog, row, straightPattern(draw, row), toppingIn);
  const setting = {tables: catalog.fire, aggregate, restrained: false};
  const {thicknessIn} = fireRating(member, setting);
  const needIn = fireNeeds(member, setting, hours).thicknessIn ?? 0;
  const areaIn2 = stated(member.section.areaIn2, 0);
  const {widthIn, depthIn} = member.shape;
  const other = aggregate === "siliceous" ? "carbonate" : "siliceous";
  return {
    question: [
      prose`${article(row.designation, "A")} ${row.designation} has ${measure(areaIn2, "in2")} of concrete in a width of ${measure(widthIn, "in")} and a depth of ${measure(depthIn, "in")}; ${measure(toppingIn, "in")} of topping lies on it, and it spans ${measure(spanFt, "ft")}. Its aggregate is ${aggregate}.`,
      prose`A plank counts with its concrete spread level over its width. The floor is to hold back a fire for ${measure(hours, "h")}.`,
    ],
    givens: [{name: "area", value: areaIn2, unit: "in2"}, {name: "width", value: widthIn, unit: "in"}, {name: "depth", value: depthIn, unit: "in"}, {name: "topping", value: toppingIn, unit: "in"}, {name: "aggregate", value: aggregate, unit: ""}, {name: "required rating", value: hours, unit: "h"}, {name: "span", value: spanFt, unit: "ft"}],
    table: {
      title: "Minimum thickness of slab", columns: [{name: "rating", unit: "h"}, ...AGGREGATES.map((name) => ({name, unit: "in"}))],
      rows: catalog.fire.slabs.map((each) => [each.hours, ...AGGREGATES.map((name) => each.thicknessIn[name])]), source: "IBC 2021 Table 722.2.2.1",
    },
    parts: [
      numberPart({
        ask: prose`How thick a slab is the floor worth?`, label: "equivalent thickness", unit: "in", key: thicknessIn, tolerance: {percent: 1},
        slips: [
          slip("gross for net", depthIn + toppingIn, "That is its whole depth: the voids hold back no heat, so its concrete is spread level."),
          slip("forgot the topping", thicknessIn - toppingIn, "The topping holds back heat as well."),
          slip("topping alone", toppingIn, "The plank holds back heat as well."),
        ],
        working: oneStep("Equivalent thickness", {symbol: "t_e", label: "equivalent thickness", expression: "A / b + t", unit: "in", source: "IBC 2021 722.2.2.1.1", result: thicknessIn, values: {A: given(member.section.areaIn2, "in2", "area"), b: given(widthIn, "in", "width"), t: given(toppingIn, "in", "topping")}}),
      }),
      numberPart({
        ask: prose`How thick must it be for that rating?`, label: "required thickness", unit: "in", key: needIn, tolerance: {percent: 1},
        slips: [
          slip("the other aggregate", catalog.fire.slabs.find((each) => each.hours === hours)?.thicknessIn[other] ?? 0, `That is the column of ${other} aggregate.`),
          ...catalog.fire.slabs.filter((each) => each.hours !== hours).map((each) => slip("read another row", each.thicknessIn[aggregate], `That is the row of ${each.hours} h.`)),
        ],
        because: prose`The row of ${measure(hours, "h")}, the column of ${aggregate} aggregate.`,
      }),
      choicePart({
        ask: prose`Does it hold back the heat so long?`, key: (earlier) => (numberAt(earlier, 0) >= numberAt(earlier, 1) ? "yes" : "no"),
        options: [{id: "yes", text: ["yes"], slip: {name: "took thinner for thicker", says: "By your numbers it is thinner than it must be."}}, {id: "no", text: ["no"], slip: {name: "took thicker for thinner", says: "By your numbers it is as thick as it must be."}}],
      }),
    ],
  };
}

export const SERVICE_KINDS: readonly Kind[] = [
  {id: "live-sag", topic: "limits", level: 2, title: "Stiff enough under live load", make: liveSag},
  {id: "floor-frequency", topic: "limits", level: 2, title: "At what frequency a floor swings", make: floorFrequency},
  {id: "fire-thickness", topic: "limits", level: 2, title: "Thick enough to hold back a fire", make: fireThickness},
];
