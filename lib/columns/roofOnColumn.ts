import type {GirderResult} from "../girder/girder.js";
import type {LoadElement} from "../loads/elements.js";
import type {RoofResult} from "../roof/roof.js";
import {roofLoadOn, type RoofLoads} from "../snow/roofLoads.js";
import type {ColumnLoadKip, ColumnMomentKipIn} from "./columnCombinations.js";
import {floorEdgeBeamEnd, floorGirderEnd, type BeamEnd, type GirderEnd} from "./endOnColumn.js";

/** What comes and goes on an element of a roof, psf, in the two parts that combinations know. */
export interface RoofParts {
  /** Live load of the roof's use; 0 where nobody uses it. */
  readonly usePsf: number;
  /** The greatest of roof live load, snow and rain: only one of them enters a combination. */
  readonly weatherPsf: number;
}

export function roofParts(snow: RoofLoads, element: LoadElement): RoofParts {
  const {L, Lr, S, R} = roofLoadOn(snow, element).loads;
  return {usePsf: L, weatherPsf: Math.max(Lr, S, R)};
}

/** The end of an edge beam of a roof of its own, or of an open top level under snow, as the beam's own design has it. */
export function roofEdgeBeamEnd({edgeBeam, snow}: Pick<RoofResult, "edgeBeam" | "snow">): BeamEnd {
  return parted(floorEdgeBeamEnd(edgeBeam), roofParts(snow, "edge beam"), edgeBeam.loads.load.governing.totalPsf);
}

/** The end of a girder of a roof of its own, or of an open top level under snow; it has one where the floors have. */
export function roofGirderEnd({girder, snow}: Pick<RoofResult, "girder" | "snow">): GirderEnd {
  const {loads} = girder as GirderResult;
  const {both, oneBay} = floorGirderEnd(girder as GirderResult);
  return {
    both: parted(both, roofParts(snow, "interior beam"), loads.load.governing.totalPsf),
    oneBay: parted(oneBay, roofParts(snow, "edge beam"), loads.oneBay.governing.totalPsf),
  };
}

/** What the end carries of one live load, split into its parts. */
function parted({reaction, twist}: BeamEnd, {usePsf, weatherPsf}: RoofParts, asOnePsf: number): BeamEnd {
  const [use, weather] = asOnePsf > 0 ? [usePsf / asOnePsf, weatherPsf / asOnePsf] : [0, 0];
  return {
    reaction: {...reaction, liveKip: use * reaction.liveKip, roofKip: weather * reaction.liveKip} satisfies ColumnLoadKip,
    twist: {...twist, liveKipIn: use * twist.liveKipIn, roofKipIn: weather * twist.liveKipIn} satisfies ColumnMomentKipIn,
  };
}
