import * as Plot from "@observablehq/plot";
import {leastIn, type FrontierDeck} from "../../lib/deck/frontier.js";
import {MEASURES, type DeckMeasures, type MeasureName} from "../../lib/deck/measures.js";
import {svgElement} from "../../components/dom.js";
import {textWidth} from "../../components/drawings/placement.js";
import {KIND_MARKS, MEASURE_LOOKS, deckName} from "./tradeOffLooks.js";
import {LEAST_WIDTH_PX, beyondCurve, place, type ChartPoint, type FrameMark} from "../../components/charts/marks.js";

/** What {@link tradeOffChart} draws. */
export interface TradeOffData {
  readonly x: MeasureName;
  readonly y: MeasureName;
  /** The decks that none beats in all measures. */
  readonly decks: readonly FrontierDeck[];
  /** Those of them that none beats in the measures that count for the reader; the others are faint. */
  readonly counted: ReadonlySet<string>;
  /** Measures of every deck that works, in the order of the measures. */
  readonly working: readonly (readonly number[])[];
  readonly own: {readonly measures: DeckMeasures; readonly fails: boolean};
}

/** One chart of a pair of measures, of which a deck can be lit. */
export interface TradeOffChart {
  readonly node: SVGSVGElement | HTMLElement;
  /** Each deck's place in the drawing's own pixels. */
  readonly spots: ReadonlyMap<string, readonly [number, number]>;
  light(id: string | undefined): void;
}

/** The name under which the open design's own deck lights. */
export const OWN_DECK = "this design";
const FONT_PX = 12.5;
const RADIUS_PX = 5;
/** Within these of the design's own mark, across and up, a name would run into its name, px. */
const CROWDED_PX = [110, 34] as const;
/** Room around the outermost decks as a share of the range. */
const PADDING = 0.07;

/** Every deck that works as a speck, those that none beats as marks, and the edge beyond which nothing works. */
export function tradeOffChart(data: TradeOffData, widthPx: number): TradeOffChart {
  const {x, y, decks, own} = data;
  const spots = new Map<string, readonly [number, number]>();
  const groups = new Map<string, SVGElement>();
  const label = svgElement("text", {class: "trade-label", "font-size": FONT_PX, "aria-hidden": "true"});
  let ownSpot: readonly [number, number] = [Infinity, Infinity];
  const width = Math.max(LEAST_WIDTH_PX, widthPx);
  const node = Plot.plot({
    width, height: Math.round(Math.min(330, Math.max(230, width * 0.74))), marginLeft: 46, marginTop: 26, marginRight: 12, marginBottom: 38,
    x: {label: MEASURE_LOOKS[x].axis, domain: domain(data, x), ticks: 5, grid: true},
    y: {label: MEASURE_LOOKS[y].axis, domain: domain(data, y), ticks: 5, grid: true},
    marks: [specks(data), ...edge(data), ownMark(data), marks(decks, data, spots, groups), names(data), ownName(data), () => label],
  });
  let lit: string | undefined;
  return {
    node, spots,
    light(id) {
      if (lit !== undefined) groups.get(lit)?.classList.remove("is-picked");
      lit = id;
      const [group, spot, deck] = [groups.get(id ?? ""), spots.get(id ?? ""), decks.find((entry) => entry.id === id)];
      label.textContent = "";
      // Where one deck is named, the names at the ends give way.
      node.classList.toggle("has-lit", group !== undefined);
      if (!group || !spot || !deck) return;
      group.classList.add("is-picked");
      // The lit mark is drawn over its neighbors.
      group.parentNode?.append(group);
      label.textContent = deckName(deck);
      const right = spot[0] + 12 + textWidth(label.textContent, FONT_PX) * 1.05 < width;
      // Above the mark, or below it where the design's own name stands above.
      const crowded = Math.abs(spot[0] - ownSpot[0]) < CROWDED_PX[0] && Math.abs(spot[1] - ownSpot[1]) < CROWDED_PX[1];
      for (const [name, value] of Object.entries({x: spot[0] + (right ? 11 : -11), y: spot[1] + (crowded ? 18 : -9), "text-anchor": right ? "start" : "end"})) label.setAttribute(name, String(value));
    },
  };

  function ownMark({own: {measures}}: TradeOffData): FrameMark {
    return (_index, scales) => {
      ownSpot = place(scales, [measures[x], measures[y]]);
      const [cx, cy] = ownSpot;
      return svgElement("path", {d: `M${cx} ${cy - 10}l10 10l-10 10l-10 -10Z`, class: "trade-own", "data-part": OWN_DECK});
    };
  }

  function ownName(_: TradeOffData): FrameMark {
    return (_index, scales, _channels, {marginTop}) => {
      const [cx, cy] = place(scales, [own.measures[x], own.measures[y]]);
      const words = own.fails ? "this design fails" : "this design";
      const left = cx + textWidth(words, FONT_PX) / 2 > width - 4;
      return svgElement("text", {
        class: own.fails ? "trade-own-name is-failing" : "trade-own-name", "data-part": OWN_DECK, x: left ? width - 4 : cx, y: cy - 14 > marginTop ? cy - 14 : cy + 24, "text-anchor": left ? "end" : "middle", "font-size": FONT_PX,
      }, words);
    };
  }
}

/** Range of a measure over the decks and the design, with room about them. */
function domain({decks, own}: TradeOffData, name: MeasureName): [number, number] {
  const values = [...decks.map(({measures}) => measures[name]), own.measures[name]];
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const room = most > least ? (most - least) * PADDING : Math.max(1e-6, most * 0.2);
  return [Math.max(0, least - room), most + room];
}

/** The decks that work, as one path of points. */
function specks({working, x, y}: TradeOffData): FrameMark {
  const [ix, iy] = [MEASURES.indexOf(x), MEASURES.indexOf(y)];
  return (_index, scales, _channels, {width, height, marginTop, marginRight, marginBottom, marginLeft}) => {
    const drawn = new Set<string>();
    for (const values of working) {
      const [px, py] = place(scales, [values[ix] as number, values[iy] as number]);
      if (px > marginLeft && px < width - marginRight && py > marginTop && py < height - marginBottom) drawn.add(`M${px.toFixed(0)} ${py.toFixed(0)}h0`);
    }
    return svgElement("path", {d: [...drawn].join(""), class: "trade-specks"});
  };
}

/** The stair under which no deck works, hatched on its far side. */
function edge(data: TradeOffData): FrameMark[] {
  const {decks, x, y} = data;
  const stair = leastIn(decks, [x, y]).map(({measures}): ChartPoint => [measures[x], measures[y]]);
  const [first, last] = [stair[0], stair.at(-1)];
  if (!first || !last) return [];
  const corners = stair.flatMap((point, i): ChartPoint[] => (i === 0 ? [point] : [[point[0], stair[i - 1]![1]], point]));
  // From right to left, so that the strokes stand below it.
  const points: ChartPoint[] = [[domain(data, x)[1], last[1]], ...corners.reverse(), [first[0], domain(data, y)[1]]];
  return [
    beyondCurve(points, "var(--rule)"),
    (_index, scales) => svgElement("path", {d: `M${points.map((point) => place(scales, point).join(" ")).join("L")}`, class: "trade-edge"}),
  ];
}

/** A mark for each deck: its shape tells the kind, a hollow one lightweight concrete. */
function marks(decks: readonly FrontierDeck[], {x, y, counted}: TradeOffData, spots: Map<string, readonly [number, number]>, groups: Map<string, SVGElement>): FrameMark {
  return (_index, scales) => svgElement("g", {}, ...decks.map((deck) => {
    const spot = place(scales, [deck.measures[x], deck.measures[y]]);
    spots.set(deck.id, spot);
    const group = svgElement("g", {
      class: `trade-mark${deck.concreteKind === "normalweight" ? "" : " is-hollow"}${counted.has(deck.id) ? "" : " is-faint"}`, transform: `translate(${spot.map((value) => value.toFixed(1)).join(" ")})`, "data-part": deck.id,
    }, shapeOf(deck.use, RADIUS_PX));
    groups.set(deck.id, group);
    return group;
  }));
}

/** The mark of a kind of deck about its middle. */
export function shapeOf(use: FrontierDeck["use"], r: number): SVGElement {
  switch (KIND_MARKS[use].shape) {
    case "circle":
      return svgElement("circle", {r});
    case "square":
      return svgElement("rect", {x: -0.9 * r, y: -0.9 * r, width: 1.8 * r, height: 1.8 * r});
    case "triangle":
      return svgElement("path", {d: `M0 ${-1.2 * r}L${1.15 * r} ${0.85 * r}H${-1.15 * r}Z`});
  }
}

/** Names at the two ends of the edge: the least of the one measure, and of the other. */
function names({decks, x, y}: TradeOffData): FrameMark {
  const stair = leastIn(decks, [x, y]);
  const ends = [...new Set([stair[0], stair.at(-1)])].flatMap((deck) => deck ?? []);
  return (_index, scales, _channels, {width, marginRight}) => svgElement("g", {}, ...ends.map((deck) => {
    const [px, py] = place(scales, [deck.measures[x], deck.measures[y]]);
    const words = deck.designation;
    const left = px + 10 + textWidth(words, FONT_PX) > width - marginRight;
    return svgElement("text", {class: "trade-name", x: px + (left ? -9 : 9), y: py + 15, "text-anchor": left ? "end" : "start", "font-size": FONT_PX}, words);
  }));
}
