import {ALL_BAYS, BAY_STEPS_FT, bayAround, bayCloser, bayFitting, bayRule, bayWindow, fitsMap, isAllBays, type BayStepFt, type BayWindow, type SpanRange} from "../../lib/schemes/bayWindow.js";
import {button} from "../../components/controls.js";
import {numberBox} from "../../components/controls/numberBox.js";
import {rangeBrush} from "../../components/controls/rangeBrush.js";
import {element} from "../../components/dom.js";
import {pageChoice} from "../../components/shared/pageValue.js";

/** Which bays the map shows, and how finely: around a place, a part that is marked out, or ranges of the reader's own. */
export interface CloserLook {
  readonly node: HTMLElement;
  get(): BayWindow;
  /** The bay that is chosen, ft; undefined where none is. */
  chosen(place: readonly [deckFt: number, beamFt: number] | undefined): void;
  /** The part that is marked out on the map. */
  marked(part: {readonly deckFt: SpanRange; readonly beamFt: SpanRange} | undefined): void;
}

export function closerLook(changed: () => void): CloserLook {
  let window: BayWindow = ALL_BAYS;
  let place: readonly [number, number] | undefined;
  let part: {readonly deckFt: SpanRange; readonly beamFt: SpanRange} | undefined;
  const words = element("p", {class: "bay-window", role: "status"});
  const take = (next: BayWindow) => {
    if (JSON.stringify(next) === JSON.stringify(window)) return;
    window = bayWindow(next);
    show();
    changed();
  };
  const around = (byFt: BayStepFt) => {
    if (place) take(bayAround(...place, byFt));
  };
  const [two, one] = [button("Every 2 ft around the chosen bay", () => around(2)), button("Every 1 ft around it", () => around(1))];
  const closer = button("Look closer at the marked part", () => part && take(bayCloser(window, part.deckFt, part.beamFt)));
  const all = button("All bays, every 4 ft", () => take(ALL_BAYS));

  const step = pageChoice("A span is tried every", BAY_STEPS_FT.map((byFt) => ({value: String(byFt), label: `${byFt} ft`})), String(window.byFt));
  // Where a map could not show so many spans, it is the part around the chosen bay.
  step.observe((value) => {
    const byFt = Number(value) as BayStepFt;
    if (byFt === window.byFt) return;
    take(fitsMap({...window, byFt}) ? {...window, byFt} : bayAround(...place ?? [middleOf(window.deckFt), middleOf(window.beamFt)], byFt));
  });
  const ranges = [rangeOf("deckFt", "deck span"), rangeOf("beamFt", "beam span")];
  const fold = element("details", {class: "fold bay-own-range"}, element("summary", {}, "A range of my own"), element("div", {class: "bay-ranges"}, ...ranges.map(({node}) => node), step.node));

  function rangeOf(name: "deckFt" | "beamFt", label: string): {readonly node: HTMLElement; show(): void} {
    const scale = {from: ALL_BAYS[name].fromFt, to: ALL_BAYS[name].toFt, step: 1, values: []};
    const set = (range: Partial<SpanRange>) => take(bayFitting({...window, [name]: {...window[name], ...range}}));
    const brush = rangeBrush({name: label, unit: "ft", free: false, get: () => [window[name].fromFt, window[name].toFt], set: ([fromFt = scale.from, toFt = scale.to]) => set({fromFt, toFt})});
    const boxes = (["fromFt", "toFt"] as const).map((end) => numberBox({
      rule: {...bayRule(`${name}.${end}`), step: 1}, name: bayRule(`${name}.${end}`).label, get: () => window[name][end], set: (value) => set({[end]: value}),
    }));
    const node = element("div", {class: "measure-range"}, element("span", {class: "control-label"}, `${label}s`), brush.node,
      element("span", {class: "bay-bounds"}, boxes[0]?.input ?? null, " to ", boxes[1]?.input ?? null), ...boxes.map(({message}) => message.node));
    return {
      node,
      show() {
        brush.show(scale);
        for (const box of boxes) box.show();
      },
    };
  }
  function show(): void {
    const {deckFt, beamFt, byFt} = window;
    words.textContent = `The map has deck spans from ${deckFt.fromFt} to ${deckFt.toFt} ft and beam spans from ${beamFt.fromFt} to ${beamFt.toFt} ft, every ${byFt === 1 ? "foot" : `${byFt} ft`}.`;
    step.set(String(byFt));
    for (const range of ranges) range.show();
    two.disabled = one.disabled = place === undefined;
    closer.disabled = part === undefined;
    all.disabled = isAllBays(window);
  }
  show();
  return {
    node: element("div", {class: "bay-closer control"}, words, element("div", {class: "row"}, two, one, closer, all), fold),
    get: () => window,
    chosen(next) {
      place = next;
      two.disabled = one.disabled = place === undefined;
    },
    marked(next) {
      part = next;
      closer.disabled = part === undefined;
    },
  };
}

const middleOf = ({fromFt, toFt}: SpanRange) => Math.round((fromFt + toFt) / 2);
