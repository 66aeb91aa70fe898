import {averageDaylight, headHeightDepthFt, noSkyLineFt} from "../../daylight/rules.js";
import type {DaylightInput} from "../../daylight/input.js";
import {USUAL_GLAZING, WORK_PLANE_IN} from "../../daylight/input.js";
import {fallPlan} from "../../roof/fallPlan.js";
import {given, type Step} from "../../step.js";
import {averageDaylightWorking, noSkyWorking} from "../../steps/daylight.js";
import {panelPsf} from "../../walls/panels.js";
import {feet} from "../../units.js";
import type {Draw} from "../draw.js";
import type {Content, Kind} from "../item.js";
import {oneStep} from "../keys.js";
import {numberAt, numberPart, slip} from "../parts.js";
import {measure, prose} from "../prose.js";
import {designWith, stated} from "./ground.js";

function roomOf(depthFt: number, headIn: number, sillIn: number, angleDeg: number): DaylightInput {
  return {
    depthFt, widthFt: 30, ceilingIn: headIn + 6, reflectances: {floorShare: 0.2, wallShare: 0.5, ceilingShare: 0.7},
    window: {sillIn, headIn, widthFt: 30, revealIn: 8, ...USUAL_GLAZING, obstruction: {angleDeg}},
  };
}

/** The average daylight factor of a room. */
function averageFactor(draw: Draw): Content {
  const depthFt = draw.from(18, 40, 1);
  const headIn = draw.from(96, 132, 3);
  const sillIn = draw.from(24, 42, 3);
  const angleDeg = draw.from(10, 35, 1);
  const input = roomOf(depthFt, headIn, sillIn, angleDeg);
  const found = averageDaylight(input);
  const {steps} = averageDaylightWorking({daylight: {input}});
  const passes = steps[0]?.result ?? 0;
  const glassFt2 = steps[1]?.result ?? 0;
  const factor = found.averagePercent;
  return {
    question: [
      prose`A room ${measure(depthFt, "ft")} deep, ${measure(30, "ft")} long and ${measure(input.ceilingIn, "in")} high has glass along one long side, from ${measure(sillIn, "in")} to ${measure(headIn, "in")} above the floor. It passes ${measure(stated(passes, 3), "")} of the light that comes from all sides.`,
      prose`The skyline stands at ${measure(angleDeg, "deg")}; the surfaces reflect ${measure(stated(found.meanReflectanceShare, 3), "")} of the light on the mean.`,
    ],
    givens: [{name: "depth", value: depthFt, unit: "ft"}, {name: "length", value: 30, unit: "ft"}, {name: "height", value: input.ceilingIn, unit: "in"}, {name: "sill", value: sillIn, unit: "in"}, {name: "head", value: headIn, unit: "in"}, {name: "light that the window passes", value: stated(passes, 3), unit: ""}, {name: "angle of the skyline", value: angleDeg, unit: "deg"}, {name: "mean reflectance", value: stated(found.meanReflectanceShare, 3), unit: ""}],
    parts: [
      numberPart({
        ask: prose`How large are all surfaces of the room together, the window included?`, label: "surfaces", unit: "ft2", key: found.areaFt2,
        slips: [slip("floor alone", depthFt * 30, "Ceiling and walls are surfaces too."), slip("forgot the walls", 2 * depthFt * 30, "The four walls count as well."), slip("forgot the ceiling", found.areaFt2 - depthFt * 30, "Floor and ceiling both count.")],
        working: {title: "Surfaces", steps: steps.slice(2, 3)},
      }),
      numberPart({
        ask: prose`What is the average daylight factor?`, label: "average daylight factor", unit: "%", key: factor, tolerance: {percent: 3},
        slips: [
          slip("skyline for sky", (factor * angleDeg) / (90 - angleDeg), "What counts is the sky above the skyline: 90 degrees less its angle."), slip("forgot the skyline", (factor * 90) / (90 - angleDeg), "The skyline hides a part of the sky."),
          slip("forgot the reflected light", factor * (1 - found.meanReflectanceShare ** 2), "Light that the surfaces throw back is seen again: divide by 1 less the reflectance squared."), slip("reflectance not squared", (factor * (1 - found.meanReflectanceShare ** 2)) / (1 - found.meanReflectanceShare), "The reflectance enters squared."),
          slip("floor for all surfaces", (factor * found.areaFt2) / (depthFt * 30), "Divide by all surfaces, not by the floor."), slip("forgot the glass", factor / passes, "The glass, its frames and dirt hold some of the light back."),
        ],
        working: {title: "Average daylight factor", steps: [...steps.slice(1, 2), ...steps.slice(3)]},
        because: prose`The window has ${measure(stated(glassFt2, 1), "ft2")} of opening.`,
      }),
    ],
  };
}

/** How far into the room the sky is seen. */
function noSkyLine(draw: Draw): Content {
  const headIn = draw.from(90, 144, 1);
  const angleDeg = draw.from(12, 35, 1);
  const input = roomOf(120, headIn, 30, angleDeg);
  const key = noSkyLineFt(input.window) ?? 0;
  const rule = headHeightDepthFt(headIn).usualFt;
  const tan = Math.tan((angleDeg * Math.PI) / 180);
  return {
    question: [prose`A window\u2019s glass ends ${measure(headIn, "in")} above the floor; a row of houses makes a skyline at ${measure(angleDeg, "deg")}. The glass lies ${measure(8, "in")} outside the wall\u2019s inner face, and desks are ${measure(WORK_PLANE_IN, "in")} high.`],
    givens: [{name: "head of the glass", value: headIn, unit: "in"}, {name: "angle of the skyline", value: angleDeg, unit: "deg"}, {name: "reveal", value: 8, unit: "in"}, {name: "height of the desks", value: WORK_PLANE_IN, unit: "in"}],
    parts: [
      numberPart({
        ask: prose`How far from the wall do desks still see sky?`, label: "no-sky line", unit: "ft", key,
        slips: [slip("from the floor", (headIn / tan - 8) / 12, "Seen from a desk, the head stands lower: take its height above the desk."), slip("forgot the reveal", key + 8 / 12, "The line begins at the glass, which lies outside the wall\u2019s inner face."), slip("sine for tangent", ((headIn - WORK_PLANE_IN) / Math.sin((angleDeg * Math.PI) / 180) - 8) / 12, "Height over distance is the tangent."), slip("inches for feet", key * 12, "That is in inches."), slip("multiplied by the tangent", ((headIn - WORK_PLANE_IN) * tan - 8) / 12, "The flatter the line, the further it reaches: divide by the tangent.")],
        working: {title: "No-sky line", steps: noSkyWorking({daylight: {input}}).steps},
      }),
      numberPart({
        ask: prose`And how far does useful daylight reach, by the rule of twice the head\u2019s height?`, label: "reach by rule", unit: "ft", key: rule,
        slips: [slip("once the height", rule / 2, "Twice the height."), slip("above the desk", feet(2 * (headIn - WORK_PLANE_IN)), "The rule takes the height above the floor."), slip("inches for feet", 12 * rule, "That is in inches.")],
        working: oneStep("Rule of the head\u2019s height", {symbol: "x_r", label: "reach by rule", expression: "2 * h_h / 12", unit: "ft", source: "common practice", result: rule, values: {h_h: given(headIn, "in", "head of the glass")}}),
      }),
    ],
  };
}

/** Weight of a wall panel. */
function panelWeight(draw: Draw): Content {
  const widthFt = draw.from(8, 12, 0.5);
  const heightFt = draw.from(10, 40, 1);
  const panelThicknessIn = draw.from(6, 10, 0.5);
  const glassPercent = draw.from(5, 50, 5);
  const psf = panelPsf(designWith({walls: {shortSide: "solid panel", panelThicknessIn}}));
  const key = (psf * widthFt * heightFt * (1 - glassPercent / 100)) / 1000;
  const working: Step[] = [
    {symbol: "w", label: "weight of a square foot", expression: "t / 12 * gamma", unit: "psf", source: "geometry", result: psf, values: {t: given(panelThicknessIn, "in", "thickness"), gamma: given((psf * 12) / panelThicknessIn, "pcf", "unit weight of concrete")}},
    {symbol: "W", label: "weight of the panel", expression: "w * b * h * (1 - g) / 1000", unit: "kip", source: "geometry", result: key, values: {w: given(psf, "psf", "weight of a square foot"), b: given(widthFt, "ft", "width"), h: given(heightFt, "ft", "height"), g: given(glassPercent / 100, "", "share of windows")}},
  ];
  return {
    question: [prose`A solid wall panel of concrete, ${measure((psf * 12) / panelThicknessIn, "pcf")}, is ${measure(widthFt, "ft")} wide, ${measure(heightFt, "ft")} high and ${measure(panelThicknessIn, "in")} thick. Windows are cut out of ${measure(glassPercent, "%")} of it.`],
    givens: [{name: "width", value: widthFt, unit: "ft"}, {name: "height", value: heightFt, unit: "ft"}, {name: "thickness", value: panelThicknessIn, unit: "in"}, {name: "share of windows", value: glassPercent, unit: "%"}],
    parts: [numberPart({
      ask: prose`What must the crane lift?`, label: "weight of the panel", unit: "kip", key,
      slips: [
        slip("gross for net", key / (1 - glassPercent / 100), "The windows are cut out: no concrete is there."), slip("windows for wall", (psf * widthFt * heightFt * glassPercent) / 100_000, "That is what was cut out."),
        slip("pounds for kips", key * 1000, "That is in pounds."), slip("inches for feet", key * 12, "The thickness must be in feet."),
      ],
      working: {title: "Weight of the panel", steps: working},
    })],
  };
}

/** How high a roof rises from its drains. */
function roofFall(draw: Draw): Content {
  const spanFt = draw.from(30, 60, 1);
  const slopeInPerFt = draw.one([0.125, 0.1875, 0.25, 0.375, 0.5]);
  const baysAlong = draw.from(3, 6, 1);
  const beamSpanFt = draw.from(20, 40, 2);
  const drainsAt = draw.one(["inside", "edges"] as const);
  const design = designWith({bay: {spanFt, beamSpanFt, baysAlong, baysAcross: 2}, roof: {slopeInPerFt, drainage: "taper", drainsAt, drainSpacingFt: 100}});
  const {runFt} = fallPlan(design);
  return {
    question: [prose`A roof over two bays of ${measure(spanFt, "ft")} across, ${baysAlong} bays of ${measure(beamSpanFt, "ft")} long, falls by ${measure(slopeInPerFt, "in/ft")} ${drainsAt === "inside" ? "from both long edges to drains along the line of girders between the bays" : "from its middle line to drains along both long edges"}.`],
    givens: [{name: "span of a bay", value: spanFt, unit: "ft"}, {name: "bays across", value: 2, unit: ""}, {name: "fall", value: slopeInPerFt, unit: "in/ft"}, {name: "drains", value: drainsAt === "inside" ? "between the bays" : "along the edges", unit: ""}, {name: "bays along", value: baysAlong, unit: ""}, {name: "length of a bay", value: beamSpanFt, unit: "ft"}],
    parts: [
      numberPart({
        ask: prose`How far does water run at most?`, label: "run", unit: "ft", key: runFt, tolerance: {percent: 1},
        slips: [slip("the whole width", 2 * spanFt, "Water runs both ways from the high line: no further than half of that."), slip("half a bay", spanFt / 2, "Look where the high line lies: a whole bay lies between it and the drains."), slip("the length for the width", baysAlong * beamSpanFt, "It falls across the building.")],
        working: oneStep("Longest run", {symbol: "r", label: "longest way down", expression: "n * L / 2", unit: "ft", source: "geometry", result: runFt, values: {n: given(2, "", "bays across"), L: given(spanFt, "ft", "span of a bay")}}),
      }),
      numberPart({
        ask: prose`How high does the surface stand above the drains there?`, label: "rise", unit: "in", key: (earlier) => slopeInPerFt * numberAt(earlier, 0),
        slips: (earlier) => [slip("feet for inches", (slopeInPerFt * numberAt(earlier, 0)) / 12, "The fall is in inches for each foot: each foot of the way adds it once."), slip("mean for the highest", (slopeInPerFt * numberAt(earlier, 0)) / 2, "That is the mean over the way down; the high line stands twice as high."), slip("divided by the fall", numberAt(earlier, 0) / slopeInPerFt, "Each foot adds its fall: multiply.")],
        working: (earlier) => oneStep("Rise", {symbol: "h", label: "height of the surface above the drains", expression: "s * r", unit: "in", source: "geometry", result: slopeInPerFt * numberAt(earlier, 0), values: {s: given(slopeInPerFt, "in/ft", "fall"), r: given(numberAt(earlier, 0), "ft", "longest way down")}}),
      }),
    ],
  };
}

export const OUTSIDE_KINDS: readonly Kind[] = [
  {id: "roof-fall", topic: "roof", level: 1, title: "How high a roof rises", make: roofFall},
  {id: "panel-weight", topic: "walls", level: 1, title: "What a wall panel weighs", make: panelWeight},
  {id: "no-sky-line", topic: "daylight", level: 1, title: "How far the sky is seen", make: noSkyLine},
  {id: "average-daylight", topic: "daylight", level: 2, title: "How light the room is", make: averageFactor},
];
