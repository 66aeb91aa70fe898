import type {Catalog} from "../../catalog.js";
import {handbookCriteria} from "../../deck/criteria.js";
import {limitNamed, type LimitName} from "../../deck/limits.js";
import {safeLoad} from "../../deck/safeLoad.js";
import {usualPatterns} from "../../deck/table.js";
import {ownPsf, type Member} from "../../member/member.js";
import {given} from "../../step.js";
import type {Draw} from "../draw.js";
import type {Content, Kind, Option} from "../item.js";
import {choicePart, numberPart, slip} from "../parts.js";
import {measure, prose} from "../prose.js";
import {article, catalogMember, sectionOf, spanDrawn, stated, straightPattern, tees} from "./ground.js";

/** Printed cells by member and span: the same few dozen members stand in hundreds of tables. */
const PRINTED = new WeakMap<Member, Map<number, number>>();

/** A cell of a load table by the handbook's criteria as it is printed: whole pounds, rounded down. */
export function printedPsf(member: Member, spanFt: number): number {
  const known = PRINTED.get(member) ?? new Map<number, number>();
  PRINTED.set(member, known);
  const psf = known.get(spanFt) ?? Math.floor(safeLoad(member, spanFt, handbookCriteria(member.topping !== undefined)).safeLoadPsf + 1e-9);
  known.set(spanFt, psf);
  return psf;
}
/** The longest even span that carries a load, ft: on long spans safe loads only fall. */
export function reachFt(carries: (spanFt: number) => boolean): number {
  let [holds, fails] = [11, 56];
  while (fails - holds > 1) {
    const middle = Math.floor((holds + fails) / 2);
    if (carries(2 * middle)) holds = middle;
    else fails = middle;
  }
  return 2 * holds;
}
export const TABLE_SOURCE = "computed by the criteria of the trade handbook\u2019s load tables";

/** The longest span that a table allows for a load. */
function longestSpan(draw: Draw, catalog: Catalog): Content {
  const requiredPsf = draw.from(40, 130, 1);
  const row = draw.one(tees(catalog, "field-topped"));
  const pattern = straightPattern(draw, row);
  const above = draw.from(1, 5, 1);
  const member = catalogMember(catalog, row, pattern, 2);
  const at = (spanFt: number) => printedPsf(member, spanFt);
  const key = reachFt((spanFt) => at(spanFt) >= requiredPsf);
  const cells = Array.from({length: 7}, (_, i) => key + 2 * (i - above)).map((spanFt) => ({spanFt, psf: at(spanFt)}));
  const own = Math.round(ownPsf(member));
  const withTotal = [...cells].reverse().find(({psf}) => psf >= requiredPsf + own);
  return {
    question: [
      prose`The table gives safe superimposed loads of ${row.designation} with ${measure(2, "in")} of topping and the pattern ${pattern}.`,
      prose`The deck weighs ${measure(own, "psf")}; a floor requires ${measure(requiredPsf, "psf")} of superimposed load.`,
    ],
    givens: [
      {name: "member", value: row.designation, unit: ""}, {name: "strand pattern", value: pattern, unit: ""}, {name: "deck with topping", value: own, unit: "psf"}, {name: "required superimposed load", value: requiredPsf, unit: "psf"},
    ],
    table: {
      title: `${row.designation} with 2 in of topping, ${pattern}`, columns: [{name: "span", unit: "ft"}, {name: "safe superimposed load", unit: "psf"}],
      rows: cells.map(({spanFt, psf}) => [spanFt, psf]), source: TABLE_SOURCE,
    },
    parts: [numberPart({
      ask: prose`What is the longest span of the table that carries it?`, label: "span", unit: "ft", tolerance: {within: 0.25}, key,
      slips: [
        slip("one span too far", key + 2, "At that span the table gives less than is asked."),
        ...(withTotal ? [slip("total for superimposed", withTotal.spanFt, "The table has taken the deck\u2019s own weight off already: compare the superimposed load alone.")] : []),
        slip("one span too short", key - 2, "There is a longer one whose safe load still reaches what is asked."),
      ],
      because: prose`Safe loads fall as the span grows: the last one that is not below the required load.`,
    })],
  };
}

/** The fewest strands of a table that carry a load at a span. */
function fewestStrands(draw: Draw, catalog: Catalog): Content {
  const row = draw.one(tees(catalog));
  const requiredPsf = draw.from(40, 130, 1);
  const place = draw.from(1, 4, 1);
  const toppingIn = row.use === "field-topped" ? 2 : 0;
  const patterns = usualPatterns(row).filter((text) => text.endsWith("S")).slice(0, 6);
  const members = patterns.map((text) => catalogMember(catalog, row, text, toppingIn));
  // The longest span that the pattern in this place carries, so that those before it do not.
  const aimed = members[Math.min(place, members.length - 1)] as Member;
  const spanFt = reachFt((span) => printedPsf(aimed, span) >= requiredPsf);
  const cells = members.map((member, i) => ({text: patterns[i] as string, psf: printedPsf(member, spanFt)}));
  const first = cells.find(({psf}) => psf >= requiredPsf);
  const most = [...cells].sort((a, b) => b.psf - a.psf)[0] as typeof cells[number];
  const NONE = "none";
  return {
    question: [prose`A floor requires ${measure(requiredPsf, "psf")} of superimposed load over ${measure(spanFt, "ft")}. The table gives safe superimposed loads of ${row.designation}${toppingIn ? prose` with ${measure(toppingIn, "in")} of topping` : ""} over that span.`],
    givens: [{name: "member", value: row.designation, unit: ""}, {name: "span", value: spanFt, unit: "ft"}, {name: "required superimposed load", value: requiredPsf, unit: "psf"}],
    table: {
      title: `${row.designation} over ${spanFt} ft`, columns: [{name: "strand pattern", unit: ""}, {name: "safe superimposed load", unit: "psf"}],
      rows: cells.map(({text, psf}) => [text, psf]), source: TABLE_SOURCE,
    },
    parts: [choicePart({
      ask: prose`Which pattern carries it with the fewest strands?`, key: first?.text ?? NONE,
      options: [
        ...cells.map(({text, psf}): Option => ({id: text, text: [text], ...(text === first?.text ? {} : {slip: psf < requiredPsf
          ? {name: "carries too little", says: "Its safe load is below what the floor requires."}
          : {name: text === most.text ? "the strongest for the leanest" : "more strands than needed", says: "It carries the load, and so does one with fewer strands."}})})),
        {id: NONE, text: ["none of them"], slip: {name: "saw none that holds", says: "One of them reaches the required load."}},
      ],
      because: prose`Down the table, the first whose safe load is not below the required one.`,
    })],
  };
}

/** Which limit governs a member's safe load. */
function governingLimit(draw: Draw, catalog: Catalog): Content {
  const row = draw.one(tees(catalog));
  const pattern = straightPattern(draw, row);
  const spanFt = spanDrawn(draw, row);
  const toppingIn = row.use === "field-topped" ? draw.from(2, 3, 0.5) : 0;
  const {limitsPsf, governs, safeLoadPsf} = safeLoad(catalogMember(catalog, row, pattern, toppingIn), spanFt, handbookCriteria(toppingIn > 0));
  const loads = Object.entries(limitsPsf).map(([name, psf]) => ({name: name as LimitName, psf: stated(psf, 1)}));
  const shown = draw.shuffled(loads);
  const greatest = loads.reduce((most, each) => (each.psf > most.psf ? each : most));
  const requiredPsf = draw.from(40, 120, 5);
  return {
    question: [
      prose`${article(row.designation, "A")} ${row.designation} with the pattern ${pattern}${toppingIn ? prose` and ${measure(toppingIn, "in")} of topping` : ""} spans ${measure(spanFt, "ft")}. Each limit by itself would allow the superimposed load that stands beside it.`,
      prose`The floor requires ${measure(requiredPsf, "psf")}.`,
    ],
    givens: [{name: "member", value: row.designation, unit: ""}, {name: "strand pattern", value: pattern, unit: ""}, {name: "span", value: spanFt, unit: "ft"}, {name: "required superimposed load", value: requiredPsf, unit: "psf"}],
    table: {title: "Superimposed load by limit", columns: [{name: "limit", unit: ""}, {name: "superimposed load", unit: "psf"}], rows: shown.map(({name, psf}) => [name, psf]), source: "computed"},
    parts: [
      choicePart({
        ask: prose`Which limit governs?`, key: governs,
        options: shown.map(({name}): Option => ({id: name, text: [name], ...(name === governs ? {} : {slip: name === greatest.name
          ? {name: "the greatest for the least", says: "A chain is as strong as its weakest link: the least load governs."}
          : {name: "not the least", says: `${limitNamed(name).name} would allow more than another of them.`}})})),
        because: prose`Every limit must hold, so the least load governs.`,
      }),
      choicePart({
        ask: prose`Does the deck carry the floor?`, key: safeLoadPsf >= requiredPsf ? "yes" : "no",
        options: [
          {id: "yes", text: ["yes"], slip: {name: "went by another limit", says: "The governing limit allows less than is asked, whatever the others allow."}},
          {id: "no", text: ["no"], slip: {name: "saw no reserve", says: "The least of the limits still reaches what is asked."}},
        ],
      }),
    ],
  };
}

/** What a deck weighs from the area of its section. */
function deckWeight(draw: Draw, catalog: Catalog): Content {
  const row = draw.one(catalog.deckMembers.filter(({use}) => use !== "pretopped"));
  const toppingIn = draw.from(2, 4, 0.25);
  const spanFt = spanDrawn(draw, row);
  const pattern = draw.one(usualPatterns(row).slice(0, 3));
  const member = catalogMember(catalog, row, pattern, toppingIn);
  const {shape, section, widthFt, concrete} = member;
  const areaIn2 = Number(section.areaIn2.toFixed(1));
  const {unitWeightPcf} = concrete;
  const key = ownPsf(member);
  const toppingPsf = member.toppingWeightPlf / widthFt;
  const own = key - toppingPsf;
  const boxPsf = (shape.depthIn / 12) * unitWeightPcf;
  return {
    question: [prose`The section of ${article(row.designation)} ${row.designation} has ${measure(areaIn2, "in2")} of concrete, voids taken off; it is ${measure(widthFt, "ft")} wide and ${measure(shape.depthIn, "in")} deep, and gets ${measure(toppingIn, "in")} of topping. It spans ${measure(spanFt, "ft")}; concrete weighs ${measure(unitWeightPcf, "pcf")}.`],
    givens: [
      {name: "member", value: row.designation, unit: ""}, {name: "area of the section", value: areaIn2, unit: "in2"}, {name: "width", value: widthFt, unit: "ft"}, {name: "depth", value: shape.depthIn, unit: "in"},
      {name: "topping", value: toppingIn, unit: "in"}, {name: "unit weight", value: unitWeightPcf, unit: "pcf"}, {name: "span", value: spanFt, unit: "ft"},
    ],
    picture: sectionOf(member, false),
    parts: [numberPart({
      ask: prose`What does a square foot of the finished deck weigh?`, label: "weight", unit: "psf", key,
      slips: [
        slip("forgot the topping", own, "That is the member alone; the topping weighs too."),
        slip("plf for psf", own * widthFt, "That is a foot of the member; spread it over its width."),
        slip("gross for net", boxPsf + toppingPsf, "That is a solid box as wide and as deep: much of the section is air."),
        slip("the whole piece for a foot", own * spanFt, "That is a strip a foot wide over the whole span."),
        slip("topping alone", toppingPsf, "That is the topping alone."),
      ],
      working: {title: "Weight of the deck", steps: [
        {
          symbol: "w_m", label: "weight of the member", expression: "A / 144 * gamma / b", unit: "psf", source: "geometry", result: own,
          values: {A: given(section.areaIn2, "in2", "area of the section"), gamma: given(unitWeightPcf, "pcf", "unit weight"), b: given(widthFt, "ft", "width")},
        },
        {
          symbol: "w_o", label: "weight with topping", expression: "w_m + t / 12 * gamma", unit: "psf", source: "geometry", result: key,
          values: {w_m: given(own, "psf", "weight of the member"), t: given(toppingIn, "in", "topping"), gamma: given(unitWeightPcf, "pcf", "unit weight")},
        },
      ]},
    })],
  };
}

export const DECK_TABLE_KINDS: readonly Kind[] = [
  {id: "deck-weight", topic: "deck", level: 1, title: "What a deck weighs", make: deckWeight},
  {id: "longest-span", topic: "tables", level: 1, title: "The longest span of a load table", make: longestSpan},
  {id: "fewest-strands", topic: "deck", level: 2, title: "The leanest pattern that carries the floor", make: fewestStrands},
  {id: "governing-limit", topic: "limits", level: 1, title: "Which limit governs", make: governingLimit},
];
