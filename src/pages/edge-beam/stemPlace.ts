import {greatestFirstStemFt} from "../../lib/edgeBeam/demand.js";
import type {Evaluation} from "../../lib/evaluate.js";
import {decimals} from "../../lib/units.js";
import {follow} from "../../components/controls/follow.js";
import type {Handle} from "../../components/handles.js";
import {button} from "../../components/controls.js";
import {element, uniqueId} from "../../components/dom.js";
import type {DesignStore, Followed} from "../../components/store.js";
import {storeWith} from "../../components/shared/storeWith.js";

/** Where the first stem stands on the beam, which a page lets its reader try. It belongs to the page, not to the design. */
export interface StemPlace {
  readonly node: HTMLElement;
  /** Place that the reader tries, ft from the left support; undefined where the tees fall as the design has them. */
  get(): number | undefined;
  /** Takes hold of the first stem in the drawing. */
  readonly handle: Handle;
  /** The store, notified as well when the place changes: for pictures of both. */
  readonly both: Followed;
}

/** A slider for the place of the first stem, and a button back to where the tees fall. */
export function stemPlaceControl(store: DesignStore, evaluated: (design: ReturnType<DesignStore["get"]>) => Evaluation): StemPlace {
  let tried: number | undefined;
  const listeners = new Set<() => void>();
  const id = uniqueId("stem");
  const slider = element("input", {id, type: "range", class: "slider", min: 0, step: 0.25});
  const shown = element("output", {for: id});
  const back = button("As the tees fall", () => set(undefined), {quiet: true});
  const node = element("div", {class: "control stem-place"},
    element("label", {class: "control-label", for: id}, "Try the first stem elsewhere"), slider, shown,
    element("p", {class: "control-help"}, "Feet from the left column. For trial on this page only; the design uses the worst of its own bays."), back);
  const show = () => {
    const result = evaluated(store.get());
    const {points} = result.edgeBeam.demand.bending.stems.beam;
    const mostFt = greatestFirstStemFt(result.design, result.member);
    node.hidden = mostFt === 0;
    if (tried !== undefined && tried > mostFt) tried = undefined;
    const placeFt = tried ?? points[0]?.atFt ?? 0;
    slider.max = String(mostFt);
    slider.value = String(placeFt);
    slider.style.setProperty("--filled", `${mostFt > 0 ? (100 * placeFt) / mostFt : 0}%`);
    shown.value = `${decimals(placeFt, 2)} ft`;
    slider.setAttribute("aria-valuetext", `${decimals(placeFt, 2)} ft from the left column`);
    back.hidden = tried === undefined;
  };
  const set = (placeFt: number | undefined) => {
    tried = placeFt;
    show();
    for (const tell of listeners) tell();
  };
  slider.addEventListener("input", () => set(Number(slider.value)));
  follow(store, node, show);
  const first = () => tried ?? evaluated(store.get()).edgeBeam.demand.bending.stems.beam.points[0]?.atFt;
  const rule = {
    path: "stem", label: "place of the first stem", unit: "ft", min: 0, step: 0.25,
    get max() {
      const {design, member} = evaluated(store.get());
      return greatestFirstStemFt(design, member);
    },
  };
  return {
    node, get: () => tried,
    handle: {
      number: {rule, get: first, set: (placeFt) => set(placeFt)}, axis: "x", perUnit: 1,
      at: () => {
        const placeFt = first();
        return placeFt === undefined || node.hidden ? undefined : [placeFt, 0];
      },
    },
    both: storeWith(store, (change) => {
      const tell = () => change(undefined);
      listeners.add(tell);
      return () => void listeners.delete(tell);
    }),
  };
}
