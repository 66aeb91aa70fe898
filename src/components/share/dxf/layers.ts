/** A layer of a drawing's file: its name in plain words, its color by the number that such files use, and whether its lines are dashed. */
export interface Layer {
  readonly name: string;
  readonly color: number;
  readonly dashed?: boolean;
}

/** Layers in the order in which a file lists them; 7 is black on white paper and white on a dark screen. */
const LAYERS = {
  precast: {name: "Precast concrete", color: 7}, topping: {name: "Topping", color: 30}, strand: {name: "Strand", color: 5}, bars: {name: "Bars", color: 1}, pad: {name: "Bearing pad", color: 8},
  glass: {name: "Glass", color: 4}, ceiling: {name: "Ceiling and finishes", color: 9}, ducts: {name: "Ducts and pipes", color: 150}, ground: {name: "Ground", color: 34},
  roof: {name: "Roof and snow", color: 131}, people: {name: "People and furniture", color: 253}, cars: {name: "Cars and stalls", color: 252}, light: {name: "Light", color: 40}, load: {name: "Loads", color: 6},
  areas: {name: "Areas", color: 8}, hidden: {name: "Hidden", color: 8, dashed: true}, center: {name: "Center lines", color: 8, dashed: true}, camber: {name: "Camber drawn larger", color: 6},
  dimension: {name: "Dimension", color: 2}, text: {name: "Text", color: 3}, lines: {name: "Lines", color: 7},
} as const satisfies Readonly<Record<string, Layer>>;

/** The layer of text, and of dimensions. */
export const TEXT_LAYER: Layer = LAYERS.text;

/** By which word among an element's classes and parts it belongs to a layer; the first that fits counts. */
const WORDS: readonly (readonly [RegExp, keyof typeof LAYERS])[] = [
  [/^(dimension|scale-dark|scale-light|north-dark|north-light|leader|leader-dot|led|break|support)$/, "dimension"],
  [/^camber-/, "camber"],
  // Bars are drawn as strands are; what they are part of says which.
  [/^(stirrup|bars?|ledge-bar|side-bars?|footing-bars|chord|hold-down)$/, "bars"],
  [/^(strand|strand-line|line-steel)$/, "strand"],
  [/^(concrete-site|topping)$/, "topping"],
  [/^(concrete-plant|precast|column|wall|footing|parapet)$/, "precast"],
  [/^pad$/, "pad"], [/^glass$/, "glass"], [/^(duct|duct-mark|pipe|pipes|main|branch|return-main|return-branch|casing|sprinkler|sprinkler-head|box)$/, "ducts"],
  [/^(ceiling|ceiling-line|lamp|finish|insulation|membrane)$/, "ceiling"], [/^(soil|ground|ground-line|stone)$/, "ground"], [/^(snow|snow-drift|snow-surface|balanced-snow|drift|water|drain|drain-cross|fall|fall-arrow)$/, "roof"],
  [/^(person|furniture|furniture-line|desk)$/, "people"], [/^(car|stall|ramp)$/, "cars"], [/^(daylight|sun|sky|sky-seen|view|view-seen|sight-line|shade|shadow|eye)$/, "light"], [/^(load|load-.*|row|lateral)$/, "load"],
  [/^(tributary|influence|room|region|zone|deck-ground|highlight)$/, "areas"], [/^(line-hidden|other-main)$/, "hidden"], [/^line-center$/, "center"],
];

/** The layer of an element by its classes and the part that it belongs to; that of what it stands in where neither says more. */
export function layerOf(classes: string, part: string, above: Layer | undefined): Layer {
  if (above === LAYERS.dimension || above === LAYERS.camber) return above;
  const words = [...classes.split(/\s+/), part].filter(Boolean);
  const found = WORDS.find(([pattern]) => words.some((word) => pattern.test(word)));
  return found ? LAYERS[found[1]] : (above ?? LAYERS.lines);
}
