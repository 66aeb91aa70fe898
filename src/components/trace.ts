import type {Catalog} from "../lib/catalog.js";
import type {Design} from "../lib/design/design.js";
import {differences, TOLD} from "../lib/differences.js";
import {evaluate, type Evaluation} from "../lib/evaluate.js";
import {GUESSES, type Guess} from "../lib/exercises/guesses.js";
import type {QuantityName} from "../lib/quantities.js";
import {element} from "./dom.js";
import {HELD_MS, letGo, overRedrawn} from "./held.js";
import type {Followed} from "./store.js";
import {ghostOf} from "./trace/ghost.js";
import {openGuesses} from "./veil/open.js";

/** How long the difference can be read once the hand has let go, and how often it is found anew while it moves, ms. */
const READ_MS = 6000;
const ANEW_MS = 150;
/** How long a trace takes to fade, as the style sheet has it, ms. */
const FADE_MS = 400;
/** What matters on any page, as long as no question hides it. */
const ALWAYS: readonly QuantityName[] = ["safe load, psf", "ceiling, in"];

/** While a control moves: a trace of where the design was in each picture, and a line that says what has changed since the hand took hold. */
export function trace(store: Followed, catalog: Catalog, began: Design): void {
  const line = element("p", {class: "since-held no-print", "aria-hidden": "true", hidden: true});
  const spoken = element("p", {class: "for-listeners", role: "status"});
  document.body.append(line, spoken);
  let from = began;
  let fromResult: Evaluation | undefined;
  let last = began;
  let held = false;
  let pressed = false;
  let rest: ReturnType<typeof setTimeout> | undefined;
  let anew: ReturnType<typeof setTimeout> | undefined;
  let gone: ReturnType<typeof setTimeout> | undefined;

  const tell = (): string => {
    anew = undefined;
    fromResult ??= evaluate(from, catalog);
    const words = differences(fromResult, evaluate(last, catalog), wanted());
    line.textContent = words;
    line.hidden = words === "";
    return words;
  };
  const hide = () => {
    line.hidden = true;
    spoken.textContent = "";
  };
  const end = (fades: boolean) => {
    clearTimeout(rest);
    clearTimeout(anew);
    anew = undefined;
    held = false;
    letGo();
    for (const ghost of document.querySelectorAll(".trace")) {
      if (!fades) ghost.remove();
      ghost.classList.add("is-leaving");
      setTimeout(() => ghost.remove(), FADE_MS);
    }
  };
  const rested = () => {
    if (pressed) return;
    spoken.textContent = tell();
    end(true);
    gone = setTimeout(hide, READ_MS);
  };
  const wait = () => {
    clearTimeout(rest);
    rest = setTimeout(rested, HELD_MS);
  };
  const change = (design: Design) => {
    const before = last;
    last = design;
    if (design === before) return;
    clearTimeout(gone);
    // Another design in the place of the open one is no movement of a control.
    if (design.name !== before.name) {
      hide();
      return end(false);
    }
    if (!held) {
      held = true;
      from = before;
      fromResult = undefined;
      hide();
    }
    anew ??= setTimeout(tell, ANEW_MS);
    wait();
  };
  // A hand that rests on what it holds has not let go.
  addEventListener("pointerdown", () => (pressed = true), {capture: true, passive: true});
  for (const over of ["pointerup", "pointercancel"]) {
    addEventListener(over, () => {
      pressed = false;
      if (held) wait();
    }, {capture: true, passive: true});
  }
  // The first change is known before this module is here.
  held = true;
  store.observe(change);
  if (last === began) wait();
  overRedrawn((place, stood) => {
    if (held) lay(place, stood);
    else letGo();
  });
}

/** The quantities that this page shows and no open question hides. */
function wanted(): QuantityName[] {
  const hidden = new Set(openGuesses.all().flatMap((name) => (GUESSES[name] as Guess).hides));
  const shown = new Set([...document.querySelectorAll<HTMLElement>("#observablehq-main [data-quantity]")].map((node) => node.dataset["quantity"]));
  return TOLD.filter((name) => (shown.has(name) || ALWAYS.includes(name)) && !hidden.has(name));
}

/** Lays a trace of each picture that stood in a place over the one that stands there now. */
function lay(place: HTMLElement, stood: Element): void {
  const before = picturesOf(stood);
  picturesOf(place).forEach((now, i) => {
    const then = before[i];
    const ghost = then && ghostOf(then, now);
    if (ghost) now.append(ghost);
  });
}

const picturesOf = (node: Element): SVGSVGElement[] => [...node.querySelectorAll<SVGSVGElement>('svg[data-frame], svg[class^="plot-"]')];
