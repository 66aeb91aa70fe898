import {roomHeightPx} from "./room.js";
import type {PaperPoint} from "./svg.js";

/** A box of the drawn thing, in its own units; y goes up. */
export interface WorldBox {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** Room kept free around the drawn thing, px. */
export interface Margins {
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly left: number;
}

/** Where things of the world stand on the paper. One scale serves both directions unless heights are exaggerated. */
export interface View {
  /** Pixels for one unit of the world along x. */
  readonly scale: number;
  /** Pixels for one unit of the world along y. */
  readonly scaleY: number;
  readonly x: (world: number) => number;
  readonly y: (world: number) => number;
  readonly at: (x: number, y: number) => PaperPoint;
  readonly world: WorldBox;
}

/** What {@link fitView} has to fit. */
export interface FitOptions {
  readonly world: WorldBox;
  readonly widthPx: number;
  readonly margins: Margins;
  /** Height that the whole drawing must not pass, px. */
  readonly mostHeightPx: number;
  /** Scale that the view must not pass, pixels for a unit of the world. */
  readonly mostScale?: number | undefined;
  /** Times that heights are drawn larger than lengths; 1 is true to scale. */
  readonly heightFactor?: number;
}

/**
 * The largest view of a world box that fits a width and a height, centered between the margins, and the height of the
 * paper that it needs.
 */
export function fitView({world, widthPx, margins, mostHeightPx, mostScale = Infinity, heightFactor = 1}: FitOptions): {view: View; heightPx: number} {
  const width = world.x1 - world.x0;
  const height = (world.y1 - world.y0) * heightFactor;
  const roomX = Math.max(1, widthPx - margins.left - margins.right);
  const roomY = Math.max(1, Math.min(mostHeightPx, roomHeightPx()) - margins.top - margins.bottom);
  const scale = Math.min(roomX / width, roomY / height, mostScale);
  const left = margins.left + (roomX - width * scale) / 2;
  const heightPx = margins.top + height * scale + margins.bottom;
  return {view: viewAt(world, left, margins.top, scale, scale * heightFactor), heightPx: Math.ceil(heightPx)};
}

/** A view whose world box has its upper left corner at a place of the paper. */
export function viewAt(world: WorldBox, leftPx: number, topPx: number, scale: number, scaleY = scale): View {
  const x = (value: number) => leftPx + (value - world.x0) * scale;
  const y = (value: number) => topPx + (world.y1 - value) * scaleY;
  return {scale, scaleY, x, y, at: (a, b) => [x(a), y(b)], world};
}

/** Where the world's origin stands on a picture, px, and the pixels to the right and down for one of its units along x and y: `perY` is negative where y goes up. */
export interface Frame {
  readonly x: number;
  readonly y: number;
  readonly perX: number;
  readonly perY: number;
}

/** A drawing's frame as it notes it on itself. */
export const frameText = ({x, y, scale, scaleY}: View): string => [x(0), y(0), scale, -scaleY].map((value) => value.toFixed(4)).join(" ");

/** A frame that {@link frameText} has written; undefined where there is none. */
export function readFrame(text: string | undefined): Frame | undefined {
  const [x, y, perX, perY] = (text ?? "").split(" ").map(Number);
  if (x === undefined || y === undefined || perX === undefined || perY === undefined) return undefined;
  return {x, y, perX, perY};
}

/** What takes a place of one picture to the place of the same thing in another: the six numbers of an SVG matrix. */
export function betweenFrames(from: Frame, to: Frame): readonly [number, number, number, number, number, number] {
  const [alongX, alongY] = [to.perX / from.perX, to.perY / from.perY];
  return [alongX, 0, 0, alongY, to.x - alongX * from.x, to.y - alongY * from.y];
}
