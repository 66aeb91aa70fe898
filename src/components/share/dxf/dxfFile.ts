import {DxfWriter, LWPolylineFlags, TextHorizontalAlignment, TextVerticalAlignment, Units, point3d} from "@tarikjabiri/dxf";
import type {Layer} from "./layers.js";
import {TEXT_LAYER} from "./layers.js";
import type {Shape} from "./drawn.js";

/** Room between two drawings of one file, and around them, as a share of the height of the first. */
const GAP = 0.15;
/** Height of the words below, as a share of the drawings' width, and of a line of them as a multiple of that. */
const WORDS = 1 / 110;
const LINE = 1.7;
const DASHED = "DASHED";
const ALIGNED = {start: TextHorizontalAlignment.Left, middle: TextHorizontalAlignment.Center, end: TextHorizontalAlignment.Right} as const;

/** What one unit of a file is of the thing: how the file says so, the length of a dash and of a gap, and whether feet and inches are read out of it. */
const FILE_UNITS = {
  inch: {units: Units.Inches, measurement: 0, dashes: [6, -3]},
  millimeter: {units: Units.Millimeters, measurement: 1, dashes: [150, -75]},
} as const;

/**
 * Drawings as one DXF file: an inch or a millimeter of the thing is one unit, layers have plain names, dimensions are lines and text.
 *
 * @param drawings - each with its shapes in that unit, y up; they stand side by side
 * @param words - lines that stand below them: what is shown, where it comes from, the caution
 */
export function dxfFile(drawings: readonly (readonly Shape[])[], words: readonly string[], unit: keyof typeof FILE_UNITS): string {
  const {units, measurement, dashes} = FILE_UNITS[unit];
  const file = new DxfWriter();
  file.setUnits(units);
  file.setVariable("$MEASUREMENT", {70: measurement});
  file.tables.addLType(DASHED, "dashes and gaps", [...dashes]);
  const layers = new Map<string, Layer>();
  const onLayer = (layer: Layer) => {
    if (!layers.has(layer.name)) {
      layers.set(layer.name, layer);
      file.addLayer(layer.name, layer.color, layer.dashed ? DASHED : "Continuous");
    }
    return {layerName: layer.name};
  };
  const text = (at: readonly [number, number], height: number, content: string, anchor: keyof typeof ALIGNED, layer: Layer) => {
    const place = point3d(at[0], at[1]);
    file.addText(place, height, plainText(content), {...onLayer(layer), horizontalAlignment: ALIGNED[anchor], verticalAlignment: TextVerticalAlignment.BaseLine, ...(anchor === "start" ? {} : {secondAlignmentPoint: place})});
  };
  let left = 0;
  let low = 0;
  for (const shapes of drawings) {
    const box = boxOf(shapes);
    const [dx, dy] = [left - box.x0, -box.y0];
    for (const shape of shapes) {
      if (shape.kind === "circle") file.addCircle(point3d(shape.at[0] + dx, shape.at[1] + dy), shape.radius, onLayer(shape.layer));
      else if (shape.kind === "text") text([shape.at[0] + dx, shape.at[1] + dy], shape.height, shape.words, shape.anchor, shape.layer);
      else file.addLWPolyline(shape.points.map(([x, y]) => ({point: {x: x + dx, y: y + dy}})), {...onLayer(shape.layer), flags: shape.closed ? LWPolylineFlags.Closed : LWPolylineFlags.None});
    }
    low = Math.min(low, 0);
    left += box.x1 - box.x0 + GAP * (box.y1 - box.y0);
  }
  const height = left * WORDS;
  words.forEach((line, i) => text([0, low - height * (3 + LINE * i)], height, line, "start", TEXT_LAYER));
  return file.stringify();
}

function boxOf(shapes: readonly Shape[]): {x0: number; y0: number; x1: number; y1: number} {
  const points = shapes.flatMap((shape) => (shape.kind === "line" ? shape.points : [shape.at]));
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  // Spreading thousands of numbers into one call would overflow it.
  const least = (values: readonly number[]) => values.reduce((a, b) => Math.min(a, b), Infinity);
  const most = (values: readonly number[]) => values.reduce((a, b) => Math.max(a, b), -Infinity);
  return points.length === 0 ? {x0: 0, y0: 0, x1: 0, y1: 0} : {x0: least(xs), y0: least(ys), x1: most(xs), y1: most(ys)};
}

/** A text as such files have it: one line, with signs beyond plain letters by their number. */
function plainText(words: string): string {
  return [...words.replace(/[\u2009\u00a0]/g, " ").replace(/[\u2212\u2011]/g, "-").replace(/[\u2018\u2019]/g, "'").replace(/[\u201c\u201d]/g, '"')]
    .map((sign) => (sign.charCodeAt(0) < 127 ? sign : `\\U+${(sign.codePointAt(0) as number).toString(16).toUpperCase().padStart(4, "0")}`)).join("");
}
