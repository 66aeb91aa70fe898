import type {Catalog} from "../../catalog.js";
import {simpleSpanMomentKipIn} from "../../beams/statics.js";
import {footing} from "../../columns/footing.js";
import {takedown} from "../../columns/takedown.js";
import {usualPatterns} from "../../deck/table.js";
import {evenGirderLoads} from "../../girder/loads.js";
import {factoredLoad} from "../../loads/combinations.js";
import {floorLoads} from "../../loads/floorLoads.js";
import {loadAreas} from "../../loads/tributary.js";
import {ownPsf, type Member} from "../../member/member.js";
import {given, type Step} from "../../step.js";
import {feet, kipFt} from "../../units.js";
import type {Draw} from "../draw.js";
import type {Content, Earlier, Kind, Option} from "../item.js";
import {oneStep} from "../keys.js";
import {choicePart, numberAt, numberPart, orderPart, slip} from "../parts.js";
import {measure, prose} from "../prose.js";
import {statedFloor} from "./beams.js";
import {TABLE_SOURCE, printedPsf, reachFt} from "./deckTables.js";
import {catalogMember, stated, tees} from "./ground.js";

const NONE = "none";
const FOOTING = {columnSideIn: 20, columnStrengthPsi: 5000, footingStrengthPsi: 3000} as const;

/** A whole bay: load, deck, girder, column, footing, each from the answer before. */
function sizeABay(draw: Draw, catalog: Catalog): Content {
  const deadPsf = draw.from(10, 25, 1);
  const livePsf = draw.one([40, 50, 60, 75, 80, 100]);
  const girderFt = draw.from(20, 36, 1);
  const floors = draw.from(2, 5, 1);
  const row = draw.one(tees(catalog, "field-topped"));
  const place = draw.from(1, 4, 1);
  const allowablePsf = draw.from(3000, 6000, 500);
  const demandPsf = deadPsf + livePsf;
  const patterns = usualPatterns(row).filter((text) => text.endsWith("S")).slice(0, 6);
  const members = patterns.map((text) => catalogMember(catalog, row, text, 2));
  const spanFt = reachFt((span) => printedPsf(members[Math.min(place, members.length - 1)] as Member, span) >= demandPsf);
  const cells = members.map((member, i) => ({text: patterns[i] as string, psf: printedPsf(member, spanFt)}));
  const leanest = (psf: number) => cells.find((cell) => cell.psf >= psf)?.text ?? NONE;
  const own = ownPsf(members[0] as Member);
  const selfPlf = 800;
  const design = statedFloor(spanFt, girderFt, deadPsf, livePsf);
  const girderPlf = evenGirderLoads(design, members[0] as Member, floorLoads(design, catalog, 10), selfPlf).factoredPlf;
  const moment = (plf: number) => kipFt(simpleSpanMomentKipIn(plf, girderFt));
  const area = loadAreas({spanFt, beamSpanFt: girderFt, baysAlong: 3, baysAcross: 2}, 10).find(({element}) => element === "interior column")?.tributaryFt2 ?? spanFt * girderFt;
  const level = {kind: "floor" as const, name: "floor", deckPsf: own, toppingPsf: 0, superimposedPsf: deadPsf, beamPlf: selfPlf, beamLengthFt: girderFt, livePsf, rule: "in full" as const, partitionPsf: 0, tributaryFt2: area, storyHeightFt: 14};
  const columnKip = takedown({position: "interior column", columnPlf: 0, levels: Array.from({length: floors}, () => level)}).stories.at(-1)?.governingService.kip ?? 0;
  const floorKip = columnKip / floors;
  const side = (kip: number) => feet(footing({...FOOTING, serviceKip: Math.min(20000, Math.max(0.1, kip)), factoredKip: Math.min(30000, Math.max(0.1, 1.4 * kip)), allowablePsf}).neededSideIn);
  const w = {w_o: given(own, "psf", "deck with topping"), w_sd: given(deadPsf, "psf", "finishes and services"), L: given(livePsf, "psf", "live load")};
  return {
    question: [
      prose`A floor of bays ${measure(spanFt, "ft")} by ${measure(girderFt, "ft")} shall carry ${measure(deadPsf, "psf")} of finishes and services and ${measure(livePsf, "psf")} of live load, which is not reduced. Decks ${row.designation} with ${measure(2, "in")} of topping, ${measure(stated(own, 1), "psf")} in all, span ${measure(spanFt, "ft")} between girders of ${measure(selfPlf, "plf")}.`,
      prose`An interior column carries ${floors} such floors; roof and column are left out. The soil may be pressed by ${measure(allowablePsf, "psf")}.`,
    ],
    givens: [{name: "span of the deck", value: spanFt, unit: "ft"}, {name: "span of the girder", value: girderFt, unit: "ft"}, {name: "finishes and services", value: deadPsf, unit: "psf"}, {name: "live load", value: livePsf, unit: "psf"}, {name: "deck with topping", value: stated(own, 1), unit: "psf"}, {name: "the girder itself", value: selfPlf, unit: "plf"}, {name: "floors", value: floors, unit: ""}, {name: "allowable pressure", value: allowablePsf, unit: "psf"}, {name: "member", value: row.designation, unit: ""}],
    table: {title: `${row.designation} with 2 in of topping over ${spanFt} ft`, columns: [{name: "strand pattern", unit: ""}, {name: "safe superimposed load", unit: "psf"}], rows: cells.map(({text, psf}) => [text, psf]), source: TABLE_SOURCE},
    picture: {kind: "plan", spanFt, beamSpanFt: girderFt, baysAcross: 2, baysAlong: 3, marked: {name: "one bay", xFt: girderFt, yFt: 0, widthFt: girderFt, heightFt: spanFt}},
    parts: [
      numberPart({
        ask: prose`What superimposed load must the deck hold?`, label: "superimposed load", unit: "psf", key: demandPsf, tolerance: {percent: 0.5},
        slips: [slip("total for superimposed", demandPsf + own, "Superimposed is what comes on top of the deck."), slip("live load alone", livePsf, "Finishes and services load the deck as well."), slip("factored load", factoredLoad(deadPsf, livePsf), "Safe loads are compared without factors.")],
        working: oneStep("Superimposed load", {symbol: "w", label: "superimposed load", expression: "w_sd + L", unit: "psf", source: "definition", result: demandPsf, values: {w_sd: w.w_sd, L: w.L}}),
      }),
      choicePart({
        ask: prose`Which pattern carries it with the fewest strands?`, key: (earlier) => leanest(numberAt(earlier, 0)),
        options: [...cells.map(({text, psf}): Option => ({id: text, text: [text], slip: psf < demandPsf ? {name: "carries too little", says: "Its safe load is below what the floor requires."} : {name: "more strands than needed", says: "One with fewer strands carries it as well."}})), {id: NONE, text: ["none of them"]}],
      }),
      numberPart({
        ask: prose`For what factored load per foot is a girder between two bays designed?`, label: "factored load of the girder", unit: "plf", key: girderPlf, points: 2,
        slips: [
          slip("forgot the girder itself", factoredLoad((own + deadPsf) * spanFt, livePsf * spanFt), "The girder weighs too."), slip("half of one bay", factoredLoad(((own + deadPsf) * spanFt) / 2 + selfPlf, (livePsf * spanFt) / 2), "Half of the bay on either side makes one whole span."),
          slip("superimposed for total", factoredLoad(deadPsf * spanFt + selfPlf, livePsf * spanFt), "The deck and its topping have weight too."), slip("forgot the load factors", (own + demandPsf) * spanFt + selfPlf, "That is the load without factors."),
        ],
        working: {title: "Load of the girder", steps: girderSteps(w, spanFt, selfPlf, (own + deadPsf) * spanFt + selfPlf, girderPlf)},
      }),
      numberPart({
        ask: prose`What moment does that make in it?`, label: "moment of the girder", unit: "kip-ft", key: (earlier) => moment(numberAt(earlier, 2)),
        slips: (earlier) => [slip("span not squared", moment(numberAt(earlier, 2)) / girderFt, "The moment grows with the square of the span."), slip("the decks\u2019 span", kipFt(simpleSpanMomentKipIn(numberAt(earlier, 2), spanFt)), "The girder bends over its own span."), slip("kip-in for kip-ft", 12 * moment(numberAt(earlier, 2)), "That is in kip-inches.")],
        working: (earlier) => oneStep("Moment", {symbol: "M_u", label: "factored moment", expression: "w_u * L_g^2 / 8 / 1000", unit: "kip-ft", source: "statics", result: moment(numberAt(earlier, 2)), values: {w_u: given(numberAt(earlier, 2), "plf", "factored load"), L_g: given(girderFt, "ft", "span of the girder")}}),
      }),
      numberPart({
        ask: prose`What load without factors do all floors bring to an interior column?`, label: "load of the column", unit: "kip", key: columnKip, points: 2,
        slips: [slip("one floor only", floorKip, "The column carries every floor above it."), slip("forgot the girders", (floors * (own + demandPsf) * area) / 1000, "The girders weigh too."), slip("superimposed for total", (floors * (demandPsf * area + selfPlf * girderFt)) / 1000, "The deck and its topping have weight too."), slip("a quarter of a bay", columnKip / 4, "An interior column carries a quarter of each of four bays.")],
        working: oneStep("Load of the column", {symbol: "P", label: "load of all floors", expression: "n * ((w_o + w_sd + L) * A_T + w_g * L_g) / 1000", unit: "kip", source: "sum", result: columnKip, values: {n: given(floors, "", "floors"), ...w, A_T: given(area, "ft2", "tributary area"), w_g: given(selfPlf, "plf", "the girder itself"), L_g: given(girderFt, "ft", "span of the girder")}}),
      }),
      numberPart({
        ask: prose`How long must the side of its square footing be at least?`, label: "side of the footing", unit: "ft", key: (earlier) => side(numberAt(earlier, 4)),
        slips: (earlier) => [slip("area for side", side(numberAt(earlier, 4)) ** 2, "That is its area: the side is its root."), slip("kips for pounds", side(numberAt(earlier, 4)) / Math.sqrt(1000), "A kip is a thousand pounds.")],
        working: (earlier) => oneStep("Side of the footing", {symbol: "B_n", label: "side that the soil requires", expression: "sqrt(1000 * P / q_a)", unit: "ft", source: "stated allowable pressure", result: side(numberAt(earlier, 4)), values: {P: given(Math.min(20000, Math.max(0.1, numberAt(earlier, 4))), "kip", "load of the column"), q_a: given(allowablePsf, "psf", "allowable pressure")}}),
      }),
    ],
  };
}

function girderSteps(w: Pick<Record<"w_o" | "w_sd" | "L", Step["values"][string]>, "w_o" | "w_sd" | "L">, spanFt: number, selfPlf: number, deadPlf: number, factoredPlf: number): Step[] {
  const b = given(spanFt, "ft", "half a span on each side");
  return [
    {symbol: "w_D", label: "dead load", expression: "(w_o + w_sd) * b + w_g", unit: "plf", source: "sum", result: deadPlf, values: {w_o: w.w_o, w_sd: w.w_sd, b, w_g: given(selfPlf, "plf", "the girder itself")}},
    {symbol: "w_u", label: "factored load", expression: "max(1.4 * w_D, 1.2 * w_D + 1.6 * L * b)", unit: "plf", source: "ASCE 7-16 2.3.1", result: factoredPlf, values: {w_D: given(deadPlf, "plf", "dead load"), L: w.L, b}},
  ];
}

/** Bays in the order of what they bring to an interior column. */
function orderBays(draw: Draw): Content {
  const loadPsf = draw.from(100, 220, 5);
  const baysOf = draw.shuffled([[30, 40], [40, 24], [50, 26], [36, 30], [60, 18], [45, 36], [54, 28], [48, 22]] as const).slice(0, 4)
    .map(([spanFt, beamSpanFt]) => ({spanFt: spanFt + draw.from(0, 1, 0.5), beamSpanFt}));
  const bays = baysOf.map((bay, i) => {
    const areaFt2 = loadAreas({...bay, baysAlong: 3, baysAcross: 2}, 10).find(({element}) => element === "interior column")?.tributaryFt2 ?? 0;
    return {id: "abcd"[i] as string, ...bay, areaFt2, kip: (areaFt2 * loadPsf) / 1000};
  });
  const ids = (by: (bay: (typeof bays)[number]) => number) => [...bays].sort((a, b) => by(a) - by(b) || a.id.localeCompare(b.id)).map(({id}) => id).join(",");
  const key = ids(({areaFt2}) => areaFt2);
  const greatest = bays.reduce((most, bay) => (bay.kip > most.kip ? bay : most));
  return {
    question: [prose`Four bays are sketched for the same floor, which weighs ${measure(loadPsf, "psf")} with everything on it: A of ${bays.flatMap(({id, spanFt, beamSpanFt}, i) => [`${i > 0 ? `, ${id.toUpperCase()} of ` : ""}`, measure(spanFt, "ft"), " by ", measure(beamSpanFt, "ft")])}.`],
    givens: [{name: "load", value: loadPsf, unit: "psf"}, ...bays.flatMap(({id, spanFt, beamSpanFt}) => [{name: `span of bay ${id.toUpperCase()}`, value: spanFt, unit: "ft"}, {name: `beams of bay ${id.toUpperCase()}`, value: beamSpanFt, unit: "ft"}])],
    parts: [
      orderPart({
        ask: prose`Put them in the order of what one floor brings to an interior column.`, by: "from the least to the most", key,
        options: bays.map(({id, spanFt, beamSpanFt}): Option => ({id, text: prose`${id.toUpperCase()}: ${measure(spanFt, "ft")} by ${measure(beamSpanFt, "ft")}`})),
        slips: [
          {name: "by the deck\u2019s span", order: ids(({spanFt}) => spanFt), says: "That is the order of the longer spans: a column carries area, both spans."}, {name: "by the beams\u2019 span", order: ids(({beamSpanFt}) => beamSpanFt), says: "That is the order of the beams: a column carries area, both spans."},
          {name: "by the sum of both spans", order: ids(({spanFt, beamSpanFt}) => spanFt + beamSpanFt), says: "The spans multiply, they do not add up."}, {name: "from the most down", order: key.split(",").reverse().join(","), says: "The order is right, the wrong way round."},
        ],
        working: {title: "Areas", steps: bays.map(({id, spanFt, beamSpanFt, areaFt2}): Step => ({symbol: `A_${id}`, label: `area of a column in bay ${id.toUpperCase()}`, expression: "a * b", unit: "ft2", source: "geometry", result: areaFt2, values: {a: given(spanFt, "ft", "span of the deck"), b: given(beamSpanFt, "ft", "span of the beams")}}))},
      }),
      numberPart({
        ask: prose`How much is it where it is most?`, label: "load of one floor", unit: "kip", key: (earlier: Earlier) => bays.find(({id}) => id === String(earlier[0]).split(",").at(-1))?.kip ?? greatest.kip,
        slips: [slip("pounds for kips", greatest.kip * 1000, "That is in pounds."), slip("a quarter of a bay", greatest.kip / 4, "An interior column carries a quarter of each of four bays."), slip("four bays", greatest.kip * 4, "It carries a quarter of each of four bays.")],
      }),
    ],
  };
}

export const BAY_KINDS: readonly Kind[] = [
  {id: "order-bays", topic: "bay", level: 1, title: "What a bay brings to its column", make: orderBays},
  {id: "size-a-bay", topic: "bay", level: 3, title: "A whole bay, from load to footing", make: sizeABay},
];
