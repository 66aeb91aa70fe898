import {occupancyOf, type Catalog} from "../catalog.js";
import {readJson} from "../check.js";
import type {Design} from "../design/design.js";
import {withValue} from "../design/edit.js";
import {entryAt, fieldOf, type NumberPath} from "../design/fields.js";
import {checkEntry} from "../design/validate.js";
import type {Entry} from "../design/entries.js";
import {InputError, under} from "../errors.js";
import {PlainReader} from "../report/plainReader.js";
import {blankDesign} from "./blank.js";
import {DECK_KINDS, MOST_SCHEMES, STRAND_CHOICES, steps, usualVary, type Brief, type DeckKind, type PlanOutline, type Vary} from "./brief.js";
import {gridOf, widthOf} from "./grid.js";
import {readPrices} from "./measures/prices.js";

/** Marks a brief's file. */
export const BRIEF_FORMAT = "plank-and-tee-brief";
/** The version of the file that is written and read. */
export const BRIEF_VERSION = 1;

/** Greatest outline that a brief may ask for, ft, and the least. */
const OUTLINE_FT = {min: 10, max: 2000};
/** Most numbers that one list of a brief may have. */
const MOST_VALUES = 500;

/** Fields that choices or rules set, which a brief therefore cannot fix; a name that ends in a dot stands for a group. */
const RULED: readonly string[] = [
  "bay.", "deck.member", "deck.dimensions", "deck.pattern", "deck.strandHeightEndIn", "deck.strandHeightCenterIn", "deck.concrete", "deck.strengthPsi", "deck.toppingIn",
  "edgeBeam.kind", "edgeBeam.webWidthIn", "edgeBeam.ledgeProjectionIn", "edgeBeam.ledgeDepthIn", "edgeBeam.barSize", "edgeBeam.strands", "edgeBeam.padWidthIn", "edgeBeam.padLengthIn",
  "girder.kind", "girder.webWidthIn", "girder.ledgeProjectionIn", "girder.ledgeDepthIn", "girder.depthIn", "girder.strands", "column.sideIn", "consider.",
  "story.floorToFloorFt", "story.ceilingDropIn", "services.servedFt2", "services.mainWidthIn", "services.mainDepthIn", "roof.", "reasons.", "name", "setting",
];

/**
 * Reads a brief's file: the building, its rooms, the ceiling or the floor-to-floor height that is wanted, what is fixed
 * and what may vary.
 *
 * @throws InputError naming the first field that is missing, unknown or out of range, and where nothing is left to try
 */
export function readBrief(fileText: string, catalog: Catalog): Brief {
  return briefFrom(readJson(fileText, "brief"), catalog);
}

/** {@link readBrief} of content that is read already. */
export function briefFrom(content: unknown, catalog: Catalog): Brief {
  const file = new PlainReader(content, "", "brief");
  file.choice("format", "format", [BRIEF_FORMAT]);
  file.same("version", "version of the brief", BRIEF_VERSION, "This kit reads that version alone");
  const name = file.field("name", fieldOf("name"));
  const setting = file.field("setting", fieldOf("setting"), "");
  const building = file.branch("building");
  const outline = readOutline(building);
  const stories = building.number("stories", "stories", "", 2, fieldOf("bay.floors").max + 1);
  building.finish();
  const ceilingFt = file.has("ceilingFt") ? file.number("ceilingFt", "wanted ceiling height", "ft", 7, 30) : undefined;
  const floorToFloorFt = file.optionalField("floorToFloorFt", fieldOf("story.floorToFloorFt"));
  if ((ceilingFt === undefined) === (floorToFloorFt === undefined)) {
    throw new InputError({path: "ceilingFt", label: "wanted height", value: ceilingFt, allowed: "either ceilingFt or floorToFloorFt, not both"});
  }
  const plain = file.rest(["rooms", "partitions", "layers", "fixed", "vary", "storyLimits", "prices"]);
  let base: Design = {...blankDesign(), name, setting};
  for (const [key, path] of [["rooms", "loads.rooms"], ["partitions", "loads.partitions"], ["layers", "loads.layers"]] as const) {
    if (plain[key] === undefined) {
      if (key === "rooms") checkEntry(entryAt(path) as Entry, key, undefined);
      continue;
    }
    checkEntry(entryAt(path) as Entry, key, plain[key]);
    base = withValue(base, path, plain[key]);
  }
  base.loads.rooms.forEach(({occupancy}, i) => occupancyOf(catalog, occupancy, `rooms.${i}.occupancy`));
  base = withValue(base, "bay.floors", stories - 1);
  if (floorToFloorFt !== undefined) base = withValue(base, "story.floorToFloorFt", floorToFloorFt);
  base = withFixed(base, plain["fixed"]);
  const vary = readVary(plain["vary"] === undefined ? undefined : new PlainReader(plain["vary"], "vary"), catalog, base, outline);
  const limits = readLimits(plain["storyLimits"] === undefined ? undefined : new PlainReader(plain["storyLimits"], "storyLimits"));
  const prices = plain["prices"] === undefined ? {} : readPrices(plain["prices"]);
  file.finish();
  const brief: Brief = {name, setting, base, outline, ceilingFt, limits, vary, prices};
  const {count} = gridOf(brief, catalog);
  if (count === 0) throw new InputError({path: "vary", label: "choices", value: 0, allowed: `one at least: a width of ${Number((widthOf(outline) ?? 0).toFixed(2))} ft gives no deck span of ${fieldOf("bay.spanFt").min} to ${fieldOf("bay.spanFt").max} ft with these bays across`});
  if (count > MOST_SCHEMES) throw new InputError({path: "vary", label: "schemes", value: count, allowed: `${MOST_SCHEMES} at most: fewer values in the lists`});
  return brief;
}

/** Two of length, width and floor area, or length or area alone. */
function readOutline(building: PlainReader): PlanOutline {
  const length = (key: string, label: string) => (building.has(key) ? building.number(key, label, "ft", OUTLINE_FT.min, OUTLINE_FT.max) : undefined);
  const lengthFt = length("lengthFt", "building length");
  const widthFt = length("widthFt", "building width");
  const floorFt2 = building.has("floorFt2") ? building.number("floorFt2", "area of a floor", "ft2", 100, 4_000_000) : undefined;
  const given = [lengthFt, widthFt, floorFt2].filter((value) => value !== undefined).length;
  if (given === 3 || (lengthFt === undefined && floorFt2 === undefined)) {
    throw new InputError({path: building.at("lengthFt"), label: "outline of the building", value: lengthFt, allowed: "lengthFt or floorFt2, or two of lengthFt, widthFt and floorFt2"});
  }
  return {...(lengthFt === undefined ? {} : {lengthFt}), ...(widthFt === undefined ? {} : {widthFt}), ...(floorFt2 === undefined ? {} : {floorFt2})};
}

/** The base with the fields that the brief fixes, by path. */
function withFixed(base: Design, fixed: unknown): Design {
  if (fixed === undefined) return base;
  let design = base;
  for (const [path, value] of new PlainReader(fixed, "fixed").entries()) {
    const ruled = RULED.some((entry) => (entry.endsWith(".") ? path.startsWith(entry) : path === entry));
    if (ruled || entryAt(path) === undefined) {
      throw new InputError({path: `fixed.${path}`, label: `fixed.${path}`, value, allowed: ruled ? "a field that neither choices nor rules set" : "the path of a field of a design, such as criteria.fireHours"});
    }
    design = under("fixed", () => withValue(design, path, value));
  }
  return design;
}

function readVary(vary: PlainReader | undefined, catalog: Catalog, base: Design, outline: PlanOutline): Vary {
  const usual = usualVary(base);
  if (!vary) return usual;
  const numbers = (key: string, path: NumberPath, otherwise: readonly number[]) => (vary.has(key) ? vary.series(key, fieldOf(path), MOST_VALUES, steps) : otherwise);
  const words = <T extends string>(key: string, label: string, choices: readonly T[], otherwise: readonly T[]): readonly T[] => (vary.has(key) ? vary.choices(key, label, choices) : otherwise);
  if (vary.has("spanFt") && widthOf(outline) !== undefined) {
    throw new InputError({path: "vary.spanFt", label: "deck spans", value: "given", allowed: "none where the building's width is fixed: its spans are the width over the bays across"});
  }
  const kindWords = Object.values(DECK_KINDS);
  const decks = words("deck", "kind of deck or member", [...kindWords, ...catalog.deckMembers.map(({designation}) => designation)], usual.kinds.map((kind) => DECK_KINDS[kind]));
  const found: Vary = {
    spansFt: numbers("spanFt", "bay.spanFt", usual.spansFt), baysAcross: numbers("baysAcross", "bay.baysAcross", usual.baysAcross),
    beamSpansFt: numbers("beamSpanFt", "bay.beamSpanFt", usual.beamSpansFt),
    kinds: (Object.keys(DECK_KINDS) as DeckKind[]).filter((kind) => decks.includes(DECK_KINDS[kind])), members: decks.filter((deck) => !kindWords.includes(deck)),
    strands: words("strand", "strand", STRAND_CHOICES, usual.strands),
    toppingsIn: numbers("toppingIn", "deck.toppingIn", usual.toppingsIn), strengthsPsi: numbers("strengthPsi", "deck.strengthPsi", usual.strengthsPsi),
    concretes: words("concrete", "concrete", Object.keys(fieldOf("deck.concrete").choices) as Vary["concretes"], usual.concretes),
    edges: words("edge", "edge beam", usual.edges, usual.edges), girders: words("girder", "interior girder", usual.girders, usual.girders),
  };
  vary.finish();
  return found;
}

function readLimits(limits: PlainReader | undefined): Brief["limits"] {
  if (!limits) return {};
  const floorToFloorFt = limits.has("floorToFloorFt") ? limits.field("floorToFloorFt", fieldOf("story.floorToFloorFt")) : undefined;
  const buildingFt = limits.has("buildingFt") ? limits.number("buildingFt", "height of the building", "ft", 16, 400) : undefined;
  limits.finish();
  return {...(floorToFloorFt === undefined ? {} : {floorToFloorFt}), ...(buildingFt === undefined ? {} : {buildingFt})};
}
