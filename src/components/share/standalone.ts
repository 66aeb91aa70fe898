/** Properties of an element that its children have too unless they say otherwise. */
const INHERITED = [
  "fill", "fill-opacity", "fill-rule", "stroke", "stroke-width", "stroke-opacity", "stroke-dasharray", "stroke-dashoffset", "stroke-linecap", "stroke-linejoin",
  "font-family", "font-size", "font-weight", "font-style", "font-variant-numeric", "letter-spacing", "text-anchor", "visibility", "paint-order", "color",
] as const;
/** Properties of an element alone, with the value that need not be written. */
const OWN: Readonly<Record<string, string>> = {
  "opacity": "1", "display": "inline", "dominant-baseline": "auto", "clip-path": "none", "mask": "none", "transform": "none", "overflow": "visible",
  "stop-color": "rgb(0, 0, 0)", "stop-opacity": "1", "vector-effect": "none",
};
/** What means something only on the page. */
const DROPPED = /^(class|style|tabindex|role|on\w+|aria-.*|data-.*)$/;

/** A copy of a drawing whose look is written into its elements, so that it is the same without the site's style. */
export function standalone(drawing: SVGSVGElement): SVGSVGElement {
  const copy = drawing.cloneNode(true) as SVGSVGElement;
  dress(drawing, copy, undefined);
  // What is not shown needs no place in a file.
  for (const hidden of copy.querySelectorAll('[display="none"]')) hidden.remove();
  for (const id of missing(copy)) {
    const elsewhere = document.getElementById(id);
    if (!(elsewhere instanceof SVGElement)) continue;
    const own = elsewhere.cloneNode(true) as SVGElement;
    dress(elsewhere, own, undefined);
    copy.append(own);
  }
  return copy;
}

/** Names of patterns and the like that a drawing uses and does not have. */
function missing(copy: SVGElement): Set<string> {
  const used = [copy, ...copy.querySelectorAll("*")].flatMap((node) => [...node.attributes].flatMap(({value}) => [...value.matchAll(/url\(["']?#([^"')]+)["']?\)/g)].map((found) => found[1] as string)));
  return new Set(used.filter((id) => !copy.querySelector(`[id="${CSS.escape(id)}"]`)));
}

function dress(from: Element, to: Element, above: CSSStyleDeclaration | undefined): void {
  const look = getComputedStyle(from);
  for (const {name} of [...to.attributes]) if (DROPPED.test(name)) to.removeAttribute(name);
  for (const name of INHERITED) {
    const value = look.getPropertyValue(name);
    if (above && value === above.getPropertyValue(name)) to.removeAttribute(name);
    else to.setAttribute(name, plainColor(value));
  }
  for (const [name, usual] of Object.entries(OWN)) {
    // A place given by an attribute is part of the drawing itself.
    if (name === "transform" && to.hasAttribute("transform")) continue;
    const value = look.getPropertyValue(name);
    // A drawing within a file cuts what leaves its frame unless it says that it does not.
    const silent = value === usual && !(name === "overflow" && from instanceof SVGSVGElement);
    if (silent || (name === "display" && value !== "none")) to.removeAttribute(name);
    else to.setAttribute(name, plainColor(value));
  }
  const [children, copies] = [[...from.children], [...to.children]];
  children.forEach((child, i) => dress(child, copies[i] as Element, look));
}

const known = new Map<string, string>();

/** A color as any program reads it, where the browser writes one that is mixed: `color(srgb ...)`. */
function plainColor(value: string): string {
  if (!/^(color|oklab|oklch|lab|lch)\(/.test(value)) return value;
  const plain = known.get(value);
  if (plain !== undefined) return plain;
  const paint = new OffscreenCanvas(1, 1).getContext("2d") as OffscreenCanvasRenderingContext2D;
  paint.fillStyle = value;
  paint.fillRect(0, 0, 1, 1);
  const [red = 0, green = 0, blue = 0, alpha = 255] = paint.getImageData(0, 0, 1, 1).data;
  const made = alpha === 255 ? `rgb(${red}, ${green}, ${blue})` : `rgba(${red}, ${green}, ${blue}, ${Number((alpha / 255).toFixed(3))})`;
  known.set(value, made);
  return made;
}

/**
 * Gives a part of the page the colors that it has on paper, whatever the screen has; a file is paper. Read within the same
 * task, nobody sees it.
 *
 * @returns takes them away again
 */
export function lightColors(node: HTMLElement): () => void {
  const before = node.getAttribute("style");
  for (const [name, value] of rootColors()) node.style.setProperty(name, value);
  node.style.color = "var(--ink)";
  // A color on its way to another would be read half way.
  node.setAttribute("data-paper", "");
  return () => {
    node.removeAttribute("data-paper");
    if (before === null) node.removeAttribute("style");
    else node.setAttribute("style", before);
  };
}

/** The colors that stand for the whole page, outside of any condition. */
function rootColors(): [string, string][] {
  const root = rules().find((rule): rule is CSSStyleRule => rule instanceof CSSStyleRule && rule.selectorText === ":root" && rule.style.getPropertyValue("--paper") !== "");
  return root ? [...root.style].filter((name) => name.startsWith("--")).map((name) => [name, root.style.getPropertyValue(name)]) : [];
}

/** All rules of the page's style sheets. */
export function rules(): CSSRule[] {
  return [...document.styleSheets].flatMap((sheet) => [...sheet.cssRules]);
}
