import {readerSystem} from "../../reader/system.js";
import {drawingsOf} from "../pictureFile.js";
import {wrappedLetters} from "./wrappedLetters.js";
import {shapesOf, type DrawnNode} from "./drawn.js";
import {dxfFile} from "./dxfFile.js";

/** Letters of a line of the words below the drawings. */
const LINE_LETTERS = 100;
const MM_PER_IN = 25.4;

/** The drawings of a figure that know their scale, as the text of one DXF file: in millimeters for a reader of SI, else in inches. */
export function figureDxf(figure: HTMLElement, source: string): string {
  const drawings = scaledDrawings(figure);
  const unit = readerSystem() === "SI" ? "millimeter" : "inch";
  const perIn = unit === "inch" ? 1 : MM_PER_IN;
  const words = [figure.querySelector(".figure-title")?.textContent, figure.querySelector("figcaption")?.textContent, source, `One unit is one ${unit}.`];
  return dxfFile(
    drawings.map((drawing) => shapesOf(nodeOf(drawing), Number(drawing.dataset["pxPerIn"]) / perIn, (text) => sizes.get(text) ?? 13)),
    words.flatMap((one) => wrappedLetters((one ?? "").replace(/\s+/g, " ").trim(), LINE_LETTERS)),
    unit);
}

/** Drawings of a figure that note at which scale they are drawn. */
export function scaledDrawings(figure: HTMLElement): SVGSVGElement[] {
  return drawingsOf(figure).filter((drawing) => Number(drawing.dataset["pxPerIn"]) > 0);
}

/** Sizes of type, which only the browser knows. */
const sizes = new WeakMap<DrawnNode, number>();

function nodeOf(element: Element): DrawnNode {
  const node: DrawnNode = {
    name: element.tagName, get: (key) => element.getAttribute(key) ?? undefined,
    // What the style hides is no part of the drawing.
    children: [...element.childNodes].flatMap((child): (DrawnNode | string)[] =>
      child instanceof Element ? (getComputedStyle(child).display === "none" ? [] : [nodeOf(child)]) : child instanceof Text ? [child.data] : []),
  };
  if (element.tagName === "text") sizes.set(node, Number.parseFloat(getComputedStyle(element).fontSize));
  return node;
}
