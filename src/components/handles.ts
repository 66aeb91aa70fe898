import type {Design} from "../lib/design/design.js";
import {valueAt} from "../lib/design/plain.js";
import {fieldUsed} from "../lib/design/used.js";
import {labelOf, messageFor, requireField} from "./controls/frame.js";
import {keyedValue, onRange, spokenNumber, type SetNumber} from "./controls/numberBox.js";
import {element} from "./dom.js";
import {el} from "./drawings/svg.js";
import {readFrame, type Frame} from "./drawings/view.js";
import type {DesignStore} from "./store.js";

/** A place of a drawing that can be taken hold of. */
export interface Handle {
  readonly number: Pick<SetNumber, "rule" | "get" | "set">;
  /** The way it moves: along x or up y. */
  readonly axis: "x" | "y";
  /** Units of the drawing's world that it moves for one unit of the number; negative where the number grows to the left or down. */
  readonly perUnit: number;
  /** Where it is now, in the drawing's world; undefined where there is nothing to take hold of. */
  readonly at: () => readonly [number, number] | undefined;
}

/** Where a handle of a field stands and how it moves. */
export interface FieldHandleOptions extends Pick<Handle, "axis" | "perUnit"> {
  readonly at: (design: Design) => readonly [number, number] | undefined;
  /** What a field counts as that is left out; such as where the member's own strands lie. */
  readonly usual?: (design: Design) => number;
}

/** A handle that moves a number of the design, as long as the design has a use for it. */
export function fieldHandle(store: DesignStore, path: string, {axis, perUnit, at, usual}: FieldHandleOptions): Handle {
  const field = requireField(path);
  if (field.kind !== "number") throw new Error(`${path} is not a number.`);
  return {
    number: {
      rule: {...field, path},
      get: () => (valueAt(store.get(), path) as number | undefined) ?? usual?.(store.get()),
      set: (value) => store.set(path, value),
    },
    axis, perUnit,
    at: () => (fieldUsed(store.get(), path) ? at(store.get()) : undefined),
  };
}

/** Half the size of a handle's own picture, px. */
const HALF = 12;

/**
 * A picture whose parts can be taken hold of, by pointer or by arrow keys. The handles lie over the drawing and not in it:
 * it is drawn anew under the hand while they stay, and no file or print has them. They find their places by the frame that
 * the drawing notes ({@link createSheet}'s `view`). The sliders beside it stay.
 */
export function withHandles(figure: HTMLElement, handles: readonly Handle[]): HTMLElement {
  const layer = element("div", {class: "handles no-print"});
  const message = messageFor([]);
  const node = element("div", {class: "handled"}, figure, layer, message.node);
  const shown = handles.map((handle) => ({handle, grip: gripOf(handle, () => frameOf(node), message.attempt)}));
  layer.append(...shown.map(({grip}) => grip.node));
  const place = () => {
    const frame = frameOf(node);
    for (const {handle, grip} of shown) grip.show(frame && handle.at(), frame);
  };
  // Whatever draws the picture anew, and whatever changes its width, moves the handles.
  new MutationObserver(place).observe(figure, {childList: true, subtree: true});
  new ResizeObserver(place).observe(node);
  place();
  return node;
}

/** Where the drawing's world stands within the node, px of the screen. */
function frameOf(node: HTMLElement): Frame | undefined {
  const svg = node.querySelector<SVGSVGElement>("svg[data-frame], svg[data-handle-frame]");
  const noted = readFrame(svg?.dataset["frame"] ?? svg?.dataset["handleFrame"]);
  if (!svg || !noted) return undefined;
  const [drawn, around] = [svg.getBoundingClientRect(), node.getBoundingClientRect()];
  const shown = svg.viewBox.baseVal.width > 0 ? drawn.width / svg.viewBox.baseVal.width : 1;
  if (!(shown > 0)) return undefined;
  return {x: drawn.left - around.left + noted.x * shown, y: drawn.top - around.top + noted.y * shown, perX: noted.perX * shown, perY: noted.perY * shown};
}

function gripOf({number: {rule, get, set}, axis, perUnit}: Handle, frame: () => Frame | undefined, attempt: (change: () => void) => boolean): {node: HTMLElement; show: (at: readonly [number, number] | undefined, frame: Frame | undefined) => void} {
  const arrows = axis === "y" ? "M12 3l4 5h-8zM12 21l4-5h-8z" : "M3 12l5 4v-8zM21 12l-5 4v-8z";
  const picture = el("svg", {viewBox: `0 0 ${2 * HALF} ${2 * HALF}`, width: 2 * HALF, height: 2 * HALF, "aria-hidden": "true"}, el("circle", {cx: HALF, cy: HALF, r: 3}), el("path", {d: arrows}));
  const words = labelOf(rule.label);
  const node = element("div", {
    class: "handle", tabindex: 0, role: "slider", "aria-label": `${words}, in the drawing`, title: words,
    "aria-orientation": axis === "y" ? "vertical" : "horizontal",
  }, picture);
  node.dataset["axis"] = axis;
  const take = (value: number) => {
    const next = onRange(value, rule);
    if (next !== get()) attempt(() => set(next));
  };

  let held: {readonly value: number; readonly px: number; readonly pxPerUnit: number} | undefined;
  const along = (event: PointerEvent) => (axis === "x" ? event.clientX : event.clientY);
  node.addEventListener("pointerdown", (event) => {
    const [now, value] = [frame(), get()];
    if (!now || value === undefined || event.button !== 0) return;
    // Scrolling and selecting are not what this hand is about; the focus is.
    event.preventDefault();
    node.focus({preventScroll: true});
    node.setPointerCapture(event.pointerId);
    // The scale is that of the moment when the hand took hold: a drawing that shrinks to fit would else run away from it.
    held = {value, px: along(event), pxPerUnit: (axis === "x" ? now.perX : now.perY) * perUnit};
    node.classList.add("is-held");
  });
  node.addEventListener("pointermove", (event) => {
    if (held) take(held.value + (along(event) - held.px) / held.pxPerUnit);
  });
  const release = () => {
    held = undefined;
    node.classList.remove("is-held");
  };
  for (const over of ["pointerup", "pointercancel", "lostpointercapture"]) node.addEventListener(over, release);
  node.addEventListener("keydown", (event) => {
    const next = keyedValue(event, rule, get() ?? rule.min);
    if (next === undefined) return;
    event.preventDefault();
    take(next);
  });
  return {
    node,
    show(at, now) {
      const value = get();
      const gone = !at || !now || value === undefined;
      node.hidden = gone;
      if (gone) return;
      node.style.left = `${now.x + at[0] * now.perX}px`;
      node.style.top = `${now.y + at[1] * now.perY}px`;
      node.setAttribute("aria-valuemin", String(rule.min));
      node.setAttribute("aria-valuemax", String(rule.max));
      node.setAttribute("aria-valuenow", String(value));
      node.setAttribute("aria-valuetext", spokenNumber(value, rule));
    },
  };
}
