import {line, type Sheet} from "../../components/drawings/sheet.js";
import {el, px, type PaperPoint} from "../../components/drawings/svg.js";

/** What an arrow stands for: a load, a reaction, or a force of steel or connection. */
export type ArrowKind = "load" | "reaction" | "force";

const HEAD_PX = 8;

/** An arrow from one point to another, its head at the second. */
export function arrow(sheet: Sheet, from: PaperPoint, to: PaperPoint, kind: ArrowKind, part?: string): void {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
  const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const neck: PaperPoint = [to[0] - ux * HEAD_PX, to[1] - uy * HEAD_PX];
  line(sheet.lines, "thin", [from, neck], {class: `arrow arrow-${kind}`, "data-part": part});
  const wing = (sign: 1 | -1) => `${px(neck[0] - sign * uy * HEAD_PX * 0.42)} ${px(neck[1] + sign * ux * HEAD_PX * 0.42)}`;
  sheet.lines.append(el("path", {d: `M${px(to[0])} ${px(to[1])}L${wing(1)}L${wing(-1)}Z`, class: `arrow-head arrow-${kind}`, "data-part": part}));
}
