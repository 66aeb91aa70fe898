import type {Design} from "./design.js";
import type {FieldPath, GroupName} from "./fields.js";

/**
 * Fields that a design uses only sometimes, by their path or the path of their group, each with when it does. Their
 * values are kept meanwhile, for the day when the design has that part again.
 */
const USED_WHILE: Readonly<Partial<Record<FieldPath | GroupName, (design: Design) => boolean>>> = {
  "girder": hasGirder,
  "girder.ledgeProjectionIn": ({girder}) => girder.kind === "inverted tee",
  "girder.ledgeDepthIn": ({girder}) => girder.kind === "inverted tee",
  "girder.depthIn": ({girder}) => girder.kind === "rectangle",
  "edgeBeam.ledgeProjectionIn": ({edgeBeam}) => edgeBeam.kind !== "below",
  "edgeBeam.ledgeDepthIn": ({edgeBeam}) => edgeBeam.kind !== "below",
  "edgeBeam.strands": ({edgeBeam}) => edgeBeam.steel === "strands",
  "roof": hasRoofDeck,
  "roof.slopeInPerFt": ({roof}) => roof.drainage !== "camber",
  "roof.drainsAt": ({roof}) => roof.drainage !== "camber",
  "roof.taperPcf": ({roof}) => roof.drainage === "taper",
  "column.roofDeadPsf": (design) => !hasRoofDeck(design),
  "column.roofLivePsf": (design) => !hasRoofDeck(design),
  "deck.toppingStrengthPsi": (design) => hasTopping(design) || (hasRoofDeck(design) && design.roof.toppingIn > 0),
  "topping.followShare": hasTopping,
  "story.ceilingDropIn": ({story}) => story.ceiling === "below",
  "services.servedFt2": (design) => hasDucts(design) && design.air.serves === "floor",
  "services.mainWidthIn": hasDucts,
  "services.mainDepthIn": hasDucts,
  "services.branchWidthIn": hasDucts,
  "services.branchDepthIn": hasDucts,
  "walls.panelSupport": hasPanels,
  "walls.panelThicknessIn": ({walls}) => walls.shortSide === "solid panel",
  "walls.outerWytheIn": ({walls}) => walls.shortSide === "insulated panel",
  "walls.insulationIn": ({walls}) => walls.shortSide === "insulated panel",
  "walls.innerWytheIn": ({walls}) => walls.shortSide === "insulated panel",
  "walls.panelWidthFt": hasPanels,
  "walls.panelStories": (design) => hasPanels(design) && design.walls.panelSupport === "footing",
  "walls.jointIn": countsShortSides,
  "walls.glassShare": ({walls}) => walls.shortSide !== "not counted" && walls.shortSide !== "spandrel",
  "walls.spandrelDepthIn": hasEndSpandrels,
  "walls.spandrelThicknessIn": hasEndSpandrels,
  "walls.spandrelUpstandIn": hasEndSpandrels,
  "walls.spandrelPlace": hasEndSpandrels,
  "walls.spandrelPieces": hasEndSpandrels,
  "walls.claddingPsf": ({walls, edgeBeam}) => walls.shortSide === "cladding" || (edgeBeam.kind === "below" && walls.teeEnds === "cladding"),
  "walls.strengthPsi": (design) => hasPanels(design) || hasEndSpandrels(design),
  "walls.corner": (design) => hasParapet(design) && (design.walls.shortSide === "spandrel" || design.walls.shortSide === "cladding"),
  "walls.teeEnds": ({edgeBeam}) => edgeBeam.kind === "below",
  "walls.teeEndStripIn": ({edgeBeam, walls}) => edgeBeam.kind === "below" && walls.teeEnds === "concrete",
  "walls.endFill": countsShortSides,
  "walls.parapetIn": hasRoof,
  "walls.parapetThicknessIn": hasParapet,
  "walls.capIn": hasParapet,
  "air": hasDucts,
  "air.acrossFt": ({air}) => air.place === "across",
  "air.casing": ({air}) => air.run !== "plenum",
  "air.casingWidthIn": ({air}) => air.run !== "plenum" && air.casing === "stated",
  "air.casingDropIn": ({air}) => air.run !== "plenum" && air.casing === "stated",
  "air.baysServed": ({air}) => air.serves === "bays",
  "air.returnEvery": ({air}) => air.way === "trunk" || air.way === "stems",
  "air.exhaustPercent": hasReturn,
  "air.wallsCrossed": ({air}) => air.way === "plenum" || air.way === "rooms",
  "parking": hasParking,
  "parking.rampSlopePercent": hasRamp,
  "parking.rampBlendFt": hasRamp,
  "parking.rampRuns": hasRamp,
  "snow.use": hasRoof,
  "snow.occupancy": (design) => hasRoof(design) && design.snow.use === "occupied",
  "snow.terrain": hasSnow,
  "snow.exposure": hasSnow,
  "snow.thermal": hasSnow,
  "snow.risk": hasSnow,
  "snow.higherFt": hasSnow,
  "snow.higherSide": hasHigherPart,
  "snow.higherLengthFt": hasHigherPart,
  "snow.higherApartFt": hasHigherPart,
};

/** Whether the floor has a girder: two bays across or more meet over one. */
export function hasGirder({bay}: Design): boolean {
  return bay.baysAcross > 1;
}

/** Whether the roof is a level of its own, not two loads. */
export function hasRoofDeck({roof}: Pick<Design, "roof">): boolean {
  return roof.given === "deck";
}

/** Whether a topping is cast on the deck. */
export function hasTopping({deck}: Design): boolean {
  return deck.toppingIn > 0;
}

/** Whether air comes through ducts. */
export function hasDucts({services}: Design): boolean {
  return services.airCfmPerFt2 > 0;
}

/** Whether the design says what closes its short sides; in older files nothing is counted there. */
export function countsShortSides({walls}: Design): boolean {
  return walls.shortSide !== "not counted";
}

/** Whether the floor reaches past the end column lines: to a wall outside the columns. */
export function hasEndStrip({walls}: Design): boolean {
  return walls.shortSide !== "not counted" && !(walls.shortSide === "spandrel" && walls.spandrelPlace === "between");
}

/** Whether wall panels close the short sides. */
export function hasPanels({walls}: Design): boolean {
  return walls.shortSide === "solid panel" || walls.shortSide === "insulated panel";
}

/** Whether spandrels that carry no deck lie along the short sides. */
export function hasEndSpandrels({walls}: Design): boolean {
  return walls.shortSide === "spandrel";
}

/** Whether a roof lies over the topmost story; without one its columns end at the highest floor. */
export function hasRoof({column, roof}: Pick<Design, "column" | "roof">): boolean {
  return hasRoofDeck({roof}) || column.roofDeadPsf > 0 || column.roofLivePsf > 0;
}

/** Whether the walls rise above the roof's surface. */
export function hasParapet(design: Design): boolean {
  return hasRoof(design) && design.walls.parapetIn > 0;
}

/** Whether the design says how the air goes back. */
export function hasReturn({air}: Design): boolean {
  return air.way !== "none";
}

/** Whether snow falls on the roof. */
export function hasSnow({snow}: Pick<Design, "snow">): boolean {
  return snow.groundPsf > 0;
}

/** Whether snow falls on an open top level: no roof is over the highest floor. */
export function hasOpenTop(design: Pick<Design, "column" | "roof" | "snow">): boolean {
  return !hasRoof(design) && hasSnow(design);
}

/** Whether a higher part beside the roof lets snow drift. */
export function hasHigherPart(design: Pick<Design, "snow">): boolean {
  return hasSnow(design) && design.snow.higherFt > 0;
}

/** Whether cars park in the building. */
export function hasParking({parking}: Design): boolean {
  return parking.place !== "none";
}

/** Whether cars climb to their level by a ramp. */
export function hasRamp(design: Design): boolean {
  return hasParking(design) && design.parking.ramp !== "none";
}

/** Fields that say whether the design has their group's part at all. */
const CHOOSE_PART: ReadonlySet<string> = new Set<FieldPath>(["roof.given", "parking.place"]);

/** Whether a design uses the field at a path; a group that it has not, such as the girder of one bay, has none that it uses. */
export function fieldUsed(design: Design, path: string): boolean {
  if (CHOOSE_PART.has(path)) return true;
  const [group = path] = path.split(".");
  return [group, path].every((of) => USED_WHILE[of as FieldPath]?.(design) ?? true);
}
