import {biaxialCapacity, biaxialState, biaxialUse} from "../../lib/columns/biaxial.js";
import type {AxialMoment} from "../../lib/columns/interactionCut.js";
import type {ColumnSection} from "../../lib/columns/section.js";

/** A column that one moment bends, in the direction of its depth. */
const bent = ({axialKip, momentKipIn}: AxialMoment) => ({axialKip, depthMomentKipIn: momentKipIn, widthMomentKipIn: 0});

/** Its strength for a neutral axis at a distance from the compressed face, in. */
export function stateAt(section: ColumnSection, neutralAxisIn: number) {
  return biaxialState(section, neutralAxisIn, 0);
}

/** Its design strength in the proportion of a load. */
export function capacityAlong(section: ColumnSection, load: AxialMoment) {
  return biaxialCapacity(section, bent(load));
}

/** Its design strength under a compression that stands at an eccentricity, in. */
export function capacityAt(section: ColumnSection, eccentricityIn: number) {
  return capacityAlong(section, {axialKip: 1, momentKipIn: eccentricityIn});
}

/** Share of its design strength that a load uses. */
export function useOf(section: ColumnSection, load: AxialMoment): number {
  return biaxialUse(section, bent(load));
}

/** Where the neutral axis lies while the farthest bars have a net tensile strain, in. */
export function axisAtStrainIn(section: ColumnSection, strain: number): number {
  return (0.003 * Math.max(...section.bars.places.map(({yIn}) => yIn))) / (0.003 + strain);
}

/** The state in which the farthest bars just yield as the concrete crushes. */
export function balancedState(section: ColumnSection) {
  return stateAt(section, axisAtStrainIn(section, 60 / 29000));
}
