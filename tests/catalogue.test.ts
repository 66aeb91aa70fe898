import {describe, expect, test} from "vitest";
import {barOf, occupancyOf, readCatalogue, type RawTables} from "../lib/catalogue.js";
import {readRawTables} from "../src/headless/readCatalogue.js";
import {catalogue} from "./support/designs.js";
import {refused} from "./support/errors.js";

const tables = readRawTables();
/** The tables with one cell changed. */
const changed = (table: string, column: string, value: string): RawTables =>
  ({...tables, [table]: (tables[table] ?? []).map((row, i) => (i === 0 ? {...row, [column]: value} : row))});

describe("readCatalogue", () => {
  test("gives every row of every table a name of its own and a source", () => {
    for (const names of [
      catalogue.deckMembers.map((row) => row.designation), catalogue.ledgeBeams.map((row) => row.designation),
      catalogue.occupancies.map((row) => row.id), catalogue.bars.map((row) => row.size), catalogue.strands.map((row) => row.sixteenths),
      catalogue.carbonFactors.map((row) => row.id),
    ]) {
      expect(names.length).toBeGreaterThan(0);
      expect(new Set<unknown>(names).size).toBe(names.length);
    }
    for (const row of [...catalogue.deckMembers, ...catalogue.ledgeBeams, ...catalogue.occupancies, ...catalogue.layers, ...catalogue.carbonFactors]) expect(row.source).not.toBe("");
  });

  test("reads numbers as numbers and an empty cell as nothing", () => {
    expect(occupancyOf(catalogue, "office")).toMatchObject({livePsf: 50, concentratedLb: 2000, reduction: "yes", partitions: true, sustainedShare: 0.2});
    expect(occupancyOf(catalogue, "residential").concentratedLb).toBeUndefined();
    expect(catalogue.deckMembers.find((row) => row.designation === "4HC8")?.dimensions).toEqual({widthIn: 48, depthIn: 8, voidCount: 6, voidDiameterIn: 6});
  });

  test("reads carbon factors by what they are for: concrete by the yard with its kind and strength, the rest by the pound", () => {
    for (const {material, concrete, unit, kgPerUnit, date, id} of catalogue.carbonFactors) {
      expect(unit, id).toBe(material === "concrete" ? "yd3" : "lb");
      expect(concrete !== undefined, id).toBe(material === "concrete");
      expect(kgPerUnit, id).toBeGreaterThan(0);
      expect(date, id).toMatch(/^20\d\d$/);
    }
    expect(catalogue.carbonFactors.find(({id}) => id === "plant-lw-5000")?.concrete).toEqual({place: "precast", kind: "sand-lightweight", strengthPsi: 5000});
  });

  test("marks loads above 100 psf as heavy unless no reduction is allowed at all", () => {
    for (const row of catalogue.occupancies) if (row.livePsf > 100) expect(row.reduction, row.id).toMatch(/heavy|no/);
  });

  test("names table, row and column of a cell that cannot be used", () => {
    refused(() => readCatalogue(changed("bars", "diameter_in", "half")), {path: "bars[1].diameter_in", value: "half", message: `bars[1] diameter_in: "half" is not possible (a number)`});
    refused(() => readCatalogue(changed("bars", "area_in2", "")), {path: "bars[1].area_in2", allowed: "a number"});
    refused(() => readCatalogue(changed("occupancies", "name", " ")), {path: "occupancies[1].name", allowed: "text"});
    refused(() => readCatalogue(changed("occupancies", "reduction", "maybe")), {path: "occupancies[1].reduction", allowed: "yes, no, heavy, garage"});
    refused(() => readCatalogue(changed("deck-members", "family", "triple tee")), {path: "deck-members[1].family"});
    refused(() => readCatalogue(changed("carbon", "material", "timber")), {path: "carbon[1].material", allowed: /concrete, strand/});
    refused(() => readCatalogue(changed("carbon", "unit", "lb")), {path: "carbon[1].unit", allowed: "yd3"});
    refused(() => readCatalogue(changed("carbon", "strength_psi", "")), {path: "carbon[1].strength_psi"});
    refused(() => readCatalogue(changed("deck-members", "width_in", "Infinity")), {path: "deck-members[1].width_in"});
  });

  test("says which table is missing", () => {
    const {strands: _, ...rest} = tables;
    refused(() => readCatalogue(rest), {path: "strands", allowed: "a table named strands"});
  });
});

describe("looking up", () => {
  test("finds a row or lists the rows there are", () => {
    expect(barOf(catalogue, "#9")).toMatchObject({diameterIn: 1.128, areaIn2: 1});
    refused(() => barOf(catalogue, "#12", "edgeBeam.barSize"), {path: "edgeBeam.barSize", value: "#12", allowed: /#3, #4.*#18/});
    refused(() => occupancyOf(catalogue, "Office"), {path: "occupancy", value: "Office", allowed: /office/});
  });
});
