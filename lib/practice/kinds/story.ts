import type {Catalog} from "../../catalog.js";
import {ductVelocityFpm, GREATEST_VELOCITY_FPM, type DuctSize} from "../../air/ducts.js";
import {rampOf} from "../../parking/ramp.js";
import {USUAL_AISLE_IN, stallGeometry} from "../../parking/stall.js";
import {storyStack} from "../../story/stack.js";
import {given, type Working} from "../../step.js";
import {rampWorking} from "../../steps/parking.js";
import {storyWorking} from "../../steps/story.js";
import {feet} from "../../units.js";
import type {Draw} from "../draw.js";
import type {Content, Earlier, Kind, Option} from "../item.js";
import {oneStep} from "../keys.js";
import {choicePart, numberAt, numberPart, slip} from "../parts.js";
import {measure, prose} from "../prose.js";
import {designWith, shapeNamed, tees} from "./ground.js";

/** What is left of a story for the room. */
function ceilingHeight(draw: Draw, catalog: Catalog): Content {
  const floorToFloorFt = draw.from(12, 16, 0.25);
  const ledgeDepthIn = draw.from(8, 16, 1);
  const upstandIn = draw.from(6, 36, 3);
  const finishIn = draw.from(0.5, 4, 0.5);
  const row = draw.one(tees(catalog, "field-topped"));
  const toppingIn = draw.from(2, 3, 0.5);
  const design = designWith({story: {floorToFloorFt, finishIn, ceiling: "flush", frameIn: 2}, edgeBeam: {ledgeDepthIn, upstandIn, kind: "ledge"}});
  const deckIn = shapeNamed(catalog, row.designation).depthIn + toppingIn;
  const story = storyStack(design, deckIn);
  const {steps} = storyWorking({design, story});
  return {
    question: [
      prose`A story is ${measure(floorToFloorFt, "ft")} from floor to floor. Its deck is ${row.designation} with ${measure(toppingIn, "in")} of topping, the edge beam\u2019s ledge hangs ${measure(ledgeDepthIn, "in")} below it, and the ceiling is flush with the ledge\u2019s underside.`,
      prose`The floor finish takes ${measure(finishIn, "in")}, the upstand rises ${measure(upstandIn, "in")} above the topping, and window frames take ${measure(2, "in")} at sill and head.`,
    ],
    givens: [{name: "floor to floor", value: floorToFloorFt, unit: "ft"}, {name: "deck", value: row.designation, unit: ""}, {name: "topping", value: toppingIn, unit: "in"}, {name: "ledge", value: ledgeDepthIn, unit: "in"}, {name: "finish", value: finishIn, unit: "in"}, {name: "upstand", value: upstandIn, unit: "in"}],
    picture: {kind: "stack", layers: [{name: "floor finish", heightIn: finishIn}, {name: "room", heightIn: Math.max(0, story.ceilingHeightIn), asked: true}, {name: "ledge", heightIn: ledgeDepthIn}, {name: row.designation, heightIn: deckIn - toppingIn}, {name: "topping", heightIn: toppingIn}]},
    parts: [
      numberPart({
        ask: prose`How high is the ceiling above the finished floor?`, label: "ceiling height", unit: "in", key: story.ceilingHeightIn, tolerance: {percent: 0.4},
        slips: [
          slip("height under the deck", story.clearUnderDeckIn, "That is the height under the deck: the ceiling hangs lower than that."), slip("forgot the finish", story.ceilingHeightIn + finishIn, "The floor finish takes its share."),
          slip("forgot the topping", story.ceilingHeightIn + toppingIn, "The topping is part of the deck\u2019s depth."), slip("feet for inches", feet(story.ceilingHeightIn), "That is in feet."),
        ],
        working: {title: "Ceiling", steps: steps.slice(0, 1)},
      }),
      numberPart({
        ask: prose`How high is the glass?`, label: "height of the glass", unit: "in", key: story.glassIn, tolerance: {within: 0.3},
        slips: [
          slip("forgot the frames", story.glassIn + 4, "Frames at sill and head take their share."), slip("one frame", story.glassIn + 2, "There is a frame at the head as well as at the sill."), slip("forgot the upstand", story.glassIn + story.sillIn, "Below the glass stands the upstand."),
          slip("upstand above the finish", story.glassIn - Math.min(finishIn, upstandIn), "The upstand is measured from the topping: the finish hides a part of it."),
        ],
        working: {title: "Glass", steps: steps.slice(1)},
      }),
    ],
  };
}

/** The story that a ceiling takes. */
function storyForCeiling(draw: Draw, catalog: Catalog): Content {
  const ceilingFt = draw.from(8.5, 12, 0.25);
  const ledgeDepthIn = draw.from(8, 16, 1);
  const dropIn = draw.from(8, 24, 1);
  const row = draw.one(tees(catalog, "field-topped"));
  const toppingIn = draw.from(2, 3, 0.5);
  const stories = draw.from(3, 8, 1);
  const at = (floorToFloorFt: number) => storyStack(designWith({story: {floorToFloorFt, finishIn: 0, ceiling: "below", ceilingDropIn: dropIn, frameIn: 2}, edgeBeam: {ledgeDepthIn, kind: "ledge"}}), deckIn);
  const deckIn = shapeNamed(catalog, row.designation).depthIn + toppingIn;
  // What floor, deck, ledge and ducts take of a story is the same in every story.
  const takenIn = 168 - at(14).ceilingHeightIn;
  const key = ceilingFt + feet(takenIn);
  return {
    question: [prose`A ceiling of ${measure(ceilingFt, "ft")} is wanted on each of ${stories} stories. The deck is ${row.designation} with ${measure(toppingIn, "in")} of topping, the ledge hangs ${measure(ledgeDepthIn, "in")} below it, and ducts need ${measure(dropIn, "in")} more below the ledge. The floor has no finish.`],
    givens: [{name: "ceiling", value: ceilingFt, unit: "ft"}, {name: "stories", value: stories, unit: ""}, {name: "deck", value: row.designation, unit: ""}, {name: "topping", value: toppingIn, unit: "in"}, {name: "ledge", value: ledgeDepthIn, unit: "in"}, {name: "ducts below the ledge", value: dropIn, unit: "in"}],
    parts: [
      numberPart({
        ask: prose`What floor-to-floor height does that take?`, label: "floor-to-floor height", unit: "ft", key, tolerance: {percent: 0.5},
        slips: [slip("forgot the ducts", key - feet(dropIn), "Ducts take their height as well."), slip("forgot the ledge", key - feet(ledgeDepthIn), "The ledge hangs below the deck."), slip("forgot the topping", key - feet(toppingIn), "The topping is part of the deck\u2019s depth."), slip("inches as feet\u2019s tenths", ceilingFt + takenIn / 10, "There are twelve inches to a foot.")],
        working: oneStep("Floor-to-floor height", {
          symbol: "h_f", label: "floor-to-floor height", expression: "h_c + (h_m + t + h_l + s) / 12", unit: "ft", source: "geometry", result: key,
          values: {h_c: given(ceilingFt, "ft", "ceiling"), h_m: given(deckIn - toppingIn, "in", "deck member"), t: given(toppingIn, "in", "topping"), h_l: given(ledgeDepthIn, "in", "ledge"), s: given(dropIn, "in", "ducts below the ledge")},
        }),
      }),
      numberPart({
        ask: prose`How much lower is the whole building if the ducts run between the stems and need nothing below the ledge?`, label: "height saved", unit: "ft", key: stories * feet(dropIn), tolerance: {percent: 1},
        slips: [slip("one story only", feet(dropIn), "Every story is lower by as much."), slip("inches for feet", stories * dropIn, "That is in inches."), slip("one story less", (stories - 1) * feet(dropIn), "Each of the stories has its ducts.")],
        working: oneStep("Height saved", {symbol: "H", label: "height saved", expression: "n * s / 12", unit: "ft", source: "geometry", result: stories * feet(dropIn), values: {n: given(stories, "", "stories"), s: given(dropIn, "in", "ducts below the ledge")}}),
      }),
    ],
  };
}

/** Air and velocity in a main. */
function ductVelocity(draw: Draw): Content {
  const floorFt2 = draw.from(1000, 3500, 100);
  const cfmPerFt2 = draw.from(0.7, 1.2, 0.1);
  const widthIn = draw.from(20, 36, 2);
  const depthIn = draw.from(10, 16, 2);
  const flow = floorFt2 * cfmPerFt2;
  const velocity = (cfm: number) => ductVelocityFpm(Math.min(2e7, Math.max(1, cfm)), {kind: "rectangular", widthIn, depthIn});
  return {
    question: [prose`A main serves ${measure(floorFt2, "ft2")} of floor with ${measure(cfmPerFt2, "cfm/ft2")} of air. Inside its insulation it measures ${measure(widthIn, "in")} by ${measure(depthIn, "in")}.`],
    givens: [{name: "floor", value: floorFt2, unit: "ft2"}, {name: "air for a square foot", value: cfmPerFt2, unit: "cfm/ft2"}, {name: "width inside", value: widthIn, unit: "in"}, {name: "depth inside", value: depthIn, unit: "in"}],
    parts: [
      numberPart({ask: prose`How much air does it carry?`, label: "air flow", unit: "cfm", key: flow, slips: [slip("floor for flow", floorFt2, "That is the floor: multiply it by the air for each square foot."), slip("divided for multiplied", floorFt2 / cfmPerFt2, "Each square foot adds its air: multiply.")], working: oneStep("Air flow", {symbol: "Q", label: "air of the main", expression: "q * A", unit: "cfm", source: "common practice", result: flow, values: {q: given(cfmPerFt2, "cfm/ft2", "air for a square foot"), A: given(floorFt2, "ft2", "floor served")}})}),
      numberPart({
        ask: prose`How fast does it move?`, label: "velocity", unit: "ft/min", key: (earlier) => velocity(numberAt(earlier, 0)),
        slips: (earlier) => [slip("inches for feet", velocity(numberAt(earlier, 0)) / 144, "The area must be in square feet."), slip("feet from inches once", velocity(numberAt(earlier, 0)) / 12, "Both width and depth must be in feet."), slip("a second for a minute", velocity(numberAt(earlier, 0)) / 60, "Per minute, not per second.")],
        working: (earlier) => oneStep("Velocity", {symbol: "v", label: "velocity", expression: "Q / (w * d / 144)", unit: "ft/min", source: "continuity", result: velocity(numberAt(earlier, 0)), values: {Q: given(Math.min(2e7, Math.max(1, numberAt(earlier, 0))), "cfm", "air flow"), w: given(widthIn, "in", "width inside"), d: given(depthIn, "in", "depth inside")}}),
      }),
      choicePart({
        ask: prose`A main is quiet up to ${measure(GREATEST_VELOCITY_FPM.main, "ft/min")}. Is this one?`, key: (earlier) => (numberAt(earlier, 1) <= GREATEST_VELOCITY_FPM.main ? "yes" : "no"),
        options: [{id: "yes", text: ["yes"], slip: {name: "took faster for slower", says: "Your velocity is above that."}}, {id: "no", text: ["no"], slip: {name: "took slower for faster", says: "Your velocity is not above that."}}],
      }),
    ],
  };
}

/** The leanest of some ducts that stays quiet. */
function quietDuct(draw: Draw): Content {
  const flow = draw.from(900, 4000, 20);
  const spanFt = draw.from(30, 60, 2);
  const sizes = draw.shuffled([[16, 8], [20, 10], [24, 12], [28, 12], [32, 14], [36, 14], [40, 16]] as const);
  const sorted = [...sizes].sort((a, b) => a[0] * a[1] - b[0] * b[1]);
  const speed = ([widthIn, depthIn]: readonly [number, number]) => ductVelocityFpm(flow, {kind: "rectangular", widthIn, depthIn} satisfies DuctSize);
  const best = sorted.find((size) => speed(size) <= GREATEST_VELOCITY_FPM.main) ?? sorted[6] as readonly [number, number];
  const idOf = ([widthIn, depthIn]: readonly [number, number]) => `${widthIn}x${depthIn}`;
  const leastFt2 = flow / GREATEST_VELOCITY_FPM.main;
  return {
    question: [prose`A main across bays of ${measure(spanFt, "ft")} brings ${measure(flow, "cfm")}. It shall stay below ${measure(GREATEST_VELOCITY_FPM.main, "ft/min")}, so as to be quiet, and take no more room than it needs.`],
    givens: [{name: "air flow", value: flow, unit: "cfm"}, {name: "greatest velocity", value: GREATEST_VELOCITY_FPM.main, unit: "ft/min"}, {name: "span", value: spanFt, unit: "ft"}],
    parts: [
      numberPart({
        ask: prose`How much area must it have inside at least?`, label: "area", unit: "in2", key: leastFt2 * 144,
        slips: [slip("feet for inches", leastFt2, "That is in square feet."), slip("twelve for 144", leastFt2 * 12, "There are 144 square inches in a square foot."), slip("upside down", (GREATEST_VELOCITY_FPM.main / flow) * 144, "Flow over velocity, not velocity over flow.")],
        working: oneStep("Least area", {symbol: "A", label: "least area inside", expression: "144 * Q / v", unit: "in2", source: "continuity", result: leastFt2 * 144, values: {Q: given(flow, "cfm", "air flow"), v: given(GREATEST_VELOCITY_FPM.main, "ft/min", "greatest velocity")}}),
      }),
      choicePart({
        ask: prose`Which of these ducts, inside dimensions, is the smallest that will do?`, key: idOf(best),
        options: sizes.map((size): Option => ({id: idOf(size), text: prose`${measure(size[0], "in")} by ${measure(size[1], "in")}`, ...(size === best ? {} : {slip: speed(size) > GREATEST_VELOCITY_FPM.main
          ? {name: "too fast", says: "In that duct the air is faster than it may be."} : {name: "larger than it needs to be", says: "It is quiet, and so is a smaller one."}})})),
      }),
    ],
  };
}

const ANGLES = ["90 two-way", "75 one-way", "60 one-way"] as const;

/** Width that two rows of stalls and their aisle take. */
function parkingModule(draw: Draw): Content {
  const stallLengthIn = draw.from(198, 228, 3);
  const stallWidthIn = draw.from(96, 114, 2);
  const angle = draw.one(ANGLES);
  const stalls = draw.from(20, 60, 5);
  const {angleDeg, depthIn, alongPerWidth} = stallGeometry({angle, stallLengthIn, stallWidthIn});
  const aisleIn = USUAL_AISLE_IN[angle];
  const module = (earlier: Earlier) => 2 * numberAt(earlier, 0) + feet(aisleIn);
  const depthFt = feet(depthIn);
  const rowFt = (stalls * stallWidthIn * alongPerWidth) / 12;
  return {
    question: [prose`Stalls of ${measure(stallWidthIn, "in")} by ${measure(stallLengthIn, "in")} stand at ${measure(angleDeg, "deg")} to an aisle of ${measure(feet(aisleIn), "ft")}, one row on each side of it. A row has ${stalls} stalls.`],
    givens: [{name: "width of a stall", value: stallWidthIn, unit: "in"}, {name: "length of a stall", value: stallLengthIn, unit: "in"}, {name: "angle", value: angleDeg, unit: "deg"}, {name: "aisle", value: feet(aisleIn), unit: "ft"}, {name: "stalls in a row", value: stalls, unit: ""}],
    parts: [
      numberPart({
        ask: prose`How deep is one row, square to the aisle?`, label: "depth of a row", unit: "ft", key: depthFt, tolerance: {percent: 0.5},
        slips: [...(angleDeg < 90 ? [slip("length of the stall", feet(stallLengthIn), "A stall that is turned reaches less far by its length, and further by its width."), slip("forgot the width", feet(stallLengthIn) * Math.sin((angleDeg * Math.PI) / 180), "The corner of a turned stall reaches out by its width as well.")] : []), slip("width for length", feet(stallWidthIn), "That is its width, along the aisle.")],
        working: oneStep("Depth of a row", {symbol: "D", label: "depth of a row", expression: "(l * sin(theta) + w * cos(theta) * k) / 12", unit: "ft", source: "geometry", result: depthFt, values: {l: given(stallLengthIn, "in", "length of a stall"), w: given(stallWidthIn, "in", "width of a stall"), theta: given((angleDeg * Math.PI) / 180, "rad", "angle of the stalls"), k: given(angleDeg === 90 ? 0 : 1, "", "0 at right angles, else 1")}}),
      }),
      numberPart({
        ask: prose`How wide is the module, two rows and their aisle?`, label: "width of the module", unit: "ft", key: module, tolerance: {percent: 0.5},
        slips: (earlier) => [slip("one row", numberAt(earlier, 0) + feet(aisleIn), "There is a row on either side of the aisle."), slip("two aisles", 2 * numberAt(earlier, 0) + 2 * feet(aisleIn), "Both rows share one aisle."), slip("forgot the aisle", 2 * numberAt(earlier, 0), "Cars must get in: the aisle counts.")],
        working: (earlier) => oneStep("Module", {symbol: "M", label: "width of the module", expression: "2 * D + a", unit: "ft", source: "common practice", result: module(earlier), values: {D: given(numberAt(earlier, 0), "ft", "depth of a row"), a: given(feet(aisleIn), "ft", "aisle")}}),
      }),
      numberPart({
        ask: prose`How much floor does each car take in such a module, ends and columns left out?`, label: "floor for a stall", unit: "ft2", key: (earlier) => (rowFt * numberAt(earlier, 1)) / (2 * stalls),
        slips: (earlier) => [slip("one row for the module", (rowFt * numberAt(earlier, 1)) / stalls, "The module has two rows: twice as many cars."), slip("the stall alone", (stallWidthIn * stallLengthIn) / 144, "Half of the aisle behind it is there for this car too.")],
        working: (earlier): Working => oneStep("Floor for a stall", {symbol: "A", label: "floor for a stall", expression: "w / sin(theta) / 12 * M / 2", unit: "ft2", source: "geometry", result: (rowFt * numberAt(earlier, 1)) / (2 * stalls), values: {w: given(stallWidthIn, "in", "width of a stall"), theta: given((angleDeg * Math.PI) / 180, "rad", "angle of the stalls"), M: given(numberAt(earlier, 1), "ft", "width of the module")}}),
      }),
    ],
  };
}

/** Length of a ramp from story to story. */
function rampLength(draw: Draw): Content {
  const floorToFloorFt = draw.from(10, 14, 0.25);
  const rampSlopePercent = draw.from(8, 16, 0.5);
  const rampBlendFt = draw.from(8, 12, 1);
  const design = designWith({story: {floorToFloorFt}, parking: {rampSlopePercent, rampBlendFt, rampRuns: 1}});
  const ramp = rampOf(design);
  const key = feet(ramp.lengthIn);
  const {steps} = rampWorking({design, parking: {ramp}});
  return {
    question: [prose`A straight ramp climbs ${measure(floorToFloorFt, "ft")} from one level of cars to the next at ${measure(rampSlopePercent, "%")}. At its foot and at its head ${measure(rampBlendFt, "ft")} are blended at half the slope, so that no car scrapes.`],
    givens: [{name: "floor to floor", value: floorToFloorFt, unit: "ft"}, {name: "slope", value: rampSlopePercent, unit: "%"}, {name: "blend at each end", value: rampBlendFt, unit: "ft"}],
    parts: [numberPart({
      ask: prose`How long is it on the plan?`, label: "length of the ramp", unit: "ft", key,
      slips: [
        slip("forgot the blends", key - rampBlendFt, "In the blends it climbs half as fast, so it must be longer."), slip("both blends added whole", key + rampBlendFt, "The blends climb too, half of what the slope would: the two of them add one blend\u2019s length."),
        slip("percent for share", (floorToFloorFt / rampSlopePercent) + rampBlendFt, "A percentage is a hundredth."),
      ],
      working: {title: "Length of the ramp", steps: [...steps, {symbol: "L_f", label: "length in feet", expression: "L_r / 12", unit: "ft", source: "definition", result: key, values: {L_r: given(ramp.lengthIn, "in", "length of the ramp")}}]},
    })],
  };
}

export const STORY_KINDS: readonly Kind[] = [
  {id: "ceiling-height", topic: "story", level: 1, title: "What is left for the room", make: ceilingHeight},
  {id: "story-for-ceiling", topic: "story", level: 2, title: "The story that a ceiling takes", make: storyForCeiling},
  {id: "duct-velocity", topic: "air", level: 1, title: "How fast the air moves", make: ductVelocity},
  {id: "quiet-duct", topic: "air", level: 2, title: "The smallest duct that is quiet", make: quietDuct},
  {id: "parking-module", topic: "parking", level: 2, title: "Two rows and their aisle", make: parkingModule},
  {id: "ramp-length", topic: "parking", level: 1, title: "How long a ramp is", make: rampLength},
];
