import {InputError} from "./errors.js";
import {tableRows, type RawTables, type CsvRow} from "./tables.js";
import type {FireTables} from "./member/fire.js";
import {CARBON_MATERIALS, CAST_PLACES, type CarbonFactor} from "./materials/carbon.js";
import type {Bar} from "./materials/reinforcement.js";
import type {Strand} from "./materials/strand.js";
import {DECK_FAMILIES, LEDGE_FAMILIES, type Family} from "./sections/shape.js";


/** All that the kit knows of materials, members and loads before a reader decides anything. */
export interface Catalog {
  readonly strands: readonly Strand[];
  readonly bars: readonly Bar[];
  readonly occupancies: readonly Occupancy[];
  readonly layers: readonly {readonly name: string; readonly loadPsf: number; readonly source: string}[];
  readonly deckMembers: readonly DeckMemberRow[];
  readonly ledgeBeams: readonly LedgeBeamRow[];
  readonly carbonFactors: readonly CarbonFactor[];
  readonly fire: FireTables;
}

/** How the code lets a live load be reduced: as usual, not at all, or by the rules for heavy loads or garages. */
export type ReductionRule = "yes" | "no" | "heavy" | "garage";

/** A row of the table of live loads. */
export interface Occupancy {
  readonly id: string;
  readonly name: string;
  readonly group: string;
  /** Uniform live load Lo, psf. */
  readonly livePsf: number;
  /** Concentrated live load, lb, where the table gives one. */
  readonly concentratedLb: number | undefined;
  readonly reduction: ReductionRule;
  /** Whether walls are usually moved about in such rooms. */
  readonly partitions: boolean;
  /** Part of the live load that stays for years (common practice). */
  readonly sustainedShare: number;
  readonly source: string;
}

/** A deck member's generic cross-section and the strands that it may hold. */
export interface DeckMemberRow {
  readonly designation: string;
  readonly family: Family;
  /** How it is finished: topped in the field, cast with its full flange, or a plank. */
  readonly use: "field-topped" | "pretopped" | "plank";
  /** The cross-section's dimensions by name, as its shape takes them. */
  readonly dimensions: Readonly<Record<string, number>>;
  /** Height of the lowest strands above the soffit, in. */
  readonly lowestStrandIn: number;
  readonly leastStrands: number;
  readonly mostStrands: number;
  readonly source: string;
}

/** An L-beam's or inverted tee's generic cross-section. */
export interface LedgeBeamRow {
  readonly designation: string;
  readonly family: Family;
  readonly dimensions: Readonly<Record<string, number>>;
  readonly source: string;
}

/** Column of a CSV table to name of a dimension. */
const DIMENSION_COLUMNS: Readonly<Record<string, string>> = {
  width_in: "widthIn", depth_in: "depthIn", flange_in: "flangeIn", stem_bottom_in: "stemBottomIn", stem_top_in: "stemTopIn",
  stem_spacing_in: "stemSpacingIn", chamfer_in: "chamferIn", void_count: "voidCount", void_diameter_in: "voidDiameterIn",
  web_width_in: "webWidthIn", ledge_projection_in: "ledgeProjectionIn", ledge_depth_in: "ledgeDepthIn",
};

/**
 * Makes the catalog from the text tables of `data/`.
 *
 * @throws InputError naming table, row and column of the first cell that cannot be used
 */
export function readCatalog(tables: RawTables): Catalog {
  return {
    strands: tableRows(tables, "strands").map((row) => ({
      sixteenths: row.number("sixteenths"), diameterIn: row.number("diameter_in"),
      areaIn2: row.number("area_in2"), weightPlf: row.number("weight_plf"),
    })),
    bars: tableRows(tables, "bars").map((row) => ({
      size: row.text("size"), diameterIn: row.number("diameter_in"), areaIn2: row.number("area_in2"),
    })),
    occupancies: tableRows(tables, "occupancies").map((row) => ({
      id: row.text("id"), name: row.text("name"), group: row.text("group"), livePsf: row.number("live_psf"),
      concentratedLb: row.optionalNumber("concentrated_lb"),
      reduction: row.choice("reduction", ["yes", "no", "heavy", "garage"]),
      partitions: row.choice("partitions", ["yes", "no"]) === "yes",
      sustainedShare: row.number("sustained_share"), source: row.text("source"),
    })),
    layers: tableRows(tables, "layers").map((row) => ({name: row.text("name"), loadPsf: row.number("load_psf"), source: row.text("source")})),
    deckMembers: tableRows(tables, "deck-members").map((row) => ({
      designation: row.text("designation"), family: row.choice("family", DECK_FAMILIES),
      use: row.choice("use", ["field-topped", "pretopped", "plank"]), dimensions: dimensionsOf(row),
      lowestStrandIn: row.number("lowest_strand_in"), leastStrands: row.number("least_strands"),
      mostStrands: row.number("most_strands"), source: row.text("source"),
    })),
    ledgeBeams: tableRows(tables, "ledge-beams").map((row) => ({
      designation: row.text("designation"), family: row.choice("family", LEDGE_FAMILIES),
      dimensions: dimensionsOf(row), source: row.text("source"),
    })),
    carbonFactors: tableRows(tables, "carbon").map(carbonFactorOf),
    fire: fireTables(tables),
  };
}

/** Columns of cover in the table for stems, by the rating that they give. */
const RATINGS = [[1, "cover_1h_in"], [1.5, "cover_1_5h_in"], [2, "cover_2h_in"], [3, "cover_3h_in"], [4, "cover_4h_in"]] as const;

function fireTables(tables: RawTables): FireTables {
  return {
    slabs: tableRows(tables, "fire-slabs").map((row) => ({
      hours: row.number("hours"),
      thicknessIn: {siliceous: row.number("siliceous_in"), carbonate: row.number("carbonate_in"), "sand-lightweight": row.number("sand_lightweight_in")},
      coverIn: {
        siliceous: row.number("cover_siliceous_in"), carbonate: row.number("cover_carbonate_in"), "sand-lightweight": row.number("cover_sand_lightweight_in"),
      },
    })),
    stems: tableRows(tables, "fire-stems").map((row) => ({
      greatestAreaIn2: row.optionalNumber("greatest_area_in2"),
      concrete: row.choice("concrete", ["normalweight", "sand-lightweight"]),
      restrained: row.choice("restraint", ["restrained", "unrestrained"]) === "restrained",
      covers: RATINGS.flatMap(([hours, column]) => {
        const coverIn = row.optionalNumber(column);
        return coverIn === undefined ? [] : [{hours, coverIn}];
      }),
    })),
  };
}

/** The occupancy with an id; throws {@link InputError} if there is none. */
export function occupancyOf(catalog: Catalog, id: string, path = "occupancy"): Occupancy {
  const found = catalog.occupancies.find((row) => row.id === id);
  if (found) return found;
  throw new InputError({path, label: "occupancy", value: id, allowed: catalog.occupancies.map((row) => row.id).join(", ")});
}

/** The bar of a size; throws {@link InputError} if there is none. */
export function barOf(catalog: Catalog, size: string, path = "barSize"): Bar {
  const found = catalog.bars.find((row) => row.size === size);
  if (found) return found;
  throw new InputError({path, label: "bar size", value: size, allowed: catalog.bars.map((row) => row.size).join(", ")});
}

/** The dimensions that a row gives, by name. */
function dimensionsOf(row: CsvRow): Record<string, number> {
  const entries = Object.entries(DIMENSION_COLUMNS).flatMap(([column, name]) => {
    const value = row.optionalNumber(column);
    return value === undefined ? [] : [[name, value] as const];
  });
  return Object.fromEntries(entries);
}

function carbonFactorOf(row: CsvRow): CarbonFactor {
  const material = row.choice("material", CARBON_MATERIALS);
  return {
    id: row.text("id"), material,
    concrete: material !== "concrete" ? undefined : {
      place: row.choice("place", CAST_PLACES), kind: row.choice("concrete_kind", ["normalweight", "sand-lightweight"]),
      strengthPsi: row.number("strength_psi"),
    },
    unit: row.choice("unit", material === "concrete" ? ["yd3"] : ["lb"]), kgPerUnit: row.number("kgco2e_per_unit"),
    stage: row.choice("stage", ["A1-A3", "A3"]), source: row.text("source"), date: row.text("date"),
    confidence: row.choice("confidence", ["seen in text", "worked out", "from memory"]),
  };
}
