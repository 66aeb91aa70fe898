import {balancedSnow, type BalancedSnow} from "../../snow/balanced.js";
import {drift} from "../../snow/drift.js";
import {EXPOSURE_FACTOR, SNOW_IMPORTANCE, THERMAL_FACTOR} from "../../snow/factors.js";
import {rainLoadPsf} from "../../snow/rain.js";
import {combinedOfRoof, factoredOfRoof, greatestOfRoof} from "../../snow/roofCombinations.js";
import {LEAST_ROOF_LIVE_PSF, ROOF_LIVE_PSF, roofLive} from "../../snow/roofLive.js";
import {given, type Working} from "../../step.js";
import {balancedSnowWorking, driftWorking} from "../../steps/snow.js";
import type {Draw} from "../draw.js";
import type {Content, Earlier, Kind, Option} from "../item.js";
import {oneStep} from "../keys.js";
import {choicePart, numberAt, numberPart, slip} from "../parts.js";
import {measure, prose} from "../prose.js";

const TERRAINS = {B: "in a town or among trees", C: "on open land with scattered buildings", D: "by open water"} as const;
const EXPOSURES = {fully: "fully exposed", partly: "partly exposed", sheltered: "sheltered"} as const;
const THERMALS = {heated: "heated", cool: "kept just above freezing", unheated: "not heated", frozen: "kept below freezing"} as const;
const keys = <K extends string>(of: Readonly<Record<K, unknown>>) => Object.keys(of) as K[];

function balancedSteps(snow: BalancedSnow): Working["steps"] {
  return balancedSnowWorking({roofLoads: {snow, riseInPerFt: 0.25, eaveToRidgeFt: 50}}).steps;
}

/** Balanced snow on a flat roof, and the minimum for low slopes. */
function flatRoofSnow(draw: Draw): Content {
  const groundPsf = draw.from(15, 80, 1);
  const terrain = draw.one(keys(TERRAINS));
  const exposure = draw.one(keys(EXPOSURES));
  const thermal = draw.one(keys(THERMALS));
  const risk = draw.one(["II", "III", "IV"] as const);
  const exposureFactor = EXPOSURE_FACTOR[terrain][exposure] ?? 1;
  const thermalFactor = THERMAL_FACTOR[thermal];
  const importance = SNOW_IMPORTANCE[risk];
  const snow = balancedSnow({groundPsf, exposureFactor, thermalFactor, importance}, 0.25, 50);
  return {
    question: [
      prose`Snow on the ground weighs ${measure(groundPsf, "psf")}. A building of risk category ${risk} stands ${TERRAINS[terrain]} (surface roughness ${terrain}); its roof is nearly flat and ${EXPOSURES[exposure]}, and the space below it is ${THERMALS[thermal]}.`,
    ],
    givens: [
      {name: "ground snow load", value: groundPsf, unit: "psf"}, {name: "surface roughness", value: terrain, unit: ""}, {name: "exposure of the roof", value: EXPOSURES[exposure], unit: ""},
      {name: "space below", value: THERMALS[thermal], unit: ""}, {name: "risk category", value: risk, unit: ""},
    ],
    table: {
      title: "Factors of the snow load", columns: [{name: "factor", unit: ""}, {name: "where", unit: ""}, {name: "value", unit: ""}],
      rows: [
        ...keys(EXPOSURES).map((each) => ["C_e", `roughness ${terrain}, ${EXPOSURES[each]}`, EXPOSURE_FACTOR[terrain][each] ?? 1] as const),
        ...keys(THERMALS).map((each) => ["C_t", THERMALS[each], THERMAL_FACTOR[each]] as const),
        ...(["II", "III", "IV"] as const).map((each) => ["I_s", `risk category ${each}`, SNOW_IMPORTANCE[each]] as const),
      ], source: "ASCE 7-16 Tables 7.3-1, 7.3-2, 1.5-2",
    },
    parts: [
      numberPart({
        ask: prose`How much snow lies evenly on the roof?`, label: "balanced snow", unit: "psf", key: snow.flatPsf,
        slips: [
          slip("ground for roof", groundPsf, "That is what lies on the ground: the wind takes some of it off a roof."),
          slip("forgot the 0.7", snow.flatPsf / 0.7, "A flat roof keeps about seven tenths of what lies on the ground."),
          slip("forgot the importance", snow.flatPsf / importance, "Buildings that matter more get more snow: the importance factor multiplies it."),
          slip("forgot the exposure", snow.flatPsf / exposureFactor, "The wind takes more or less of it, by the exposure factor."),
          slip("forgot the heating", snow.flatPsf / thermalFactor, "A cold roof melts less: the thermal factor multiplies it."),
        ],
        working: {title: "Balanced snow", steps: balancedSteps(snow).slice(0, 1)},
      }),
      numberPart({
        ask: prose`What minimum must a roof of so low a slope carry in any case?`, label: "minimum snow", unit: "psf", key: snow.minimumPsf,
        slips: [
          slip("forgot the importance", Math.min(groundPsf, 20), "The importance factor multiplies the minimum too."),
          slip("not capped", importance * groundPsf, "From 20 psf of ground snow on, the minimum grows no further."),
          slip("took the factors of the roof", 0.7 * exposureFactor * thermalFactor * importance * Math.min(groundPsf, 20), "The minimum knows no exposure, no heating and no 0.7."),
        ],
        working: {title: "Minimum snow", steps: balancedSteps(snow).slice(1, 2)},
      }),
    ],
  };
}

/** The drift in the lee of a higher part. */
function snowDrift(draw: Draw): Content {
  const groundPsf = draw.from(25, 60, 1);
  const fetchFt = draw.from(60, 240, 10);
  const wallFt = draw.from(8, 24, 1);
  const roofFt = draw.from(60, 150, 10);
  const snow = balancedSnow({groundPsf, exposureFactor: 1, thermalFactor: 1, importance: 1}, 0.25, 50);
  const found = drift(snow, {kind: "leeward", fetchFt, wallFt, roofFt});
  const {steps} = driftWorking({snow}, found);
  const heightSteps = steps.filter(({symbol}) => symbol !== "w" && symbol !== "p_d");
  const deepest = (earlier: Earlier) => snow.flatPsf + snow.densityPcf * numberAt(earlier, 1);
  return {
    question: [
      prose`A roof ${measure(roofFt, "ft")} long lies at the foot of a part of the building that stands ${measure(wallFt, "ft")} higher and whose roof is ${measure(fetchFt, "ft")} long. The ground snow is ${measure(groundPsf, "psf")}; all factors are 1.`,
      prose`Wind off the higher roof drops a drift in its lee.`,
    ],
    givens: [{name: "ground snow load", value: groundPsf, unit: "psf"}, {name: "length of the higher roof", value: fetchFt, unit: "ft"}, {name: "height of the higher part", value: wallFt, unit: "ft"}, {name: "length of this roof", value: roofFt, unit: "ft"}],
    parts: [
      numberPart({
        ask: prose`What does a cubic foot of that snow weigh?`, label: "unit weight of the snow", unit: "pcf", key: snow.densityPcf,
        slips: [slip("forgot the 14", 0.13 * groundPsf, "Even light snow weighs 14 pcf, and more where much of it lies."), slip("no more than 14", 14, "It grows with the ground snow.")],
        working: {title: "Unit weight of the snow", steps: balancedSteps(snow).slice(2, 3)},
      }),
      numberPart({
        ask: prose`How high does the drift stand above the balanced snow?`, label: "height of the drift", unit: "ft", key: found.heightFt, tolerance: {percent: 3},
        slips: [
          slip("higher part for the drift", wallFt, "That is the higher part; the drift may be lower."),
          slip("this roof for the higher one", drift(snow, {kind: "leeward", fetchFt: roofFt, wallFt: 40, roofFt}).heightFt, "The snow of a leeward drift comes off the higher roof."),
          slip("windward for leeward", 0.75 * found.figure.heightFt, "Three quarters is for a drift that the wind builds against a wall."),
          slip("cube root for fourth root", 0.43 * fetchFt ** (1 / 3) * (groundPsf + 10) ** (1 / 3) - 1.5, "The ground snow enters by its fourth root."),
        ],
        working: {title: "Height of the drift", steps: heightSteps},
      }),
      numberPart({
        ask: prose`How much snow, drift and balanced, lies on the worst square foot?`, label: "deepest snow", unit: "psf", key: deepest,
        slips: (earlier) => [
          slip("drift alone", deepest(earlier) - snow.flatPsf, "The drift lies on top of the balanced snow."),
          slip("balanced alone", snow.flatPsf, "That is what lies evenly; the drift comes on top."),
          slip("ground snow for balanced", groundPsf + deepest(earlier) - snow.flatPsf, "On the roof lies seven tenths of the ground\u2019s snow."),
          slip("height for load", numberAt(earlier, 1) + snow.flatPsf, "The drift\u2019s height must be multiplied by its unit weight."),
        ],
        working: (earlier) => oneStep("Deepest snow", {
          symbol: "p", label: "snow on the worst square foot", expression: "p_f + gamma * h_x", unit: "psf", source: "ASCE 7-16 7.7.1", result: deepest(earlier),
          values: {p_f: given(snow.flatPsf, "psf", "balanced snow"), gamma: given(snow.densityPcf, "pcf", "unit weight"), h_x: given(numberAt(earlier, 1), "ft", "height of the drift")},
        }),
      }),
    ],
  };
}

/** Water that stands on a roof whose drains are blocked. */
function rainOnRoof(draw: Draw): Content {
  const staticIn = draw.from(1, 5, 0.125);
  const hydraulicIn = draw.from(0.5, 3, 0.125);
  const key = rainLoadPsf(staticIn, hydraulicIn);
  return {
    question: [prose`The drains of a roof are blocked. Water rises ${measure(staticIn, "in")} to the rim of the overflow, and stands ${measure(hydraulicIn, "in")} above it while it runs off in the design storm.`],
    givens: [{name: "depth up to the overflow", value: staticIn, unit: "in"}, {name: "water above the overflow", value: hydraulicIn, unit: "in"}],
    picture: {kind: "stack", layers: [{name: "up to the overflow", heightIn: staticIn}, {name: "above it", heightIn: hydraulicIn}]},
    parts: [numberPart({
      ask: prose`What does that water weigh on a square foot?`, label: "rain load", unit: "psf", key,
      slips: [
        slip("up to the overflow alone", rainLoadPsf(staticIn, 0), "While it runs off, the water stands higher than the rim."), slip("above the overflow alone", rainLoadPsf(0, hydraulicIn), "The water below the rim is there as well."),
        slip("feet for inches", 62.4 * (staticIn + hydraulicIn), "A cubic foot of water weighs 62.4 lb; an inch of it on a square foot a twelfth of that."), slip("inches for pounds", staticIn + hydraulicIn, "That is its depth; an inch weighs 5.2 psf."),
      ],
      working: oneStep("Rain load", {symbol: "R", label: "rain load", expression: "5.2 * (d_s + d_h)", unit: "psf", source: "ASCE 7-16 Eq. 8.3-1", result: key, values: {d_s: given(staticIn, "in", "depth up to the overflow"), d_h: given(hydraulicIn, "in", "water above the overflow")}}),
    })],
  };
}

/** Roof live load of an element, by its area. */
function roofLiveLoad(draw: Draw): Content {
  const widthFt = draw.from(8, 16, 1);
  const spanFt = draw.from(24, 60, 0.5);
  const areaFt2 = widthFt * spanFt;
  const {psf, areaFactor} = roofLive(areaFt2);
  return {
    question: [prose`A roof deck member is ${measure(widthFt, "ft")} wide and spans ${measure(spanFt, "ft")}. The roof is flat and used for nothing but its upkeep.`],
    givens: [{name: "width", value: widthFt, unit: "ft"}, {name: "span", value: spanFt, unit: "ft"}],
    parts: [numberPart({
      ask: prose`What roof live load is it designed for?`, label: "roof live load", unit: "psf", key: psf,
      slips: [
        slip("no reduction", ROOF_LIVE_PSF, "From 200 ft\u00b2 on, the roof live load may be reduced."), slip("reduced to the least", LEAST_ROOF_LIVE_PSF, "Only from 600 ft\u00b2 on is the least reached."),
        slip("a floor\u2019s formula", ROOF_LIVE_PSF * Math.max(0.5, Math.min(1, 0.25 + 15 / Math.sqrt(areaFt2))), "That is the formula for floors: a roof has its own."), slip("load for the factor", areaFactor, "That is the factor: it multiplies 20 psf."),
      ],
      working: {title: "Roof live load", steps: [
        {symbol: "R_1", label: "factor for the area", expression: "min(1, max(0.6, 1.2 - 0.001 * a * b))", unit: "", source: "ASCE 7-16 4.8.2", result: areaFactor, values: {a: given(widthFt, "ft", "width"), b: given(spanFt, "ft", "span")}},
        {symbol: "L_r", label: "roof live load", expression: "max(12, 20 * R_1)", unit: "psf", source: "ASCE 7-16 Eq. 4.8-1", result: psf, values: {R_1: given(areaFactor, "", "factor for the area")}},
      ]},
    })],
  };
}

const ROOF_WORDS = {Lr: "roof live load", S: "snow", R: "rain"} as const;

/** Which of roof live load, snow and rain governs with dead load. */
function roofGoverns(draw: Draw): Content {
  // Numbers of which no two combinations come to the same.
  const deadPsf = draw.from(41, 111, 2);
  const snowPsf = draw.from(9, 41, 2);
  const rainPsf = draw.from(8, 36, 4) + 0.5;
  const livePsf = draw.one([12, 14, 16, 18, 20]);
  const governing = greatestOfRoof(combinedOfRoof({D: deadPsf, L: 0, Lr: livePsf, S: snowPsf, R: rainPsf}, factoredOfRoof(false)));
  const {combination} = governing;
  const key = combination.kind ?? "D";
  return {
    question: [prose`A roof weighs ${measure(deadPsf, "psf")}. Besides, it may carry ${measure(livePsf, "psf")} of roof live load, ${measure(snowPsf, "psf")} of snow, or ${measure(rainPsf, "psf")} of rain, not at once.`],
    givens: [{name: "dead load", value: deadPsf, unit: "psf"}, {name: "roof live load", value: livePsf, unit: "psf"}, {name: "snow", value: snowPsf, unit: "psf"}, {name: "rain", value: rainPsf, unit: "psf"}],
    parts: [
      choicePart({
        ask: prose`Which governs its strength?`, key,
        options: [
          ...(["Lr", "S", "R"] as const).map((kind): Option => ({id: kind, text: [`dead load with ${ROOF_WORDS[kind]}`], slip: {name: "not the greatest", says: "Another combination comes to more."}})),
          {id: "D", text: ["dead load alone"], slip: {name: "dead load alone", says: "1.4 times dead load is less than 1.2 times it with 1.6 times the greatest of the others."}},
        ],
        because: prose`Dead load takes 1.4 alone, or 1.2 beside 1.6 on one of the others.`,
      }),
      numberPart({
        ask: prose`For what factored load?`, label: "factored load", unit: "psf", key: governing.psf, tolerance: {percent: 1},
        slips: [
          slip("all of them at once", 1.2 * deadPsf + 1.6 * (livePsf + snowPsf + rainPsf), "Roof live load, snow and rain do not come at once: one at a time."),
          slip("forgot the load factors", deadPsf + Math.max(livePsf, snowPsf, rainPsf), "That is without factors."),
          slip("one factor for both", 1.6 * (deadPsf + Math.max(livePsf, snowPsf, rainPsf)), "Dead load takes 1.2."),
        ],
        working: oneStep("Factored load of the roof", combination.kind
          ? {symbol: "p_u", label: "factored load", expression: "1.2 * D + 1.6 * Q", unit: "psf", source: "ASCE 7-16 2.3.1", result: governing.psf, values: {D: given(deadPsf, "psf", "dead load"), Q: given(Math.max(livePsf, snowPsf, rainPsf), "psf", "the greatest of roof live load, snow and rain")}}
          : {symbol: "p_u", label: "factored load", expression: "1.4 * D", unit: "psf", source: "ASCE 7-16 2.3.1", result: governing.psf, values: {D: given(deadPsf, "psf", "dead load")}}),
      }),
    ],
  };
}

export const SNOW_KINDS: readonly Kind[] = [
  {id: "flat-roof-snow", topic: "snow", level: 1, title: "Snow on a flat roof", make: flatRoofSnow},
  {id: "snow-drift", topic: "snow", level: 3, title: "The drift in the lee", make: snowDrift},
  {id: "rain-on-roof", topic: "snow", level: 1, title: "When the drains are blocked", make: rainOnRoof},
  {id: "roof-live-load", topic: "snow", level: 1, title: "Roof live load by area", make: roofLiveLoad},
  {id: "roof-governs", topic: "snow", level: 2, title: "Live load, snow or rain", make: roofGoverns},
];
