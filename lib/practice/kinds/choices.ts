import type {Catalog} from "../../catalog.js";
import {concreteFt, deckCarbon, precastFt} from "../../deck/measures.js";
import {deckPieces} from "../../deck/pieces.js";
import {usualPatterns} from "../../deck/table.js";
import {PAYLOAD_KIP, handling, truckLoads} from "../../member/handling.js";
import {ownPsf, type Member} from "../../member/member.js";
import {given, type Step} from "../../step.js";
import {carbonWorking} from "../../steps/carbon.js";
import {IN3_PER_YD3, inches} from "../../units.js";
import {raisingYd3} from "../../topping/floorSpread.js";
import {simpson} from "../../member/simpson.js";
import type {Draw} from "../draw.js";
import type {Content, Earlier, Kind, Option} from "../item.js";
import {oneStep} from "../keys.js";
import {choicePart, numberAt, numberPart, orderPart, slip} from "../parts.js";
import {measure, prose} from "../prose.js";
import {article, catalogMember, designWith, sectionOf, shapeNamed, shapePicture, spanDrawn, stated, straightPattern, tees} from "./ground.js";

/** Decks in the order of their weight. */
function orderByWeight(draw: Draw, catalog: Catalog): Content {
  const toppingIn = draw.from(2, 4, 0.25);
  const rows = draw.shuffled(catalog.deckMembers);
  const topped = (use: string) => (use === "pretopped" ? 0 : toppingIn);
  // Weights that anybody can tell apart, whatever is rounded on the way.
  const decks: {id: string; use: string; member: Member; psf: number; depthIn: number}[] = [];
  for (const row of rows) {
    const member = catalogMember(catalog, row, usualPatterns(row)[0] as string, topped(row.use));
    const psf = ownPsf(member);
    if (decks.length < 4 && decks.every((other) => Math.abs(other.psf - psf) > 1.5)) decks.push({id: row.designation, use: row.use, member, psf, depthIn: member.compression.depthIn});
  }
  const ids = (by: (deck: (typeof decks)[number]) => number) => [...decks].sort((a, b) => by(a) - by(b) || a.id.localeCompare(b.id)).map(({id}) => id).join(",");
  const key = ids(({psf}) => psf);
  return {
    question: [prose`Four decks are compared; all but those with a full flange of their own get ${measure(toppingIn, "in")} of topping. The table gives the area of each section, voids taken off. Concrete weighs ${measure(150, "pcf")}.`],
    givens: [{name: "topping", value: toppingIn, unit: "in"}, ...decks.map(({id, member}) => ({name: id, value: stated(member.section.areaIn2, 0), unit: "in2"}))],
    table: {
      title: "Sections", columns: [{name: "member", unit: ""}, {name: "area", unit: "in2"}, {name: "width", unit: "ft"}, {name: "topping", unit: "in"}],
      rows: decks.map(({id, use, member}) => [id, stated(member.section.areaIn2, 0), member.widthFt, topped(use)]), source: "the kit\u2019s catalog of members",
    },
    parts: [orderPart({
      ask: prose`Put them in the order of what a square foot of floor weighs.`, by: "from the lightest to the heaviest", key,
      options: decks.map(({id}): Option => ({id, text: [id], picture: shapePicture(shapeNamed(catalog, id), false)})),
      slips: [
        {name: "by depth", order: ids(({depthIn}) => depthIn), says: "That is the order of their depths: how much of it is air decides."}, {name: "by the weight of a piece", order: ids(({member}) => member.selfWeightPlf), says: "That is the order of a foot of the member: spread it over its width, with its topping."},
        {name: "forgot the topping", order: ids(({member}) => member.selfWeightPlf / member.widthFt), says: "That is the order without topping."}, {name: "from the heaviest down", order: key.split(",").reverse().join(","), says: "The order is right, the wrong way round."},
      ],
      working: {title: "Weights", steps: decks.map(({id, member, psf, use}, i): Step => ({
        symbol: `w_${i + 1}`, label: `weight of ${id}`, expression: "A / 144 * 150 / b + t / 12 * 150", unit: "psf", source: "geometry", result: psf,
        values: {A: given(member.section.areaIn2, "in2", "area"), b: given(member.widthFt, "ft", "width"), t: given(topped(use), "in", "topping")},
      }))},
    })],
  };
}

/** A deck poured out as a flat slab. */
function flatSlab(draw: Draw, catalog: Catalog): Content {
  const row = draw.one(catalog.deckMembers.filter(({use}) => use !== "pretopped"));
  const toppingIn = draw.from(2, 4, 0.25);
  const spanFt = spanDrawn(draw, row);
  const member = catalogMember(catalog, row, usualPatterns(row)[0] as string, toppingIn);
  const key = inches(concreteFt(member));
  return {
    question: [prose`${article(row.designation, "A")} ${row.designation}, ${measure(member.widthFt, "ft")} wide, has ${measure(stated(member.section.areaIn2, 1), "in2")} of concrete in its section and gets ${measure(toppingIn, "in")} of topping. It spans ${measure(spanFt, "ft")}.`],
    givens: [{name: "width", value: member.widthFt, unit: "ft"}, {name: "area of the section", value: stated(member.section.areaIn2, 1), unit: "in2"}, {name: "topping", value: toppingIn, unit: "in"}, {name: "span", value: spanFt, unit: "ft"}],
    picture: sectionOf(member, false),
    parts: [numberPart({
      ask: prose`If all its concrete were poured out as a flat slab, how thick would that be?`, label: "thickness", unit: "in", key,
      slips: [
        slip("gross for net", member.compression.depthIn, "That is the depth of the deck: much of it is air."), slip("forgot the topping", inches(precastFt(member)), "The topping is concrete as well."), slip("feet for inches", key / 12, "That is in feet."),
        slip("width in feet", member.section.areaIn2 / member.widthFt + toppingIn, "The width must be in inches, as the area is in square inches."),
      ],
      working: oneStep("As a flat slab", {symbol: "t_f", label: "thickness as a flat slab", expression: "A / (12 * b) + t", unit: "in", source: "geometry", result: key, values: {A: given(member.section.areaIn2, "in2", "area"), b: given(member.widthFt, "ft", "width"), t: given(toppingIn, "in", "topping")}}),
    })],
  };
}

/** Embodied carbon of a square foot of deck. */
function carbonOfDeck(draw: Draw, catalog: Catalog): Content {
  const row = draw.one(tees(catalog, "field-topped"));
  const toppingIn = draw.from(2, 4, 0.25);
  const areaFt2 = draw.from(8000, 40000, 1000);
  const member = catalogMember(catalog, row, straightPattern(draw, row), toppingIn);
  const factors = catalog.carbonFactors;
  const working = carbonWorking(member, factors);
  const values = working.steps.at(-1)?.values ?? {};
  const at = (name: string) => values[name]?.value ?? 0;
  const key = deckCarbon(member, factors).totalKg;
  const total = (earlier: Earlier) => (numberAt(earlier, 0) * areaFt2) / 1000;
  return {
    question: [
      prose`A square foot of ${row.designation} with ${measure(toppingIn, "in")} of topping holds ${measure(stated(at("t_p"), 3), "ft")} of precast concrete as a level slab, ${measure(stated(at("t_t"), 3), "ft")} of topping and ${measure(stated(at("w_s"), 3), "psf")} of strand; the member weighs ${measure(stated(at("w_p"), 1), "psf")}.`,
      prose`Up to the gate of the plant, a cubic foot of that precast concrete stands for ${measure(stated(at("k_p"), 2), "kg")} of carbon dioxide, of the topping ${measure(stated(at("k_t"), 2), "kg")}, a pound of strand for ${measure(stated(at("k_s"), 3), "kg")}, and casting a pound of member for ${measure(stated(at("k_w"), 4), "kg")}.`,
    ],
    givens: [
      {name: "precast concrete as a slab", value: stated(at("t_p"), 3), unit: "ft"}, {name: "topping", value: stated(at("t_t"), 3), unit: "ft"}, {name: "strand", value: stated(at("w_s"), 3), unit: "psf"}, {name: "weight of the member", value: stated(at("w_p"), 1), unit: "psf"},
      {name: "carbon of the precast concrete", value: stated(at("k_p"), 2), unit: "kg/ft3"}, {name: "carbon of the topping", value: stated(at("k_t"), 2), unit: "kg/ft3"}, {name: "carbon of strand", value: stated(at("k_s"), 3), unit: "kg/lb"}, {name: "carbon of casting", value: stated(at("k_w"), 4), unit: "kg/lb"}, {name: "floor", value: areaFt2, unit: "ft2"}, {name: "member", value: row.designation, unit: ""},
    ],
    parts: [
      numberPart({
        ask: prose`How much carbon is in a square foot of this deck?`, label: "embodied carbon", unit: "kg/ft2", key, tolerance: {percent: 2},
        slips: [
          slip("forgot the topping", key - at("t_t") * at("k_t"), "The topping is cement too."), slip("forgot the strand", key - at("w_s") * at("k_s"), "Steel counts by the pound, and strand weighs little but holds much."), slip("forgot the casting", key - at("w_p") * at("k_w"), "Casting and curing at the plant take energy."),
          slip("concrete alone", at("t_p") * at("k_p") + at("t_t") * at("k_t"), "Strand and casting come on top."), slip("topping as precast concrete", key + at("t_t") * (at("k_p") - at("k_t")), "Topping is a weaker concrete with a factor of its own."),
        ],
        working: {title: working.title, steps: working.steps.slice(-1)},
      }),
      numberPart({
        ask: prose`And in ${measure(areaFt2, "ft2")} of it, in metric tons (t) of 1,000 kg?`, label: "carbon of the floor", unit: "t", key: total,
        slips: (earlier) => [slip("kilograms for tons", 1000 * total(earlier), "That is in kilograms."), slip("short tons", (total(earlier) * 1000) / 907.18474, "A metric ton has 1,000 kg.")],
        working: (earlier) => oneStep("Carbon of the floor", {symbol: "C", label: "carbon of the floor", expression: "c * A / 1000", unit: "t", source: "definition", result: total(earlier), values: {c: given(numberAt(earlier, 0), "kg/ft2", "carbon of a square foot"), A: given(areaFt2, "ft2", "floor")}}),
      }),
    ],
  };
}

/** Weight of a piece, and trucks for a floor of them. */
function piecesAndTrucks(draw: Draw, catalog: Catalog): Content {
  const spanFt = draw.from(24, 56, 1);
  const baysAlong = draw.from(3, 8, 1);
  const row = draw.one(tees(catalog));
  const widthFt = shapeNamed(catalog, row.designation).widthIn / 12;
  const perBay = draw.from(2, 4, 1);
  const beamSpanFt = perBay * widthFt;
  const member = catalogMember(catalog, row, straightPattern(draw, row), 0);
  const design = designWith({bay: {spanFt, beamSpanFt, baysAlong, baysAcross: 1}});
  const {perFloor, weightKip} = deckPieces(design, member);
  const hauled = handling(member, spanFt);
  const trucks = truckLoads(perFloor, hauled);
  const plf = stated(member.selfWeightPlf, 0);
  const count = (earlier: Earlier) => truckLoads(perFloor, {piecesPerTruck: Math.floor(PAYLOAD_KIP / Math.max(0.01, numberAt(earlier, 0)))});
  return {
    question: [prose`Double tees ${row.designation}, ${measure(widthFt, "ft")} wide, ${measure(spanFt, "ft")} long and weighing ${measure(plf, "plf")}, cover one row of ${baysAlong} bays of ${measure(beamSpanFt, "ft")}. A truck carries ${measure(PAYLOAD_KIP, "kip")}; one piece that is heavier rides alone, with a permit.`],
    givens: [{name: "length of a piece", value: spanFt, unit: "ft"}, {name: "width of a piece", value: widthFt, unit: "ft"}, {name: "weight of a foot", value: plf, unit: "plf"}, {name: "bays", value: baysAlong, unit: ""}, {name: "length of a bay", value: beamSpanFt, unit: "ft"}, {name: "payload", value: PAYLOAD_KIP, unit: "kip"}],
    parts: [
      numberPart({
        ask: prose`What does one piece weigh?`, label: "weight of a piece", unit: "kip", key: weightKip,
        slips: [slip("pounds for kips", weightKip * 1000, "That is in pounds."), slip("tons for kips", weightKip / 2, "A ton is two kips."), slip("times its width", weightKip * widthFt, "The weight is that of a foot of the whole piece: its width is in it.")],
        working: oneStep("Weight of a piece", {symbol: "W", label: "weight of a piece", expression: "w * L / 1000", unit: "kip", source: "geometry", result: weightKip, values: {w: given(member.selfWeightPlf, "plf", "weight of a foot"), L: given(spanFt, "ft", "length")}}),
      }),
      numberPart({
        ask: prose`How many pieces are there?`, label: "pieces", unit: "", tolerance: {within: 0}, key: perFloor,
        slips: [slip("one bay only", perBay, "There are several bays."), slip("one more, as for columns", perFloor + 1, "Pieces lie side by side: as many as widths fit, not one more.")],
        working: oneStep("Pieces", {symbol: "n", label: "pieces", expression: "n_b * B / b", unit: "", source: "geometry", result: perFloor, values: {n_b: given(baysAlong, "", "bays"), B: given(beamSpanFt, "ft", "length of a bay"), b: given(widthFt, "ft", "width of a piece")}}),
      }),
      numberPart({
        ask: prose`How many truckloads are they?`, label: "truckloads", unit: "", tolerance: {within: 0}, key: count,
        slips: (earlier) => [slip("by weight alone", Math.ceil((perFloor * numberAt(earlier, 0)) / PAYLOAD_KIP), "A piece cannot be split over two trucks: count whole pieces on each."), slip("one piece on each", perFloor, "More than one fits on a truck."), slip("rounded down", Math.floor(perFloor / Math.max(1, Math.floor(PAYLOAD_KIP / Math.max(0.01, numberAt(earlier, 0))))), "The last truck is not full, and must come all the same.")],
        because: prose`Whole pieces to a truck, whole trucks: ${trucks} in all.`,
      }),
    ],
  };
}

/** Topping over an arched deck. */
function toppingVolume(draw: Draw): Content {
  const spanFt = draw.from(36, 64, 1);
  const widthFt = draw.from(20, 40, 2);
  const leastIn = draw.from(2, 3, 0.25);
  const camberIn = draw.from(0.75, 2.5, 0.25);
  const places = [0, 1 / 4, 1 / 2, 3 / 4, 1].map((share) => leastIn + camberIn * (1 - 4 * share * (1 - share)));
  const meanIn = simpson(places);
  const volume = (thicknessIn: number) => raisingYd3({design: designWith({bay: {spanFt, beamSpanFt: widthFt}})}, thicknessIn);
  return {
    question: [prose`A bay of ${measure(spanFt, "ft")} by ${measure(widthFt, "ft")} is decked with members that arch by ${measure(camberIn, "in")} at midspan, as a parabola. The topping is level on top and ${measure(leastIn, "in")} thick where it is thinnest. How its weight presses the deck down is left out.`],
    givens: [{name: "span", value: spanFt, unit: "ft"}, {name: "width of the bay", value: widthFt, unit: "ft"}, {name: "camber", value: camberIn, unit: "in"}, {name: "minimum thickness", value: leastIn, unit: "in"}],
    parts: [
      numberPart({
        ask: prose`How thick is the topping on average?`, label: "average thickness", unit: "in", key: meanIn, tolerance: {percent: 1},
        slips: [slip("minimum everywhere", leastIn, "Only at midspan is it that thin."), slip("greatest everywhere", leastIn + camberIn, "It is that thick at the ends only."), slip("half of the camber", leastIn + camberIn / 2, "Over a parabola the mean of what is filled is a third of the camber, not half."), slip("two thirds of the camber", leastIn + (2 * camberIn) / 3, "Two thirds is what lies under the arch; what is filled lies above it, a third.")],
        working: oneStep("Average thickness", {symbol: "t_a", label: "average thickness", expression: "t_l + c / 3", unit: "in", source: "area above a parabola", result: meanIn, values: {t_l: given(leastIn, "in", "minimum thickness"), c: given(camberIn, "in", "camber")}}),
      }),
      numberPart({
        ask: prose`How much concrete must the trucks bring for the bay?`, label: "topping of the bay", unit: "yd3", key: (earlier) => volume(numberAt(earlier, 0)),
        slips: (earlier) => [slip("cubic feet for cubic yards", 27 * volume(numberAt(earlier, 0)), "A cubic yard is 27 cubic feet."), slip("nine for 27", 3 * volume(numberAt(earlier, 0)), "A cubic yard is three feet each way: 27 cubic feet."), slip("inches for feet", 12 * volume(numberAt(earlier, 0)), "The thickness must be in feet.")],
        working: (earlier) => oneStep("Topping of the bay", {symbol: "V", label: "topping of the bay", expression: "t_a / 12 * b * L * 12^3 / n", unit: "yd3", source: "geometry", result: volume(numberAt(earlier, 0)), values: {t_a: given(numberAt(earlier, 0), "in", "average thickness"), b: given(widthFt, "ft", "width of the bay"), L: given(spanFt, "ft", "span"), n: given(IN3_PER_YD3, "in3/yd3", "cubic inches in a cubic yard")}}),
      }),
    ],
  };
}

/** Which bays whole members fit. */
function bayThatFits(draw: Draw, catalog: Catalog): Content {
  const row = draw.one(tees(catalog));
  const spanFt = draw.from(30, 64, 1);
  const baysAlong = draw.from(3, 8, 1);
  const widthFt = shapeNamed(catalog, row.designation).widthIn / 12;
  const member = catalogMember(catalog, row, straightPattern(draw, row), 0);
  const right = widthFt * draw.from(2, 3, 1);
  const spans = draw.shuffled([right, right - 2, right + 1, right + 3]);
  const fits = spans.filter((beamSpanFt) => deckPieces(designWith({bay: {spanFt, beamSpanFt, baysAlong}}), member).fitsBay);
  const key = String(fits[0] ?? right);
  return {
    question: [prose`A floor of ${baysAlong} bays in a row is decked with ${row.designation}, ${measure(spanFt, "ft")} long and ${measure(widthFt, "ft")} wide. No piece shall be cut narrower, and a joint shall fall on every column line.`],
    givens: [{name: "width of a piece", value: widthFt, unit: "ft"}, {name: "span of the deck", value: spanFt, unit: "ft"}, {name: "bays", value: baysAlong, unit: ""}, {name: "member", value: row.designation, unit: ""}],
    parts: [
      choicePart({
        ask: prose`Which spacing of the columns along the building does that?`, key,
        options: spans.map((beamSpanFt): Option => ({id: String(beamSpanFt), text: prose`${measure(beamSpanFt, "ft")}`, ...(String(beamSpanFt) === key ? {} : {slip: {name: "no whole number of pieces", says: "Divide it by the width of a piece: it does not come out whole, so a piece lies across the column line."}})})),
        because: prose`A whole number of pieces ${measure(widthFt, "ft")} wide.`,
      }),
      numberPart({
        ask: prose`How long is the building then, from the first column line to the last?`, label: "length", unit: "ft", tolerance: {within: 0.1}, key: (earlier) => baysAlong * numberAt(earlier, 0),
        slips: (earlier) => [slip("one bay too many", (baysAlong + 1) * numberAt(earlier, 0), "As many bays as are said: one fewer than column lines."), slip("one bay too few", (baysAlong - 1) * numberAt(earlier, 0), "As many bays as are said."), slip("the deck\u2019s span for the bay", baysAlong * spanFt, "The deck spans across; the bays stand along the building.")],
        working: (earlier) => oneStep("Length of the building", {symbol: "l", label: "length", expression: "n * B", unit: "ft", source: "geometry", result: baysAlong * numberAt(earlier, 0), values: {n: given(baysAlong, "", "bays"), B: given(numberAt(earlier, 0), "ft", "spacing of the columns")}}),
      }),
    ],
  };
}

export const CHOICES_KINDS: readonly Kind[] = [
  {id: "order-by-weight", topic: "trade-offs", level: 2, title: "From the lightest deck to the heaviest", make: orderByWeight},
  {id: "flat-slab", topic: "trade-offs", level: 1, title: "A deck poured out flat", make: flatSlab},
  {id: "carbon-of-deck", topic: "trade-offs", level: 2, title: "Carbon in a square foot of deck", make: carbonOfDeck},
  {id: "topping-volume", topic: "topping", level: 2, title: "Concrete that levels a floor", make: toppingVolume},
  {id: "pieces-and-trucks", topic: "deck", level: 2, title: "Pieces, weight and truckloads", make: piecesAndTrucks},
  {id: "bay-that-fits", topic: "width", level: 1, title: "A bay that whole pieces fit", make: bayThatFits},
];
