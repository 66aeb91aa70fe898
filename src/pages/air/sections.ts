import type {Casing} from "../../lib/air/casing.js";
import type {AirPlan} from "../../lib/air/plan.js";
import type {AirPart} from "../../lib/air/parts.js";
import type {Shape} from "../../lib/sections/shape.js";
import {feetAndInches} from "../../lib/units.js";
import {pathOfRings} from "../../components/drawings/crossSection.js";
import {chain, chainDepth, type DimensionText} from "../../components/drawings/dimension.js";
import {breakLine, scaleBar} from "../../components/drawings/marks.js";
import {person} from "../../components/drawings/people.js";
import {concrete, createSheet, line, textSize, type DrawingOptions, type Sheet} from "../../components/drawings/sheet.js";
import {pathOfBox} from "../../components/drawings/svg.js";
import {fitView, type View} from "../../components/drawings/view.js";
import {airKey, airKeyHeight, drawAir, type KeyRow} from "./airMarks.js";

/** What both sections draw. Heights are above the finished floor, in. */
export interface AirSectionOptions extends DrawingOptions {
  readonly plan: AirPlan;
  readonly parts: readonly AirPart[];
  readonly structure: readonly AirPart[];
  readonly shape: Shape;
  readonly casing: Casing | undefined;
  /** Ceiling, or undefined where there is none; the deck's soffit, its top, and the floor above with its topping. */
  readonly ceilingIn: number | undefined;
  readonly soffitIn: number;
  readonly topIn: number;
  readonly floorToFloorIn: number;
  readonly key: readonly KeyRow[];
  /** Underside of the lowest duct over the room, in. */
  readonly ductsLowIn: number;
}

/** Most of the building's width and length that a section shows, in: less of it on a narrow sheet, so that ducts are seen. */
const mostAcrossIn = (widthPx: number): number => (widthPx < 520 ? 300 : 640);
const mostAlongIn = (widthPx: number): number => (widthPx < 520 ? 250 : 420);

/** One story cut across the building, through a feeder: beams and deck, main and return cut, the feeder from its side. */
export function sectionAcross(options: AirSectionOptions): SVGSVGElement {
  const {plan, parts, structure, casing} = options;
  const {frame, zone, trunk} = plan;
  const middle = (trunk.y0In + trunk.y1In) / 2;
  const whole = [zone.y0In === 0 ? frame.edgeCenterIn * 2 : zone.y0In - 60, zone.y1In >= frame.widthIn - 1e-6 ? frame.widthIn - 2 * frame.edgeCenterIn : zone.y1In + 60] as const;
  const wide = Math.min(whole[1] - whole[0], mostAcrossIn(options.widthPx));
  const from = Math.max(whole[0], Math.min(whole[1] - wide, middle - wide / 2));
  const range = [from, from + wide] as const;
  const {sheet, view, finish} = begin(options, "across", range, `One story cut across the building, ${feetAndInches(options.floorToFloorIn)} from floor to floor`);
  const seen = (part: AirPart) => ({part, x0: Math.max(range[0], part.y0In), x1: Math.min(range[1], part.y1In), y0: part.z0In, y1: part.z1In});
  const inside = (part: AirPart) => part.y1In > range[0] && part.y0In < range[1];
  const box = ({y0In, y1In, z0In, z1In}: AirPart) => pathOfBox(view.x(Math.max(range[0], y0In)), view.y(z1In), view.x(Math.min(range[1], y1In)), view.y(z0In));
  // Between two stems the flange is cut, and the stem seen beyond.
  const stem = structure.find(({kind, id}) => kind === "stem" && id.endsWith("foot"));
  const flange = structure.find(({kind}) => kind === "flange");
  if (stem && flange) concrete(sheet, "plant", box({...stem, z1In: flange.z0In}), {"data-part": "deck"}, "seen");
  if (flange) deckCut(sheet, view, {...flange, y0In: Math.max(range[0], 0), y1In: Math.min(range[1], frame.widthIn)}, options);
  const [space] = plan.supply;
  const [returned] = plan.returns;
  const of = (index: number | undefined) => (part: AirPart) => index !== undefined && part.id.split(" ").includes(String(index)) && /feeder|space|collar/.test(part.id);
  for (const part of parts.filter(of(returned?.index)).filter(inside).filter(({kind}) => kind !== "collar")) drawAir(sheet, view, seen(part), "seen");
  for (const part of parts.filter(of(space?.index)).filter(inside)) drawAir(sheet, view, seen(part), "seen");
  for (const part of structure.filter(({kind}) => ["girder", "edge beam", "ledge"].includes(kind)).filter(inside)) {
    concrete(sheet, "plant", box(part), {"data-part": part.kind === "edge beam" ? "beam" : part.kind});
  }
  for (const kind of ["main", "return main"] as const) for (const part of parts.filter((one) => one.kind === kind).slice(0, 1)) drawAir(sheet, view, seen(part), "cut");
  // An opening through a girder's web is drawn over it.
  for (const part of parts.filter(({opening}) => opening).filter(of(space?.index)).filter(inside)) drawAir(sheet, view, seen(part), "seen");
  ceiling(sheet, view, options, [Math.max(range[0], frame.ledgeFaceIn), Math.min(range[1], frame.widthIn - frame.ledgeFaceIn)]);
  person(sheet, view, Math.max(range[0] + 40, Math.min(range[1] - 40, casing ? casing.y1In + 40 : trunk.y1In + 50)), 0);
  if (range[0] > whole[0] + 1) breakLine(sheet, view.x(range[0]), view.y(options.topIn) - 8, view.y(options.soffitIn) + 8);
  if (range[1] < whole[1] - 1) breakLine(sheet, view.x(range[1]), view.y(options.topIn) - 8, view.y(options.soffitIn) + 8);
  const base = view.y(0);
  chain(sheet, {axis: "x", outward: 1, line: base + 16, stops: [trunk.y0In, trunk.supplyY1In, ...(plan.returnMain ? [trunk.y1In] : [])].map((y) => ({at: view.x(y), edge: base})),
    texts: [{value: feetAndInches(trunk.supplyY1In - trunk.supplyY0In), name: "main", part: "main"}, ...(plan.returnMain ? [{value: feetAndInches(trunk.y1In - trunk.supplyY1In), name: "return", part: "return-main"}] : [])]});
  return finish();
}

/** The same story cut along the building, beside the main: stems and feeders cut, the main and a riser from their sides. */
export function sectionAlong(options: AirSectionOptions): SVGSVGElement {
  const {plan, parts, structure, shape, casing} = options;
  const {frame, zone, risers} = plan;
  const riser = risers[0]?.space.centerIn ?? 0;
  const wide = Math.min(mostAlongIn(options.widthPx), frame.lengthIn);
  const from = Math.max(0, Math.min(frame.lengthIn - wide, riser - 60));
  const range = [from, from + wide] as const;
  const {sheet, view, finish} = begin(options, "along", range, "The same story cut along the building, beside the main");
  const clip = sheet.clip(pathOfBox(view.x(range[0]), 0, view.x(range[1]), sheet.heightPx));
  const seen = (part: AirPart) => ({part, x0: Math.max(range[0], part.x0In), x1: Math.min(range[1], part.x1In), y0: part.z0In, y1: part.z1In});
  const inside = (part: AirPart) => part.x1In > range[0] && part.x0In < range[1];
  for (const kind of ["return riser", "riser", "return main", "main"] as const) for (const part of parts.filter((one) => one.kind === kind).filter(inside)) drawAir(sheet, view, seen(part), "seen");
  for (let x = 0; x < frame.lengthIn; x += shape.widthIn) {
    if (x + shape.widthIn < range[0] || x > range[1]) continue;
    concrete(sheet, "plant", pathOfRings(shape.rings.map((ring) => ring.map(([a, b]) => [x + a, options.soffitIn + b] as const)), view), {"data-part": "deck", "clip-path": clip});
  }
  const flange = structure.find(({kind}) => kind === "flange");
  if (flange) toppingCut(sheet, view, range, options);
  const cut = new Map<string, AirPart>();
  for (const part of parts.filter(({kind}) => kind === "feeder" || kind === "return feeder" || kind === "return space" || kind === "collar").filter(inside)) {
    const [, index] = /(-?\d+)/.exec(part.id) ?? [];
    const name = `${part.kind === "collar" ? part.id.split(" ")[0] : part.kind} ${index} ${part.kind}`;
    // One box of each line is cut: the one at the deck's level, not the dip under a girder.
    if (!cut.has(name) && !/under|down|up/.test(part.id)) cut.set(name, part);
  }
  for (const part of cut.values()) drawAir(sheet, view, seen(part), part.kind === "collar" ? "seen" : "cut");
  ceiling(sheet, view, {...options, casing: undefined}, range);
  if (casing && casing.dropIn > 0) {
    const ends = [Math.max(range[0], 0), Math.min(range[1], zone.lengthIn)] as const;
    const ceilingIn = casing.footIn + casing.dropIn;
    for (const y of [casing.footIn]) line(sheet.body, "seen", [view.at(ends[0], y), view.at(ends[1], y)], {"data-part": "casing"});
    for (const x of ends) line(sheet.body, "seen", [view.at(x, casing.footIn), view.at(x, ceilingIn)], {"data-part": "casing"});
  }
  person(sheet, view, Math.min(range[1] - 30, range[0] + wide * 0.6), 0);
  breakLine(sheet, view.x(range[1]), view.y(options.topIn) - 8, view.y(options.soffitIn) + 8);
  const spaces = plan.supply.filter(({centerIn}) => centerIn > range[0] && centerIn < range[1]).slice(0, 3);
  const base = view.y(0);
  if (spaces.length > 1) {
    chain(sheet, {axis: "x", outward: 1, line: base + 16, stops: spaces.map(({centerIn}) => ({at: view.x(centerIn), edge: base})),
      texts: spaces.slice(1).map(({centerIn}, i) => ({value: feetAndInches(centerIn - (spaces[i]?.centerIn as number)), ...(i === 0 ? {name: "feeders", part: "branch"} : {})}))});
  }
  return finish();
}

/** Paper, floor and strings of heights that both sections share. */
function begin(options: AirSectionOptions, kind: string, [x0, x1]: readonly [number, number], label: string): {sheet: Sheet; view: View; finish: () => SVGSVGElement} {
  const {widthPx, casing, ceilingIn, soffitIn, topIn, ductsLowIn, key} = options;
  const textPx = textSize(widthPx);
  const dropped = casing !== undefined && casing.dropIn > 0;
  const under: DimensionText = dropped ? {value: feetAndInches(casing.footIn), name: `under the ${casing.kind}`, part: "casing"} : {value: feetAndInches(ductsLowIn), name: "under the ducts", part: "main"};
  const left: DimensionText[] = dropped ? [under, {value: feetAndInches(casing.dropIn), name: "drop", part: "casing"}] : [under, {value: feetAndInches(soffitIn - ductsLowIn), name: "hung", part: "main"}];
  const leftStops = dropped ? [0, casing.footIn, casing.footIn + casing.dropIn] : [0, ductsLowIn, soffitIn];
  const right: DimensionText[] = ceilingIn === undefined ? [{value: feetAndInches(soffitIn), name: "clear"}, {value: feetAndInches(topIn - soffitIn), name: "deck", part: "deck"}]
    : [{value: feetAndInches(ceilingIn), name: "ceiling", part: "ceiling", quantity: "ceiling, in"}, {value: feetAndInches(soffitIn - ceilingIn), name: "plenum", part: "plenum"}, {value: feetAndInches(topIn - soffitIn), name: "deck", part: "deck"}];
  const rightStops = ceilingIn === undefined ? [0, soffitIn, topIn] : [0, ceilingIn, soffitIn, topIn];
  const {view, heightPx: drawn} = fitView({
    world: {x0, y0: -4, x1, y1: topIn + 4}, widthPx, mostHeightPx: options.mostHeightPx ?? 460,
    margins: {left: 28 + chainDepth("y", left, textPx), right: 28 + chainDepth("y", right, textPx), top: 14, bottom: 16 + chainDepth("x", [{value: "0", name: "main"}], textPx) + 30},
  });
  const heightPx = drawn + airKeyHeight(key, widthPx, textPx) + 4;
  const sheet = createSheet({view, kind: `air-${kind}`, widthPx, heightPx, label, description: options.description ?? `${options.plan.supply.length} feeders, ${ceilingIn === undefined ? "no ceiling" : `a ceiling ${feetAndInches(ceilingIn)} above the floor`}${dropped ? `, a ${casing.kind} ${feetAndInches(casing.dropIn)} lower` : ""}.`});
  const finish = () => {
    line(sheet.body, "cut", [view.at(x0, 0), view.at(x1, 0)], {"data-part": "finish"});
    const [west, east] = [view.x(x0) - 4, view.x(x1) + 4];
    chain(sheet, {axis: "y", outward: -1, line: west - 12, stops: leftStops.map((y) => ({at: view.y(y), edge: west})), texts: left});
    chain(sheet, {axis: "y", outward: 1, line: east + 12, stops: rightStops.map((y) => ({at: view.y(y), edge: east})), texts: right});
    scaleBar(sheet, [view.x(x0), drawn - 12], view.scale);
    airKey(sheet, drawn, key);
    return sheet.svg;
  };
  return {sheet, view, finish};
}

/** The flange or flat deck cut along its span, and the topping on it. */
function deckCut(sheet: Sheet, view: View, flange: AirPart, {soffitIn, shape, topIn}: AirSectionOptions): void {
  const box = (y0: number, y1: number) => pathOfBox(view.x(flange.y0In), view.y(y1), view.x(flange.y1In), view.y(y0));
  const deckTop = soffitIn + shape.depthIn;
  concrete(sheet, "plant", box(flange.z0In, deckTop), {"data-part": "deck"});
  if (topIn - deckTop > 1e-6) concrete(sheet, "site", box(deckTop, topIn));
}

function toppingCut(sheet: Sheet, view: View, [x0, x1]: readonly [number, number], {soffitIn, shape, topIn}: AirSectionOptions): void {
  const deckTop = soffitIn + shape.depthIn;
  if (topIn - deckTop > 1e-6) concrete(sheet, "site", pathOfBox(view.x(x0), view.y(topIn), view.x(x1), view.y(deckTop)));
}

/** The ceiling, interrupted where a box or strip hangs lower, and that. */
function ceiling(sheet: Sheet, view: View, {ceilingIn, casing}: AirSectionOptions, [x0, x1]: readonly [number, number]): void {
  const low = casing !== undefined && casing.dropIn > 0 ? casing : undefined;
  if (ceilingIn !== undefined) {
    const stretches = low ? [[x0, Math.max(x0, low.y0In)], [Math.min(x1, low.y1In), x1]] : [[x0, x1]];
    for (const [a = 0, b = 0] of stretches) if (b - a > 1e-6) line(sheet.body, "seen", [view.at(a, ceilingIn), view.at(b, ceilingIn)], {"data-part": "ceiling", class: "ceiling-line"});
  }
  if (!low) return;
  const top = low.footIn + low.dropIn;
  line(sheet.body, "seen", [view.at(low.y0In, top), view.at(low.y0In, low.footIn), view.at(low.y1In, low.footIn), view.at(low.y1In, top)], {"data-part": "casing"});
}
