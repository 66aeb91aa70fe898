import {quantileOf} from "../../lib/topping/distribution.js";
import {designOrderYd3} from "../../lib/topping/floorSpread.js";
import {REMAINING_STEP_IN} from "../../lib/topping/joint.js";
import {firstOrderDeviationIn, spreadCauses} from "../../lib/topping/spreadCauses.js";
import {decimals, percent} from "../../lib/units.js";
import {CAUSE_WORDS, causesChart, spreadChart, type SpreadChart} from "./spread.js";
import {button} from "../../components/controls.js";
import {element} from "../../components/dom.js";
import {figure, type FigureTable} from "../../components/figure.js";
import type {Observe} from "../../components/shared/deckSearch.js";
import type {SpreadControls} from "./spreadControls.js";
import type {SpreadState, SpreadTried} from "./spreadRun.js";
import {untilGuessed} from "../../components/veil.js";

/** Width between two charts side by side, px, and from which on they stand so. */
const GAP_PX = 40;
const PAIR_FROM_PX = 736;

/** The charts of the pieces that were tried, drawn again after each trial until the element has left the page. */
export function spreadFigures(run: Observe<SpreadState>, controls: SpreadControls, widthPx: number): HTMLElement {
  const charts = element("div", {class: "pair spread-charts"});
  const status = element("p", {class: "spread-status", role: "status"});
  const node = element("div", {"data-spread": ""}, status, charts);
  const half = widthPx >= PAIR_FROM_PX ? Math.floor((widthPx - GAP_PX) / 2) : widthPx;
  let drawn: SpreadTried | undefined;
  let wasShown = false;
  const stop = run((state) => {
    if (node.isConnected) wasShown = true;
    else if (wasShown) return void stop?.();
    node.classList.toggle("is-running", state.running);
    status.replaceChildren(...statusWords(state, controls));
    if (!state.tried || state.tried === drawn) return;
    drawn = state.tried;
    const open = [...charts.querySelectorAll("details")].map((details) => details.open);
    charts.replaceChildren(...figuresOf(state.tried, half));
    charts.querySelectorAll("details").forEach((details, i) => (details.open = open[i] === true));
  });
  return node;
}

/** By how much the surface is raised where it needs so much, in: up to the next hundredth. */
export function raiseIn(neededIn: number): number {
  return Math.ceil(100 * neededIn) / 100;
}

function statusWords({tried, problem}: SpreadState, controls: SpreadControls): (string | Node)[] {
  if (problem !== undefined) return [`The trial could not be run: ${problem}`];
  if (!tried) return ["Trying the first pieces."];
  const {spread: {count, seed, topping}, input} = tried;
  const words = `${decimals(count)} pieces tried with seed ${seed}${input.raisedIn ? `, the surface raised by ${decimals(input.raisedIn, 3)} in` : ""}.`;
  if (!topping || topping.raiseForTwentiethIn < 0.005) return [words];
  const raisedIn = Math.round(100 * ((input.raisedIn ?? 0) + raiseIn(topping.raiseForTwentiethIn))) / 100;
  return [words, "\u2002", button(`Raise the surface by ${decimals(raisedIn, 2)} in`, () => controls.raise(raisedIn))];
}

function figuresOf(tried: SpreadTried, widthPx: number): HTMLElement[] {
  const {spread: {erection, difference, toleranceIn, offDesignShare, neighborsApartShare, topping}, result, input} = tried;
  const designIn = result.deck.camber.erectionIn;
  const inches = (value: number) => `${decimals(value, 2)} in`;
  const drawnAs = (chart: SpreadChart, title: string, caption: string) => figure(spreadChart(chart, widthPx), {title, caption, table: tableOf(chart)});
  const figures = [
    drawnAs({
      of: erection, label: "camber when set, in", counted: "pieces",
      marks: [
        {at: designIn - toleranceIn, words: `${inches(toleranceIn)} below`, kind: "limit"}, {at: designIn, words: `the design, ${inches(designIn)}`, kind: "design"},
        {at: designIn + toleranceIn, words: `${inches(toleranceIn)} above`, kind: "limit"},
      ],
      misses: (value) => Math.abs(value - designIn) > toleranceIn,
    }, `Nine out of ten pieces have ${decimals(quantileOf(erection, 0.05), 2)} to ${inches(quantileOf(erection, 0.95))} of camber at erection; ${offDesignShare === 0 ? "none of them is" : `${shareWords(offDesignShare)} of them are`} farther from the design than the trade allows`,
    `Camber at midspan when the pieces are set. The trade allows ${inches(toleranceIn)} either way on this span (PCI MNL-135-00, from memory). Standard deviation ${decimals(erection.deviation, 3)} in.`),
    untilGuessed("neighborStep", drawnAs({
      of: difference, label: "difference between neighbors, in", counted: "pairs",
      marks: [
        ...(topping ? [] : [{at: REMAINING_STEP_IN, words: `${inches(REMAINING_STEP_IN)} may remain`, kind: "limit" as const}]),
        {at: difference.mean, words: `mean, ${inches(difference.mean)}`, kind: "design"}, {at: toleranceIn, words: `allowed, ${inches(toleranceIn)}`, kind: "limit"},
      ],
      misses: (value) => value > toleranceIn,
    }, `Two neighbors differ by ${inches(difference.mean)} on average; ${neighborsApartShare === 0 ? "no pair" : `${shareWords(neighborsApartShare)} of pairs`} by more than the trade allows`,
    "At midspan, as they come off the truck, before anything pulls them level.")),
  ];
  if (topping) {
    const {thinnest, tooThinShare, raiseForTwentiethIn, orderYd3} = topping;
    const leastIn = input.basis.topping?.leastIn ?? 0;
    const orderIs = designOrderYd3(result, input);
    const pieces = input.piecesPerOrder ?? 1;
    figures.push(
      drawnAs({
        of: thinnest, label: "topping where it is thinnest, in", counted: "pieces",
        marks: [{at: quantileOf(thinnest, 0.05), words: `19 of 20 have ${inches(quantileOf(thinnest, 0.05))}`, kind: "design"}, {at: leastIn, words: `required, ${inches(leastIn)}`, kind: "limit"}],
        misses: (value) => value < leastIn,
      }, `${shareWords(tooThinShare, true)} of pieces leave the topping thinner than ${inches(leastIn)} somewhere${raiseForTwentiethIn > 0.005 ? `; raised ${input.raisedIn ? "further " : ""}by ${inches(raiseIn(raiseForTwentiethIn))}, it meets that over 19 of 20` : "; it meets that over 19 of 20 at least"}`,
      "The finished surface keeps its elevation, and pieces with more camber come closer to it."),
      untilGuessed("toppingVolume", drawnAs({
        of: orderYd3, label: "topping of one bay, cubic yards", counted: "bays",
        marks: [{at: orderIs, words: `the design, ${decimals(orderIs, 2)} yd\u00b3`, kind: "design"}, {at: quantileOf(orderYd3, 0.95), words: `19 of 20 need ${decimals(quantileOf(orderYd3, 0.95), 2)} yd\u00b3 or less`, kind: "limit"}],
        misses: (value) => value > quantileOf(orderYd3, 0.95),
      }, `A bay takes ${decimals(orderYd3.mean, 2)} cubic yards on average, and one bay in twenty more than ${decimals(quantileOf(orderYd3, 0.95), 2)}`,
      `${pieces === Math.round(pieces) ? decimals(pieces) : decimals(pieces, 2)} ${pieces === 1 ? "piece" : "pieces"} to a bay: some are higher, some lower, so bays differ less than pieces do. Allow for waste and the pump line besides.`)),
    );
  }
  return figures;
}

/** The bars as a table. */
function tableOf({of, label, counted}: SpreadChart): FigureTable {
  return {columns: [`From, ${label.split(", ").at(-1)}`, "To", counted], rows: of.histogram.map(({from, to, count}) => [decimals(from, 3), decimals(to, 3), decimals(count)])};
}

/** A share in words: "4 %", "none", "less than 1 %". */
function shareWords(share: number, large = false): string {
  const words = share === 0 ? "none" : share < 0.01 ? "less than 1 %" : share > 0.99 && share < 1 ? "more than 99 %" : share === 1 ? "all" : percent(share);
  return large ? words.charAt(0).toUpperCase() + words.slice(1) : words;
}

/** Which cause matters most, by first-order theory, with what theory and trial say of the whole. */
export function causesFigure({spread: {erection, count}, input: {basis, scatter}}: SpreadTried, widthPx: number): HTMLElement {
  const causes = spreadCauses(basis, scatter);
  const [first] = causes;
  return figure(causesChart(causes, widthPx), {
    title: first && first.varianceShare > 0 ? `${CAUSE_WORDS[first.cause].charAt(0).toUpperCase()}${CAUSE_WORDS[first.cause].slice(1)} matters most: ${percent(first.varianceShare)} of the variance of camber at erection` : "Nothing varies, and all pieces are alike",
    caption: `Each cause's standard deviation times the slope of the camber in it; squares add up. Theory: a standard deviation of ${decimals(firstOrderDeviationIn(basis, scatter), 3)} in. The ${decimals(count)} pieces: ${decimals(erection.deviation, 3)} in.`,
    table: {columns: ["Cause", "Deviation alone, in", "Share of the variance"], rows: causes.map(({cause, deviationIn, varianceShare}) => [CAUSE_WORDS[cause], decimals(deviationIn, 3), percent(varianceShare)])},
  });
}
