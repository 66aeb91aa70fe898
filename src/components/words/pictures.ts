/** The small drawings of words, by name; those of one kind come together when one of them is first opened. */
const KINDS = {
  sections: () => import("./pictures/sections.js").then(({SECTIONS}) => SECTIONS),
  beams: () => import("./pictures/beams.js").then(({BEAMS}) => BEAMS),
  spans: () => import("./pictures/spans.js").then(({SPANS}) => SPANS),
  building: () => import("./pictures/building.js").then(({BUILDING}) => BUILDING),
} satisfies Record<string, () => Promise<Readonly<Record<string, () => SVGSVGElement>>>>;

/** Which kind each drawing is of. */
export const WORD_PICTURES: Readonly<Record<string, keyof typeof KINDS>> = {
  doubleTee: "sections", flange: "sections", stem: "sections", plank: "sections", flatSlab: "sections", topping: "sections", eccentricity: "sections", neutralAxis: "sections",
  ledge: "beams", upstand: "beams", pad: "beams", invertedTee: "beams", corbel: "beams", torsion: "beams",
  simple: "spans", moment: "spans", camber: "spans", straight: "spans", depressed: "spans",
  bay: "building", noSky: "building", plenum: "building", drift: "building",
};

/** The drawing of a word; undefined where there is none of this name. */
export async function wordPicture(name: string): Promise<SVGSVGElement | undefined> {
  const kind = WORD_PICTURES[name];
  if (!kind) return undefined;
  const drawings: Readonly<Record<string, () => SVGSVGElement>> = await KINDS[kind]();
  return drawings[name]?.();
}
