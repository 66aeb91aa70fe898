import type {Agreement} from "../../lib/published/agreement.js";
import type {Comparison} from "../../lib/published/compare.js";
import {tally, type Comparisons} from "../../lib/published/published.js";
import {decimals} from "../../lib/units.js";
import {element, uniqueId} from "../dom.js";
import type {FigureTable} from "../figure.js";
import {unitText} from "../symbols.js";

/** How many cells of each printed row come back. */
export function agreementTable(pages: readonly Agreement[]): FigureTable {
  return {
    columns: ["Page and row", "Cells", "to the digit", "1 psf", "2 psf", "5 psf"],
    rows: pages.map((page) => [page.page, page.strengthCells, page.toTheDigit, ...page.within]),
  };
}

/** A source and its values. */
export interface Fold {
  readonly title: string;
  readonly rows: readonly Comparison[];
}

/** Values that are no part of the handbook's tables, by the head of their source. */
const HEADS: readonly (readonly [title: string, source: RegExp])[] = [
  ["PCI Design Handbook: how its tables are made, its strand curve", /^PCI Design Handbook/],
  ["Hicks, Handbook of Civil Engineering Calculations: a worked roof tee", /^Hicks/],
  ["McCormac, Design of Reinforced Concrete: a worked beam's web", /^McCormac/],
  ["Quimby, A Beginner's Guide to ASCE 7-10: a worked column", /^Quimby/],
  ["ASCE 7-16: loads, reduction, combinations, snow", /^ASCE 7/],
  ["Metal Building Systems Manual 2006: snow on a roof", /^Metal Building/],
  ["ACI 318-19: concrete, strength, stress limits", /^ACI 318/],
  ["IBC 2021: fire", /^IBC/],
  ["CIE S 011: the overcast sky", /^CIE/],
  ["ASHVE Guide 1956: rectangular ducts and round ones", /^ASHVE/],
  ["ASHRAE Handbook: velocity and noise in ducts", /^ASHRAE/],
  ["Bell, Dusling and web tables: friction in ducts", /^Bell|^Dusling|^Engineering ToolBox/],
  ["ASTM A416 and A615: strand and bars", /^ASTM/],
  ["Zia and others 1979, Martin 1977: losses and camber", /^Zia|^Martin/],
  ["Devalapura and Tadros 1992: power formula of strand", /^Devalapura/],
];

/** All published values by source, for reading. */
export function folds({sections, deckLoads, beamLoads, values}: Comparisons): Fold[] {
  return [
    {title: "PCI Design Handbook: safe loads", rows: deckLoads.map((cell) => cell.safeLoad)},
    {title: "PCI Design Handbook: cambers", rows: deckLoads.flatMap((cell) => [cell.erectionCamber, cell.longTimeCamber])},
    {title: "PCI Design Handbook: safe loads of beams", rows: beamLoads.map((cell) => cell.safeLoad)},
    {title: "PCI Design Handbook: cambers of beams", rows: beamLoads.flatMap((cell) => cell.cambers)},
    {title: "PCI Design Handbook: section properties", rows: sections},
    ...HEADS.map(([title, source]) => ({title, rows: values.filter((row) => source.test(row.source))})),
  ].filter((fold) => fold.rows.length > 0);
}

/** Every value beside ours, folded by source, with a search over all of it. */
export function publishedBrowser(all: readonly Fold[]): HTMLElement {
  const total = all.reduce((sum, fold) => sum + fold.rows.length, 0);
  const id = uniqueId("published-search");
  const input = element("input", {type: "text", id, autocomplete: "off", spellcheck: "false"});
  const count = element("p", {class: "control-help", role: "status"});
  const parts = all.map(foldElement);
  const search = () => {
    const words = input.value.toLowerCase().split(/\s+/).filter(Boolean);
    const found = parts.reduce((sum, part) => sum + part.show(words), 0);
    count.textContent = words.length ? `${found} of ${total} values` : `${total} values`;
  };
  input.addEventListener("input", search);
  search();
  return element(
    "div",
    {class: "published-values"},
    element("div", {class: "control"}, element("label", {class: "control-label", for: id}, "Search the values"), input, count),
    ...parts.map((part) => part.node),
  );
}

/** Columns, and the least widths of those that hold words. */
const COLUMNS: readonly (readonly [name: string, style?: string])[] = [
  ["What", "min-width: 13rem"], ["Published"], ["Ours"], ["Difference"], ["Allowed"], ["Known", "min-width: 7.5rem"], ["Source", "min-width: 15rem"],
];

function foldElement({title, rows}: Fold): {node: HTMLElement; show: (words: readonly string[]) => number} {
  const {asserted, agree} = tally(rows);
  const body = element("tbody");
  const lines = rows.map((row) => ({node: line(row), text: [row.group, row.quantity, row.source, row.confidence, row.note].join(" ").toLowerCase()}));
  body.append(...lines.map(({node}) => node));
  const head = COLUMNS.map(([name, style], i) => element("th", {scope: "col", style, class: i > 0 && i < 5 ? "numeric" : undefined}, name));
  // Wider than the column of prose: the table scrolls in itself where the page is narrow.
  const table = element("table", {style: "max-width: none"}, element("thead", {}, element("tr", {}, ...head)), body);
  const node = element(
    "details",
    {class: "figure-table"},
    element("summary", {}, `${title}: ${agree} of ${asserted} agree${rows.length > asserted ? `, ${rows.length - asserted} compared only` : ""}`),
    element("div", {class: "scrolls", tabindex: 0, role: "region", "aria-label": title}, table),
  );
  const show = (words: readonly string[]): number => {
    let shown = 0;
    for (const {node: row, text} of lines) {
      row.hidden = !words.every((word) => text.includes(word));
      if (!row.hidden) shown += 1;
    }
    node.hidden = shown === 0;
    node.open = words.length > 0 && shown > 0;
    return shown;
  };
  return {node, show};
}

function line(row: Comparison): HTMLTableRowElement {
  const places = placesOf(row.published);
  const finer = Math.min(places + 1, 8);
  const number = (text: string) => element("td", {class: "numeric"}, text);
  const unit = row.unit ? `\u00a0${unitText(row.unit)}` : "";
  return element(
    "tr",
    {},
    element("td", {}, `${row.group}: ${row.quantity}`),
    number(`${decimals(row.published, places)}${unit}`),
    number(decimals(row.ours, finer)),
    number(signed(row.difference, finer)),
    number(row.asserted ? `\u00b1\u00a0${allowed(row.tolerance)}` : "not asserted"),
    element("td", {}, row.confidence),
    element("td", {}, row.source, row.note ? element("span", {class: "step-note"}, ` (${row.note})`) : null),
  );
}

/** A tolerance with the digits that matter: "exact" allows none. */
function allowed(tolerance: number): string {
  return tolerance === 0 ? "0" : String(Number(tolerance.toPrecision(2)));
}

/** Decimals of a number as it was published. */
function placesOf(value: number): number {
  return String(value).split(".")[1]?.length ?? 0;
}

function signed(value: number, places: number): string {
  const text = decimals(value, places);
  return Number(value.toFixed(places)) > 0 ? `+${text}` : text;
}
