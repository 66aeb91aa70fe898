import {clipped, inside} from "./clipped.js";
import {layerOf, TEXT_LAYER, type Layer} from "./layers.js";
import {pathRuns, type Point, type Run} from "./pathPoints.js";

/** An element of a drawing, whoever holds it. */
export interface DrawnNode {
  readonly name: string;
  readonly children: readonly (DrawnNode | string)[];
  get(key: string): string | undefined;
}

/** What a drawing shows, in its own units, y up. */
export type Shape = {readonly layer: Layer} & (
  | ({readonly kind: "line"} & Run)
  | {readonly kind: "circle"; readonly at: Point; readonly radius: number}
  | {readonly kind: "text"; readonly at: Point; readonly height: number; readonly words: string; readonly anchor: "start" | "middle" | "end"});

/** What is no line of the drawing: its words for listeners, its patterns, and plates behind texts. */
const NOT_DRAWN: ReadonlySet<string> = new Set(["desc", "defs", "title", "style", "pattern", "clipPath"]);
/** Height of capitals as a share of the type's size: the height by which such files give a text. */
const CAPITALS = 0.68;
/** Corners that stand for an ellipse. */
const CORNERS = 48;

/**
 * All that a drawing shows, true to scale.
 *
 * @param perIn - units of the paper for one inch of the thing, or for one millimeter where the file is in those
 * @param sizeOf - size of a text's type, in units of the paper
 */
export function shapesOf(drawing: DrawnNode, perIn: number, sizeOf: (text: DrawnNode) => number): Shape[] {
  const clips = new Map<string, Run[]>();
  collectClips(drawing, clips);
  const shapes: Shape[] = [];
  const placed = ([x, y]: Point): Point => [x / perIn, -y / perIn];
  const clipOf = (node: DrawnNode) => clips.get(/url\(["']?#([^"')]+)/.exec(node.get("clip-path") ?? "")?.[1] ?? "");
  const walk = (node: DrawnNode, above: Layer | undefined, areas: readonly (readonly Run[])[], shift: Point) => {
    if (NOT_DRAWN.has(node.name) || node.get("class") === "plate") return;
    const layer = layerOf(node.get("class") ?? "", node.get("data-part") ?? "", above);
    const own = clipOf(node);
    const within = own ? [...areas, own.map((run) => moved(run, shift))] : areas;
    const [x, y] = shiftOf(node.get("transform"));
    const next: Point = [shift[0] + x, shift[1] + y];
    if (node.name === "text") {
      shapes.push(...textsOf(node, sizeOf(node)).map(({at: [tx, ty], ...text}): Shape => ({...text, kind: "text", layer: layer.name === "Dimension" ? layer : TEXT_LAYER, at: placed([tx + next[0], ty + next[1]]), height: text.height / perIn})));
      return;
    }
    const circle = circleOf(node);
    if (circle) {
      const at: Point = [circle.at[0] + next[0], circle.at[1] + next[1]];
      if (within.every((area) => inside(at, area))) shapes.push({kind: "circle", layer, at: placed(at), radius: circle.radius / perIn});
    }
    for (const run of runsOf(node)) {
      let pieces = [moved(run, next)];
      for (const area of within) pieces = pieces.flatMap((piece) => clipped(piece, area));
      shapes.push(...pieces.map(({points, closed}): Shape => ({kind: "line", layer, closed, points: points.map(placed)})));
    }
    for (const child of node.children) if (typeof child !== "string") walk(child, layer.name === "Lines" ? above : layer, within, next);
  };
  walk(drawing, undefined, [], [0, 0]);
  return shapes;
}

function collectClips(node: DrawnNode, clips: Map<string, Run[]>): void {
  for (const child of node.children) {
    if (typeof child === "string") continue;
    const id = child.get("id");
    if (child.name === "clipPath" && id) clips.set(id, child.children.flatMap((shape) => (typeof shape === "string" ? [] : runsOf(shape))));
    collectClips(child, clips);
  }
}

/** The lines of one element, without those of its children. */
function runsOf(node: DrawnNode): Run[] {
  const n = (key: string) => Number(node.get(key) ?? 0);
  switch (node.name) {
    case "path": return pathRuns(node.get("d") ?? "");
    case "line": return [{points: [[n("x1"), n("y1")], [n("x2"), n("y2")]], closed: false}];
    case "rect": {
      const [x, y, right, low] = [n("x"), n("y"), n("x") + n("width"), n("y") + n("height")];
      return n("width") > 0 && n("height") > 0 ? [{points: [[x, y], [right, y], [right, low], [x, low]], closed: true}] : [];
    }
    case "ellipse":
      return [{closed: true, points: Array.from({length: CORNERS}, (_, i): Point => [n("cx") + n("rx") * Math.cos((2 * Math.PI * i) / CORNERS), n("cy") + n("ry") * Math.sin((2 * Math.PI * i) / CORNERS)])}];
    default: return [];
  }
}

function circleOf(node: DrawnNode): {readonly at: Point; readonly radius: number} | undefined {
  const n = (key: string) => Number(node.get(key) ?? 0);
  return node.name === "circle" && n("r") > 0 ? {at: [n("cx"), n("cy")], radius: n("r")} : undefined;
}

/** How far an element is moved; drawings turn and stretch nothing. */
function shiftOf(transform: string | undefined): Point {
  if (!transform) return [0, 0];
  const found = /^\s*translate\(\s*(-?[\d.]+)(?:[\s,]+(-?[\d.]+))?\s*\)\s*$/.exec(transform);
  if (!found) throw new Error(`This drawing is turned in a way that cannot be written: ${transform}`);
  return [Number(found[1]), Number(found[2] ?? 0)];
}

function moved({points, closed}: Run, [dx, dy]: Point): Run {
  return dx === 0 && dy === 0 ? {points, closed} : {points: points.map(([x, y]): Point => [x + dx, y + dy]), closed};
}

/** The rows of a text, each at its own place. */
function textsOf(node: DrawnNode, sizePx: number): {at: Point; height: number; words: string; anchor: "start" | "middle" | "end"}[] {
  const anchor = node.get("text-anchor");
  const rows = node.children.filter((child): child is DrawnNode => typeof child !== "string" && child.get("y") !== undefined);
  return (rows.length > 0 ? rows : [node]).flatMap((row) => {
    const words = wordsOf(row).replace(/\s+/g, " ").trim();
    const at: Point = [Number(row.get("x") ?? node.get("x") ?? 0), Number(row.get("y") ?? node.get("y") ?? 0)];
    return words ? [{at, height: sizePx * CAPITALS, words, anchor: anchor === "middle" || anchor === "end" ? anchor : "start"}] : [];
  });
}

function wordsOf(node: DrawnNode): string {
  return node.children.map((child) => (typeof child === "string" ? child : wordsOf(child))).join("");
}
