import type {Catalog, Occupancy} from "../../catalog.js";
import {DEAD_FACTOR, DEAD_ONLY_FACTOR, LIVE_FACTOR, factoredLoad} from "../../loads/combinations.js";
import {PARTITION_PSF, floorLoads, partitionPsf, unreducedPsf} from "../../loads/floorLoads.js";
import {ownPsf} from "../../member/member.js";
import {given, type Step} from "../../step.js";
import type {Draw} from "../draw.js";
import type {Content, Kind} from "../item.js";
import {oneStep} from "../keys.js";
import {choicePart, numberPart, slip} from "../parts.js";
import {measure, prose} from "../prose.js";
import {designWith, catalogMember, straightPattern, tees} from "./ground.js";

/** Uses in which walls may be moved about, whether or not their load then counts. */
function roomsWithWalls(occupancies: readonly Occupancy[]): readonly Occupancy[] {
  return occupancies.filter(({partitions, group}) => partitions || group === "Retail" || group === "Work");
}

function liveTable(rows: readonly Occupancy[]): NonNullable<Content["table"]> {
  return {
    title: "Minimum uniform live loads", columns: [{name: "use", unit: ""}, {name: "live load", unit: "psf"}],
    rows: rows.map(({name, livePsf}) => [name, livePsf]), source: "ASCE 7-16 Table 4.3-1",
  };
}

/** Live load of a room, read from the code's table, over its area. */
function roomLiveLoad(draw: Draw, {occupancies}: Catalog): Content {
  const lengthFt = draw.from(16, 48, 2);
  const widthFt = draw.from(12, 40, 1);
  const room = draw.one(roomsWithWalls(occupancies));
  const others = draw.shuffled(occupancies.filter(({id}) => id !== room.id)).slice(0, 5);
  const areaKip = (lengthFt * widthFt) / 1000;
  const key = (room.livePsf + partitionPsf(room, true)) * areaKip;
  return {
    question: [prose`A room of ${measure(lengthFt, "ft")} by ${measure(widthFt, "ft")} is used as: ${room.name.toLowerCase()}.`, prose`Its walls may be moved about.`],
    givens: [{name: "length", value: lengthFt, unit: "ft"}, {name: "width", value: widthFt, unit: "ft"}, {name: "use", value: room.name, unit: ""}],
    table: liveTable(draw.shuffled([room, ...others])),
    parts: [numberPart({
      ask: prose`How much live load, partitions included, must its floor hold in all?`, label: "live load", unit: "kip", key,
      slips: [
        slip("forgot the partitions", room.livePsf * areaKip, "Walls that may be moved count as live load where the room\u2019s own is below 80 psf."),
        slip("partitions added needlessly", (room.livePsf + PARTITION_PSF) * areaKip, "From 80 psf of live load on, no partitions need be added."),
        slip("pounds for kips", key * 1000, "That is in pounds; a kip is a thousand of them."),
        ...others.map((other) => slip("read another row", (other.livePsf + partitionPsf(other, true)) * areaKip, `That is the row of: ${other.name.toLowerCase()}.`)),
      ],
      working: oneStep("Live load of the room", {
        symbol: "W", label: "live load of the room", expression: "(L_o + w_p) * a * b / 1000", unit: "kip", source: "ASCE 7-16 4.3", result: key,
        values: {
          L_o: given(room.livePsf, "psf", "live load of the table"), w_p: given(partitionPsf(room, true), "psf", "movable partitions"),
          a: given(lengthFt, "ft", "length of the room"), b: given(widthFt, "ft", "width of the room"),
        },
      }),
    })],
  };
}

/** Layers, live load and partitions added up. */
function superimposedLoad(draw: Draw, catalog: Catalog): Content {
  const finishPsf = draw.from(1, 14, 0.5);
  const servicesPsf = draw.from(3, 10, 0.5);
  const ceilingPsf = draw.from(1, 5, 0.5);
  const room = draw.one(roomsWithWalls(catalog.occupancies));
  const structurePsf = draw.from(45, 90, 5);
  const layers = [{name: "floor finish", loadPsf: finishPsf}, {name: "ducts, pipes and lights", loadPsf: servicesPsf}, {name: "ceiling", loadPsf: ceilingPsf}];
  const design = designWith({loads: {rooms: [{name: room.name, occupancy: room.id}], partitions: true, layers}});
  const loads = floorLoads(design, catalog, 10);
  const roomLoad = loads.elements[0]?.governing;
  const livePsf = roomLoad ? unreducedPsf(roomLoad) : room.livePsf;
  const key = loads.superimposedDeadPsf + livePsf;
  return {
    question: [
      prose`A deck carries a floor finish of ${measure(finishPsf, "psf")}, ducts, pipes and lights of ${measure(servicesPsf, "psf")} and a ceiling of ${measure(ceilingPsf, "psf")}.`,
      prose`The room is used as: ${room.name.toLowerCase()}; walls may be moved about, and no reduction is taken. The deck itself weighs ${measure(structurePsf, "psf")}.`,
    ],
    givens: [
      ...layers.map(({name, loadPsf}) => ({name, value: loadPsf, unit: "psf"})), {name: "live load of the table", value: room.livePsf, unit: "psf"},
      {name: "weight of the deck", value: structurePsf, unit: "psf"}, {name: "use", value: room.name, unit: ""},
    ],
    parts: [numberPart({
      ask: prose`What superimposed load, dead and live, must the deck hold?`, label: "superimposed load", unit: "psf", key,
      slips: [
        slip("total for superimposed", key + structurePsf, "Superimposed is what comes on top of the deck: its own weight is counted apart."),
        slip("live load alone", livePsf, "Finishes, ceiling and services load the deck as well."),
        slip("forgot the partitions", loads.superimposedDeadPsf + room.livePsf, "Walls that may be moved count as live load where the room\u2019s own is below 80 psf."),
        slip("partitions added needlessly", loads.superimposedDeadPsf + room.livePsf + PARTITION_PSF, "From 80 psf of live load on, no partitions need be added."),
        slip("factored load", factoredLoad(loads.superimposedDeadPsf, livePsf), "Safe loads are compared without factors."),
      ],
      working: {title: "Superimposed load", steps: [
        {
          symbol: "w_sd", label: "superimposed dead load", expression: "w_1 + w_2 + w_3", unit: "psf", source: "sum of the layers", result: loads.superimposedDeadPsf,
          values: Object.fromEntries(layers.map(({name, loadPsf}, i) => [`w_${i + 1}`, given(loadPsf, "psf", name)])),
        },
        {
          symbol: "w", label: "superimposed load", expression: "w_sd + L_o + w_p", unit: "psf", source: "ASCE 7-16 4.3", result: key,
          values: {w_sd: given(loads.superimposedDeadPsf, "psf", "superimposed dead load"), L_o: given(room.livePsf, "psf", "live load of the table"), w_p: given(livePsf - room.livePsf, "psf", "movable partitions")},
        },
      ]},
    })],
  };
}

function factoredStep(deadPsf: number, livePsf: number): Step {
  return {
    symbol: "w_u", label: "factored load", expression: "max(k_1 * D, k_D * D + k_L * L)", unit: "psf", source: "ASCE 7-16 2.3.1", result: factoredLoad(deadPsf, livePsf),
    values: {
      k_1: given(DEAD_ONLY_FACTOR, "", "factor on dead load alone"), k_D: given(DEAD_FACTOR, "", "factor on dead load"), k_L: given(LIVE_FACTOR, "", "factor on live load"),
      D: given(deadPsf, "psf", "dead load"), L: given(livePsf, "psf", "live load"),
    },
  };
}

/** Factored load of a floor from its dead and live load. */
function factoredFloor(draw: Draw): Content {
  const deadPsf = draw.from(40, 120, 1);
  const livePsf = draw.from(20, 150, 5);
  return {
    question: [prose`A floor weighs ${measure(deadPsf, "psf")} with all that is fixed to it, and must hold ${measure(livePsf, "psf")} of live load.`],
    givens: [{name: "dead load", value: deadPsf, unit: "psf"}, {name: "live load", value: livePsf, unit: "psf"}],
    parts: [numberPart({
      ask: prose`For what factored load is its strength designed?`, label: "factored load", unit: "psf", key: factoredLoad(deadPsf, livePsf),
      slips: [
        slip("forgot the load factors", deadPsf + livePsf, "That is the load without factors: strength is designed for the factored load."),
        slip("swapped the factors", LIVE_FACTOR * deadPsf + DEAD_FACTOR * livePsf, "The factors are swapped: the live load is known less well, so it takes the larger one."),
        slip("one factor for both", LIVE_FACTOR * (deadPsf + livePsf), "Dead load has a factor of its own, smaller than that of live load."),
        slip("dead load left out", LIVE_FACTOR * livePsf, "The floor carries its own weight as well."),
        slip("dead load without its factor", deadPsf + LIVE_FACTOR * livePsf, "Dead load takes a factor too."),
      ],
      working: oneStep("Factored load", factoredStep(deadPsf, livePsf)),
    })],
  };
}

/** Which combination governs: a roof or a floor with little live load against its weight. */
function governingCombination(draw: Draw): Content {
  // Odd numbers, so that both never come to the same.
  const deadPsf = draw.from(61, 181, 2);
  const livePsf = draw.from(6, 40, 1);
  const factored = factoredLoad(deadPsf, livePsf);
  const both = DEAD_FACTOR * deadPsf + LIVE_FACTOR * livePsf;
  return {
    question: [prose`A planted deck weighs ${measure(deadPsf, "psf")} with its soil and is seldom walked on: ${measure(livePsf, "psf")} of live load.`],
    givens: [{name: "dead load", value: deadPsf, unit: "psf"}, {name: "live load", value: livePsf, unit: "psf"}],
    parts: [
      choicePart({
        ask: prose`Which combination governs its strength?`,
        options: [
          {id: "dead", text: prose`1.4 times dead load alone`, slip: {name: "thought the dead load too heavy", says: "Work out both: here the live load with its factor adds more than the 0.2 that dead load is spared."}},
          {id: "both", text: prose`1.2 times dead load and 1.6 times live load`, slip: {name: "never tried dead load alone", says: "Work out both: where dead load is most of it, 1.4 times dead load alone asks for more."}},
        ],
        key: factored > both ? "dead" : "both", working: oneStep("Factored load", factoredStep(deadPsf, livePsf)),
      }),
      numberPart({
        ask: prose`What factored load does it give?`, label: "factored load", unit: "psf", key: factored, tolerance: {percent: 0.5},
        slips: [
          slip("the combination that does not govern", Math.min(DEAD_ONLY_FACTOR * deadPsf, both), "That is the other combination: the larger one counts."),
          slip("forgot the load factors", deadPsf + livePsf, "That is the load without factors."),
          slip("added both combinations\u2019 factors", DEAD_ONLY_FACTOR * deadPsf + LIVE_FACTOR * livePsf, "1.4 on dead load stands alone: with live load, dead load takes 1.2."),
        ],
        working: oneStep("Factored load", factoredStep(deadPsf, livePsf)),
      }),
    ],
  };
}

/** From loads per square foot to the load on one foot of a member. */
function memberLineLoad(draw: Draw, catalog: Catalog): Content {
  const superimposedPsf = draw.from(40, 160, 1);
  const row = draw.one(tees(catalog, "field-topped"));
  const toppingIn = draw.from(2, 3.5, 0.5);
  const member = catalogMember(catalog, row, straightPattern(draw, row), toppingIn);
  const {widthFt} = member;
  const own = Number(ownPsf(member).toFixed(1));
  const key = (own + superimposedPsf) * widthFt;
  return {
    question: [
      prose`A floor of double tees ${row.designation}, each ${measure(widthFt, "ft")} wide, weighs ${measure(own, "psf")} with ${measure(toppingIn, "in")} of topping.`,
      prose`It carries ${measure(superimposedPsf, "psf")} of superimposed load.`,
    ],
    givens: [
      {name: "member", value: row.designation, unit: ""}, {name: "width of a tee", value: widthFt, unit: "ft"}, {name: "deck with topping", value: own, unit: "psf"}, {name: "superimposed load", value: superimposedPsf, unit: "psf"},
    ],
    parts: [numberPart({
      ask: prose`How much does each foot of one tee carry in all, without load factors?`, label: "line load", unit: "plf", key,
      slips: [
        slip("superimposed for total", superimposedPsf * widthFt, "That is the superimposed load alone: the tee carries itself and its topping too."),
        slip("psf for plf", own + superimposedPsf, "That is on a square foot: the tee is wider than one foot."),
        slip("one stem for the tee", key / 2, "That is what one of its two stems carries; the tee has both."),
        slip("inches for feet", key * 12, "The width counts in feet."),
        slip("factored load", factoredLoad(own, superimposedPsf) * widthFt, "No load factors are asked for."),
      ],
      working: oneStep("Load on one tee", {
        symbol: "w", label: "load on a foot of the tee", expression: "(w_o + w_s) * b", unit: "plf", source: "geometry", result: key,
        values: {w_o: given(own, "psf", "deck with its topping"), w_s: given(superimposedPsf, "psf", "superimposed load"), b: given(widthFt, "ft", "width of a tee")},
      }),
    })],
  };
}

export const LOADS_KINDS: readonly Kind[] = [
  {id: "room-live-load", topic: "loads", level: 1, title: "Reading the table of live loads", make: roomLiveLoad},
  {id: "superimposed-load", topic: "loads", level: 1, title: "What a deck must hold besides itself", make: superimposedLoad},
  {id: "factored-load", topic: "loads", level: 1, title: "Factored load of a floor", make: factoredFloor},
  {id: "governing-combination", topic: "loads", level: 2, title: "Which combination governs", make: governingCombination},
  {id: "member-line-load", topic: "loads", level: 1, title: "From square feet to one tee", make: memberLineLoad},
];
