import {DIFFUSE_TRANSMITTANCE_SHARE} from "../daylight/glass.js";
import {openingFt2} from "../daylight/reflected.js";
import {averageDaylight, noSkyLineFt} from "../daylight/rules.js";
import {skylineDeg} from "../daylight/sight.js";
import {endlessWindowShare, openingShare, skyComponent} from "../daylight/skyComponent.js";
import {WORK_PLANE_IN, type DaylightInput} from "../daylight/input.js";
import type {Evaluation} from "../evaluate.js";
import {decimals, feet, inches} from "../units.js";
import {given, type Step, type Working} from "../step.js";

/** A room with its windows; undefined where there is no glass. */
interface OfRoom {
  readonly daylight: {readonly input: DaylightInput} | undefined;
}

const PI = given(Math.PI, "", "circumference of a circle over its diameter");
const NONE = "No glass, no daylight";

/** The average daylight factor by formula. */
export function averageDaylightWorking({daylight: lit}: OfRoom): Working {
  if (!lit) return {title: NONE, steps: []};
  const {input} = lit;
  const {window} = input;
  const sides = input.opposite ? 2 : 1;
  const transmittanceShare = openingShare(window) * DIFFUSE_TRANSMITTANCE_SHARE;
  const glassFt2 = sides * openingFt2(input, window);
  const {averagePercent, areaFt2, meanReflectanceShare} = averageDaylight(input);
  const source = "average daylight factor (Crisp and Littlefair, 1984; from memory)";
  return {title: "Average daylight factor", steps: [
    {
      symbol: "T", label: "light that the window passes, from all sides", expression: "tau * m * (1 - f) * d",
      values: {
        tau: given(window.transmittanceShare, "", "transmittance of the glass, square on"), m: given(window.maintenanceShare, "", "left by dirt"),
        f: given(window.frameShare, "", "share of frames"), d: given(DIFFUSE_TRANSMITTANCE_SHARE, "", "mean over all directions"),
      }, result: transmittanceShare, unit: "", source: "common practice",
    },
    {
      symbol: "W", label: "window area", expression: "n * l * (h_h - h_s) / 12",
      values: {n: given(sides, "", "walls that have windows"), l: given(input.widthFt, "ft", "length of the band"), h_h: given(window.headIn, "in", "head of the glass"), h_s: given(window.sillIn, "in", "sill of the glass")},
      result: glassFt2, unit: "ft2", source: "geometry",
    },
    {
      symbol: "A", label: "all surfaces of the room", expression: "2 * b * l + 2 * (b + l) * h_c / 12",
      values: {b: given(input.depthFt, "ft", "depth of the room"), l: given(input.widthFt, "ft", "length of the room"), h_c: given(input.ceilingIn, "in", "ceiling height")},
      result: areaFt2, unit: "ft2", source: "geometry",
    },
    {
      symbol: "DF", label: "average daylight factor", expression: "T * W * (90 - theta_s) / (A * (1 - R^2))",
      values: {
        T: given(transmittanceShare, "", "light that the window passes"), W: given(glassFt2, "ft2", "window area"),
        theta_s: given(skylineDeg(window), "deg", "angle of the skyline outside"), A: given(areaFt2, "ft2", "all surfaces"), R: given(meanReflectanceShare, "", "mean reflectance of all surfaces"),
      },
      result: averagePercent, unit: "%", source,
      note: "The angle of visible sky, in degrees, makes it a percentage.",
    },
  ]};
}

/** How far from the window the sky is still seen from the work plane. */
export function noSkyWorking({daylight: lit}: OfRoom): Working {
  if (!lit) return {title: NONE, steps: []};
  const {window} = lit.input;
  const reachFt = noSkyLineFt(window);
  if (reachFt === undefined || reachFt === 0) return {title: reachFt === 0 ? "No desk sees sky" : "Nothing outside hides the sky: it is seen from everywhere", steps: []};
  const hiding = window.beams?.find((beam) => noSkyLineFt({...window, beams: [beam]}) === reachFt && noSkyLineFt({...window, beams: []}) !== reachFt);
  if (hiding) {
    const bySkyline = noSkyLineFt({...window, sillIn: 0, beams: [hiding]}) === reachFt;
    return {title: "No-sky line, behind the girder", steps: [{
      symbol: "x_n", label: "sky is seen as far as this from the window wall",
      expression: hiding.footIn <= WORK_PLANE_IN ? "a / 12" : bySkyline ? "(a + (g - h_w) / tan(theta_s * pi / 180)) / 12" : "(a + (g - h_w) * a / (h_s - g)) / 12",
      values: {
        a: given(hiding.awayIn, "in", "window wall to the girder"),
        ...(hiding.footIn > WORK_PLANE_IN ? {g: given(hiding.footIn, "in", "floor to the girder's foot"), h_w: given(WORK_PLANE_IN, "in", "height of the work plane")} : {}),
        ...(hiding.footIn > WORK_PLANE_IN ? bySkyline
          ? {theta_s: given(skylineDeg(window), "deg", "angle of the skyline outside"), pi: PI}
          : {h_s: given(window.sillIn, "in", "sill of the glass")} : {}),
      },
      result: reachFt, unit: "ft", source: "similar triangles",
      note: "Beyond the girder its foot cuts off the sky, as the window's head does before it.",
    }]};
  }
  return {title: "No-sky line", steps: [{
    symbol: "x_n", label: "sky is seen as far as this from the window wall", expression: "((h_h - h_w) / tan(theta_s * pi / 180) - r) / 12",
    values: {
      h_h: given(window.headIn, "in", "head of the glass"), h_w: given(WORK_PLANE_IN, "in", "height of the work plane"),
      theta_s: given(skylineDeg(window), "deg", "angle of the skyline outside"), r: given(window.revealIn, "in", "depth of the reveal"), pi: PI,
    },
    result: reachFt, unit: "ft", source: "similar triangles",
  }]};
}

/** What hangs nearer to the window than this is beside it: it hides the head of the window, in. */
const BESIDE_IN = 12;

/** Distance at which the sky component is computed by hand: half the depth of the room, or of its half, before any girder but one beside the window. */
export function skyWorkingDistanceFt(input: DaylightInput): number {
  const before = input.window.beams?.filter(({awayIn}) => awayIn >= BESIDE_IN).map(({awayIn}) => feet(awayIn));
  return Math.min(input.depthFt / (input.opposite ? 4 : 2), ...before ?? []);
}

/** Sky component of one long window at one place: the closed form of an endless opening, then what the glass passes. */
export function skyComponentWorking({daylight: lit}: Evaluation): Working {
  if (!lit) return {title: NONE, steps: []};
  const {window} = lit.input;
  const awayFt = skyWorkingDistanceFt(lit.input);
  const awayIn = inches(awayFt);
  const slopeUnder = (beam: {readonly awayIn: number; readonly footIn: number}) => (beam.footIn - WORK_PLANE_IN) / (awayIn - beam.awayIn);
  const headSlope = (window.headIn - WORK_PLANE_IN) / (awayIn + window.revealIn);
  const lowest = window.beams?.filter((beam) => beam.awayIn < BESIDE_IN).sort((one, other) => slopeUnder(one) - slopeUnder(other))[0];
  // Stryker disable next-line EqualityOperator: where both hide as much, either may be told
  const beside = lowest && slopeUnder(lowest) < headSlope ? lowest : undefined;
  const slope = beside ? slopeUnder(beside) : headSlope;
  if (slope <= 0) return {title: "The window ends below the desk: no sky is seen", steps: []};
  const highRad = Math.atan(slope);
  const sillRad = Math.atan(Math.max(0, window.sillIn - WORK_PLANE_IN) / awayIn);
  const lowRad = Math.min(highRad, Math.max((skylineDeg(window) * Math.PI) / 180, sillRad));
  const values = {
    h_w: given(WORK_PLANE_IN, "in", "height of the work plane"), x: given(awayFt, "ft", "distance from the window wall"),
    ...(beside
      ? {g: given(beside.footIn, "in", "foot of what hangs beside the window"), a: given(beside.awayIn, "in", "window wall to it")}
      : {h_h: given(window.headIn, "in", "head of the glass"), r: given(window.revealIn, "in", "depth of the reveal")}),
  };
  const source = "integral of the CIE overcast sky over an endless opening";
  const share = (symbol: string, label: string, name: string, angleRad: number, angle: string): Step => ({
    symbol, label, expression: `100 * 3 / (7 * pi) * (pi / 2 * (1 - cos(${name})) + 2 / 3 * (2 * ${name} - sin(2 * ${name})))`,
    values: {pi: PI, [name]: given(angleRad, "rad", angle)}, result: 100 * endlessWindowShare(angleRad), unit: "%", source,
  });
  const high = 100 * endlessWindowShare(highRad);
  const low = 100 * endlessWindowShare(lowRad);
  const endless = skyComponent({...window, widthFt: "endless"}, {distanceIn: awayIn, heightIn: WORK_PLANE_IN, offsetIn: 0});
  const own = skyComponent(window, {distanceIn: awayIn, heightIn: WORK_PLANE_IN, offsetIn: 0});
  return {title: `Sky component ${decimals(awayFt, 1)} ft from one window`, steps: [
    {symbol: "t_b", label: beside ? "slope up to what hangs beside the window" : "slope up to the head", expression: beside ? "(g - h_w) / (12 * x - a)" : "(h_h - h_w) / (12 * x + r)", values, result: Math.tan(highRad), unit: "", source: "geometry"},
    {...share("S_b", "share of all light that comes from below the head of the glass", "b", highRad, "angle from the desk up to the head"), note: "The long band is taken as endless, and without glass."},
    {...share("S_a", "share of the light that skyline or sill hides from the desk", "a", lowRad, "angle of skyline or sill"), note: "The larger of the two angles hides the other."},
    {symbol: "S", label: "sky through the bare opening", expression: "S_b - S_a", values: {S_b: given(high, "%", "up to the head"), S_a: given(low, "%", "hidden")}, result: high - low, unit: "%", source: "difference"},
    {
      symbol: "SC", label: "sky component through the glass", expression: "S * T * g", unit: "%", source: "definition",
      values: {
        S: given(high - low, "%", "sky through the bare opening"), T: given(openingShare(window), "", "glass, dirt and frames, square on"),
        g: given(high > low ? (100 * endless) / ((high - low) * openingShare(window)) : 1, "", "slant through the glass"),
      },
      result: 100 * endless,
      note: `The slant is found by summing over the sky seen; the band's true length of ${decimals(lit.input.widthFt)} ft leaves ${decimals(100 * own, 2)} %.`,
    },
  ]};
}
