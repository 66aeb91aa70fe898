import {curveValues, daylightCurve, deskCurve, type DaylightParameter} from "../../lib/daylight/curves.js";
import {DESK_MIDDLE_IN, deskAtWindow, upstandShadowIn} from "../../lib/daylight/desk.js";
import {WORK_PLANE_IN} from "../../lib/daylight/input.js";
import {view} from "../../lib/daylight/view.js";
import type {DesignDaylight} from "../../lib/daylight/designDaylight.js";
import {sharePercents} from "../../lib/daylight/shares.js";
import type {Evaluation} from "../../lib/evaluate.js";
import {decimals, feet, feetAndInches, percent} from "../../lib/units.js";
import {FACTOR_PARTS, deskChart, factorChart, sharesChart} from "../../components/charts/daylight.js";
import {DAYLIGHT_CLASSES} from "../../components/charts/daylightClasses.js";
import {deskView} from "../../components/drawings/skyView.js";
import {storySection} from "../../components/drawings/storySection.js";
import {element} from "../../components/dom.js";
import {figure} from "../../components/figure.js";
import {figureOf} from "../../components/quantity.js";
import {said} from "../../components/shared/said.js";
import {storyPicture} from "../../components/shared/pictures.js";
import {elseGuessed} from "../../components/veil.js";

/** Said once on the page of a floor that has no glass. */
export function noGlass(): HTMLElement {
  return element("p", {class: "note"}, "There is no glass here: upstand and window head leave nothing between them, or the room is lower than a desk. Raise the story or lower the upstand.");
}

/** Light over the depth of the floor. */
export function factorFigure({daylight}: Evaluation, widthPx: number): HTMLElement {
  if (!daylight) return element("div");
  const {input, result} = daylight;
  const {daylit} = sharePercents(result.shares);
  const key = element("p", {class: "chart-key"}, "Light on a desk ", ...FACTOR_PARTS.flatMap(({words, fill}, i) => [
    element("span", {class: "key-swatch", style: `background: ${fill}`, "aria-hidden": "true"}), ` ${words}${i < 2 ? ", " : ", from the top down."}`,
  ]));
  return figure(element("div", {}, factorChart(result, input.depthFt, input.opposite !== undefined, widthPx), key), {
    title: daylit === 100 ? elseGuessed("daylitShare", "A desk near the window has enough daylight to work by", "A desk anywhere on this floor has enough daylight to work by") : said`A desk has enough daylight to work by over ${figureOf("daylit, %", `${daylit}\u00a0%`)} of the floor's depth`,
    caption: `Along a line across the middle of the floor, ${decimals(input.depthFt)} ft deep, at the height of a desk, under an evenly overcast sky. The first few feet at the window go off the chart.`,
    table: {columns: ["From the window, ft", "Sky, %", "Outside, %", "Room, %", "Daylight factor, %"],
      rows: result.points.filter((_, i) => i % 2 === 0).map((point) => [decimals(point.distanceFt, 1), ...[point.skyPercent, point.externalPercent, point.internalPercent, point.factorPercent].map((value) => decimals(value, 2))])},
  });
}

/** The classes of light with what they mean and how much of the floor each has. */
export function classTable({result}: DesignDaylight): HTMLElement {
  const meaning = {good: "5 % and more: electric light stays off by day", partial: "2 to 5 %: electric light helps out now and then", little: "1 to 2 %: electric light most of the day", dark: "below 1 %: looks dark next to the window"};
  const told = sharePercents(result.shares);
  return element("table", {class: "sums"},
    element("thead", {}, element("tr", {}, ...["Daylight", "Daylight factor", "Of the depth"].map((head, i) => element("th", {scope: "col", class: i === 2 ? "numeric" : undefined}, head)))),
    element("tbody", {}, ...DAYLIGHT_CLASSES.map(({key, words, letter}) => element("tr", {}, element("th", {scope: "row"}, `${words} (${letter})`), element("td", {}, meaning[key]), element("td", {class: "numeric"}, `${told[key]}\u00a0%`)))));
}

/** Altitude of the low sky for which the upstand's shadow is drawn, degrees. */
const SHADOW_DEG = 20;

/** The desk just inside the upstand: the sky that it sees, and the shade that it stands in. */
export function deskFigure(result: Evaluation, widthPx: number): HTMLElement {
  const {daylight, design} = result;
  if (!daylight) return element("div");
  const {window} = daylight.input;
  const desk = deskAtWindow(daylight.input);
  const seen = view({...window}, {distanceIn: DESK_MIDDLE_IN, eyeIn: WORK_PLANE_IN});
  const shadowIn = upstandShadowIn(window.sillIn, SHADOW_DEG);
  const {webWidthIn} = design.edgeBeam;
  const drawing = storySection({
    ...storyPicture(result), widthPx, mostHeightPx: 440, insideIn: 120, furnished: false, standing: false, dimensioned: false,
    label: `A desk just inside the upstand sees ${decimals(seen.skyDeg)} degrees of sky`,
    ...deskView({seen, wallX: webWidthIn, toX: -60, workPlaneIn: WORK_PLANE_IN, deskMiddleIn: DESK_MIDDLE_IN, sillIn: window.sillIn, shadowIn, shadowDeg: SHADOW_DEG}),
  });
  return figure(drawing, {
    title: desk.lostShare > 0.005 ? `The upstand takes ${percent(desk.lostShare)} of the sky's light from a desk behind it` : window.sillIn > WORK_PLANE_IN ? "The upstand takes hardly any light from a desk behind it" : "The upstand takes no light from a desk behind it",
    caption: `The desk is against the wall; its middle sees the sky between skyline and head. ${shadowIn > 0 ? `Light that comes straight in, ${SHADOW_DEG}\u00b0 above the horizon, passes over the first ${feetAndInches(shadowIn, 2)} of the desk.` : "The sill is no higher than the desk, so none of it is in shade."} True to scale.`,
  });
}

/** Light on the desk over the height of the sill. */
export function deskCurveFigure({daylight}: Evaluation, widthPx: number): HTMLElement {
  if (!daylight) return element("div");
  const {input} = daylight;
  const own = input.window.sillIn;
  const sills = [...new Set([...Array.from({length: 25}, (_, i) => 18 + 2 * i), own])].filter((sill) => sill < input.window.headIn - 6).sort((a, b) => a - b);
  const curve = deskCurve(input, sills);
  const at = (sillIn: number) => curve.find((point) => point.sillIn === sillIn)?.directPercent ?? 0;
  const [low, middle, high] = [at(30), at(36), at(42)];
  return figure(deskChart(curve, own, widthPx), {
    title: high > 0 ? `From 30 to 36 in, a desk loses ${percent(1 - middle / low)} of its light; at 42 in, ${percent(1 - high / low)} is gone` : "A higher sill leaves the desk behind it in the dark",
    caption: "Light straight from the sky and reflected from outside, on the middle of a desk that touches the wall. Dashed: the same window with its sill no higher than the desk.",
    table: {columns: ["Sill of the glass, in", "On the desk, %", "Without the upstand, %", "Lost, %"], rows: curve.filter((_, i) => i % 2 === 0).map((point) => [decimals(point.sillIn, 1), decimals(point.directPercent, 2), decimals(point.openPercent, 2), decimals(100 * point.lostShare)])},
  });
}

/** The three things that a reader may run the floor's shares over. */
export const PARAMETERS: readonly {readonly value: DaylightParameter; readonly label: string}[] = [
  {value: "depth", label: "depth"}, {value: "head", label: "window head"}, {value: "sill", label: "upstand"},
];

/** Value of a parameter in the design itself, and the range that its curve runs over; in ft for depth, in for the others. */
export function parameterOf({input}: DesignDaylight, parameter: DaylightParameter): {own: number; values: number[]} {
  const own = {depth: input.depthFt, head: input.window.headIn, sill: input.window.sillIn}[parameter];
  return {own, values: curveValues(input, parameter)};
}

/** The range in which a reader may look, in the parameter's unit; 0 to 1 where there is no glass. */
export function lookRange({daylight}: Evaluation, parameter: DaylightParameter): {min: number; max: number; value: number; unit: string} {
  if (!daylight) return {min: 0, max: 1, value: 0, unit: ""};
  const {own, values} = parameterOf(daylight, parameter);
  const [min, max] = [Math.ceil(values[0] as number), Math.floor(values.at(-1) as number)];
  return {min, max, value: Math.min(max, Math.max(min, Math.round(parameter === "sill" ? own + 12 : own * 0.75))), unit: parameter === "depth" ? "ft" : "in"};
}

/** Shares of the floor by class over one parameter; `look` is where the reader looks. */
export function sharesFigure({daylight, design}: Evaluation, parameter: DaylightParameter, look: number, widthPx: number): HTMLElement {
  if (!daylight) return element("div");
  const {own, values} = parameterOf(daylight, parameter);
  const [low, high] = [values[0] as number, values.at(-1) as number];
  const at = Math.min(high, Math.max(low, look));
  const curve = daylightCurve(daylight.input, parameter, values);
  const [looked] = daylightCurve(daylight.input, parameter, [at]);
  const written = parameter === "depth" ? `${decimals(at)} ft deep${design.daylight.sides === "two" ? " between two windows" : ""}` : `${feetAndInches(at)} above the floor`;
  const name = {depth: "A floor", head: "With the head", sill: "With the sill"}[parameter];
  const told = looked && sharePercents(looked.shares);
  const words = looked && told ? `${name} ${written}: good ${told.good}, partial ${told.partial}, little ${told.little}, dark ${told.dark}\u00a0% of the depth; average ${decimals(looked.averagePercent, 1)} %.` : "";
  return figure(sharesChart(curve, parameter, own, at, widthPx), {
    title: {depth: "Every added foot of depth is a darker foot", head: "A higher head reaches deeper: all of the floor gains", sill: "Raising the sill dims the desks by the window, and the rest a little"}[parameter],
    caption: element("span", {}, element("strong", {"aria-live": "polite"}, words), " The line marked \u201cnow\u201d is this design, the dashed one is where you are looking; all else stays the same."),
    table: {columns: [parameter === "depth" ? "Depth, ft" : parameter === "head" ? "Head, ft" : "Sill, in", "good, %", "partial, %", "little, %", "dark, %", "average factor, %"],
      rows: curve.filter((_, i) => i % 2 === 0).map(({value, shares, averagePercent}) => [decimals(parameter === "head" ? feet(value) : value, 1), ...DAYLIGHT_CLASSES.map(({key}) => decimals(sharePercents(shares)[key])), decimals(averagePercent, 1)])},
  });
}
