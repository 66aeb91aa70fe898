import {FIELDS} from "../../lib/design/fields.js";
import type {Board} from "../boards/boards.js";
import {choiceControl, numberControl, switchControl} from "../controls.js";
import type {DesignStore} from "../store.js";
import type {EmbeddedFigure} from "./figures.js";

/** The controls of a figure that its page has, and the fields whose controls it has not. */
export function controlsOn(main: HTMLElement, board: Board, {controls, also}: EmbeddedFigure): {readonly found: readonly Element[]; readonly missing: readonly string[]} {
  const near = board.pieces.flatMap((piece) => [...(piece.matches(".control") ? [piece] : []), ...piece.querySelectorAll<HTMLElement>(".control")]).filter((control) => !board.anchor?.contains(control));
  const others = also === undefined ? [] : [...main.querySelectorAll(also)];
  if (!controls) return {found: [...near, ...others], missing: []};
  const choices = near.filter((control) => control.dataset["path"] === undefined);
  const of = controls.map((path) => ({path, nodes: controlsOf(main, near, path)}));
  return {found: [...choices, ...of.flatMap(({nodes}) => nodes), ...others], missing: of.filter(({nodes}) => nodes.length === 0).map(({path}) => path)};
}

/** Controls of a field: those beside the figure, or the first elsewhere on the page with what stands beside it; a field may be chosen in two ways. */
function controlsOf(main: HTMLElement, near: readonly HTMLElement[], path: string): HTMLElement[] {
  const beside = near.filter((control) => control.dataset["path"] === path);
  if (beside.length > 0) return beside;
  const all = [...main.querySelectorAll<HTMLElement>(`.control[data-path="${CSS.escape(path)}"]`)].filter((control) => !control.closest(".embed-controls"));
  const [first] = all;
  return first ? all.filter((control) => control.closest(".observablehq--block") === first.closest(".observablehq--block")) : [];
}

/** A control of a field that has none on the page. */
export function controlOf(store: DesignStore, path: string): HTMLElement {
  const kind = FIELDS[path]?.kind;
  const make = kind === "switch" ? switchControl : kind === "choice" ? choiceControl : numberControl;
  return make(store, path, {compact: true});
}
