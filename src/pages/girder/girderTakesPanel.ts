import type {GirderTake, GirderTakes, GirderTakesInput} from "../../lib/girder/takes.js";
import type {Design} from "../../lib/design/design.js";
import {decimals, feetAndInches} from "../../lib/units.js";
import {button} from "../../components/controls.js";
import {follow} from "../../components/controls/follow.js";
import {element} from "../../components/dom.js";
import type {DesignStore} from "../../components/store.js";
import type {StartWork} from "../../components/worker/work.js";

/** How long a change of the design rests before the search starts again, ms. */
const PAUSE_MS = 300;

/** What would just carry both bays, computed beside the page and put into the design on request. */
export function girderTakesPanel(store: DesignStore, startWork: StartWork, restOf: (design: Design) => Omit<GirderTakesInput, "design">): HTMLElement {
  const body = element("tbody", {});
  const state = element("p", {class: "note", role: "status"}, "Looking for what would just be enough.");
  const node = element("div", {},
    element("div", {class: "scrolls", role: "region", tabindex: 0, "aria-label": "What girder would just carry both bays"},
      element("table", {class: "takes"}, element("thead", {}, element("tr", {}, ...["All else unchanged", "It takes", "What fails one step beyond", ""].map((words) => element("th", {scope: "col"}, words)))), body)),
    state);
  let waiting: ReturnType<typeof setTimeout> | undefined;
  let seen: string | undefined;
  const start = (design: Design) => {
    const {done} = startWork("girderTakes", {design, ...restOf(design)});
    done.then((found) => {
      // Undefined: a newer design has taken this one's place.
      if (!found) return;
      body.replaceChildren(...rows(store, design, found));
      body.classList.remove("is-stale");
      state.textContent = "";
    }, (problem: unknown) => {
      state.textContent = problem instanceof Error ? problem.message : String(problem);
    });
  };
  follow(store, node, (design) => {
    const matters = JSON.stringify({...design, reasons: undefined, writtenFor: undefined, name: undefined, setting: undefined, brief: undefined, author: undefined, firm: undefined});
    if (matters === seen) return;
    seen = matters;
    clearTimeout(waiting);
    body.classList.add("is-stale");
    if (design.bay.baysAcross < 2) {
      body.replaceChildren();
      state.textContent = "One bay across has no girder.";
      return;
    }
    state.textContent = "Looking for what would just be enough.";
    waiting = setTimeout(() => start(design), PAUSE_MS);
  });
  return node;
}

function rows(store: DesignStore, design: Design, found: GirderTakes): HTMLElement[] {
  const kind = (name: Design["girder"]["kind"], take: GirderTake | undefined, words: string) =>
    row(store, design, words, take, (one) => `${feetAndInches(one.depthIn)} deep, ${one.strands} strands; ${feetAndInches(one.belowDeckIn)} of it below the deck`, {"girder.kind": name});
  return [
    row(store, design, "Fewest strands", found.strands, (one) => `${one.strands} strands`),
    row(store, design, "Least depth", found.depth, (one) => `${feetAndInches(one.depthIn)}, ${feetAndInches(one.belowDeckIn)} of it below the deck`),
    row(store, design, "Longest span", found.span, (one) => `${decimals(one.spanFt)} ft${one.notFt?.length ? `, but not ${runsOf(one.notFt)} ft` : ""}`),
    kind("inverted tee", found.invertedTee, "Shallowest inverted tee, strands free"),
    kind("rectangle", found.rectangle, "Shallowest rectangle, strands free"),
  ];
}

/** Whole feet with those in a row drawn together: "11 to 14, 16 to 19 or 29". */
function runsOf(feet: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const one of feet) {
    const last = runs.at(-1);
    if (last && one === last[1] + 1) last[1] = one;
    else runs.push([one, one]);
  }
  const words = runs.flatMap(([from, to]) => (to > from + 1 ? [`${from} to ${to}`] : to > from ? [`${from}`, `${to}`] : [`${from}`]));
  return words.length > 1 ? `${words.slice(0, -1).join(", ")} or ${words.at(-1)}` : words.join("");
}

function row(
  store: DesignStore, design: Design, asks: string, take: GirderTake | undefined, words: (take: GirderTake) => string, more: Readonly<Record<string, unknown>> = {},
): HTMLElement {
  const changes = take && {...more, ...take.changes};
  const same = changes && Object.entries(changes).every(([path, value]) => path.split(".").reduce<unknown>((at, key) => (at as Record<string, unknown>)[key], design) === value);
  const put = changes && !same ? button("Put it in", () => store.setMany(changes), {quiet: true, name: `Put it in the design: ${asks}`}) : same ? "as it is" : "";
  return element("tr", {}, element("th", {scope: "row"}, asks), element("td", {}, take ? `${words(take)}${take.tooLowIn > 0 ? `; but it hangs ${feetAndInches(take.tooLowIn)} too low for the room or the ceiling` : ""}` : "none that passes every check"),
    element("td", {"data-name": "one step beyond fails:"}, take?.stops ?? ""), element("td", {class: "no-print"}, put));
}
