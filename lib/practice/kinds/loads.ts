import type {Occupancy} from "../../catalog.js";
import {partitionPsf} from "../../loads/floorLoads.js";
import {DEAD_FACTOR, DEAD_ONLY_FACTOR, LIVE_FACTOR, factoredLoad} from "../../loads/combinations.js";
import {given, type Working} from "../../step.js";
import type {Draw} from "../draw.js";
import type {Content, Kind} from "../item.js";
import {oneStep} from "../keys.js";
import {numberPart, slip} from "../parts.js";
import {measure, prose} from "../prose.js";

/** Factored load of a floor from its dead and live load. */
function factoredFloor(draw: Draw): Content {
  const deadPsf = draw.from(40, 120, 1);
  const livePsf = draw.from(20, 150, 5);
  const key = factoredLoad(deadPsf, livePsf);
  return {
    question: [
      prose`A floor weighs ${measure(deadPsf, "psf")} with all that is fixed to it, and must hold ${measure(livePsf, "psf")} of live load.`,
    ],
    givens: [{name: "dead load", value: deadPsf, unit: "psf"}, {name: "live load", value: livePsf, unit: "psf"}],
    parts: [numberPart({
      ask: prose`For what factored load is its strength designed?`, label: "factored load", unit: "psf", key,
      slips: [
        slip("forgot the load factors", deadPsf + livePsf, "That is the load without factors: strength is designed for the factored load."),
        slip("swapped the factors", LIVE_FACTOR * deadPsf + DEAD_FACTOR * livePsf, "The factors are swapped: the live load is known less well, so it takes the larger one."),
        slip("one factor for both", LIVE_FACTOR * (deadPsf + livePsf), "Dead load has a factor of its own, smaller than that of live load."),
        slip("dead load left out", LIVE_FACTOR * livePsf, "The floor carries its own weight as well."),
        slip("dead load without its factor", deadPsf + LIVE_FACTOR * livePsf, "Dead load takes a factor too."),
      ],
      working: factoredWorkingOf(deadPsf, livePsf),
    })],
  };
}

function factoredWorkingOf(deadPsf: number, livePsf: number): Working {
  return oneStep("Factored load", {
    symbol: "w_u", label: "factored load", expression: "max(k_1 * D, k_D * D + k_L * L)", unit: "psf", source: "ASCE 7-16 2.3.1", result: factoredLoad(deadPsf, livePsf),
    values: {
      k_1: given(DEAD_ONLY_FACTOR, "", "factor on dead load alone"), k_D: given(DEAD_FACTOR, "", "factor on dead load"), k_L: given(LIVE_FACTOR, "", "factor on live load"),
      D: given(deadPsf, "psf", "dead load"), L: given(livePsf, "psf", "live load"),
    },
  });
}

/** Live load of a room, read from the code's table, over its area. */
function roomLiveLoad(draw: Draw, occupancies: readonly Occupancy[]): Content {
  const lengthFt = draw.from(16, 48, 2);
  const widthFt = draw.from(12, 40, 1);
  const room = draw.one(occupancies.filter(({partitions, group}) => partitions || group === "Retail" || group === "Work"));
  const others = draw.shuffled(occupancies.filter(({id}) => id !== room.id)).slice(0, 5);
  const rows = draw.shuffled([room, ...others]);
  const key = ((room.livePsf + partitionPsf(room, true)) * lengthFt * widthFt) / 1000;
  const areaKip = (lengthFt * widthFt) / 1000;
  return {
    question: [
      prose`A room of ${measure(lengthFt, "ft")} by ${measure(widthFt, "ft")} is used as: ${room.name.toLowerCase()}.`,
      prose`Its walls may be moved about.`,
    ],
    givens: [{name: "length", value: lengthFt, unit: "ft"}, {name: "width", value: widthFt, unit: "ft"}, {name: "use", value: room.name, unit: ""}],
    table: {
      title: "Minimum uniform live loads", columns: [{name: "use", unit: ""}, {name: "live load", unit: "psf"}],
      rows: rows.map(({name, livePsf}) => [name, livePsf]), source: "ASCE 7-16 Table 4.3-1",
    },
    parts: [numberPart({
      ask: prose`How much live load, partitions included, must its floor hold in all?`, label: "live load", unit: "kip", key,
      slips: [
        slip("forgot the partitions", room.livePsf * areaKip, "Walls that may be moved count as live load, where the room's own is below 80 psf."),
        slip("partitions added needlessly", (room.livePsf + 15) * areaKip, "From 80 psf of live load on, no partitions need be added."),
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

export const LOADS_KINDS: readonly Kind[] = [
  {id: "room-live-load", topic: "loads", level: 1, title: "Reading the table of live loads", make: (draw, catalog) => roomLiveLoad(draw, catalog.occupancies)},
  {id: "factored-load", topic: "loads", level: 1, title: "Factored load of a floor", make: factoredFloor},
];
