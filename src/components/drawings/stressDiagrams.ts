import type {Shape} from "../../lib/sections/shape.js";
import {decimals} from "../../lib/units.js";
import {pathOfRings} from "./crossSection.js";
import {textWidth, wrap} from "./placement.js";
import {concrete, createSheet, line, text, textSize, type DrawingOptions, type Sheet} from "./sheet.js";
import {el, pathOfBox, pathThrough, type PaperPoint} from "./svg.js";
import {viewAt} from "./view.js";

/** Stresses of one moment, psi: compression above zero, tension below. */
export interface StressState {
  readonly label: string;
  readonly topPsi: number;
  readonly bottomPsi: number;
  readonly toppingTopPsi?: number;
  /** Stress in the topping where it meets the member. */
  readonly toppingBottomPsi?: number;
  readonly limitTopPsi?: number;
  readonly limitBottomPsi?: number;
}

/** What {@link stressDiagrams} draws. */
export interface StressDiagramsOptions extends DrawingOptions {
  readonly depthIn: number;
  readonly toppingIn: number;
  readonly states: readonly StressState[];
  /** The section, of which one stem or web is drawn beside the diagrams. */
  readonly shape?: Shape;
}

/** One diagram's place on the paper. */
interface Panel {
  readonly left: number;
  readonly width: number;
  readonly top: number;
  readonly face: number;
  readonly bottom: number;
  readonly zero: number;
  readonly pxPerPsi: number;
}

/** Stress through the depth at several moments: compression to the right, tension to the left, each with its own hatch. */
export function stressDiagrams(options: StressDiagramsOptions): SVGSVGElement {
  const {depthIn, toppingIn, states, widthPx, bare = false} = options;
  const textPx = textSize(widthPx);
  const outlinePx = bare ? 0 : Math.min(150, widthPx * 0.17);
  const leastPanel = textWidth("1,234 psi C", textPx) * 1.55;
  const most = Math.max(1, Math.min(states.length, Math.floor((widthPx - outlinePx - 10) / leastPanel)));
  // Rows of equal length read better than a full one and a rest.
  const rows = Math.ceil(states.length / most);
  const perRow = Math.ceil(states.length / rows);
  const bodyPx = bare ? widthPx * 0.2 : Math.min(190, Math.max(120, widthPx * 0.17));
  const titleLines = Math.max(1, ...states.map(({label}) => wrap(label, textPx * 1.04, (widthPx - outlinePx - 10) / perRow - 14).length));
  const above = bare ? 2 : textPx * (3.6 + 1.16 * titleLines);
  const below = bare ? 2 : textPx * 3.4;
  const rowPx = above + bodyPx + below;
  const sheet = createSheet({
    kind: "stress", widthPx, bare, heightPx: Math.ceil(rows * rowPx + (bare ? 0 : textPx * 1.8)),
    label: options.label ?? "Stress through the depth at several moments",
    description: options.description ?? states.map(({label, topPsi, bottomPsi}) =>
      `${label}: top ${named(topPsi)}, bottom ${named(bottomPsi)}.`).join(" "),
  });
  const values = states.flatMap((one) => [one.topPsi, one.bottomPsi, one.toppingTopPsi ?? 0, one.toppingBottomPsi ?? 0, one.limitTopPsi ?? 0, one.limitBottomPsi ?? 0]);
  const [least, greatest] = [Math.min(0, ...values), Math.max(1, ...values)];
  const width = (widthPx - outlinePx - 10) / perRow;
  states.forEach((state, i) => {
    const top = Math.floor(i / perRow) * rowPx + above;
    const left = outlinePx + 10 + (i % perRow) * width;
    const inner = width - 26;
    const panel: Panel = {left, width, top, bottom: top + bodyPx, face: top + (bodyPx * toppingIn) / (depthIn + toppingIn),
      pxPerPsi: inner / (greatest - least), zero: left + 13 - (least * inner) / (greatest - least)};
    if (i % perRow === 0 && !bare) drawOutline(sheet, options, panel, outlinePx);
    drawState(sheet, panel, state, toppingIn);
  });
  if (!bare) text(sheet.notes, sheet, [4, sheet.heightPx - textPx * 0.8], widthPx < 700 ? "C compression, T tension; a heavy bar marks a limit." : "C compression, to the right of the line; T tension, to its left. A short heavy bar marks a limit. All diagrams share one scale.", {kind: "small", anchor: "start"});
  return sheet.svg;
}

function named(psi: number): string {
  return `${decimals(Math.abs(psi))} psi ${psi < 0 ? "tension" : "compression"}`;
}

function drawState(sheet: Sheet, panel: Panel, state: StressState, toppingIn: number): void {
  const {zero, pxPerPsi, top, face, bottom} = panel;
  const x = (psi: number) => zero + psi * pxPerPsi;
  wedge(sheet, zero, [x(state.topPsi), face], [x(state.bottomPsi), bottom]);
  if (toppingIn > 0 && state.toppingTopPsi !== undefined && state.toppingBottomPsi !== undefined) {
    wedge(sheet, zero, [x(state.toppingTopPsi), top], [x(state.toppingBottomPsi), face]);
  }
  line(sheet.lines, "seen", [[zero, top - 2], [zero, bottom + 2]]);
  if (sheet.bare) return;
  const size = sheet.textPx;
  for (const y of toppingIn > 0 && state.toppingTopPsi !== undefined ? [top, face, bottom] : [face, bottom]) line(sheet.body, "thin", [[panel.left + 4, y], [panel.left + panel.width - 4, y]], {class: "extension"});
  const lines = wrap(state.label, size * 1.04, panel.width - 14);
  const title = text(sheet.notes, sheet, [panel.left + panel.width / 2, top - size * (3.3 + 0.58 * lines.length)], lines, {kind: "name", className: "text-title"});
  title.querySelectorAll("tspan").forEach((span) => span.removeAttribute("class"));
  const value = (psi: number, y: number, name = "", beside = false) => {
    const shown = `${name}${decimals(Math.abs(psi))} psi ${Math.round(psi) === 0 ? "" : psi < 0 ? "T" : "C"}`.trim();
    const half = textWidth(shown, size) / 2;
    const at = Math.min(panel.left + panel.width - half - 8, Math.max(panel.left + half + 8, x(psi) + (beside ? (psi < 0 ? -half - 8 : half + 8) : 0)));
    text(sheet.notes, sheet, [at, y], shown, {kind: name ? "small" : "value", className: name ? "" : psi < 0 ? "text-tension" : "text-compression", plate: beside});
  };
  const own = toppingIn > 0 && state.toppingTopPsi !== undefined ? state.toppingTopPsi : undefined;
  if (own !== undefined) value(own, top - size * 0.9);
  // The member's own top lies under the topping: its value stands beneath the joint, beside the diagram.
  if (own !== undefined && Math.abs(state.topPsi - own) > 1) value(state.topPsi, face + size * 0.9, "", true);
  else if (own === undefined) value(state.topPsi, face - size * 0.9);
  value(state.bottomPsi, bottom + size * 0.95);
  const limit = (psi: number, y: number, textY: number) => {
    line(sheet.lines, "cut", [[x(psi), y - 6], [x(psi), y + 6]], {class: "limit"});
    value(psi, textY, "limit ");
  };
  if (state.limitTopPsi !== undefined) limit(state.limitTopPsi, face, top - size * 2.2);
  if (state.limitBottomPsi !== undefined) limit(state.limitBottomPsi, bottom, bottom + size * 2.25);
}

/** The area between the zero line and a line of stress, cut where its sign changes. */
function wedge(sheet: Sheet, zero: number, top: PaperPoint, bottom: PaperPoint): void {
  const piece = (points: readonly PaperPoint[], compression: boolean) => {
    const kind = compression ? "compression" : "tension";
    sheet.body.append(el("path", {d: pathThrough(points, true), class: kind, style: `fill: ${sheet.pattern(kind)}`, "data-part": kind}));
  };
  const [a, b] = [top[0] - zero, bottom[0] - zero];
  if (a * b >= 0) return piece([[zero, top[1]], top, bottom, [zero, bottom[1]]], a + b >= 0);
  const cross: PaperPoint = [zero, top[1] + ((bottom[1] - top[1]) * a) / (a - b)];
  piece([[zero, top[1]], top, cross], a > 0);
  piece([cross, bottom, [zero, bottom[1]]], b > 0);
}

function drawOutline(sheet: Sheet, {shape, depthIn, toppingIn}: StressDiagramsOptions, panel: Panel, roomPx: number): void {
  const scale = (panel.bottom - panel.top) / (depthIn + toppingIn);
  const widthIn = shape?.widthIn ?? 12;
  const wholePx = widthIn * scale;
  const center = wholePx <= roomPx - 16 ? widthIn / 2 : shape?.webCentersIn[Math.floor((shape.webCentersIn.length - 1) / 2)] ?? widthIn / 2;
  const view = viewAt({x0: center, y0: 0, x1: widthIn, y1: depthIn + toppingIn}, roomPx / 2, panel.top, scale);
  const [x0, x1] = [Math.max(view.x(0), 8), Math.min(view.x(widthIn), roomPx - 8)];
  const clip = sheet.clip(pathOfBox(x0 - 2, panel.top - 4, x1 + 2, panel.bottom + 4));
  const outline = shape ? pathOfRings(shape.rings, view) : pathOfBox(view.x(0), view.y(depthIn), view.x(widthIn), view.y(0));
  if (toppingIn > 0) concrete(sheet, "site", pathOfBox(view.x(0), view.y(depthIn + toppingIn), view.x(widthIn), view.y(depthIn)), {"clip-path": clip});
  concrete(sheet, "plant", outline, {"clip-path": clip});
}
