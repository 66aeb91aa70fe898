import {describe, expect, test} from "vitest";
import {readCatalog} from "../../lib/catalog.js";
import type {Item} from "../../lib/practice/item.js";
import {keysOf} from "../../lib/practice/keys.js";
import {itemOf} from "../../lib/practice/kinds.js";
import {readRawTables} from "../../src/headless/readCatalog.js";
import {once} from "../support/once.js";

const catalog = once(() => readCatalog(readRawTables()));
const SEEDS = [1, 2, 3, 7, 42, 77, 500, 1001, 65_537, 4_294_967_295];

/** A given number, or word, of an exercise by its name. */
type Givens = (name: string) => number;
const givensOf = (item: Item) => (name: string): number => {
  const found = item.givens.find((each) => each.name === name);
  if (!found) throw new Error(`${item.kind} gives no ${name}`);
  return Number(found.value);
};
const word = (item: Item, name: string) => String(item.givens.find((each) => each.name === name)?.value);

/** Keys worked again from nothing but what the question gives, as on paper; undefined where a part is no number. */
const BY_HAND: Readonly<Record<string, (g: Givens, item: Item) => readonly (number | undefined)[]>> = {
  "factored-load": (g) => [Math.max(1.4 * g("dead load"), 1.2 * g("dead load") + 1.6 * g("live load"))],
  "governing-combination": (g) => [undefined, Math.max(1.4 * g("dead load"), 1.2 * g("dead load") + 1.6 * g("live load"))],
  // 15 psf of partitions below 80 psf.
  "superimposed-load": (g) => [g("floor finish") + g("ducts, pipes and lights") + g("ceiling") + g("live load of the table") + (g("live load of the table") < 80 ? 15 : 0)],
  "room-live-load": (g, item) => {
    const psf = Number(item.table?.rows.find(([use]) => use === word(item, "use"))?.[1]);
    return [((psf + (psf < 80 ? 15 : 0)) * g("length") * g("width")) / 1000];
  },
  "member-line-load": (g) => [(g("deck with topping") + g("superimposed load")) * g("width of a tee")],
  "tributary-area": (g, item) => {
    const bay = g("span of the deck") * g("span of the beams");
    return [{"edge beam": bay / 2, "interior beam": bay, "interior column": bay, "edge column": bay / 2, "corner column": bay / 4}[word(item, "element")]];
  },
  "reduced-live-load": (g, item) => {
    const bay = g("span of the deck") * g("span of the beams");
    const element = word(item, "element");
    const area = bay * ({"edge beam": 0.5, "interior beam": 1, "edge column": 0.5, "corner column": 0.25}[element] ?? 0);
    const influence = area * (element.endsWith("beam") ? 2 : 4);
    return [area, influence, g("live load") * (influence < 400 ? 1 : Math.min(1, Math.max(0.5, 0.25 + 15 / Math.sqrt(influence))))];
  },
  "deck-weight": (g) => [(g("area of the section") / 144 / g("width")) * 150 + (g("topping") / 12) * 150],
  "transfer-length": (g) => {
    const transfer = (g("effective prestress") / 3) * g("diameter");
    return [transfer, transfer + (g("stress at strength") - g("effective prestress")) * g("diameter")];
  },
  "elastic-shortening": (g) => {
    const [p, e, a, i] = [g("force at the jacks"), g("eccentricity"), g("area"), g("second moment of area")];
    const concrete = 0.9 * (p / a + (p * e ** 2) / i) - (12 * g("moment of own weight") * e) / i;
    return [(g("modulus of the strand") / g("modulus at release")) * concrete];
  },
  "soffit-stress": (g) => {
    const e = g("centroid above the soffit") - g("strands above the soffit");
    const moment = ((g("own weight") + g("superimposed load") * g("width")) * g("span") ** 2) / 8000;
    const s = g("modulus of the soffit");
    return [e, moment, g("effective force") / g("area") + (g("effective force") * e) / s - (12 * moment) / s, undefined];
  },
  // 5 w L^4 / (384 E I) in kips and inches.
  "live-sag": (g) => [(5 * ((g("live load") * g("width")) / 12_000) * (12 * g("span")) ** 4) / (384 * g("modulus") * g("second moment of area")), (12 * g("span")) / 360, undefined],
  "floor-frequency": (g) => {
    const sag = (5 * (g("weight that moves") / 12_000) * (12 * g("span")) ** 4) / (384 * g("modulus for quick movements") * g("second moment of area"));
    return [sag, 0.18 * Math.sqrt(386.1 / sag), undefined];
  },
  "camber-when-set": (g) => [g("lift by the strands") - g("sag under own weight"), 1.8 * g("lift by the strands") - 1.85 * g("sag under own weight")],
  "strand-lift": (g) => [(g("force at release") * g("eccentricity") * (12 * g("span")) ** 2) / (8 * g("modulus at release") * g("second moment of area"))],
  "flat-slab": (g) => [g("area of the section") / (12 * g("width")) + g("topping")],
  // Over a parabola of rise c the mean of what is left above it is c/3.
  "topping-volume": (g) => {
    const mean = g("minimum thickness") + g("camber") / 3;
    return [mean, ((mean / 12) * g("span") * g("width of the bay")) / 27];
  },
  "pieces-and-trucks": (g) => {
    const weight = (g("weight of a foot") * g("length of a piece")) / 1000;
    const pieces = (g("bays") * g("length of a bay")) / g("width of a piece");
    return [weight, pieces, Math.ceil(pieces / Math.max(1, Math.floor(g("payload") / weight)))];
  },
  "carbon-of-deck": (g) => {
    const kg = g("precast concrete as a slab") * g("carbon of the precast concrete") + g("topping") * g("carbon of the topping") + g("strand") * g("carbon of strand") + g("weight of the member") * g("carbon of casting");
    return [kg, (kg * g("floor")) / 1000];
  },
  "edge-beam-depth": (g, item) => [g("ledge") + Number(/DT(\d+)$/.exec(word(item, "deck"))?.[1]) + g("topping") + g("upstand")],
  "seat-left": (g) => [g("projection of the ledge") - g("joint") - g("tolerance on the length") - g("tolerance on the bearing") - (0.125 * g("length of the beam")) / 10, Math.max((12 * g("span of the deck")) / 180, 3), undefined],
  "edge-beam-load": (g) => {
    const dead = ((g("deck with topping") + g("finishes")) * g("span of the deck")) / 2 + g("the beam itself") + g("cladding");
    return [dead, Math.max(1.4 * dead, 1.2 * dead + (1.6 * g("live load") * g("span of the deck")) / 2)];
  },
  "girder-moment": (g) => {
    const dead = (g("deck with topping") + g("finishes")) * g("span of the decks") + g("the girder itself");
    const factored = Math.max(1.4 * dead, 1.2 * dead + 1.6 * g("live load") * g("span of the decks"));
    return [dead, factored, (factored * g("span of the girder") ** 2) / 8000];
  },
  "ledge-torsion": (g) => [(g("factored load on the ledge") * g("span of the beam") * g("lever arm")) / 24_000, (0.75 * Math.sqrt(g("concrete strength")) * g("area squared over perimeter")) / 12_000, undefined],
  "pad-stress": (g) => {
    const factor = (g("width") * g("length")) / (2 * g("thickness") * (g("width") + g("length")));
    const stress = Math.min(1500, 1000 + 100 * factor);
    return [factor, stress, (stress * g("width") * g("length")) / 1000];
  },
  "corbel-steel": (g) => {
    const [pull, friction] = [(0.2 * g("factored reaction")) / 45, g("factored reaction") / (45 * 1.4)];
    return [pull, friction, undefined, Math.max(g("steel for bending") + pull, (2 / 3) * friction + pull, g("least steel"))];
  },
  "flat-roof-snow": (g, item) => {
    const factor = (name: string, where: string) => Number(item.table?.rows.find(([symbol, what]) => symbol === name && String(what).endsWith(where))?.[2]);
    const importance = factor("I_s", `category ${word(item, "risk category")}`);
    return [0.7 * factor("C_e", `, ${word(item, "exposure of the roof")}`) * factor("C_t", word(item, "space below")) * importance * g("ground snow load"), importance * Math.min(20, g("ground snow load"))];
  },
  "snow-drift": (g) => {
    const [pg, lu] = [g("ground snow load"), g("length of the higher roof")];
    const density = Math.min(30, 0.13 * pg + 14);
    const balanced = 0.7 * pg;
    const height = Math.min(0.43 * lu ** (1 / 3) * (pg + 10) ** 0.25 - 1.5, 0.6 * g("length of this roof"), g("height of the higher part") - balanced / density);
    return [density, height, balanced + density * height];
  },
  "rain-on-roof": (g) => [5.2 * (g("depth up to the overflow") + g("water above the overflow"))],
  "roof-live-load": (g) => [Math.max(12, 20 * Math.min(1, Math.max(0.6, 1.2 - 0.001 * g("width") * g("span"))))],
  "roof-governs": (g) => [undefined, Math.max(1.4 * g("dead load"), 1.2 * g("dead load") + 1.6 * Math.max(g("roof live load"), g("snow"), g("rain")))],
  "column-strength": (g) => {
    const steel = g("bars") * g("area of a bar");
    return [0.65 * 0.8 * (((0.85 * g("concrete strength")) / 1000) * (g("side") ** 2 - steel) + 60 * steel)];
  },
  "column-takedown": (g) => {
    const [n, a] = [g("floors"), g("area on one floor")];
    const dead = (n * a * g("dead load")) / 1000;
    const live = ((n * a * g("live load")) / 1000) * Math.min(1, Math.max(0.4, 0.25 + 15 / Math.sqrt(g("element factor") * n * a)));
    return [dead, live, Math.max(1.4 * dead, 1.2 * dead + 1.6 * live)];
  },
  "footing-side": (g) => {
    const side = Math.sqrt((1000 * g("load without factors")) / g("allowable pressure"));
    return [side, Math.ceil(4 * side - 1e-9) / 4];
  },
  "roof-fall": (g) => [g("span of a bay"), g("span of a bay") * g("fall")],
  "panel-weight": (g) => [(150 * (g("thickness") / 12) * g("width") * g("height") * (1 - g("share of windows") / 100)) / 1000],
  "no-sky-line": (g) => [((g("head of the glass") - g("height of the desks")) / Math.tan((g("angle of the skyline") * Math.PI) / 180) - g("reveal")) / 12, (2 * g("head of the glass")) / 12],
  "average-daylight": (g) => {
    const [b, l, h] = [g("depth"), g("length"), g("height") / 12];
    const surfaces = 2 * b * l + 2 * (b + l) * h;
    return [surfaces, (g("light that the window passes") * l * ((g("head") - g("sill")) / 12) * (90 - g("angle of the skyline"))) / (surfaces * (1 - g("mean reflectance") ** 2))];
  },
  "ceiling-height": (g, item) => {
    const deck = Number(/DT(\d+)$/.exec(word(item, "deck"))?.[1]) + g("topping");
    const ceiling = 12 * g("floor to floor") - g("finish") - deck - g("ledge");
    // The frame below the head is above the ceiling's plane: it hangs from the ledge, flush with the ceiling.
    return [ceiling, ceiling - 2 - (Math.max(0, g("upstand") - g("finish")) + 2)];
  },
  "story-for-ceiling": (g, item) => [g("ceiling") + (Number(/DT(\d+)$/.exec(word(item, "deck"))?.[1]) + g("topping") + g("ledge") + g("ducts below the ledge")) / 12, (g("stories") * g("ducts below the ledge")) / 12],
  "duct-velocity": (g) => {
    const flow = g("floor") * g("air for a square foot");
    return [flow, flow / ((g("width inside") * g("depth inside")) / 144), undefined];
  },
  "quiet-duct": (g) => [(144 * g("air flow")) / 1300, undefined],
  "parking-module": (g) => {
    const angle = (g("angle") * Math.PI) / 180;
    const depth = (g("length of a stall") * Math.sin(angle) + (g("angle") === 90 ? 0 : g("width of a stall") * Math.cos(angle))) / 12;
    const module = 2 * depth + g("aisle");
    return [depth, module, ((g("width of a stall") / 12 / Math.sin(angle)) * module) / 2];
  },
  // Two blends at half the slope climb what one blend's length at the whole slope would.
  "ramp-length": (g) => [g("floor to floor") / (g("slope") / 100) + g("blend at each end")],
  "size-a-bay": (g) => {
    const [span, girder, own] = [g("span of the deck"), g("span of the girder"), g("deck with topping")];
    const dead = (own + g("finishes and services")) * span + g("the girder itself");
    const factored = Math.max(1.4 * dead, 1.2 * dead + 1.6 * g("live load") * span);
    const column = (g("floors") * (dead + g("live load") * span) * girder) / 1000;
    return [g("finishes and services") + g("live load"), undefined, factored, (factored * girder ** 2) / 8000, column, Math.sqrt((1000 * column) / g("allowable pressure"))];
  },
};

describe.each(Object.entries(BY_HAND))("%s", (kind, byHand) => {
  test("comes out by hand from what the question gives, within half of its tolerance", () => {
    for (const seed of SEEDS) {
      const item = itemOf(kind, seed, catalog());
      const keys = keysOf(item);
      const hand = byHand(givensOf(item), item);
      expect(hand.length).toBe(item.parts.length);
      hand.forEach((value, i) => {
        const part = item.parts[i];
        if (value === undefined) return expect(part?.type).not.toBe("number");
        if (part?.type !== "number") throw new Error(`${kind}: part ${i + 1} is no number`);
        const within = "percent" in part.tolerance ? (Math.abs(value) * part.tolerance.percent) / 200 : part.tolerance.within / 2;
        expect(Math.abs((keys[i] as number) - value), `${kind}, seed ${seed}, part ${i + 1}: ${keys[i]} and by hand ${value}`).toBeLessThanOrEqual(within + 1e-9 * Math.abs(value));
      });
    }
  });
});
