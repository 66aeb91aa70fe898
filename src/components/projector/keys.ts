/** What the keys of the projector view do. */
export interface KeyActions {
  readonly move: (by: 1 | -1) => void;
  readonly first: () => void;
  readonly last: () => void;
  readonly point: (by: 1 | -1) => void;
  readonly pointing: () => boolean;
  readonly stopPointing: () => void;
  readonly dim: (now: boolean) => void;
  readonly dimmed: () => boolean;
  readonly leave: () => void;
}

/** What a key asks for, by its name and by what has the focus; undefined where it is left to the browser. */
export type Asked = "next" | "before" | "first" | "last" | "point on" | "point back" | "stop pointing" | "dim" | "bright" | "let go" | "leave";

/** What holds at the moment of a key. */
export interface KeyState {
  readonly dimmed: boolean;
  /** A control has the focus, which has its own use for arrows and letters. */
  readonly inControl: boolean;
  /** Something stands open above the page, which Escape closes. */
  readonly popover: boolean;
  readonly pointing: boolean;
}

const KEYS: Readonly<Record<string, Asked>> = {
  ArrowRight: "next", PageDown: "next", ArrowLeft: "before", PageUp: "before", Home: "first", End: "last", ArrowDown: "point on", ArrowUp: "point back", d: "dim", D: "dim",
};

export function askedBy(key: string, {dimmed, inControl, popover, pointing}: KeyState): Asked | undefined {
  if (dimmed) return ["Shift", "Control", "Alt", "Meta", "Tab"].includes(key) ? undefined : "bright";
  if (key === "Escape") return popover ? undefined : inControl ? "let go" : pointing ? "stop pointing" : "leave";
  return inControl ? undefined : KEYS[key];
}

/** What has its own use for arrows: boxes, sliders, choices, and handles in a drawing. */
const OWN_KEYS = 'input, select, textarea, [contenteditable], [role="slider"], [role="listbox"], [role="application"]';

export function projectorKeys(actions: KeyActions, signal: AbortSignal): void {
  const act: Readonly<Record<Asked, () => void>> = {
    next: () => actions.move(1), before: () => actions.move(-1), first: actions.first, last: actions.last, "point on": () => actions.point(1), "point back": () => actions.point(-1),
    "stop pointing": actions.stopPointing, dim: () => actions.dim(true), bright: () => actions.dim(false), "let go": () => (document.activeElement as HTMLElement | null)?.blur(), leave: actions.leave,
  };
  document.addEventListener("keydown", (event) => {
    if (event.altKey || event.ctrlKey || event.metaKey || event.defaultPrevented) return;
    const {target} = event;
    const asked = askedBy(event.key, {
      dimmed: actions.dimmed(), pointing: actions.pointing(), inControl: target instanceof Element && target.matches(OWN_KEYS), popover: document.querySelector(":popover-open") !== null,
    });
    if (!asked) return;
    event.preventDefault();
    act[asked]();
  }, {signal});
}
