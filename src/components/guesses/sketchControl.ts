import type {Catalog} from "../../lib/catalog.js";
import {evaluate} from "../../lib/evaluate.js";
import {gradeSketch} from "../../lib/exercises/sketch.js";
import {SKETCHES, type Sketch, type SketchCurve, type SketchName} from "../../lib/exercises/sketches.js";
import {decimals} from "../../lib/units.js";
import {follow} from "../controls/follow.js";
import {element} from "../dom.js";
import type {DesignStore} from "../store.js";
import {openGuesses} from "../veil/open.js";
import {keepGuess} from "../keptGuesses.js";
import {openSketches} from "./openSketches.js";
import {sketchPad} from "./sketchPad.js";

/** Asks the reader to draw a curve, by pointer, touch or arrow keys, before the true one appears beside it. */
export function sketchControl(store: DesignStore, catalog: Catalog, name: SketchName): HTMLElement {
  const sketch: Sketch = SKETCHES[name];
  const curveNow = () => sketch.curve(evaluate(store.get(), catalog));
  const pad = sketchPad(sketch);
  const problem = element("p", {class: "control-message", role: "alert", hidden: true}, "Move the line first; any guess will do.");
  const told = element("div", {class: "guess-answer", "aria-live": "polite"});
  const done = element("button", {type: "button", class: "button"}, "Compare");
  const tell = element("button", {type: "button", class: "button quiet"}, "Show me");
  const again = element("button", {type: "button", class: "button quiet", hidden: true}, "Draw it again");
  const help = element("p", {class: "control-help"}, "Drag the line to where you think the curve runs. By keyboard: left and right go from point to point, up and down move one.");
  const node = element("div", {class: "guess sketch", "data-sketch": name},
    element("p", {class: "guess-question"}, sketch.question), pad.node, help, problem, element("div", {class: "guess-entry"}, done, tell, again), told);
  let redoing = false;

  const show = () => {
    const curve = curveNow();
    node.hidden = curve === undefined;
    if (!curve) return;
    const said = redoing ? undefined : openSketches.said(name);
    const open = said === undefined;
    for (const part of [done, help]) part.hidden = !open;
    tell.hidden = !open || !openGuesses.takesWaivers();
    again.hidden = open;
    pad.show(curve, said);
    told.replaceChildren(...(open ? [] : [element("p", {}, ...words(sketch, curve, said))]));
  };
  done.addEventListener("click", () => {
    const values = pad.values();
    const curve = curveNow();
    problem.hidden = values !== undefined;
    if (!values || !curve) return;
    redoing = false;
    keepGuess({kind: "sketch", name, offPercent: gradeSketch(values, curve.values).offPercent});
    openSketches.settle(name, values);
    show();
    again.focus();
  });
  tell.addEventListener("click", () => {
    problem.hidden = true;
    redoing = false;
    openSketches.settle(name, null);
    show();
    again.focus();
  });
  again.addEventListener("click", () => {
    redoing = true;
    pad.clear();
    show();
    pad.focus();
  });
  openGuesses.observe(show);
  follow(store, node, show);
  return node;
}

function words({what, unit, places}: Sketch, {at, values}: SketchCurve, said: readonly number[] | null): (string | Node)[] {
  const [first, last] = [0, values.length - 1].map((i) => `${decimals(values[i] as number, places)} ${unit} at ${at[i]}`);
  const top = values.indexOf(Math.max(...values));
  const between = top > 0 && top < values.length - 1 ? `, at most ${decimals(values[top] as number, places)} ${unit} at ${at[top]}` : "";
  const truth = `The ${what} is ${first}${between}, and ${last}.`;
  if (said === null) return [truth];
  const {offPercent, verdict, words: shape} = gradeSketch(said, values);
  const close = {close: "Close: you have a good feel for it.", near: "Near.", off: "Not yet."}[verdict];
  const sentence = shape.join("; ");
  return [element("strong", {}, close), ` On average your line lies ${Math.round(offPercent)} % of the curve\u2019s height away from it.${sentence ? ` ${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.` : ""} `, truth];
}
