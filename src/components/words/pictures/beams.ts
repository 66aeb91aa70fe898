import {invertedTee, lBeam} from "../../../lib/sections/prismatic.js";
import {concrete, line} from "../../drawings/sheet.js";
import {el, px} from "../../drawings/svg.js";
import {arrow, boxOf, highlight, name, outlineOf, small, type Small} from "./picture.js";

const WEB = 10, LEDGE = 8, PROJECTION = 8, DECK = 16;

/** An L-beam of a depth, with the end of a deck on its ledge and a floor line on the deck. */
function edgeBeam(label: string, depthIn: number, mark: (at: Small) => void): SVGSVGElement {
  const shape = lBeam("beam", {webWidthIn: WEB, depthIn, ledgeProjectionIn: PROJECTION, ledgeDepthIn: LEDGE});
  return small(label, {x0: -26, y0: 0, x1: 62, y1: depthIn}, (at) => {
    concrete(at.sheet, "plant", boxOf(at.view, WEB + 1, LEDGE + 0.5, 62, LEDGE + DECK), {}, "seen");
    concrete(at.sheet, "plant", outlineOf(at.view, shape.rings));
    at.sheet.body.append(el("path", {d: boxOf(at.view, WEB + 3, LEDGE, WEB + 7, LEDGE + 0.5), class: "pad"}));
    name(at, 42, LEDGE + DECK / 2, "deck");
    mark(at);
  });
}

/** What carries the deck. */
export const BEAMS = {
  ledge: () => edgeBeam("An L-beam cut across: the deck sits on the ledge at the side of its web.", 24, (at) => {
    highlight(at, boxOf(at.view, WEB, 0, WEB + PROJECTION, LEDGE));
    name(at, WEB + PROJECTION, LEDGE / 2, "ledge", {anchor: "start", dx: 8});
    name(at, 0, 15, "web", {anchor: "end", dx: -8});
  }),
  upstand: () => edgeBeam("An L-beam cut across that is deeper than ledge and deck together: the part above the floor is the upstand.", 48, (at) => {
    highlight(at, boxOf(at.view, 0, LEDGE + DECK, WEB, 48));
    name(at, WEB, 38, "upstand: sill of the window", {anchor: "start", dx: 8});
    name(at, 62, LEDGE + DECK, "floor", {anchor: "end", dy: -9});
  }),
  pad: () => {
    const shape = lBeam("beam", {webWidthIn: WEB, depthIn: 16, ledgeProjectionIn: PROJECTION, ledgeDepthIn: LEDGE});
    return small("The end of a deck member on a ledge: a bearing pad lies between, and a joint stays open to the web.", {x0: 0, y0: 3, x1: 34, y1: 15}, (at) => {
      const clip = at.sheet.clip(boxOf(at.view, 0, 3, 34, 15));
      concrete(at.sheet, "plant", boxOf(at.view, WEB + 1, LEDGE + 0.5, 34, 15), {"clip-path": clip}, "seen");
      concrete(at.sheet, "plant", outlineOf(at.view, shape.rings), {"clip-path": clip});
      const pad = boxOf(at.view, WEB + 3, LEDGE, WEB + 7, LEDGE + 0.5);
      at.sheet.body.append(el("path", {d: pad, class: "pad"}));
      highlight(at, pad);
      name(at, WEB + PROJECTION, LEDGE - 1.6, "bearing pad", {anchor: "start", dx: 8});
      line(at.sheet.lines, "thin", [[at.view.x(WEB + PROJECTION) + 5, at.view.y(LEDGE - 1.4)], at.view.at(WEB + 6.6, LEDGE + 0.1)]);
      name(at, 26, 12, "deck");
      name(at, WEB / 2, 12, "web");
    });
  },
  invertedTee: () => {
    const shape = invertedTee("girder", {webWidthIn: 12, depthIn: 28, ledgeProjectionIn: 6, ledgeDepthIn: 12});
    return small("An inverted tee cut across: a ledge on each side of its web, and a deck on each ledge.", {x0: -34, y0: 0, x1: 58, y1: 28}, (at) => {
      for (const [from, to] of [[-34, 5], [19, 58]] as const) concrete(at.sheet, "plant", boxOf(at.view, from, 12.5, to, 28), {}, "seen");
      concrete(at.sheet, "plant", outlineOf(at.view, shape.rings));
      name(at, -18, 20, "deck");
      name(at, 42, 20, "deck");
      name(at, 24, 5, "two ledges", {anchor: "start", dx: 8});
    });
  },
  corbel: () => small("A column with a corbel, a short bracket on which the end of a beam bears.", {x0: -40, y0: 0, x1: 80, y1: 66}, (at) => {
    concrete(at.sheet, "plant", boxOf(at.view, 0, 0, 20, 66));
    const corbel = outlineOf(at.view, [[[20, 12], [20, 30], [32, 30], [32, 22]]]);
    concrete(at.sheet, "plant", corbel);
    concrete(at.sheet, "plant", boxOf(at.view, 21.5, 30.8, 80, 58), {}, "seen");
    at.sheet.body.append(el("path", {d: boxOf(at.view, 23, 30, 30, 30.8), class: "pad"}));
    highlight(at, corbel);
    name(at, 34, 20, "corbel", {anchor: "start", dx: 6});
    name(at, 54, 44, "beam");
    name(at, 0, 44, "column", {anchor: "end", dx: -8});
  }),
  torsion: () => edgeBeam("An L-beam cut across: the deck loads it beside its middle and so twists it.", 24, (at) => {
    const [x, y] = at.view.at(WEB / 2, 13);
    at.sheet.lines.append(el("path", {d: `M${px(x - 17)} ${px(y + 4)}A17 17 0 1 1 ${px(x + 16)} ${px(y + 8)}`, class: "line-accent"}));
    arrow(at, [x + 17, y + 3], [x + 14, y + 12]);
    arrow(at, [at.view.x(WEB + 5), at.view.y(24) - 14], [at.view.x(WEB + 5), at.view.y(LEDGE + DECK) + 8]);
    name(at, 0, 13, "twist", {anchor: "end", dx: -12});
    name(at, WEB + 6, 24, "load of the deck", {anchor: "start", dx: 4, dy: -10});
  }),
} satisfies Record<string, () => SVGSVGElement>;
