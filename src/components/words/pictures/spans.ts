import {concrete, line} from "../../drawings/sheet.js";
import {el, pathThrough, px, type PaperPoint} from "../../drawings/svg.js";
import {arrow, boxOf, name, small, type Small} from "./picture.js";

const SPAN = 200, DEPTH = 14;

/** Places along a span, as shares. */
const SHARES = Array.from({length: 41}, (_, i) => i / 40);

/** Height of an even load's bending, or of a camber, at a share of the span: 1 in the middle. */
const parabola = (share: number) => 4 * share * (1 - share);

function supports({sheet, view}: Small): void {
  for (const x of [3, SPAN - 3]) {
    const [a, b] = [view.x(x), view.y(0) + 1];
    sheet.lines.append(el("path", {d: `M${px(a)} ${px(b)}L${px(a + 6)} ${px(b + 10)}L${px(a - 6)} ${px(b + 10)}Z`, class: "line-seen"}));
  }
}

/** A member from the side on its two supports. */
function member(label: string, roomIn: number, draw: (at: Small) => void): SVGSVGElement {
  return small(label, {x0: 0, y0: -16, x1: SPAN, y1: DEPTH + roomIn}, (at) => {
    concrete(at.sheet, "plant", boxOf(at.view, 0, 0, SPAN, DEPTH), {}, "seen");
    supports(at);
    draw(at);
  });
}

const path = ({view}: Small, height: (share: number) => number): PaperPoint[] => SHARES.map((share) => view.at(share * SPAN, height(share)));

/** Members from the side. */
export const SPANS = {
  simple: () => member("A member from the side on two supports; its span is the length between their centers.", 0, (at) => {
    const y = at.view.y(-14);
    for (const x of [3, SPAN - 3]) line(at.sheet.lines, "thin", [[at.view.x(x), y - 6], [at.view.x(x), y + 6]]);
    arrow(at, [at.view.x(SPAN / 2), y], [at.view.x(3), y]);
    arrow(at, [at.view.x(SPAN / 2), y], [at.view.x(SPAN - 3), y]);
    name(at, SPAN / 2, -14, "span", {dy: 11});
  }),
  moment: () => member("A simple span under an even load; the bending moment below it is greatest at midspan.", 14, (at) => {
    for (let i = 0; i <= 12; i++) arrow(at, [at.view.x(4 + 16 * i), at.view.y(DEPTH + 13)], [at.view.x(4 + 16 * i), at.view.y(DEPTH + 1)], "line-thin");
    at.sheet.body.append(el("path", {d: pathThrough(path(at, (share) => -4 - 18 * parabola(share))), class: "curve-moment", fill: "none"}));
    line(at.sheet.lines, "thin", [at.view.at(0, -4), at.view.at(SPAN, -4)]);
    name(at, SPAN / 2, -14, "greatest at midspan", {dy: -2});
  }),
  camber: () => small("A member from the side, arched upward above the straight line between its ends; drawn much exaggerated.", {x0: 0, y0: 0, x1: SPAN, y1: 40}, (at) => {
    const top = path(at, (share) => 12 + 22 * parabola(share));
    const bottom = path(at, (share) => 22 * parabola(share)).reverse();
    concrete(at.sheet, "plant", pathThrough([...top, ...bottom], true), {}, "seen");
    line(at.sheet.lines, "hidden", [at.view.at(0, 0), at.view.at(SPAN, 0)]);
    arrow(at, at.view.at(SPAN / 2, 0), at.view.at(SPAN / 2, 22));
    name(at, SPAN / 2, 8, "camber", {anchor: "start", dx: 8});
    name(at, SPAN / 2, 0, "much exaggerated", {dy: 12});
  }),
  straight: () => member("A member from the side with a straight strand near its soffit.", 0, (at) => {
    line(at.sheet.lines, "steel", [at.view.at(0, 3), at.view.at(SPAN, 3)]);
    name(at, SPAN / 2, DEPTH, "a straight strand, low all along", {dy: -10});
  }),
  depressed: () => member("A member from the side with a depressed strand: low at midspan, where it is held down, and rising to both ends.", 0, (at) => {
    line(at.sheet.lines, "steel", [at.view.at(0, 11), at.view.at(SPAN / 2, 2.5), at.view.at(SPAN, 11)]);
    arrow(at, [at.view.x(SPAN / 2), at.view.y(2.5)], [at.view.x(SPAN / 2), at.view.y(-12)]);
    name(at, SPAN / 2, -10, "held down here", {anchor: "start", dx: 8});
    name(at, SPAN / 2, DEPTH, "a depressed strand rises to the ends", {dy: -10});
  }),
} satisfies Record<string, () => SVGSVGElement>;
