import {describe, expect, test} from "vitest";
import {barOf, occupancyOf, readCatalog} from "../lib/catalog.js";
import type {RawTables} from "../lib/tables.js";
import {readRawTables} from "../src/headless/readCatalog.js";
import {catalog} from "./support/designs.js";
import {refused} from "./support/errors.js";

const tables = readRawTables();
/** The tables with one cell changed. */
const changed = (table: string, column: string, value: string): RawTables =>
  ({...tables, [table]: (tables[table] ?? []).map((row, i) => (i === 0 ? {...row, [column]: value} : row))});

describe("readCatalog", () => {
  test("gives every row of every table a name of its own and a source", () => {
    for (const names of [
      catalog.deckMembers.map((row) => row.designation), catalog.ledgeBeams.map((row) => row.designation),
      catalog.occupancies.map((row) => row.id), catalog.bars.map((row) => row.size), catalog.strands.map((row) => row.sixteenths),
      catalog.carbonFactors.map((row) => row.id),
    ]) {
      expect(names.length).toBeGreaterThan(0);
      expect(new Set<unknown>(names).size).toBe(names.length);
    }
    for (const row of [...catalog.deckMembers, ...catalog.ledgeBeams, ...catalog.occupancies, ...catalog.layers, ...catalog.carbonFactors]) expect(row.source).not.toBe("");
  });

  test("reads numbers as numbers and an empty cell as nothing", () => {
    expect(occupancyOf(catalog, "office")).toMatchObject({livePsf: 50, concentratedLb: 2000, reduction: "yes", partitions: true, sustainedShare: 0.2});
    expect(occupancyOf(catalog, "residential").concentratedLb).toBeUndefined();
    expect(catalog.deckMembers.find((row) => row.designation === "4HC8")?.dimensions).toEqual({widthIn: 48, depthIn: 8, voidCount: 6, voidDiameterIn: 6});
  });

  test("reads carbon factors by what they are for: concrete by the yard with its kind and strength, the rest by the pound", () => {
    for (const {material, concrete, unit, kgPerUnit, date, id} of catalog.carbonFactors) {
      expect(unit, id).toBe(material === "concrete" ? "yd3" : "lb");
      expect(concrete !== undefined, id).toBe(material === "concrete");
      expect(kgPerUnit, id).toBeGreaterThan(0);
      expect(date, id).toMatch(/^20\d\d$/);
    }
    expect(catalog.carbonFactors.find(({id}) => id === "plant-lw-5000")?.concrete).toEqual({place: "precast", kind: "sand-lightweight", strengthPsi: 5000});
  });

  test("marks loads above 100 psf as heavy unless no reduction is allowed at all", () => {
    for (const row of catalog.occupancies) if (row.livePsf > 100) expect(row.reduction, row.id).toMatch(/heavy|no/);
  });

  test("names table, row and column of a cell that cannot be used", () => {
    refused(() => readCatalog(changed("bars", "diameter_in", "half")), {path: "bars[1].diameter_in", value: "half", message: `bars[1] diameter_in: "half" is not possible (a number)`});
    refused(() => readCatalog(changed("bars", "area_in2", "")), {path: "bars[1].area_in2", allowed: "a number"});
    refused(() => readCatalog(changed("occupancies", "name", " ")), {path: "occupancies[1].name", allowed: "text"});
    refused(() => readCatalog(changed("occupancies", "reduction", "maybe")), {path: "occupancies[1].reduction", allowed: "yes, no, heavy, garage"});
    refused(() => readCatalog(changed("deck-members", "family", "triple tee")), {path: "deck-members[1].family"});
    refused(() => readCatalog(changed("carbon", "material", "timber")), {path: "carbon[1].material", allowed: /concrete, strand/});
    refused(() => readCatalog(changed("carbon", "unit", "lb")), {path: "carbon[1].unit", allowed: "yd3"});
    refused(() => readCatalog(changed("carbon", "strength_psi", "")), {path: "carbon[1].strength_psi"});
    refused(() => readCatalog(changed("deck-members", "width_in", "Infinity")), {path: "deck-members[1].width_in"});
  });

  test("reads afresh what each table holds: half-inch strands, uses with and without walls, beams with a ledge, and ratings by cover", () => {
    const read = readCatalog(tables);
    expect(read.strands.find(({sixteenths}) => sixteenths === 8)).toEqual({sixteenths: 8, diameterIn: 0.5, areaIn2: 0.153, weightPlf: 0.52});
    expect(read.bars.find(({size}) => size === "#9")).toEqual({size: "#9", diameterIn: 1.128, areaIn2: 1});
    expect(occupancyOf(read, "office").partitions).toBe(true);
    expect(occupancyOf(read, "stair").partitions).toBe(false);
    expect(read.layers.length).toBeGreaterThan(5);
    for (const {name, loadPsf} of read.layers) expect(loadPsf, name).toBeGreaterThan(0);
    expect(read.ledgeBeams.map(({family}) => family)).toEqual(expect.arrayContaining(["L-beam", "inverted tee"]));
    for (const {designation, dimensions} of read.ledgeBeams) expect(dimensions, designation).toMatchObject({depthIn: expect.any(Number) as number});
    expect(read.deckMembers.find(({designation}) => designation === "10DT24")).toMatchObject({family: "double tee", use: "field-topped", dimensions: {widthIn: 120, depthIn: 24}});
    // A longer rating takes a thicker slab and more cover, and a restrained stem less of it than one that is free to grow.
    for (const {thicknessIn} of read.fire.slabs) expect(thicknessIn["sand-lightweight"]).toBeLessThan(thicknessIn.siliceous);
    for (const key of ["thicknessIn", "coverIn"] as const) {
      const siliceous = [...read.fire.slabs].sort((a, b) => a.hours - b.hours).map((row) => row[key].siliceous);
      expect(siliceous).toEqual([...siliceous].sort((a, b) => a - b));
    }
    expect(new Set(read.fire.stems.map(({restrained}) => restrained))).toEqual(new Set([true, false]));
    for (const {covers} of read.fire.stems) {
      expect(covers.length).toBeGreaterThan(0);
      for (const {hours, coverIn} of covers) expect([hours, coverIn].every((size) => Number.isFinite(size) && size > 0)).toBe(true);
      expect(covers.map(({coverIn}) => coverIn)).toEqual([...covers.map(({coverIn}) => coverIn)].sort((a, b) => a - b));
    }
  });

  test("says which table is missing", () => {
    const {strands: _, ...rest} = tables;
    refused(() => readCatalog(rest), {path: "strands", allowed: "a table named strands"});
  });
});

describe("looking up", () => {
  test("finds a row or lists the rows there are", () => {
    expect(barOf(catalog, "#9")).toMatchObject({diameterIn: 1.128, areaIn2: 1});
    refused(() => barOf(catalog, "#12", "edgeBeam.barSize"), {path: "edgeBeam.barSize", value: "#12", allowed: /#3, #4.*#18/});
    refused(() => occupancyOf(catalog, "Office"), {path: "occupancy", value: "Office", allowed: /office/});
  });
});
