/**
 * Every field of a design that a reader can set: what it is called, its unit, its range and its step.
 *
 * One table serves three purposes: the controls on the pages, the validation of a design file, and the words of an
 * error message. A path's `*` stands for any index of a list.
 */
export type Field = NumberField | ChoiceField | TextField | SwitchField;

interface FieldBase {
  /** Plain-language name, lower case. */
  readonly label: string;
  /** What the value means and why one would change it; one or two sentences. */
  readonly help: string;
}

export interface NumberField extends FieldBase {
  readonly kind: "number";
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  /** Step of the control; a file may hold any value in the range. */
  readonly step: number;
  readonly integer?: boolean;
}

export interface ChoiceField extends FieldBase {
  readonly kind: "choice";
  /** Value in the file and the words that the reader sees. */
  readonly choices: Readonly<Record<string, string>>;
}

export interface TextField extends FieldBase {
  readonly kind: "text";
  readonly maxLength: number;
  readonly multiline?: boolean;
}

export interface SwitchField extends FieldBase {
  readonly kind: "switch";
}

const number = (label: string, unit: string, min: number, max: number, step: number, help: string): NumberField => ({
  kind: "number", label, unit, min, max, step, help,
});
const count = (label: string, unit: string, min: number, max: number, help: string): NumberField => ({
  kind: "number", label, unit, min, max, step: 1, integer: true, help,
});
const choice = (label: string, choices: Readonly<Record<string, string>>, help: string): ChoiceField => ({
  kind: "choice", label, choices, help,
});
const text = (label: string, maxLength: number, help: string, multiline = false): TextField => ({
  kind: "text", label, maxLength, help, multiline,
});
const toggle = (label: string, help: string): SwitchField => ({kind: "switch", label, help});

export const FIELDS: Readonly<Record<string, Field>> = {
  "name": text("name of the design", 80, "Shown in the strip at the top of each page and on the record."),
  "setting": text("setting", 300, "The building and its place, in a sentence.", true),
  "brief": text("brief", 1200, "What the floor must do, in the reader's own words.", true),

  "bay.spanFt": number("span", "ft", 10, 150, 1, "Length of a deck member between the centers of its bearings."),
  "bay.beamSpanFt": number("beam span", "ft", 8, 80, 1, "Spacing of the columns along the edge: the span of the edge beam."),
  "bay.baysAlong": count("bays along the edge", "", 1, 30, "Number of beam spans in the building's length."),
  "bay.baysAcross": count("bays across", "", 1, 10, "Number of deck spans in the building's width."),
  "bay.floors": count("floors carried", "", 1, 12, "Floors of this kind above the lowest column, each counted for the column's live load."),

  "loads.rooms.*.name": text("room", 60, "What the room is called on the plan."),
  "loads.rooms.*.occupancy": text("occupancy", 60, "A row of the table of live loads."),
  "loads.rooms.*.own.livePsf": number("live load of your own", "psf", 10, 500, 5, "In place of the code's load for this use, which is the least that it may be."),
  "loads.rooms.*.own.reducible": toggle("may be reduced", "Whether large areas may take less of it, by the code's rule for this use. If not, it counts in full everywhere."),
  "loads.rooms.*.own.reason": text("why this load of your own", 300, "What asks for it: a list of equipment, the client's standard, room for later uses."),
  "loads.partitions": toggle("movable partitions", "Whether walls may be moved about on this floor."),
  "loads.layers.*.name": text("layer", 60, "What lies on or hangs from the deck: finish, ceiling, services."),
  "loads.layers.*.loadPsf": number("layer load", "psf", 0, 150, 0.5, "Weight of the layer per square foot of floor."),

  "deck.member": text("deck member", 20, "Designation of the member: width in feet, family, depth in inches, such as 10DT24 or 4HC8."),
  "deck.pattern": text("strand pattern", 12, "Strands, diameter in sixteenths of an inch, S straight or D depressed and the number of depression points: 108-S, 128-D1."),
  "deck.strandHeightEndIn": number("strand height at the ends", "in", 1, 60, 0.25, "Height of the strands' centroid above the soffit at the ends of the member."),
  "deck.strandHeightCenterIn": number("strand height at midspan", "in", 1, 60, 0.25, "Height of the strands' centroid above the soffit at midspan."),
  "deck.concrete": choice("concrete", {"normalweight": "normalweight", "sand-lightweight": "sand-lightweight"}, "Normalweight weighs 150 lb per cubic foot, sand-lightweight 115."),
  "deck.aggregate": choice("aggregate", {"siliceous": "siliceous", "carbonate": "carbonate"}, "Stone in normalweight concrete: siliceous (quartz, granite) holds back less heat in a fire than carbonate (limestone)."),
  "deck.strengthPsi": number("concrete strength", "psi", 3000, 12000, 500, "Specified compressive strength of the member at 28 days."),
  "deck.releaseStrengthPsi": number("release strength", "psi", 2500, 10000, 100, "Compressive strength of the member when the strands are cut."),
  "deck.toppingIn": number("topping thickness", "in", 0, 6, 0.25, "Least thickness of concrete cast on the deck on site; 0 means none."),
  "deck.toppingStrengthPsi": number("topping strength", "psi", 2500, 8000, 500, "Specified compressive strength of the topping at 28 days."),

  "criteria.tensionClass": choice("tension class", {"U": "U: uncracked", "T": "T: transition", "C": "C: cracked"}, "How much tension the soffit may see under full service load (ACI 318-19 24.5.2.1); a class C member may crack, and its sag and cracks are checked instead."),
  "criteria.sagLimit": choice("sag limit", {"L/360": "span/360, live load alone", "L/480": "span/480, after partitions that could be damaged", "L/240": "span/240, after other partitions"}, "How far the floor may move (ACI 318-19 Table 24.2.2). After partitions are in, creep counts as well as live load."),
  "criteria.keepCamber": toggle("keep a camber for years", "Whether the member must still arch after years under all that stays."),
  "criteria.walking": choice("people walking", {"quiet": "quiet rooms: people sit and read", "busy": "shops and halls: people move about", "outdoor": "open decks and bridges", "none": "not checked: cars or stores"}, "How still the floor must stay as people walk on it."),
  "criteria.fireHours": choice("fire rating", {"0": "none asked", "1": "1 hour", "1.5": "1 1/2 hours", "2": "2 hours", "3": "3 hours", "4": "4 hours"}, "Hours that the floor must hold back a fire below it, as the code asks for the building's kind and height."),
  "criteria.fireRestrained": toggle("restrained in a fire", "Whether the frame around the floor keeps it from growing as it heats; interior bays of heavy frames are often counted so."),
  "criteria.sustainedLiveShare": number("sustained share of the live load", "", 0, 1, 0.05, "The part of the live load that stays for years: nearly all in a store, little in a garage. Lasting compression, sag that creep adds to, and camber that must last go by it."),
  "criteria.humidityPercent": number("relative humidity", "%", 30, 100, 5, "Yearly average around the member; drier air shrinks concrete more."),

  "preferences.shallow": number("prefer shallow", "", 0, 10, 1, "How much each inch of depth counts against a candidate."),
  "preferences.fewStrands": number("prefer few strands", "", 0, 10, 1, "How much each pound of strand counts against a candidate."),
  "preferences.straight": number("prefer straight strand", "", 0, 10, 1, "How much depressing the strand counts against a candidate."),
  "preferences.light": number("prefer light", "", 0, 10, 1, "How much each pound of concrete counts against a candidate."),
  "preferences.wide": number("prefer few pieces", "", 0, 10, 1, "How much each extra piece to haul and lift counts against a candidate."),

  "consider.fieldToppedTees": toggle("tees topped on site", "Whether the search looks at double tees with a thin flange and a topping cast on site."),
  "consider.pretoppedTees": toggle("pretopped tees", "Whether the search looks at double tees cast with their full flange."),
  "consider.planks": toggle("planks and slabs", "Whether the search looks at hollow-core planks and flat slabs."),

  "edgeBeam.webWidthIn": number("web width", "in", 8, 24, 1, "Width of the beam above its ledge."),
  "edgeBeam.ledgeProjectionIn": number("ledge projection", "in", 4, 16, 0.5, "How far the ledge stands out to carry the deck."),
  "edgeBeam.ledgeDepthIn": number("ledge depth", "in", 4, 24, 0.5, "Thickness of the ledge."),
  "edgeBeam.upstandIn": number("upstand", "in", 0, 60, 1, "Height of the beam above the structural floor: the sill under the glass."),
  "edgeBeam.jointGapIn": number("joint at the beam's face", "in", 0.25, 3, 0.25, "Clear gap between the end of the deck and the face of the beam's web."),
  "edgeBeam.claddingPlf": number("cladding and glass", "plf", 0, 1500, 10, "Weight of wall and window that hangs on the beam."),
  "edgeBeam.strengthPsi": number("beam concrete strength", "psi", 3000, 12000, 500, "Specified compressive strength of the beam at 28 days."),
  "edgeBeam.barSize": choice("bottom bars", {"#5": "#5", "#6": "#6", "#7": "#7", "#8": "#8", "#9": "#9", "#10": "#10", "#11": "#11"}, "Size of the deformed bars that carry the beam's bending."),
  "edgeBeam.coverIn": number("clear cover", "in", 0.75, 4, 0.25, "Concrete between the stirrup and the outside."),

  "edgeBeam.kind": choice("edge beam", {"ledge": "L-beam: the deck on a ledge at its side", "pockets": "spandrel: stems in pockets of its web", "below": "rectangle: the deck on its top"}, "How the beam carries the deck, and so where its depth goes."),
  "edgeBeam.steel": choice("bending steel", {"bars": "deformed bars", "strands": "prestressing strands"}, "What carries the beam's bending."),
  "edgeBeam.strands": count("strands of the edge beam", "", 2, 60, "Half-inch strands in the beam's foot, where it is prestressed."),
  "edgeBeam.padWidthIn": number("pad width", "in", 2, 12, 0.5, "Width of the bearing pad under a stem, along the beam."),
  "edgeBeam.padLengthIn": number("pad length", "in", 2, 12, 0.5, "Length of the bearing pad under a stem, away from the beam's face."),
  "edgeBeam.padThicknessIn": number("pad thickness", "in", 0.25, 1, 0.125, "Thickness of the bearing pad."),

  "girder.kind": choice("interior girder", {"inverted tee": "inverted tee: the deck on its ledges", "rectangle": "rectangle: the deck on its top"}, "The beam between two bays: beside the deck or below it."),
  "girder.webWidthIn": number("girder web width", "in", 8, 36, 1, "Width of the girder above its ledges, or of a rectangular girder."),
  "girder.ledgeProjectionIn": number("girder ledge projection", "in", 4, 16, 0.5, "How far each ledge of the girder stands out."),
  "girder.ledgeDepthIn": number("girder ledge depth", "in", 6, 36, 1, "Thickness of the girder's foot, below the deck."),
  "girder.depthIn": number("girder depth", "in", 12, 72, 1, "Depth of a rectangular girder, all of it below the deck."),
  "girder.strands": count("strands of the girder", "", 2, 60, "Half-inch strands in the girder's foot."),
  "girder.strengthPsi": number("girder concrete strength", "psi", 4000, 12000, 500, "Specified compressive strength of the girder at 28 days."),
  "girder.releaseStrengthPsi": number("girder release strength", "psi", 2500, 10000, 100, "Compressive strength of the girder when its strands are cut."),

  "column.strengthPsi": number("column concrete strength", "psi", 4000, 12000, 500, "Specified compressive strength of the columns at 28 days."),
  "column.coverIn": number("column cover", "in", 1, 3, 0.25, "Concrete outside the ties."),
  "column.steelPercent": number("steel in the columns", "%", 1, 4, 0.25, "Area of the bars as a share of the column's; 1.5 to 2 is usual for a first size."),
  "column.sideIn": number("column side that the beams clear", "in", 12, 48, 2, "Beams are cut to end a joint short of columns this wide; the widest column of the floor decides."),
  "column.seatIn": number("seat off the column's face", "in", 2, 16, 0.5, "From the face of a column of that side to the middle of the beam's bearing on its corbel."),
  "column.sways": toggle("frame sways", "Whether the columns themselves must keep the floors from moving sideways; with walls or braces they need not."),
  "column.roofDeadPsf": number("dead load of the roof", "psf", 0, 200, 5, "Roof deck, insulation and what hangs from it."),
  "column.roofLivePsf": number("live load of the roof", "psf", 0, 150, 5, "20 psf on an ordinary roof; snow is not counted here."),

  "ground.allowablePsf": number("allowable pressure on the ground", "psf", 1000, 20000, 250, "What the ground may carry under service load, net of the footing's own weight; the soil report gives it."),
  "ground.footingStrengthPsi": number("footing concrete strength", "psi", 2500, 6000, 500, "Specified compressive strength of the footing."),

  "diaphragm.lateralPlf": number("lateral load on a floor", "plf", 0, 5000, 25, "Wind or earthquake on one floor, factored, per foot of its long side; from another calculation."),

  "story.frameIn": number("window frame", "in", 0, 8, 0.5, "Height of the frame below the head and above the sill of the glass."),

  "services.airCfmPerFt2": number("air flow", "cfm/ft2", 0, 4, 0.1, "Air that a square foot of floor needs: about 1 in offices and libraries."),
  "services.servedFt2": number("floor that the main serves", "ft2", 50, 200_000, 100, "Floor whose air comes through the main duct: all of it, a wing, or the share of one of several mains. It belongs to the rooms, and stays as it is when columns move."),
  "services.mainWidthIn": number("main duct width", "in", 6, 96, 2, "Outside width of the main duct, insulation included."),
  "services.mainDepthIn": number("main duct depth", "in", 4, 48, 1, "Outside depth of the main duct, insulation included."),
  "services.branchWidthIn": number("branch duct width", "in", 4, 72, 2, "Outside width of a branch between the stems."),
  "services.branchDepthIn": number("branch duct depth", "in", 4, 36, 1, "Outside depth of a branch between the stems."),
  "services.sprinklerIn": number("sprinkler zone", "in", 0, 12, 1, "Height kept for sprinkler pipes under ducts or stems."),
  "services.lightIn": number("light fittings", "in", 0, 12, 1, "Height of the lights above the ceiling."),

  "daylight.sides": choice("windows", {"one": "on one side", "two": "on two opposite sides"}, "Long edges that have windows; they best face north and south."),
  "daylight.revealIn": number("reveal", "in", 0, 36, 1, "From the wall's inner face out to the glass: the depth of the sill inside."),
  "daylight.frameShare": number("share of frames", "", 0, 0.6, 0.05, "Part of the window band that frames and mullions take."),
  "daylight.transmittanceShare": number("light through the glass", "", 0.1, 0.95, 0.05, "Visible transmittance of the glass, seen straight on."),
  "daylight.obstructionDeg": number("skyline outside", "deg", 0, 60, 1, "Angle of the buildings or trees opposite above the horizon, seen from the sill."),
  "daylight.floorShare": number("reflectance of the floor", "", 0, 0.9, 0.05, "Share of light that the floor gives back."),
  "daylight.wallShare": number("reflectance of the walls", "", 0, 0.9, 0.05, "Share of light that the walls give back."),
  "daylight.ceilingShare": number("reflectance of the ceiling", "", 0, 0.9, 0.05, "Share of light that the ceiling gives back."),

  "topping.followShare": number("surface follows the camber", "", 0, 1, 0.1, "Part of the deck's arch that the finished floor keeps: 0 is a level floor, 1 a topping of one thickness."),
  "topping.ageDays": number("age when set", "days", 7, 365, 1, "Age of the members when they are set and topped; young ones have less camber."),

  "story.floorToFloorFt": number("floor to floor", "ft", 8, 30, 0.25, "From one finished floor to the next."),
  "story.finishIn": number("floor finish", "in", 0, 8, 0.25, "Thickness of what lies on the structural floor."),
  "story.ceiling": choice("ceiling", {"flush": "flush with the ledge", "below": "below the ledge", "head": "at the window's head", "none": "none"}, "Where the ceiling hangs, if there is one."),
  "story.ceilingDropIn": number("ceiling below the ledge", "in", 0, 48, 1, "Room between the ledge and the ceiling's underside when the ceiling hangs below it."),

  "reasons.loads": text("why these loads", 1200, "Goes on the record.", true),
  "reasons.reduction": text("why this reduction", 1200, "Goes on the record.", true),
  "reasons.deck": text("why this deck", 1200, "Goes on the record.", true),
  "reasons.topping": text("why this topping", 1200, "Goes on the record.", true),
  "reasons.edgeBeam": text("why this edge beam", 1200, "Goes on the record.", true),
  "reasons.story": text("why this story", 1200, "Goes on the record.", true),
  "reasons.frame": text("why these girders and columns", 1200, "Goes on the record.", true),
  "reasons.light": text("why this light", 1200, "Goes on the record.", true),
};

/** Number of entries that each list of a design may hold. */
export const LISTS: Readonly<Record<string, {label: string; min: number; max: number}>> = {
  "loads.rooms": {label: "rooms", min: 1, max: 12},
  "loads.layers": {label: "layers", min: 0, max: 12},
};

/** Fields that a design file may leave out; their absence has a meaning of its own. */
export const OPTIONAL: ReadonlySet<string> = new Set(["deck.strandHeightEndIn", "deck.strandHeightCenterIn", "deck.dimensions", "loads.rooms.*.own"]);

/** Whether a path such as `loads.rooms.0.own` may be left out. */
export function isOptional(path: string): boolean {
  return OPTIONAL.has(patternOf(path));
}

/** The field at a path such as `loads.rooms.0.name`, or undefined. */
export function fieldAt(path: string): Field | undefined {
  const pattern = patternOf(path);
  return Object.hasOwn(FIELDS, pattern) ? FIELDS[pattern] : undefined;
}

/** A path with `*` for each index of a list. */
export function patternOf(path: string): string {
  return path.replace(/\.\d+(?=\.|$)/g, ".*");
}
