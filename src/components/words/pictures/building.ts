import {desk, sitter} from "../../drawings/people.js";
import {concrete, line} from "../../drawings/sheet.js";
import {el, pathThrough} from "../../drawings/svg.js";
import {arrow, boxOf, highlight, name, small} from "./picture.js";

/** The floor and the rooms. */
export const BUILDING = {
  bay: () => small("A bay from above: four columns, a beam along each side, and deck members that all span one way between the beams.", {x0: 0, y0: 0, x1: 60, y1: 30}, (at) => {
    for (let i = 0; i < 6; i++) concrete(at.sheet, "plant", boxOf(at.view, 2, 5 * i, 58, 5 * i + 5), {}, "seen");
    for (const x of [0, 58]) concrete(at.sheet, "plant", boxOf(at.view, x, 0, x + 2, 30));
    for (const [x, y] of [[0, 0], [58, 0], [0, 28], [58, 28]] as const) at.sheet.lines.append(el("path", {d: boxOf(at.view, x, y, x + 2, y + 2), class: "column"}));
    arrow(at, at.view.at(30, 15), at.view.at(6, 15));
    arrow(at, at.view.at(30, 15), at.view.at(54, 15));
    name(at, 30, 15, "the deck spans one way", {dy: -11});
    name(at, 0, 0, "beam", {anchor: "start", dy: 12});
    name(at, 60, 0, "beam", {anchor: "end", dy: 12});
  }),
  noSky: () => small("A room beside a window, with a building opposite: the lowest ray that reaches a desk from the sky passes over that building, and beyond the place where it meets the desk no sky is seen.", {x0: -130, y0: 0, x1: 300, y1: 154}, (at) => {
    const [deskIn, headIn] = [30, 108];
    const skyline = [-110, 150] as const;
    // Through the head of the glass and the top of what stands opposite.
    const reach = (headIn - deskIn) / ((skyline[1] - headIn) / -skyline[0]);
    at.sheet.body.append(el("path", {d: boxOf(at.view, -130, 0, skyline[0], skyline[1]), class: "deck-ground"}));
    concrete(at.sheet, "plant", boxOf(at.view, 0, -6, 300, 0));
    concrete(at.sheet, "plant", boxOf(at.view, 0, 120, 300, 132));
    concrete(at.sheet, "plant", boxOf(at.view, -6, 0, 0, 36));
    concrete(at.sheet, "plant", boxOf(at.view, -6, headIn, 0, 132));
    desk(at.sheet, at.view, 40, 0);
    sitter(at.sheet, at.view, 124, 0);
    line(at.sheet.lines, "accent", [at.view.at(...skyline), at.view.at(0, headIn), at.view.at(reach, deskIn)]);
    line(at.sheet.lines, "hidden", [at.view.at(0, deskIn), at.view.at(300, deskIn)]);
    name(at, 200, 100, "lowest ray of the sky", {dy: 4});
    name(at, 300, deskIn, "height of a desk", {anchor: "end", dy: 12});
  }),
  plenum: () => small("A story cut: from one finished floor to the next is the floor-to-floor height; between ceiling and deck is the plenum.", {x0: -50, y0: -10, x1: 250, y1: 160}, (at) => {
    for (const y of [0, 150]) concrete(at.sheet, "plant", boxOf(at.view, 0, y - 10, 250, y));
    line(at.sheet.lines, "seen", [at.view.at(0, 108), at.view.at(250, 108)]);
    highlight(at, boxOf(at.view, 0, 108, 250, 140));
    arrow(at, at.view.at(-14, 75), at.view.at(-14, 0));
    arrow(at, at.view.at(-14, 75), at.view.at(-14, 150));
    name(at, 125, 124, "plenum");
    name(at, 125, 94, "ceiling");
    name(at, 10, 50, "floor-to-floor height", {anchor: "start"});
    line(at.sheet.lines, "thin", [at.view.at(-12, 50), at.view.at(6, 50)]);
  }),
  drift: () => small("A roof with a parapet: balanced snow lies evenly, and the wind piles a wedge of drift against the parapet.", {x0: 0, y0: -10, x1: 260, y1: 70}, (at) => {
    concrete(at.sheet, "plant", boxOf(at.view, 0, -10, 260, 0));
    concrete(at.sheet, "plant", boxOf(at.view, 0, 0, 12, 62));
    at.sheet.body.append(el("path", {d: boxOf(at.view, 12, 0, 260, 12), class: "snow"}));
    at.sheet.body.append(el("path", {d: pathThrough([at.view.at(12, 12), at.view.at(12, 50), at.view.at(130, 12)], true), class: "snow snow-drift"}));
    line(at.sheet.lines, "seen", [at.view.at(12, 50), at.view.at(130, 12), at.view.at(260, 12)]);
    arrow(at, at.view.at(240, 48), at.view.at(160, 48), "line-thin");
    name(at, 46, 22, "drift");
    name(at, 200, 12, "balanced snow", {dy: -9});
    name(at, 200, 48, "wind", {dy: -10});
    name(at, 6, 62, "parapet", {dy: -9, anchor: "start", dx: -6});
  }),
} satisfies Record<string, () => SVGSVGElement>;
