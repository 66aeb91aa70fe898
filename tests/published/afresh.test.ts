// The comparison itself: what it reads, works out and counts, made afresh in each test.
import {describe, expect, it} from "vitest";
import {PROPORTIONAL_STRAIN, strandStressKsi, strandTailKsi} from "../../lib/materials/strand.js";
import {agreement} from "../../lib/published/agreement.js";
import {camber} from "../../lib/member/camber.js";
import {CAMBER_FORCE_ALLOWANCE} from "../../lib/prestress/losses.js";
import {compare, type Citation} from "../../lib/published/compare.js";
import {compareDeckLoads, handbookMember} from "../../lib/published/deckLoads.js";
import {comparePublished, tally} from "../../lib/published/published.js";
import {allowanceTrials} from "../../lib/published/releaseForce.js";
import {compareSections} from "../../lib/published/sections.js";
import {strandCurve} from "../../lib/published/strandCurve.js";
import {readPublished} from "../../lib/published/tables.js";
import {compareValues} from "../../lib/published/values.js";
import {readRawTables} from "../../src/headless/readCatalog.js";
import {catalog} from "../support/designs.js";
import {refused} from "../support/errors.js";

const CITED: Citation = {tolerance: 1, asserted: true, source: "a table", confidence: "seen in text", note: ""};
const deckLoads = () => comparePublished(catalog, readPublished(readRawTables())).deckLoads;

describe("all published values", () => {
  it("are read from four tables and compared one by one, three for each cell of a deck's load table", () => {
    const published = readPublished(readRawTables());
    const {all, sections, deckLoads: cells, beamLoads, values} = comparePublished(catalog, published);
    expect([sections.length, cells.length, beamLoads.length, values.length]).toEqual([published.sections.length, published.deckLoads.length, published.beamLoads.length, published.values.length]);
    expect(all).toHaveLength(sections.length + 3 * cells.length + beamLoads.reduce((sum, {cambers}) => sum + 1 + cambers.length, 0) + values.length);
    const {asserted, agree} = tally(all);
    expect(agree).toBe(asserted);
    expect(asserted).toBeGreaterThan(0.9 * (all.length - 3 * cells.length));
    for (const row of all) expect(row.tolerance, `${row.group}: ${row.quantity}`).toBeLessThan(Math.max(5, 0.5 * Math.abs(row.published)));
  });

  it("are counted by what became of them and where they are from", () => {
    const row = (published: number, citation: Partial<Citation> = {}) => compare({group: "g", quantity: "q", unit: "in", published}, 10, {...CITED, ...citation});
    expect(tally([row(10), row(11), row(12), row(12, {asserted: false}), row(9, {confidence: "from memory"})])).toEqual({values: 5, asserted: 4, agree: 3, fromMemory: 1});
  });
});

describe("a value beside ours", () => {
  it("agrees up to its tolerance and no further, and is off by ours less the printed one", () => {
    const beside = (ours: number, tolerance = 1) => compare({group: "g", quantity: "q", unit: "in", published: 100}, ours, {...CITED, tolerance});
    expect([98.999, 99, 100, 101, 101.001].map((ours) => beside(ours).within)).toEqual([false, true, true, true, false]);
    expect(beside(98).difference).toBe(-2);
    expect([beside(100 + 1e-10, 0).within, beside(100.001, 0).within]).toEqual([true, false]);
  });

  it("has a tolerance in its own unit, as a share of it, or none", () => {
    const tables = readRawTables();
    const [first] = tables["published-values"] ?? [];
    const read = (tolerance: string) => readPublished({...tables, "published-values": [{...first, value: "-200", tolerance}]}).values[0]?.tolerance;
    expect([read("exact"), read("0.5"), read("1%"), read("0.1%")]).toEqual([0, 0.5, 2, 0.2]);
    for (const wrong of ["%", "about 1", ""]) refused(() => read(wrong), {path: "published-values[1].tolerance"});
  });
});

describe("sections beside the handbook's", () => {
  it("weigh 150 pcf, with the topping over the whole width where there is one", () => {
    const row = (toppingIn: number, quantity: string) => ({...CITED, member: "10DT24", toppingIn, quantity, value: 0, unit: ""});
    const ours = (toppingIn: number, quantity: string) => compareSections(catalog, [row(toppingIn, quantity)])[0]?.ours ?? NaN;
    const barePlf = (ours(0, "area") * 150) / 144;
    expect(ours(0, "weight")).toBeCloseTo(barePlf, 9);
    // 2 in on 10 ft.
    expect(ours(2, "weight")).toBeCloseTo(barePlf + 250, 9);
    expect(ours(2, "weight per area")).toBeCloseTo((barePlf + 250) / 10, 9);
    expect(ours(2, "inertia")).toBeGreaterThan(ours(0, "inertia"));
    expect(ours(0, "sb") * ours(0, "yb")).toBeCloseTo(ours(0, "inertia"), 6);
    expect(ours(0, "st") * ours(0, "yt")).toBeCloseTo(ours(0, "inertia"), 6);
    expect(compareSections(catalog, [row(0, "area"), row(2, "area")]).map(({group}) => group)).toEqual(["10DT24", "10DT24 + 2 in"]);
    refused(() => compareSections(catalog, [row(0, "color")]), {path: "quantity", value: "color"});
  });
});

describe("values of other kinds", () => {
  const ours = (kind: string, key: string) => compareValues(catalog, [{...CITED, group: "g", kind, key, quantity: "q", value: 0, unit: ""}])[0]?.ours;

  it("are found by their keys", () => {
    expect(ours("strand breaking force", "8")).toBeCloseTo(0.153 * 270, 9);
    expect(ours("strand yield force", "8")).toBeCloseTo(0.153 * 243, 9);
    expect(ours("partition load", "50")).toBe(15);
    expect(ours("concentrated load", "office")).toBe(2000);
    expect(ours("concentrated load", "residential")).toBe(0);
    // 7.5 root f'c in normalweight concrete.
    expect(ours("rupture", "normalweight/4900")).toBeCloseTo(7.5 * 70, 9);
    expect(ours("combination", "100/50")).toBeCloseTo(1.2 * 100 + 1.6 * 50, 9);
    expect(ours("reduction", "yes/50/2500/1")).toBeCloseTo(0.25 + 15 / 50, 9);
    expect(ours("strand power modulus", "") ?? NaN).toBeCloseTo(28500, -3);
    refused(() => ours("weather", ""), {path: "kind", value: "weather"});
    refused(() => ours("loss constant", "nowhere"), {path: "key", value: "nowhere"});
    // Slabs are rated for whole hours up to 4.
    refused(() => ours("fire thickness", "siliceous/9"), {path: "key", value: "siliceous/9"});
    // A loss that is a table of its own, a duct in a cover or of a criterion that no table has.
    for (const [kind, key] of [["loss constant", "creep"], ["noise velocity", "cellar/25"], ["noise velocity", "box/30"]] as const) refused(() => ours(kind, key), {path: "key", value: key});
  });
});

describe("a topped member of the handbook's", () => {
  it("bears 15 psf of its load for good, where a bare one bears 10: so much its camber comes down in time", () => {
    const [row] = readPublished(readRawTables()).deckLoads;
    if (!row) throw new Error("no row");
    for (const [toppingIn, deadPsf] of [[0, 10], [2, 15]] as const) {
      const asked = {...row, toppingIn};
      const member = handbookMember(catalog, asked);
      const arch = camber(member, row.spanFt, deadPsf * member.widthFt);
      expect(compareDeckLoads(catalog, [asked])[0]?.longTimeCamber.ours).toBe(arch.longTermIn);
      // The trial with the kit's own allowance tries the same member under the same load.
      expect(allowanceTrials(catalog, [asked], [CAMBER_FORCE_ALLOWANCE])[0]?.longTime.meanIn).toBeCloseTo(arch.longTermIn - row.longTimeCamberIn, 12);
    }
  });
});

describe("the strand's curve", () => {
  it("runs evenly from one strain to the other, and shows the printed piece only where it lies below ours", () => {
    const curve = strandCurve(0.006, 0.012, 7);
    expect(curve.map(({strain}) => strain)).toEqual([0.006, 0.007, 0.008, 0.009, 0.01, 0.011, 0.012].map((strain) => expect.closeTo(strain, 12)));
    expect(strandCurve(0.006, 0.012)).toHaveLength(121);
    for (const {strain, oursKsi, printedKsi} of strandCurve(0.007, 0.012, 101)) {
      expect(oursKsi).toBe(strandStressKsi(strain));
      if (strain < PROPORTIONAL_STRAIN) expect(printedKsi).toBeUndefined();
      else if (strandTailKsi(strain) < oursKsi) expect(printedKsi).toBe(strandTailKsi(strain));
      else expect(printedKsi).toBeUndefined();
    }
    expect(strandCurve(0.007, 0.012, 101).some(({printedKsi}) => printedKsi !== undefined)).toBe(true);
    // The printed piece begins where the straight line ends, and begins below it.
    expect(strandCurve(PROPORTIONAL_STRAIN, 0.012)[0]?.printedKsi).toBe(strandTailKsi(PROPORTIONAL_STRAIN));
  });
});

describe("agreement, page by page", () => {
  it("counts the cells that strength limits by how near they come, and those that shear limits apart", () => {
    const [cell] = deckLoads();
    if (!cell) throw new Error("no cell");
    const off = (difference: number, limit: "strength" | "shear" = "strength", camberIn = 0.1) => ({
      ...cell, page: "P", row: {...cell.row, limit}, safeLoad: {...cell.safeLoad, published: 100, ours: 100 + difference, difference},
      erectionCamber: {...cell.erectionCamber, difference: camberIn}, longTimeCamber: {...cell.longTimeCamber, difference: -2 * camberIn},
    });
    expect(agreement([off(0.4), off(-1), off(2), off(-4), off(9, "shear", 0.2)])).toEqual([{
      page: "P", cells: 5, strengthCells: 4, shearCells: 1, within: [2, 3, 4], toTheDigit: 1, worstLoadPsf: 4, worstErectionIn: 0.2, worstLongTimeIn: 0.4,
    }]);
    expect(agreement([off(9, "shear")])[0]).toMatchObject({strengthCells: 0, worstLoadPsf: 0});
  });

  it("counts the cells of each page by themselves, in the order in which pages first come", () => {
    const [cell] = deckLoads();
    if (!cell) throw new Error("no cell");
    const off = (page: string, difference: number) => ({...cell, page, row: {...cell.row, limit: "strength" as const}, safeLoad: {...cell.safeLoad, difference}});
    expect(agreement([off("B", 1), off("A", -3), off("B", 4)]).map(({page, cells, worstLoadPsf}) => [page, cells, worstLoadPsf])).toEqual([["B", 2, 4], ["A", 1, 3]]);
  });
});

describe("trials of an allowance at release", () => {
  it("are reported by their mean, their middle and their worst: the middle of two cells lies between them", () => {
    const rows = readPublished(readRawTables()).deckLoads.slice(0, 3);
    const trial = (count: number) => allowanceTrials(catalog, rows.slice(0, count), [0.03])[0]?.erection;
    const one = [0, 1, 2].map((i) => allowanceTrials(catalog, rows.slice(i, i + 1), [0.03])[0]?.erection.meanIn ?? NaN);
    const sizes = one.map(Math.abs).sort((a, b) => a - b);
    expect(trial(3)?.meanIn).toBeCloseTo(one.reduce((sum, d) => sum + d, 0) / 3, 12);
    expect(trial(3)?.medianIn).toBeCloseTo(sizes[1] ?? NaN, 12);
    expect(trial(3)?.worstIn).toBeCloseTo(sizes[2] ?? NaN, 12);
    const two = one.slice(0, 2).map(Math.abs);
    expect(trial(2)?.medianIn).toBeCloseTo(((two[0] ?? NaN) + (two[1] ?? NaN)) / 2, 12);
  });
});
