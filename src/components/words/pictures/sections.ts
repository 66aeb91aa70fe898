import {doubleTee} from "../../../lib/sections/doubleTee.js";
import {hollowCore} from "../../../lib/sections/hollowCore.js";
import {flatSlab} from "../../../lib/sections/prismatic.js";
import type {Shape} from "../../../lib/sections/shape.js";
import {concrete, line} from "../../drawings/sheet.js";
import {arrow, boxOf, dots, highlight, name, outlineOf, small, type Small} from "./picture.js";

const tee = () => doubleTee("tee", {widthIn: 120, depthIn: 24, flangeIn: 2, stemBottomIn: 3.75, stemTopIn: 5.75, stemSpacingIn: 60, chamferIn: 0});
const plank = () => hollowCore("plank", {widthIn: 48, depthIn: 8, voidCount: 6, voidDiameterIn: 6});
const worldOf = (shape: Shape, overIn = 0) => ({x0: 0, y0: 0, x1: shape.widthIn, y1: shape.depthIn + overIn});

/** Strands in the stems of a tee, 2 in apart from 3 in above the soffit. */
const inStems = (shape: Shape, rows: number) => shape.webCentersIn.flatMap((x) => Array.from({length: rows}, (_, i) => [x, 3 + 2 * i] as const));

function cut(at: Small, shape: Shape): void {
  concrete(at.sheet, "plant", outlineOf(at.view, shape.rings));
}

/** A tee cut across, with something shown on it. */
function onTee(label: string, mark: (at: Small, shape: Shape) => void, overIn = 0): SVGSVGElement {
  const shape = tee();
  return small(label, worldOf(shape, overIn), (at) => {
    cut(at, shape);
    dots(at, inStems(shape, 4));
    mark(at, shape);
  });
}

/** Members cut across. */
export const SECTIONS = {
  doubleTee: () => onTee("A double tee cut across: a wide flange on two stems, with strands low in the stems.", (at, {depthIn, webCentersIn}) => {
    name(at, 60, depthIn, "flange", {dy: -10});
    name(at, 60, 4, "stems, with strands");
    for (const x of webCentersIn) arrow(at, [at.view.x(60) + (x > 60 ? 62 : -62), at.view.y(4)], [at.view.x(x) + (x > 60 ? -10 : 10), at.view.y(4)], "line-thin");
  }),
  flange: () => onTee("A double tee cut across; its flange, the wide flat part at the top, is outlined.", (at, {depthIn, widthIn}) => {
    highlight(at, boxOf(at.view, 0, depthIn - 2, widthIn, depthIn));
    name(at, 60, depthIn, "flange", {dy: -10});
  }),
  stem: () => onTee("A double tee cut across; its two stems are outlined.", (at, {depthIn, webCentersIn}) => {
    for (const x of webCentersIn) highlight(at, boxOf(at.view, x - 3.4, 0, x + 3.4, depthIn - 2));
    name(at, 60, 8, "stems");
  }),
  plank: () => {
    const shape = plank();
    return small("A hollow-core plank cut across: a slab with round voids, strands in the concrete between and below them.", worldOf(shape), (at) => {
      cut(at, shape);
      dots(at, shape.webCentersIn.map((x) => [x, 1.5] as const));
      name(at, 24, 8, "voids: less weight for the same depth", {dy: -10});
    });
  },
  flatSlab: () => {
    const shape = flatSlab("slab", {widthIn: 48, depthIn: 8});
    return small("A flat slab cut across: solid, with strands near the soffit.", worldOf(shape), (at) => {
      cut(at, shape);
      dots(at, [4, 12, 20, 28, 36, 44].map((x) => [x, 1.5] as const));
      name(at, 24, 8, "solid all the way", {dy: -10});
    });
  },
  topping: () => onTee("A double tee with a topping cast on it; both act as one section.", (at, {depthIn, widthIn}) => {
    const d = boxOf(at.view, 0, depthIn, widthIn, depthIn + 3);
    concrete(at.sheet, "site", d);
    highlight(at, d);
    name(at, 60, depthIn + 3, "topping, cast in place", {dy: -10});
    name(at, 60, 8, "precast tee");
  }, 3),
  eccentricity: () => onTee("A double tee cut across: its centroid is high, that of its strands low; the distance between them is the eccentricity.", (at, {widthIn, section}) => {
    const strandsIn = 6;
    for (const y of [section.ybIn, strandsIn]) line(at.sheet.lines, "center", [at.view.at(4, y), at.view.at(widthIn - 4, y)]);
    const x = at.view.x(60);
    arrow(at, [x, at.view.y(section.ybIn)], [x, at.view.y(strandsIn)]);
    name(at, 60, (section.ybIn + strandsIn) / 2, "eccentricity", {dx: 8, anchor: "start"});
    name(at, 60, 0, "above: centroid of the section; below: of the strands", {dy: 12});
  }),
  neutralAxis: () => {
    const shape = flatSlab("beam", {widthIn: 12, depthIn: 24});
    return small("A beam bent by load: compression above the neutral axis, tension below it.", {x0: -24, y0: 0, x1: 60, y1: 24}, (at) => {
      cut(at, shape);
      line(at.sheet.lines, "center", [at.view.at(-6, 14), at.view.at(42, 14)]);
      at.sheet.body.append(line(at.sheet.lines, "accent", [at.view.at(26, 14), at.view.at(36, 24), at.view.at(26, 24), at.view.at(26, 0), at.view.at(12 + 0.5, 0), at.view.at(26, 14)]));
      name(at, -7, 14, "neutral axis", {anchor: "end", dx: 4});
      name(at, 37, 21, "compression", {anchor: "start"});
      name(at, 28, 4, "tension", {anchor: "start"});
    });
  },
} satisfies Record<string, () => SVGSVGElement>;
