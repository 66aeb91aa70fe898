import type {Design} from "../design/design.js";
import {hasRoof} from "../design/used.js";
import type {Member} from "../member/member.js";
import {inches} from "../units.js";

/** A roof of its own as the walls meet it, in. */
export interface RoofBuild {
  readonly member: Member;
  readonly toppingIn: number;
  /** Layers on the deck where its surface is lowest. */
  readonly layersIn: number;
  /** From there up to the surface's highest line. */
  readonly riseIn: number;
  /** Height of the bearings above the lowest ones at each column line across, from the first long side: 0 unless the deck itself falls. */
  readonly bearingsIn: readonly number[];
}

/** The topmost level at one of the two long sides; levels from the ground, in. */
export interface TopSide {
  /** Top of the structural deck there, and of the edge beam. */
  readonly structureIn: number;
  readonly beamTopIn: number;
  /** Where what is built on begins: on the beam, or on the deck's edge where the beam lies below it. */
  readonly builtOnIn: number;
  /** How far the parapet is built up from there; 0 without a parapet, and where the beam reaches as high. */
  readonly addedIn: number;
}

/** The topmost level of a building: its roof, or its highest floor. Levels from the ground, in. */
export interface TopLevel {
  /** The finished surface: of a roof of its own its highest line, since a parapet is level. */
  readonly surfaceIn: number;
  readonly deckDepthIn: number;
  /** Top of the structural deck at each column line across, from the first long side. */
  readonly structureIn: readonly number[];
  readonly sides: readonly [TopSide, TopSide];
}

/**
 * The topmost level over a number of stories. A roof of its own is as deep as its deck, layers and fall make it, above a
 * soffit that lies as high in the topmost story as in all others, so that ceiling and windows are the same there; where
 * the bearings are stepped, the lowest ones do. Any other topmost level is a floor's.
 *
 * @param deckDepthIn - the floors' deck with topping, in
 * @param roof - undefined where the roof is two loads, and where there is none
 */
export function topLevel(design: Design, deckDepthIn: number, roof: RoofBuild | undefined, stories: number): TopLevel {
  const {story, edgeBeam, bay, walls} = design;
  const floorIn = stories * inches(story.floorToFloorFt);
  const below = edgeBeam.kind === "below";
  if (!roof) {
    const structureIn = floorIn - story.finishIn;
    const roofed = hasRoof(design);
    // A roof that is given by its loads has the floors' beams under it.
    const upstandIn = below ? 0 : Math.max(0, edgeBeam.upstandIn - story.finishIn);
    const beamTopIn = below ? structureIn - deckDepthIn : roofed ? floorIn + upstandIn : structureIn + edgeBeam.upstandIn;
    const side = {structureIn, beamTopIn, builtOnIn: floorIn + upstandIn, addedIn: roofed ? Math.max(0, walls.parapetIn - upstandIn) : 0};
    return {surfaceIn: floorIn, deckDepthIn, structureIn: new Array<number>(bay.baysAcross + 1).fill(structureIn), sides: [side, side]};
  }
  const depthIn = roof.member.compression.depthIn;
  const lowestIn = floorIn - story.finishIn - deckDepthIn + depthIn;
  const surfaceIn = lowestIn + roof.layersIn + roof.riseIn;
  const structureIn = roof.bearingsIn.map((bearingIn) => lowestIn + bearingIn);
  const sideOf = (index: number): TopSide => {
    const structure = structureIn[index] as number;
    const beamTopIn = below ? structure - depthIn : structure + design.roof.upstandIn;
    const builtOnIn = Math.max(structure, beamTopIn);
    return {structureIn: structure, beamTopIn, builtOnIn, addedIn: walls.parapetIn > 0 ? Math.max(0, surfaceIn + walls.parapetIn - builtOnIn) : 0};
  };
  return {surfaceIn, deckDepthIn: depthIn, structureIn, sides: [sideOf(0), sideOf(structureIn.length - 1)]};
}
