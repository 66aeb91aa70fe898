import type {FieldPath} from "../../lib/design/fields.js";

/** A figure that can stand alone in a page of another site. */
export interface EmbeddedFigure {
  /** Its name in an address; never changed, for other pages hold it. */
  readonly name: string;
  /** Its page's folder. */
  readonly page: string;
  /** The heading above it, as boards name it (`boards/boards.ts`), and which of the pictures below that it is, from 1. */
  readonly at: readonly [heading: string, picture: number];
  readonly title: string;
  /** The question that its control answers. */
  readonly asks: string;
  /** Fields whose controls stand with it, where these are not those that stand with it on its page; a page's own choices always do. */
  readonly controls?: readonly FieldPath[];
  /** What else of the page acts on it, as a selector. */
  readonly also?: string;
  /** A starter that has such a figure, where not all do. */
  readonly starter?: string;
  /** Height of its frame at {@link EMBED_WIDTH_PX}, px: all that it shows with the first starter, rounded up. */
  readonly heightPx: number;
}

/** Width of an embed's frame where the page that holds it has room, px. */
export const EMBED_WIDTH_PX = 720;

type Row = readonly [name: string, at: EmbeddedFigure["at"], heightPx: number, title: string, asks: string, more?: Pick<EmbeddedFigure, "controls" | "also" | "starter">];

const of = (page: string, ...rows: readonly Row[]): EmbeddedFigure[] =>
  rows.map(([name, at, heightPx, title, asks, more]) => ({name, page, at, heightPx, title, asks, ...more}));

/** All figures that can stand alone, page by page in reading order. A figure that a page gains gets its row here; a test says which lacks one. */
export const FIGURES: readonly EmbeddedFigure[] = [
  ...of("index",
    ["frame", ["open-design", 1], 780, "The building's frame", "How do bays and stories make the building?", {controls: ["bay.spanFt", "bay.beamSpanFt", "bay.baysAlong", "bay.floors"]}],
    ["bay-section", ["open-design", 2], 600, "One bay, cut through", "What stands between one floor and the next?", {controls: ["bay.spanFt", "story.floorToFloorFt"]}]),
  ...of("loads",
    ["square-foot", ["one-square-foot-of-floor", 1], 780, "One square foot of floor", "What does each square foot have to carry?", {controls: ["loads.partitions", "deck.toppingIn"]}],
    ["load-strip", ["where-it-lands", 1], 700, "The strip that loads one deck member", "Which floor does one piece carry?", {controls: ["bay.spanFt", "bay.beamSpanFt"]}]),
  ...of("reduction",
    ["influence-area", ["how-much-floor-does-it-feel", 1], 860, "Tributary and influence area", "How much floor does a beam or a column feel?", {controls: ["bay.spanFt", "bay.beamSpanFt"]}],
    ["reduction-by-area", ["the-larger-the-less", 1], 780, "Live load by area", "How much of the live load remains on a large area?", {controls: ["bay.floors", "bay.spanFt"]}]),
  ...of("deck",
    ["reach", ["how-far-does-it-reach", 1], 980, "How far the deck reaches", "How much can this member carry at each span, and what stops it?"],
    ["piece", ["the-piece-itself", 1], 900, "The deck member, cut across", "Where do the strands lie?", {controls: ["deck.pattern", "deck.toppingIn"]}]),
  ...of("trade-offs",
    ["trade-offs", ["who-is-beaten-and-who-is-not", 1], 1130, "Decks that no other beats", "What does a shallower, lighter or leaner deck give up?"]),
  ...of("member",
    ["strand-profile", ["top", 1], 520, "The strands along the member", "Where do the strands pull?"],
    ["stress-depth", ["the-squeeze-through-the-depth", 1], 600, "Stress through the depth", "Where is the concrete in compression, and where in tension?", {controls: ["bay.spanFt", "deck.pattern", "deck.strengthPsi"]}],
    ["losses", ["what-time-takes", 1], 460, "Where the prestress goes", "How much of the jacking stress is lost, and to what?"],
    ["loss-over-time", ["what-time-takes", 2], 840, "Prestress over the years", "When is it lost?"],
    ["cracked-section", ["what-would-break-it", 1], 600, "The section at its strength", "How much of it is in compression at the end?", {controls: ["deck.pattern", "deck.strengthPsi"]}],
    ["strand-stress", ["what-would-break-it", 2], 760, "The strand's own curve", "How near to its full strength is each strand?", {controls: ["deck.pattern", "deck.strengthPsi"]}]),
  ...of("limits",
    ["limit-curves", ["each-limit-draws-its-own-curve", 1], 960, "Every limit's own curve", "Which limit stops this deck?", {also: ".limit-ticks"}],
    ["sag", ["does-it-sag", 1], 760, "Deflection under live load", "Does it sag more than people accept?"],
    ["walking", ["would-you-feel-it", 1], 720, "A walker on the floor", "Would you feel it?"],
    ["fire", ["how-long-does-it-hold-in-a-fire", 1], 720, "The member in a fire", "How long does it hold back the heat?"],
    ["hauling", ["can-it-get-here", 1], 700, "The piece on its truck", "Can it come by road?"]),
  ...of("camber",
    ["camber-shape", ["the-shape-through-its-life", 1], 820, "The member's shape through its life", "How far does it arch, and what stays?"],
    ["camber-true", ["the-shape-through-its-life", 2], 600, "Camber at its true scale", "Could you see it?", {controls: ["bay.spanFt", "deck.pattern"]}],
    ["camber-age", ["how-it-gets-there", 1], 820, "Camber by age", "How does camber grow and shrink?"],
    ["camber-parts", ["what-lifts-it-what-pushes-it-down", 1], 640, "What lifts, what pushes down", "Which causes make the camber?", {controls: ["bay.spanFt", "deck.pattern"]}]),
  ...of("topping",
    ["leveling", ["the-thickness-along-the-span", 1], 620, "Topping over an arched deck", "How thick is the topping at the ends?"],
    ["piece-cambers", ["no-two-pieces-are-alike", 1], 560, "Camber from piece to piece", "How far apart are the cambers of like pieces?", {controls: ["bay.spanFt", "deck.toppingIn"]}],
    ["neighbors", ["no-two-pieces-are-alike", 2], 520, "Neighboring pieces", "How much do two neighbors differ?", {controls: ["bay.spanFt"]}],
    ["thin-topping", ["no-two-pieces-are-alike", 3], 520, "Where the topping is too thin", "How many pieces leave it thinner than it must be?", {controls: ["bay.spanFt", "deck.toppingIn"]}],
    ["topping-of-a-bay", ["no-two-pieces-are-alike", 4], 540, "Concrete for one bay", "How many cubic yards level one bay?", {controls: ["bay.spanFt", "deck.toppingIn"]}],
    ["camber-causes", ["what-makes-them-differ", 1], 520, "What makes pieces differ", "Which cause matters most?", {controls: ["bay.spanFt"]}],
    ["joint-step", ["the-step-at-a-joint", 1], 540, "The step at a joint", "How is a step between two pieces leveled?", {controls: ["bay.spanFt", "topping.ageDays"]}]),
  ...of("edge-beam",
    ["edge-section", ["the-section", 1], 1040, "The edge beam, cut through", "What makes the edge beam as deep as it is?", {controls: ["edgeBeam.kind", "edgeBeam.ledgeDepthIn", "edgeBeam.upstandIn", "edgeBeam.webWidthIn"]}],
    ["edge-kinds", ["the-section", 2], 480, "Three kinds of edge beam", "What would another kind of beam change?", {controls: ["edgeBeam.upstandIn", "edgeBeam.ledgeDepthIn"]}],
    ["seat", ["the-seat-and-the-pad", 1], 820, "Seat and bearing pad", "How much seat remains when every tolerance goes against it?"],
    ["stem-loads", ["load-at-the-stems", 1], 920, "Loads of stems on a beam", "Does it matter where the stems land?"],
    ["stems-from-above", ["load-at-the-stems", 2], 420, "Stems along the edge", "Where do stems meet the beams and columns?", {controls: ["bay.beamSpanFt", "bay.baysAlong"]}],
    ["edge-bending", ["bending", 1], 740, "Bars of the edge beam", "How much steel carries the bending?"],
    ["edge-torsion", ["it-also-twists", 1], 660, "Shear and torsion together", "Is the web wide enough for both?"],
    ["ledge", ["the-ledge", 1], 520, "The ledge from the room", "How thick must the ledge be?"],
    ["upright", ["holding-it-upright", 1], 720, "What holds the beam upright", "What keeps the beam from rolling off its support?", {controls: ["edgeBeam.webWidthIn", "edgeBeam.ledgeProjectionIn"]}]),
  ...of("girder",
    ["girder-section", ["the-section", 1], 800, "The girder, cut through", "How much of the girder shows below the deck?", {controls: ["girder.kind", "girder.ledgeDepthIn", "girder.webWidthIn", "girder.depthIn"]}],
    ["girder-reach", ["how-far-does-it-span", 1], 720, "How far the girder spans", "How far could it span under this load?", {controls: ["bay.beamSpanFt", "girder.strands", "girder.strengthPsi"]}],
    ["girder-load", ["load-and-strength", 1], 640, "Moment and shear along the girder", "Where is the girder stressed most?", {controls: ["bay.beamSpanFt", "bay.spanFt"]}],
    ["girder-camber", ["rise-and-fall", 1], 580, "The girder's rise and fall", "How much does it arch, and how much does load take back?", {controls: ["bay.beamSpanFt", "girder.strands"]}]),
  ...of("snow",
    ["drifts", ["what-the-wind-piles-up", 1], 840, "Drifts against a wall", "How deep does snow drift?", {controls: ["snow.groundPsf", "walls.parapetIn", "snow.higherFt"]}],
    ["drifts-from-above", ["what-the-wind-piles-up", 2], 740, "Drifts from above", "Where on the roof do drifts lie?", {controls: ["snow.groundPsf", "walls.parapetIn"]}],
    ["snow-on-a-member", ["what-a-deck-member-feels", 1], 540, "Snow along one member", "What does a drift do to the member below it?", {controls: ["snow.groundPsf", "walls.parapetIn"]}],
    ["roof-governs", ["which-governs", 1], 580, "Which roof load governs", "Snow, rain or roof live load?", {controls: ["snow.groundPsf", "walls.parapetIn"]}]),
  ...of("roof",
    ["roof-water", ["the-way-that-water-takes", 1], 560, "The roof, cut across", "Which way does the water run?", {controls: ["roof.slopeInPerFt", "roof.drainage"]}],
    ["roof-drains", ["the-way-that-water-takes", 2], 940, "Drains from above", "How much roof does each drain serve?"],
    ["roof-deck", ["the-deck-and-what-lies-on-it", 1], 600, "The roof's deck and its layers", "What lies on the roof's deck?"]),
  ...of("columns",
    ["load-path", ["from-deck-to-ground", 1], 1000, "The path of the load", "Where does the load of one square foot go?", {controls: ["bay.spanFt", "bay.floors"]}],
    ["column-strength", ["how-thick-a-column", 1], 920, "Axial load with moment", "How much can a bent column still carry?", {controls: ["column.sideIn", "column.steelPercent", "column.strengthPsi", "bay.floors"]}],
    ["footing", ["what-stands-on-the-ground", 1], 580, "The footing", "How large a footing does the soil need?"],
    ["diaphragm", ["and-sideways", 1], 660, "The floor as a beam that lies flat", "What does a push from the side do to the floor?"]),
  ...of("walls",
    ["long-side", ["a-long-side", 1], 540, "A long side from outside", "How much glass is left between the beams?", {controls: ["story.floorToFloorFt", "edgeBeam.upstandIn"]}],
    ["short-side", ["a-short-side", 1], 660, "A short side from outside", "What closes the short sides?", {controls: ["walls.shortSide", "walls.glassShare", "walls.panelWidthFt"]}],
    ["outline", ["the-outline-from-above", 1], 760, "The outline from above", "How large is the building to its outer faces?", {controls: ["bay.baysAlong", "bay.baysAcross", "bay.spanFt"]}],
    ["corner", ["a-corner", 1], 740, "A corner in plan", "How do two sides meet at a column?"],
    ["corner-at-the-roof", ["a-corner", 2], 680, "A corner at the roof", "How do they meet above the columns?"],
    ["roof-edge", ["the-edge-of-the-roof", 1], 780, "The edge of the roof", "What closes the ends of the deck?"]),
  ...of("story",
    ["story-section", ["the-story-cut-through", 1], 960, "One story, cut through", "What is left between floor and ceiling?", {controls: ["story.floorToFloorFt", "story.ceiling", "edgeBeam.upstandIn", "services.mainDepthIn"]}],
    ["ducts", ["ducts", 1], 520, "Ducts below the deck", "Where do ducts find room?", {controls: ["services.mainDepthIn", "services.mainWidthIn"]}],
    ["two-edges", ["two-ways-to-carry-the-edge", 1], 780, "Two ways to carry the edge", "Beam beside the deck, or below it?", {controls: ["edgeBeam.upstandIn", "bay.beamSpanFt"]}]),
  ...of("air",
    ["air-plan", ["one-floor-from-above", 1], 820, "Ducts of one floor from above", "Where do mains and feeders run?", {controls: ["air.place", "air.acrossFt", "air.rows"]}],
    ["air-across", ["cut-across", 1], 640, "Ducts across the building", "How much ceiling does each inch of duct cost?", {controls: ["air.run", "services.mainWidthIn", "services.mainDepthIn"]}],
    ["air-along", ["cut-along", 1], 600, "Ducts along the building", "What passes between the stems, and what below them?", {controls: ["services.branchDepthIn", "services.branchWidthIn"]}]),
  ...of("parking",
    ["parking-plan", ["the-plan", 1], 1040, "Stalls, aisles and columns", "Do cars fit between the columns?", {controls: ["parking.angle", "parking.aisleIn", "bay.beamSpanFt"], starter: "parking-structure"}],
    ["parking-heights", ["what-hangs-over-them", 1], 440, "Heights over cars and vans", "Does a van fit below the deck?", {controls: ["parking.clearIn", "story.floorToFloorFt"], starter: "parking-structure"}],
    ["ramp", ["the-ramp", 1], 640, "The ramp", "How long is a ramp?", {starter: "parking-structure"}]),
  ...of("daylight",
    ["daylight-depth", ["across-the-floor", 1], 720, "Daylight across the floor", "How far in can you work without lamps?", {controls: ["daylight.sides", "story.floorToFloorFt", "edgeBeam.upstandIn", "daylight.obstructionDeg"]}],
    ["desk", ["the-desk-by-the-window", 1], 780, "A desk by the window", "How much sky does a desk see?", {controls: ["edgeBeam.upstandIn", "daylight.revealIn", "story.frameIn"]}],
    ["desk-and-upstand", ["the-desk-by-the-window", 2], 560, "What an upstand takes", "How much light does a taller upstand cost the desk?", {controls: ["daylight.revealIn", "daylight.obstructionDeg"]}],
    ["deeper-floors", ["what-makes-it-reach-farther", 1], 660, "What makes light reach farther", "What does each foot of depth, height or glass do?"]),
  ...of("width",
    ["width", ["every-foot-from-20-to-100", 1], 1360, "Every span from 20 to 100 ft", "One number moves: how does the whole building answer?"]),
  ...of("bay",
    ["bay-map", ["the-map", 1], 820, "Deck span by beam span", "Which bay is best, and by which measure?"]),
];

/** Pages whose figures say nothing alone, and why. */
export const NOT_ALONE: Readonly<Record<string, string>> = {
  compare: "its figures show the designs that its reader has pinned",
  practice: "its figures belong to exercises, whose numbers are their reader's",
  sets: "its figures belong to exercises, whose numbers are a student's",
  tables: "its chart reads the table that its reader composes",
  methods: "its figures compare what is published; nothing in them is to be moved",
  trust: "its figures compare what is published; nothing in them is to be moved",
};
