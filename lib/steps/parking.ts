import type {Evaluation} from "../evaluate.js";
import type {Ramp} from "../parking/ramp.js";
import {faceBeyondBearingIn} from "../parking/site.js";
import {IN2_PER_FT2, inches} from "../units.js";
import {given, type Step, type StepValue, type Working} from "../step.js";

const NONE = {title: "No parking", steps: []};

const radians = (degrees: number): StepValue => given((degrees * Math.PI) / 180, "rad", "angle of the stalls to the aisle");

/** Width of a module: what two rows and their aisle take, and what there is between walls or column lines. */
export function parkingModuleWorking({design, parking}: Evaluation): Working {
  if (!parking) return NONE;
  const [module] = parking.level.modules;
  if (!module) return {title: "No module between the bays that there are", steps: []};
  const {geometry, plan} = parking.level;
  const {bay, column, parking: input} = design;
  const along = input.rows === "along";
  // The first module begins at a wall, and ends at one where it is the only one.
  const walls = plan.wallTo === module.toIn ? 2 : 1;
  const depth = geometry.depthIn;
  return {title: "Two rows and their aisle", steps: [
    {
      symbol: "D", label: "depth of a row, square to the aisle", expression: "l * sin(theta) + max(w, w_a) * cos(theta)", unit: "in", source: "geometry", result: depth,
      values: {
        l: given(input.stallLengthIn, "in", "stall length"), theta: radians(geometry.angleDeg), w: given(input.stallWidthIn, "in", "stall width"),
        w_a: given(96, "in", "accessible stall (ADA 2010 Standards 502.2)"),
      },
    },
    {
      symbol: "M", label: "width of a module: two rows and their aisle", expression: "2 * (s + D) + a", unit: "in", source: "common practice", result: module.neededIn,
      values: {s: given(input.setbackIn, "in", "setback of the stalls' heads"), D: given(depth, "in", "depth of a row"), a: given(input.aisleIn, "in", "width of the aisle")},
    },
    {
      symbol: "C", label: "clear width of the first module", unit: "in", source: "geometry", result: module.clearIn,
      ...(along
        ? {expression: "n * L + k * e", values: {
          n: given(input.baysPerModule, "", "bays to a module"), L: given(inches(bay.spanFt), "in", "span"), k: given(walls, "", "walls beside the module"),
          e: given(faceBeyondBearingIn(design), "in", "from the bearings' line to the wall's face"),
        }}
        : {expression: "n * B - k * c / 2", values: {
          n: given(input.baysPerModule, "", "bays to a module"), B: given(inches(bay.beamSpanFt), "in", "beam span"), k: given(walls, "", "ends of the building beside the module"),
          c: given(column.sideIn, "in", "side of the columns"),
        }}),
    },
  ]};
}

/** Stalls between two columns, and the floor for each stall of the building. */
export function parkingStallsWorking({design, parking}: Evaluation): Working {
  if (!parking) return NONE;
  const {bay, level, levels, stalls} = parking;
  const {bay: grid, parking: input} = design;
  const spacingIn = inches(input.rows === "along" ? grid.beamSpanFt : grid.spanFt);
  const pitchIn = input.stallWidthIn * level.geometry.alongPerWidth;
  const steps: Step[] = [{
    symbol: "p", label: "length of row that one stall takes", expression: "w / sin(theta)", unit: "in", source: "geometry", result: pitchIn,
    values: {w: given(input.stallWidthIn, "in", "stall width"), theta: radians(level.geometry.angleDeg)},
  }];
  if (bay) {
    steps.push({
      symbol: "b", label: "length of row between two columns", expression: "B - o", unit: "in", source: "geometry", result: bay.clearIn,
      values: {B: given(spacingIn, "in", "spacing of the columns along the row"), o: given(spacingIn - bay.clearIn, "in", "row that a column takes, with its door clearance where it stands beside doors")},
    }, {
      symbol: "r", label: "left over in each bay", expression: "b - n * p", unit: "in", source: "geometry", result: bay.leftIn,
      values: {b: given(bay.clearIn, "in", "length of row between two columns"), n: given(bay.stalls, "", "whole stalls between two columns"), p: given(pitchIn, "in", "length of row that one stall takes")},
      note: "The most whole stalls for which it is not below 0.",
    });
  }
  if (parking.ft2PerStall !== undefined) {
    const {linesX, linesY} = level.site;
    steps.push({
      symbol: "A_s", label: "floor for each stall", expression: "m * L * W / (144 * N)", unit: "ft2", source: "definition", result: parking.ft2PerStall,
      values: {
        m: given(levels, "", "levels of cars"), L: given(linesX.at(-1) as number, "in", "length of a level"), W: given(linesY.at(-1) as number, "in", "width of a level"),
        N: given(stalls, "", "stalls on all levels"),
      },
      note: `${IN2_PER_FT2} in2 are a square foot.`,
    });
  }
  return {title: "Stalls between columns", steps};
}

/** Clear height under what hangs lowest over the cars. */
export function parkingHeightWorking({story, parking}: Evaluation): Working {
  if (!parking) return NONE;
  const least = parking.heights?.least;
  if (!least) return {title: "No deck over the cars", steps: []};
  return {title: "Clear height over cars", steps: [
    {
      symbol: "h_u", label: "clear height under the deck", expression: "h_f - t_f - h_d", unit: "in", source: "geometry", result: story.clearUnderDeckIn,
      values: {h_f: given(story.floorToFloorIn, "in", "floor to floor"), t_f: given(story.finishIn, "in", "floor finish"), h_d: given(story.deckDepthIn, "in", "deck and topping")},
    },
    {
      symbol: "h_c", label: `clear height under ${least.words}`, expression: "h_u - d", unit: "in", source: "geometry", result: least.clearIn,
      values: {h_u: given(story.clearUnderDeckIn, "in", "clear height under the deck"), d: given(story.clearUnderDeckIn - least.clearIn, "in", `${least.words} below the deck`)},
    },
  ]};
}

/** Length of one run of the ramp. */
export function rampWorking({design, parking}: Pick<Evaluation, "design"> & {readonly parking: {readonly ramp?: Ramp | undefined} | undefined}): Working {
  const ramp = parking?.ramp;
  if (!ramp) return {title: "No ramp", steps: []};
  return {title: "Length of the ramp", steps: [
    {
      symbol: "R", label: "rise of one run", expression: "h_f / n", unit: "in", source: "geometry", result: ramp.riseIn,
      values: {h_f: given(inches(design.story.floorToFloorFt), "in", "floor to floor"), n: given(ramp.runs, "", "runs to a story")},
    },
    {
      symbol: "L_r", label: "length of one run, blends included", expression: "R / s + min(t, R / s)", unit: "in", source: "geometry", result: ramp.lengthIn,
      values: {R: given(ramp.riseIn, "in", "rise of one run"), s: given(ramp.slopePercent / 100, "", "slope of the ramp, rise over run"), t: given(inches(design.parking.rampBlendFt), "in", "blend at each end, at half the slope")},
      note: "Each blend climbs half of what the slope would, and two of them make one blend's length more.",
    },
  ]};
}
