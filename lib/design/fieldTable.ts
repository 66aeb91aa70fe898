import type {Aggregate, ConcreteKind} from "../materials/concrete.js";
import {choice, count, group, lengths, list, longText, number, optional, since, text, toggle} from "./entries.js";

/** What an older file's roof would have on its deck, if it had one (weights of a code's tables of materials, from memory; common practice). */
const USUAL_ROOF_LAYERS = [
  {name: "membrane and cover board", loadPsf: 3, thicknessIn: 0.75, rValue: 0.5},
  {name: "rigid insulation", loadPsf: 1.5, thicknessIn: 5.5, rValue: 30},
  {name: "services and ceiling below", loadPsf: 8, thicknessIn: 0, rValue: 0},
];

/**
 * Every field of a design: the only place where one is written down.
 *
 * The type `Design` is what this table says, and validation, the words of an error message, the controls on the pages,
 * the inputs on the record and the migration of older files follow from it. A field without `since` is in every version
 * of the file; `since(6, value, ...)` came with version 6, and an older file is taken to have meant the value. Comments
 * above an entry show where code reads `design.deck.dimensions`.
 */
export const DESIGN_FIELDS = {
  name: text("name of the design", 80, "Shown in the strip at the top of each page and on the record."),
  setting: longText("setting", 300, "The building and where it stands, in a sentence."),
  brief: longText("brief", 1200, "What the floor must do, in the reader's own words."),
  author: since(6, "", text("author", 80, "Who made this design, as it should appear on the record.")),
  firm: since(6, "", text("firm or class", 80, "For whom the author made it: a firm, a class, a studio.")),

  bay: group("Grid", {
    spanFt: number("span", "ft", 10, 150, 1, "Length of a deck member between the centers of its bearings."),
    beamSpanFt: number("beam span", "ft", 8, 80, 1, "Spacing of the columns along the edge: the span of the edge beam."),
    baysAlong: count("bays along the edge", "", 1, 30, "Number of beam spans in the building's length."),
    baysAcross: count("bays across", "", 1, 10, "Number of deck spans in the building's width."),
    floors: count("floors carried", "", 1, 12, "Floors of this kind above the lowest column; each counts toward the column's live load."),
  }),

  loads: group("Loads", {
    rooms: list("rooms", 1, 12, {
      name: text("room", 60, "What the room is called on the plan."),
      occupancy: text("occupancy", 60, "A row of the table of live loads."),
      /** In place of the table's live load for this use, where the reader enters one. */
      own: optional(group("live load of your own", {
        livePsf: number("live load of your own", "psf", 10, 500, 5, "In place of the code's load for this use, which is the minimum."),
        /** Whether the code's reduction may be used on it; if not, it counts in full on every element. */
        reducible: toggle("may be reduced", "Whether it may be reduced on large areas, by the code's rule for this use. If not, it counts in full everywhere."),
        reason: text("why this load of your own", 300, "What calls for it: an equipment list, the client's standard, allowance for later uses."),
      })),
    }),
    partitions: toggle("movable partitions", "Whether partitions may be moved on this floor."),
    layers: list("layers", 0, 12, {
      name: text("layer", 60, "What lies on or hangs from the deck: finish, ceiling, services."),
      loadPsf: number("layer load", "psf", 0, 150, 0.5, "Weight of the layer per square foot of floor."),
    }),
  }),

  deck: group("Deck", {
    member: text("deck member", 20, "Designation of the member: width in feet, family, depth in inches, such as 10DT24 or 4HC8."),
    /** Changed dimensions of the member's cross-section by name, in. */
    dimensions: optional(lengths("changed dimensions", 0, 240)),
    pattern: text("strand pattern", 12, "Strands, diameter in sixteenths of an inch, S straight or D depressed and the number of depression points: 108-S, 128-D1."),
    strandHeightEndIn: optional(number("strand height at the ends", "in", 1, 60, 0.25, "Height of the strands' centroid above the soffit at the ends of the member.")),
    strandHeightCenterIn: optional(number("strand height at midspan", "in", 1, 60, 0.25, "Height of the strands' centroid above the soffit at midspan.")),
    concrete: choice("concrete", {"normalweight": "normalweight", "sand-lightweight": "sand-lightweight"} satisfies Record<ConcreteKind, string>, "Normalweight weighs 150 lb per cubic foot, sand-lightweight 115."),
    aggregate: since(2, "siliceous", choice("aggregate", {"siliceous": "siliceous", "carbonate": "carbonate"} satisfies Record<Aggregate, string>, "Aggregate in normalweight concrete: siliceous (quartz, granite) holds back less heat in a fire than carbonate (limestone).")),
    strengthPsi: number("concrete strength", "psi", 3000, 12000, 500, "Specified compressive strength of the member at 28 days."),
    releaseStrengthPsi: number("release strength", "psi", 2500, 10000, 100, "Compressive strength of the member when the strands are released."),
    toppingIn: number("topping thickness", "in", 0, 6, 0.25, "Minimum thickness of the concrete cast on the deck in place; 0 means none."),
    toppingStrengthPsi: number("topping strength", "psi", 2500, 8000, 500, "Specified compressive strength of the topping at 28 days."),
  }),

  criteria: group("Criteria", {
    tensionClass: choice("tension class", {"U": "U: uncracked", "T": "T: transition", "C": "C: cracked"}, "How much tension is allowed in the soffit under full service load (ACI 318-19 24.5.2.1); a class C member may crack, and its deflection and cracks are checked instead."),
    sagLimit: since(2, "L/360", choice("sag limit", {"L/360": "span/360, live load alone", "L/480": "span/480, after partitions that could be damaged", "L/240": "span/240, after other partitions"}, "How far the floor may deflect (ACI 318-19 Table 24.2.2). After partitions are in, creep counts as well as live load.")),
    keepCamber: since(2, false, toggle("keep some camber long term", "Whether the member must still arch in the long term under sustained load.")),
    walking: since(2, "none", choice("people walking", {"quiet": "quiet rooms: people sit and read", "busy": "shops and halls: people move about", "outdoor": "open decks and bridges", "none": "not checked: cars or storage"}, "How still the floor must stay as people walk on it.")),
    fireHours: since(2, "0", choice("fire rating", {"0": "none required", "1": "1 hour", "1.5": "1 1/2 hours", "2": "2 hours", "3": "3 hours", "4": "4 hours"}, "Hours that the floor must hold back a fire below it, as the code requires for the building's type and height.")),
    fireRestrained: since(2, false, toggle("restrained in a fire", "Whether the frame around the floor keeps it from expanding as it heats; interior bays of heavy frames often count as restrained.")),
    sustainedLiveShare: number("sustained share of the live load", "", 0, 1, 0.05, "The share of the live load that stays for years: nearly all in a storage room, little in a garage. It sets sustained compression, long-term deflection and lasting camber."),
    humidityPercent: number("relative humidity", "%", 30, 100, 5, "Yearly average around the member; concrete shrinks more in drier air."),
  }),

  edgeBeam: group("Edge beam", {
    webWidthIn: number("web width", "in", 8, 24, 1, "Width of the beam above its ledge."),
    ledgeProjectionIn: number("ledge projection", "in", 4, 16, 0.5, "How far the ledge projects to carry the deck."),
    ledgeDepthIn: number("ledge depth", "in", 4, 24, 0.5, "Thickness of the ledge."),
    upstandIn: number("upstand", "in", 0, 60, 1, "Height of the beam above the structural floor: the sill under the glass."),
    jointGapIn: number("joint at the beam's face", "in", 0.25, 3, 0.25, "Clear gap between the end of the deck and the face of the beam's web."),
    claddingPlf: number("cladding and glass", "plf", 0, 1500, 10, "Weight of wall and window hung from the beam."),
    strengthPsi: number("beam concrete strength", "psi", 3000, 12000, 500, "Specified compressive strength of the beam at 28 days."),
    barSize: choice("bottom bars", {"#5": "#5", "#6": "#6", "#7": "#7", "#8": "#8", "#9": "#9", "#10": "#10", "#11": "#11"}, "Size of the deformed bars that carry the beam's bending."),
    coverIn: number("clear cover", "in", 0.75, 4, 0.25, "Concrete between the stirrup and the surface."),
    kind: since(3, "ledge", choice("edge beam", {"ledge": "L-beam: deck on a ledge along its side", "pockets": "spandrel: stems in pockets in its web", "below": "rectangle: deck on top"}, "How the beam carries the deck, and thus where its depth goes.")),
    steel: since(3, "bars", choice("bending steel", {"bars": "deformed bars", "strands": "prestressing strands"}, "What carries the beam's bending.")),
    /** Number of 1/2 in strands, where the beam has strands. */
    strands: since(3, 12, count("strands of the edge beam", "", 2, 60, "Half-inch strands in the bottom of the beam, where it is prestressed.")),
    padWidthIn: since(3, 4, number("pad width", "in", 2, 12, 0.5, "Width of the bearing pad under a stem, along the beam.")),
    padLengthIn: since(3, 4, number("pad length", "in", 2, 12, 0.5, "Length of the bearing pad under a stem, away from the beam's face.")),
    padThicknessIn: since(3, 0.375, number("pad thickness", "in", 0.25, 1, 0.125, "Thickness of the bearing pad.")),
  }),

  /** The beam between two bays. */
  girder: group("Interior girder", {
    kind: since(3, "inverted tee", choice("interior girder", {"inverted tee": "inverted tee: deck on its ledges", "rectangle": "rectangle: deck on top"}, "The beam between two bays: beside the deck or below it.")),
    webWidthIn: since(3, 16, number("girder web width", "in", 8, 36, 1, "Width of the girder above its ledges, or of a rectangular girder.")),
    ledgeProjectionIn: since(3, 8, number("girder ledge projection", "in", 4, 16, 0.5, "How far each ledge of the girder projects.")),
    ledgeDepthIn: since(3, 12, number("girder ledge depth", "in", 6, 36, 1, "Thickness of the girder's foot, below the deck.")),
    /** Depth of a rectangular girder, which lies wholly below the deck, in. */
    depthIn: since(3, 32, number("girder depth", "in", 12, 72, 1, "Depth of a rectangular girder, all of it below the deck.")),
    strands: since(3, 16, count("strands of the girder", "", 2, 60, "Half-inch strands in the bottom of the girder.")),
    strengthPsi: since(3, 6000, number("girder concrete strength", "psi", 4000, 12000, 500, "Specified compressive strength of the girder at 28 days.")),
    releaseStrengthPsi: since(3, 4000, number("girder release strength", "psi", 2500, 10000, 100, "Compressive strength of the girder at release.")),
  }),

  /** What closes the building on top. Columns count either a roof of its own or the two loads among their own fields. */
  roof: group("Roof", {
    given: since(7, "loads", choice("roof", {"loads": "given by its two loads", "deck": "a deck of its own"}, "Whether the roof is only a dead and a live load on the columns, or a level of its own with deck, layers and drainage.")),
    member: since(7, ({deck}) => of(deck, "member"), text("roof member", 20, "Designation of the roof's deck member, such as 10DT24 or 4HC8; it lies on the same bays as the floors'.")),
    pattern: since(7, ({deck}) => of(deck, "pattern"), text("roof strand pattern", 12, "Strands of the roof's member, as the deck's: 68-S, 108-D1.")),
    strandHeightEndIn: optional(number("roof strand height at the ends", "in", 1, 60, 0.25, "Height of the strands' centroid above the soffit at the ends of the roof's member.")),
    strandHeightCenterIn: optional(number("roof strand height at midspan", "in", 1, 60, 0.25, "Height of the strands' centroid above the soffit at midspan of the roof's member.")),
    toppingIn: since(7, ({deck}) => of(deck, "toppingIn"), number("roof topping", "in", 0, 6, 0.25, "Concrete cast on the roof's deck in one thickness; 0 means none.")),
    /** The concrete of the floor's member where left out; likewise the strengths. */
    concrete: optional(choice("roof concrete", {"normalweight": "normalweight", "sand-lightweight": "sand-lightweight"} satisfies Record<ConcreteKind, string>, "Concrete of the roof's member; the floor's if nothing is chosen.")),
    strengthPsi: optional(number("roof concrete strength", "psi", 3000, 12000, 500, "Specified strength of the roof's member at 28 days; the floor's if nothing is given.")),
    releaseStrengthPsi: optional(number("roof release strength", "psi", 2500, 10000, 100, "Strength of the roof's member at release; the floor's if nothing is given, but no more than its own at 28 days.")),
    /** Top down. */
    layers: since(7, USUAL_ROOF_LAYERS, list("layers of the roof", 0, 12, {
      name: text("layer of the roof", 60, "What lies on or hangs from the roof's deck: membrane, insulation, ballast, ceiling, services."),
      loadPsf: number("weight of the layer", "psf", 0, 150, 0.1, "Weight of the layer per square foot of roof."),
      thicknessIn: number("thickness of the layer", "in", 0, 24, 0.25, "Thickness of the layer on the deck, at its thinnest; 0 for what hangs below."),
      rValue: number("resistance of the layer (R-value)", "", 0, 100, 0.5, "Resistance to heat of the layer, ft2 h F/Btu: about 5.6 an inch in polyisocyanurate boards, next to none in a membrane."),
    })),
    drainage: since(7, "taper", choice("fall by", {"bearing": "stepped bearings: the deck itself falls", "taper": "tapered insulation on a level deck", "camber": "the deck's camber alone"}, "What makes the water run to the drains.")),
    slopeInPerFt: since(7, 0.25, number("fall of the roof", "in/ft", 0, 2, 0.0625, "Fall along the deck's span toward the drains; 1/4 in per ft is the least for most membranes.")),
    drainsAt: since(7, "inside", choice("drains", {"inside": "inside: water runs away from the long edges", "edges": "along the long edges"}, "Where the water leaves the roof.")),
    drainSpacingFt: since(7, 30, number("spacing of drains", "ft", 5, 300, 5, "Distance between drains along the building.")),
    /** Of what makes the taper; counts only where the fall is by taper. */
    taperPcf: since(7, 2, number("weight of the taper", "pcf", 1, 150, 1, "Unit weight of what makes the fall: about 2 of insulation boards, 30 of insulating concrete.")),
    sagLimit: since(7, "L/180", choice("sag limit of the roof", {"L/180": "span/180, roof load alone: nothing is fixed to it that could be damaged", "L/240": "span/240, after ceilings or partitions that tolerate it", "L/480": "span/480, after ceilings or partitions that could be damaged"}, "How far the roof may deflect (ACI 318-19 Table 24.2.2).")),
    fireHours: since(7, ({criteria}) => of(criteria, "fireHours") as "0", choice("fire rating of the roof", {"0": "none required", "1": "1 hour", "1.5": "1 1/2 hours", "2": "2 hours", "3": "3 hours", "4": "4 hours"}, "Hours required of the roof; codes often ask less of it than of the floors.")),
    /** Of the edge beam at the roof; 0 where another parapet stands on it. */
    upstandIn: since(7, 0, number("upstand of the roof's edge beam", "in", 0, 60, 1, "Height of the roof's edge beam above the structural roof; 0 where walls or a parapet are built on the beam.")),
  }),

  column: group("Columns", {
    strengthPsi: since(3, 5000, number("column concrete strength", "psi", 4000, 12000, 500, "Specified compressive strength of the columns at 28 days.")),
    coverIn: since(3, 1.5, number("column cover", "in", 1, 3, 0.25, "Concrete outside the ties.")),
    steelPercent: since(3, 1.5, number("steel in the columns", "%", 1, 4, 0.25, "Area of the bars as a share of the column's; 1.5 to 2 is usual for a first size.")),
    /** Side of the columns that the beams' ends are cut for, in. */
    sideIn: since(4, 18, number("column side that the beams clear", "in", 12, 48, 2, "Beams are cut to end a joint short of columns this wide; the widest column on the floor decides.")),
    /** From the face of such a column to the beam's reaction on its corbel, in. */
    seatIn: since(3, 4, number("seat off the column's face", "in", 2, 16, 0.5, "From the face of such a column to the middle of the beam's bearing on its corbel.")),
    sways: since(3, false, toggle("frame sways", "Whether the columns themselves must keep the floors from swaying; with walls or braces they need not.")),
    roofDeadPsf: since(3, 80, number("dead load of the roof", "psf", 0, 200, 5, "Roof deck, insulation and what hangs from it.")),
    roofLivePsf: since(3, 20, number("live load of the roof", "psf", 0, 150, 5, "20 psf on an ordinary roof; snow is not counted here.")),
  }),

  /** What lies on the roof by the code: its live load, snow and rain. A roof given by its two loads takes its one number instead. */
  snow: group("Roof live load, snow and rain", {
    use: since(7, "ordinary", choice("use of the roof", {"ordinary": "nobody but for its upkeep", "occupied": "people or cars use it"}, "An ordinary roof has a roof live load of 20 psf for upkeep; one that is used has the live load of that use.")),
    /** What an occupied roof is used for: a row of the table of live loads. */
    occupancy: since(7, "roof-assembly", text("use of an occupied roof", 60, "A row of the table of live loads.")),
    groundPsf: since(7, 0, number("ground snow load", "psf", 0, 300, 1, "Snow on the ground that the code's map or the local authority gives for the place (ASCE 7-16 Figure 7.2-1); it is not guessed here, and 0 is right only where the map says so.")),
    terrain: since(7, "B", choice("terrain around", {"B": "B: town, suburb or woods", "C": "C: open country with scattered obstacles", "D": "D: flat and bare, beside open water", "mountain": "windswept mountain above the tree line", "alaska": "Alaska, no trees within two miles"}, "How rough the surroundings are (ASCE 7-16 26.7); over smooth ground the wind takes more snow from the roof.")),
    exposure: since(7, "partly", choice("exposure of the roof", {"fully": "fully exposed: no shelter from higher ground, buildings or trees", "partly": "partially exposed: all other roofs", "sheltered": "sheltered: conifers or buildings close around"}, "How well the wind reaches the roof (ASCE 7-16 Table 7.3-1); a roof with parapets or equipment higher than its snow is not fully exposed.")),
    thermal: since(7, "heated", choice("warmth below the roof", {"heated": "heated", "cool": "kept just above freezing, or a ventilated roof over much insulation", "unheated": "unheated or open", "frozen": "kept below freezing"}, "A cold roof keeps its snow (ASCE 7-16 Table 7.3-2).")),
    risk: since(7, "II", choice("risk category", {"I": "I: hardly any people, as barns", "II": "II: ordinary buildings", "III": "III: many people, as large schools", "IV": "IV: needed after a disaster, as hospitals"}, "How much depends on the building (ASCE 7-16 Table 1.5-1); it sets the importance factor for snow.")),
    /** Height of a higher part beside the roof above the roof's surface, ft; 0 for none. */
    higherFt: since(7, 0, number("higher part beside the roof", "ft", 0, 100, 0.5, "How far a higher part or building beside the roof rises above it; 0 means none. Snow blows off it and drifts against it.")),
    higherSide: since(7, "long", choice("side of the higher part", {"long": "along a long side, where deck members end", "short": "along a short side, beside a deck member"}, "Along which side of the roof the higher part stands.")),
    higherLengthFt: since(7, 60, number("length of the higher roof", "ft", 1, 1000, 5, "How far the higher roof reaches away from this one: the fetch from which the wind brings its snow.")),
    higherApartFt: since(7, 0, number("gap to the higher part", "ft", 0, 100, 0.5, "Clear distance between this roof and the higher part; 0 where it adjoins.")),
    /** Static head ds: depth of water up to the inlet of the secondary drains, the primary ones blocked, in. */
    rainStaticIn: since(7, 2, number("depth up to the overflow", "in", 0, 24, 0.25, "Depth of water on the roof at its drain, up to the inlet of the overflow, when the primary drains are blocked.")),
    /** Hydraulic head dh: depth of water above that inlet at its design flow, in. */
    rainHydraulicIn: since(7, 1, number("water above the overflow", "in", 0, 12, 0.25, "Depth of water above the overflow's inlet at the flow that it is designed for; the drainage design gives it.")),
  }),

  ground: group("Ground", {
    allowablePsf: since(3, 4000, number("allowable soil pressure", "psf", 1000, 20000, 250, "What the soil may carry under service load, net of the footing's own weight; the soil report gives it.")),
    footingStrengthPsi: since(3, 3000, number("footing concrete strength", "psi", 2500, 6000, 500, "Specified compressive strength of the footing.")),
  }),

  diaphragm: group("Diaphragm", {
    /** Factored lateral load on a floor per foot of its long side, plf. */
    lateralPlf: since(3, 400, number("lateral load on a floor", "plf", 0, 5000, 25, "Wind or earthquake on one floor, factored, per foot of its long side; from another calculation.")),
  }),

  /** What closes the short sides, which carry no deck, and what stands on the roof's edge. */
  walls: group("Walls", {
    shortSide: since(7, "not counted", choice("short sides", {"not counted": "not counted", "solid panel": "solid precast wall panels", "insulated panel": "insulated precast wall panels", "spandrel": "spandrels that carry no deck, and glass", "cladding": "light cladding past the columns"}, "What closes the two short sides of the building. Their area and weight count on columns and footings, unless they are not counted.")),
    panelSupport: since(7, "footing", choice("how the panels are carried", {"footing": "upright, on a footing of their own", "columns": "lying, from column to column"}, "Upright panels stand on a strip footing, and the floors hold them sideways; lying panels reach from column to column, which carry them.")),
    panelThicknessIn: since(7, 8, number("panel thickness", "in", 4, 16, 0.5, "Thickness of a solid wall panel.")),
    outerWytheIn: since(7, 3, number("outer wythe", "in", 2, 6, 0.5, "Concrete outside the insulation of an insulated panel.")),
    insulationIn: since(7, 3, number("insulation in the panel", "in", 0.5, 8, 0.5, "Rigid insulation between the two wythes of a panel.")),
    innerWytheIn: since(7, 6, number("inner wythe", "in", 2, 12, 0.5, "Concrete inside the insulation, which carries the panel by itself.")),
    panelWidthFt: since(7, 10, number("panel width", "ft", 4, 16, 0.5, "Width of an upright panel, or the greatest height of a lying one: the side that lies across the truck.")),
    panelStories: since(7, 1, count("stories in one panel", "", 1, 6, "Stories that an upright panel is high.")),
    jointIn: since(7, 0.75, number("joint between panels", "in", 0.25, 2, 0.25, "Open joint between one piece of wall and the next, which sealant closes.")),
    glassShare: since(7, 0, number("glass in the short sides", "", 0, 0.8, 0.05, "Share of windows in panels and cladding of the short sides, by area.")),
    spandrelDepthIn: since(7, 48, number("depth of the end spandrel", "in", 12, 144, 1, "Whole depth of the spandrel on the short sides, which carries no deck.")),
    spandrelThicknessIn: since(7, 8, number("thickness of the end spandrel", "in", 4, 24, 0.5, "Thickness of the spandrel on the short sides.")),
    spandrelUpstandIn: since(7, 30, number("end spandrel above the floor", "in", 0, 72, 1, "How far the spandrel on the short sides stands above the structural floor: sill, or guard of a parking deck.")),
    spandrelPlace: since(7, "between", choice("place of the end spandrel", {"between": "between the columns", "outside": "past the columns' outer faces"}, "Whether the spandrel on the short sides ends at each column or passes outside them, with its joints at the columns' middles.")),
    claddingPsf: since(7, 15, number("weight of light cladding", "psf", 0, 80, 1, "Weight of a square foot of light wall with its framing: some 15 psf for metal panels on studs, 40 with brick.")),
    strengthPsi: since(7, 5000, number("wall concrete strength", "psi", 3000, 10000, 500, "Specified compressive strength of panels and spandrels on the short sides.")),
    corner: since(7, "long", choice("corner", {"long": "long side runs through", "short": "short side runs through", "miter": "mitered"}, "Which side's parapet reaches the corner of the roof where two meet. Panels on the short sides always run through, and below the roof a column stands in the corner.")),
    teeEnds: since(7, "not counted", choice("in front of the deck's ends", {"not counted": "not counted", "cladding": "light cladding down to the beam", "concrete": "a precast strip down to the beam"}, "What closes the ends of the deck along the long sides where the edge beam lies below it.")),
    teeEndStripIn: since(7, 4, number("thickness of that strip", "in", 2, 12, 0.5, "Thickness of the precast strip in front of the deck's ends.")),
    endFill: since(7, "piece", choice("where whole pieces do not cover the length", {"piece": "a last piece cut narrower", "strip": "a strip cast in place"}, "What fills the deck where the building's length is no whole number of pieces.")),
    /** Top of the wall above the roof's finished surface, in; 0 for none. */
    parapetIn: since(7, 0, number("parapet", "in", 0, 96, 1, "Height of the wall's top above the roof's surface, cap included; 0 means none. Where the roof's edge beam stands above the roof, that is the parapet's lower part.")),
    parapetThicknessIn: since(7, 6, number("parapet thickness", "in", 3, 16, 0.5, "Thickness of the concrete parapet along the long sides; over the short sides their own wall rises.")),
    capIn: since(7, 0, number("cap of the parapet", "in", 0, 12, 0.5, "Thickness of a precast cap on the parapet; 0 for a metal one, whose weight is neglected.")),
  }),

  story: group("Story", {
    floorToFloorFt: number("floor to floor", "ft", 8, 30, 0.25, "From one finished floor to the next."),
    finishIn: number("floor finish", "in", 0, 8, 0.25, "Thickness of what lies on the structural floor."),
    ceiling: choice("ceiling", {"flush": "flush with the ledge", "below": "below the ledge", "head": "at the window's head", "none": "none"}, "Where the ceiling hangs, if there is one."),
    ceilingDropIn: number("ceiling below the ledge", "in", 0, 48, 1, "Space between the ledge and the underside of the ceiling when the ceiling hangs below it."),
    frameIn: since(3, 2, number("window frame", "in", 0, 8, 0.5, "Height of the frame below the head and above the sill of the glass.")),
  }),

  services: group("Services", {
    airCfmPerFt2: since(3, 1, number("air flow", "cfm/ft2", 0, 4, 0.1, "Supply air per square foot of floor: about 1 in offices and libraries.")),
    /** Floor whose air comes through the main duct, ft2. */
    servedFt2: since(4, bayFt2, number("floor that the main serves", "ft2", 50, 200_000, 100, "Floor area whose air comes through the main duct: all of it, a wing, or the share of one of several mains. It depends on the rooms, and stays as it is when columns move.")),
    mainWidthIn: since(3, 30, number("main duct width", "in", 6, 96, 2, "Outside width of the main duct, insulation included.")),
    mainDepthIn: since(3, 14, number("main duct depth", "in", 4, 48, 1, "Outside depth of the main duct, insulation included.")),
    branchWidthIn: since(3, 14, number("branch duct width", "in", 4, 72, 2, "Outside width of a branch between the stems.")),
    branchDepthIn: since(3, 10, number("branch duct depth", "in", 4, 36, 1, "Outside depth of a branch between the stems.")),
    sprinklerIn: since(3, 4, number("sprinkler zone", "in", 0, 12, 1, "Height kept for sprinkler pipes under ducts or stems.")),
    lightIn: since(3, 4, number("light fittings", "in", 0, 12, 1, "Height of the lights above the ceiling.")),
  }),

  /** Supply and return: where the ducts run, and which spaces between stems they take. */
  air: group("Air", {
    /** Older files: anywhere below the deck where main, pipes and lights have room under one another, else along the ledge. */
    place: since(7, "fit", choice("where the main runs", {"fit": "wherever it fits", "ledge": "along the ledge", "middle": "down the middle", "across": "at a distance across"}, "Line of the main duct along the building: beside the edge beam's ledge, down the middle, or at a distance from the first edge. Wherever it fits: anywhere below the deck if pipes and lights pass under it, else along the ledge.")),
    acrossFt: since(7, 10, number("main from the first edge", "ft", 1, 1500, 1, "From the column line of the first long side to the middle of the main and what runs beside it.")),
    run: since(7, "plenum", choice("how the main runs", {"plenum": "in the plenum", "strip": "in a lowered strip of ceiling", "box": "boxed below the ceiling"}, "Above the ceiling of the whole floor; above a strip of ceiling that hangs lower, with its lights; or in a box around the ducts alone.")),
    casing: since(7, "derived", choice("box or strip", {"derived": "as large as the ducts need", "stated": "of a width and drop of its own"}, "Whether box or strip follow from the ducts or have the width and drop that the architect wants.")),
    casingWidthIn: since(7, 48, number("width of box or strip", "in", 8, 240, 2, "Outside width of the box or strip.")),
    casingDropIn: since(7, 12, number("drop of box or strip", "in", 0, 60, 1, "How far it hangs below the ceiling, or below the deck where there is no ceiling.")),
    /** Rows of bays across the building that one main serves. */
    rows: since(7, rowsOfMain, count("rows of bays that a main serves", "", 1, 10, "Spans of the deck side by side whose air one main brings; its feeders then cross the beams between them.")),
    serves: since(7, "floor", choice("what a main serves", {"floor": "a floor area", "bays": "a number of bays"}, "The floor that a main serves: an area as entered, or whole bays along the building, in each of its rows.")),
    baysServed: since(7, 2, count("bays along that a main serves", "", 1, 30, "Column spacings along the building whose air one main brings, in each of its rows.")),
    riser: since(7, "end", choice("riser", {"end": "one, at an end of the main", "middle": "one, at its middle", "ends": "two, one at each end"}, "Where the air comes up or down. Two risers, or one at the middle, halve the air in the main.")),
    /** A feeder in every n-th space between stems; 2 is one in each tee, between its two stems. */
    supplyEvery: since(7, 2, count("a feeder in every n-th space between stems", "", 1, 8, "2 puts one between the two stems of each tee and leaves the spaces over the joints free; 1 takes every space.")),
    way: since(7, "none", choice("return", {"none": "not shown", "trunk": "in a duct beside the supply", "stems": "between stems to a duct beside the supply", "plenum": "through the plenum", "rooms": "through the rooms"}, "How the air goes back to the risers.")),
    /** Of the spaces without a feeder every n-th; 0 is none. */
    returnEvery: since(7, 1, count("a return in every n-th free space", "", 0, 8, "Of the spaces between stems that have no feeder; 0 takes none, and the return duct has grilles of its own.")),
    exhaustPercent: since(7, 0, number("exhausted elsewhere", "%", 0, 100, 5, "Share of the supply air that leaves through toilets and kitchens and does not come back.")),
    wallsCrossed: since(7, 0, count("walls in the return's way", "", 0, 20, "Walls that the air must pass on its way back: of rooms, or those built up to the deck where it goes through the plenum.")),
    /** Friction for which ducts are sized; 0 asks for none, and velocities alone are checked. */
    frictionInPer100Ft: since(7, 0, number("friction rate", "in/100 ft", 0, 0.6, 0.01, "Loss of pressure in 100 ft of straight duct, inches of water, at which ducts are sized: 0.08 to 0.1 is usual. 0 checks velocities alone.")),
  }),

  daylight: group("Daylight", {
    sides: since(3, "two", choice("windows", {"one": "on one side", "two": "on two opposite sides"}, "Long edges that have windows; ideally they face north and south.")),
    revealIn: since(3, 6, number("reveal", "in", 0, 36, 1, "From the wall's inner face out to the glass: the depth of the sill inside.")),
    frameShare: since(3, 0.15, number("share of frames", "", 0, 0.6, 0.05, "Share of the window band taken by frames and mullions.")),
    transmittanceShare: since(3, 0.75, number("light through the glass", "", 0.1, 0.95, 0.05, "Visible transmittance of the glass, seen straight on.")),
    obstructionDeg: since(3, 10, number("skyline outside", "deg", 0, 60, 1, "Angle above the horizon of the buildings or trees opposite, seen from the sill.")),
    floorShare: since(3, 0.2, number("reflectance of the floor", "", 0, 0.9, 0.05, "Share of light that the floor reflects.")),
    wallShare: since(3, 0.5, number("reflectance of the walls", "", 0, 0.9, 0.05, "Share of light that the walls reflect.")),
    ceilingShare: since(3, 0.7, number("reflectance of the ceiling", "", 0, 0.9, 0.05, "Share of light that the ceiling reflects.")),
  }),

  /** Cars on these floors or beneath them. */
  parking: group("Parking", {
    place: since(7, "none", choice("cars park", {"none": "nowhere in this building", "below": "on the ground below these floors", "on": "on these floors", "both": "on the ground and on these floors"}, "Where cars stand in this building, if anywhere: each level of cars is laid out alike.")),
    /** Direction of the rows of stalls and of their aisle. */
    rows: since(7, "along", choice("rows of stalls", {"along": "along the edge", "across": "across, along the deck's span"}, "Along the edge the columns stand at the stalls' heads; across, they stand between stalls or in the aisle.")),
    /** Bays that one module takes in the direction across its rows. */
    baysPerModule: since(7, 1, count("bays to a module", "", 1, 4, "A module is an aisle with a row of stalls on each side; this many bays, counted across the rows, hold one.")),
    angle: since(7, "90 two-way", choice("stalls and traffic", {"90 two-way": "at right angles, two-way aisle", "90 one-way": "at right angles, one-way aisle", "75 one-way": "at 75 degrees, one-way aisle", "60 one-way": "at 60 degrees, one-way aisle"}, "Angled stalls are easier to enter and want a narrower aisle, but each takes more of its row.")),
    stallWidthIn: since(7, 108, number("stall width", "in", 90, 144, 3, "Square to the car: 8'-6\" where cars stay all day, 9'-0\" where they come and go (common practice).")),
    stallLengthIn: since(7, 216, number("stall length", "in", 180, 264, 6, "Along the car: 18'-0\" for all but the longest pickups (common practice).")),
    aisleIn: since(7, 288, number("aisle width", "in", 132, 360, 6, "Least clear width between the rows: 24'-0\" at right angles, 22'-0\" at 75 degrees, 18'-0\" at 60 (common practice).")),
    /** From the wall's face, or from the line between two bays, to the stalls' heads, in. */
    setbackIn: since(7, 0, number("heads of stalls set back", "in", 0, 60, 1, "From the wall's face or the column line to the head of a stall, where a wheel stop or bumper holds the car. Set back past the columns, a row runs on without a gap.")),
    doorIn: since(7, 12, number("door clearance", "in", 0, 36, 1, "Added to a column or wall that stands beside a car's doors (common practice).")),
    /** Length at each end of a stall where a car has no doors, in. */
    doorFreeIn: since(7, 48, number("free of doors at each end", "in", 0, 90, 6, "Length at each end of a stall, along the car, beside which a column hinders no door: bumper, hood or trunk (common practice).")),
    endFt: since(7, 24, number("kept free at each end", "ft", 0, 80, 1, "For turning from one aisle into the next at each end of the rows: about 24 ft for two-way traffic (common practice); 0 where an aisle ends dead.")),
    clearIn: since(7, 84, number("clear height for cars", "in", 84, 180, 1, "7'-0\" is the code's minimum for cars and those who walk to them (IBC 2021 406.2.2); 7'-4\" lets tall cars pass with a hand's breadth.")),
    vans: since(7, "inside", choice("accessible vans park", {"inside": "in this building", "outside": "outside, in the open"}, "Their stalls and all of their way there need 8'-2\" of height (ADA 2010 Standards 502.5); all of them may stand in one place (208.3.1).")),
    signDropIn: since(7, 6, number("signs below the deck", "in", 0, 36, 1, "How far signs and lights over the aisle hang below the deck's underside.")),
    drainInPerFt: since(7, 0.1875, number("slope for drainage", "in/ft", 0, 0.5, 0.0625, "Fall of the parked floor toward its drains: 1/8 to 1/4 in per foot (common practice); accessible stalls may not slope more than 1:48, which is 1/4 (ADA 2010 Standards 502.4).")),
    ramp: since(7, "none", choice("ramp", {"none": "none: cars drive in level", "beside": "beside the building", "within": "in place of one row of stalls", "parked": "a module slopes, and cars park on it"}, "How cars climb one story.")),
    rampSlopePercent: since(7, 12, number("ramp slope", "%", 2, 25, 0.5, "12 % is comfortable, 16 % about the most (common practice); a ramp on which cars park climbs 1:15, or 6.67 %, at most (IBC 2021 406.4.3).")),
    rampBlendFt: since(7, 10, number("blend at each end of the ramp", "ft", 0, 20, 1, "Length at top and bottom at half the slope, so that cars do not scrape: 8 to 12 ft (common practice).")),
    rampRuns: since(7, 1, count("runs to a story", "", 1, 2, "Straight runs in which the ramp climbs one story: two turn back on each other, or are two sloping modules side by side.")),
  }),

  topping: group("Topping", {
    /** Part of the camber that the finished surface follows, 0 (level) to 1. */
    followShare: since(3, 0, number("surface follows the camber", "", 0, 1, 0.1, "Share of the deck's camber that the finished floor follows: 0 is a level floor, 1 a topping of uniform thickness.")),
    /** Age at which members are set and topped, days. */
    ageDays: since(3, 45, number("age when set", "days", 7, 365, 1, "Age of the members when they are set and topped; young ones have less camber.")),
  }),

  /** Weights of the trade's preferences in the deck search, 0 (does not matter) to 10. */
  preferences: group("Weights of the search, 0 to 10", {
    shallow: number("prefer shallow", "", 0, 10, 1, "How much each inch of depth counts against a candidate."),
    fewStrands: number("prefer few strands", "", 0, 10, 1, "How much each pound of strand counts against a candidate."),
    straight: number("prefer straight strand", "", 0, 10, 1, "How much depressing the strand counts against a candidate."),
    light: number("prefer light", "", 0, 10, 1, "How much each pound of concrete counts against a candidate."),
    wide: number("prefer few pieces", "", 0, 10, 1, "How much each extra piece to haul and lift counts against a candidate."),
  }),

  /** Which kinds of member the deck search looks at. */
  consider: group("Kinds looked at", {
    fieldToppedTees: toggle("field-topped tees", "Whether the search considers double tees with a thin flange and a topping cast in place."),
    pretoppedTees: toggle("pretopped tees", "Whether the search considers double tees cast with their full flange."),
    planks: toggle("planks and slabs", "Whether the search considers hollow-core planks and flat slabs."),
  }),

  reasons: group("Reasons", {
    loads: longText("why these loads", 1200, "Goes on the record."),
    reduction: longText("why this reduction", 1200, "Goes on the record."),
    deck: longText("why this deck", 1200, "Goes on the record."),
    topping: longText("why this topping", 1200, "Goes on the record."),
    edgeBeam: longText("why this edge beam", 1200, "Goes on the record."),
    story: longText("why this story", 1200, "Goes on the record."),
    frame: since(3, "", longText("why these girders and columns", 1200, "Goes on the record.")),
    light: since(3, "", longText("why this light", 1200, "Goes on the record.")),
    roof: since(7, "", longText("why this roof", 1200, "Goes on the record.")),
  }),
} as const;

/**
 * Names that an earlier version of the file spelled otherwise, fields and groups: old path, new path, and the version that
 * brought the new one.
 */
export const RENAMED: readonly {readonly was: string; readonly is: string; readonly since: number}[] = [
  {was: "storey", is: "story", since: 5},
  {was: "deck.strandHeightCentreIn", is: "deck.strandHeightCenterIn", since: 5},
];

/** What an older file holds at a field of a group, which nobody has checked yet; where it holds none, validation names that group first. */
function of<T>(group: unknown, name: string): T {
  return ((group ?? {}) as Readonly<Record<string, T>>)[name] as T;
}

/** Floor of one bay, whose air alone the main duct carried before it had a floor of its own, ft2; of a bay that is none validation names the bay, which comes first. */
function bayFt2(content: Readonly<Record<string, unknown>>): number {
  const {spanFt, beamSpanFt} = (content["bay"] ?? {}) as Readonly<Record<string, unknown>>;
  return Number(spanFt) * Number(beamSpanFt);
}

/** Rows of bays across that the one main of an older file must reach to serve the floor that it states; of a bay that is none validation names the bay. */
function rowsOfMain(content: Readonly<Record<string, unknown>>): number {
  const {spanFt, beamSpanFt, baysAlong, baysAcross} = (content["bay"] ?? {}) as Readonly<Record<string, unknown>>;
  const {servedFt2} = (content["services"] ?? {}) as Readonly<Record<string, unknown>>;
  const rows = Math.ceil(Number(servedFt2) / (Number(spanFt) * Number(beamSpanFt) * Number(baysAlong)) - 1e-9);
  return Number.isFinite(rows) ? Math.max(1, Math.min(10, Number(baysAcross) || 1, rows)) : 1;
}
