import {VERSION} from "../../lib/version.js";
import {svgElement} from "../dom.js";
import {fontFaces} from "./fontFaces.js";
import {lightColors, standalone} from "./standalone.js";
import {wrapped} from "./wrapped.js";

/** A picture as a file: a drawing with its finding above it, its caption and where it comes from below. */
export interface PictureFile {
  readonly svg: string;
  readonly widthPx: number;
  readonly heightPx: number;
}

const MARGIN_PX = 24;
/** Narrowest file, so that a caption below a narrow section still reads well, px. */
const LEAST_WIDTH_PX = 480;
const TITLE = {sizePx: 17, linePx: 23, weight: 600};
const CAPTION = {sizePx: 14, linePx: 20, weight: 400};
const SOURCE = {sizePx: 12, linePx: 17, weight: 400};
/** A dot of a screen is a quarter of a millimeter; printed from a slide a picture wants more of them. */
const PNG_SCALE = 3;

/** What must stand below every picture that leaves the notebook. */
export function sourceLine(designName: string, pageTitle: string): string {
  return `${designName}. Plank & Tee ${VERSION}, "${pageTitle}". For learning and preliminary sizing only; local codes govern; a licensed engineer and the producer design the real structure.`;
}

/** The drawings of a figure as one file in the colors of paper, which needs nothing from the site, its fonts included. */
export async function pictureFile(figure: HTMLElement, source: string): Promise<PictureFile> {
  const body = figure.querySelector(".figure-body") ?? figure;
  const place = body.getBoundingClientRect();
  const drawings = drawingsOf(figure);
  if (drawings.length === 0) throw new Error("There is no picture to be seen here.");
  const restore = lightColors(figure);
  const boxes = drawings.map((drawing) => drawing.getBoundingClientRect());
  // A picture that scrolls sideways in its frame is whole in the file.
  const left = Math.min(...boxes.map((box) => box.left));
  const innerPx = Math.max(LEAST_WIDTH_PX, ...boxes.map((box) => box.right - left));
  const ink = getComputedStyle(figure).color;
  const style = getComputedStyle(figure.querySelector("figcaption") ?? figure);
  const soft = style.color;
  const family = style.fontFamily;
  const paper = getComputedStyle(figure).getPropertyValue("--paper");
  const families = [family, ...drawings.flatMap((drawing) => [drawing, ...drawing.querySelectorAll("text")]).map((node) => getComputedStyle(node).fontFamily)].join();
  const nested = drawings.map((drawing, i) => {
    const box = boxes[i] as DOMRect;
    const copy = standalone(drawing);
    copy.setAttribute("x", String(MARGIN_PX + box.left - left));
    copy.setAttribute("y", String(box.top - place.top));
    copy.setAttribute("width", String(box.width));
    copy.setAttribute("height", String(box.height));
    return copy;
  });
  restore();

  const bottom = Math.max(...boxes.map((box) => box.bottom - place.top));
  const lines = (words: string, {sizePx, weight}: typeof TITLE) => wrapped(words, innerPx, `${weight} ${sizePx}px ${family}`);
  const title = lines(wordsOf(figure.querySelector(".figure-title")), TITLE);
  const caption = lines(wordsOf(figure.querySelector("figcaption")), CAPTION);
  const origin = lines(source, SOURCE);
  const root = svgElement("svg", {xmlns: "http://www.w3.org/2000/svg", "font-family": family});
  let y = MARGIN_PX;
  const write = (texts: readonly string[], {sizePx, linePx, weight}: typeof TITLE, fill: string) => {
    for (const words of texts) {
      y += linePx;
      root.append(svgElement("text", {x: MARGIN_PX, y: y - (linePx - sizePx) / 2 - 2, "font-size": sizePx, "font-weight": weight, fill}, words));
    }
  };
  write(title, TITLE, ink);
  y += title.length > 0 ? 10 : 0;
  const drawn = svgElement("g", {transform: `translate(0 ${y})`}, ...nested);
  root.append(drawn);
  y += bottom + 12;
  write(caption, CAPTION, soft);
  y += 6;
  write(origin, SOURCE, soft);
  const widthPx = Math.ceil(innerPx + 2 * MARGIN_PX);
  const heightPx = Math.ceil(y + MARGIN_PX);
  for (const [name, value] of Object.entries({width: widthPx, height: heightPx, viewBox: `0 0 ${widthPx} ${heightPx}`})) root.setAttribute(name, String(value));
  root.prepend(
    svgElement("title", {}, [...title, ...caption].join(" ")),
    svgElement("style", {}, await fontFaces(families)),
    svgElement("rect", {width: widthPx, height: heightPx, fill: paper}),
  );
  return {svg: new XMLSerializer().serializeToString(root), widthPx, heightPx};
}

/** The same picture in dots. */
export async function pngOf({svg, widthPx, heightPx}: PictureFile): Promise<Blob> {
  const image = new Image();
  const address = URL.createObjectURL(new Blob([svg], {type: "image/svg+xml"}));
  try {
    image.src = address;
    await image.decode();
    const canvas = document.createElement("canvas");
    canvas.width = widthPx * PNG_SCALE;
    canvas.height = heightPx * PNG_SCALE;
    const paint = canvas.getContext("2d") as CanvasRenderingContext2D;
    paint.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve, reject) => canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error("The browser made no picture."))), "image/png"));
  } finally {
    URL.revokeObjectURL(address);
  }
}

/** The drawings of a figure from top to bottom; not those within another, and none of a fold below it. */
export function drawingsOf(figure: HTMLElement): SVGSVGElement[] {
  return [...(figure.querySelector(".figure-body") ?? figure).querySelectorAll("svg")]
    .filter((drawing) => !drawing.parentElement?.closest("svg") && drawing.getBoundingClientRect().width > 0);
}

function wordsOf(node: Element | null): string {
  return (node?.textContent ?? "").replace(/\s+/g, " ").trim();
}
