import type {Catalog} from "../catalog.js";
import {exceeds} from "../checks.js";
import type {Design} from "../design/design.js";
import {TENSION_COEFFICIENT} from "../member/allowables.js";
import type {Member} from "../member/member.js";
import {JACKING_STRESS_KSI} from "../prestress/losses.js";
import {LOWEST_IN, strandOfSize} from "../beams/prestressedBeam.js";
import {edgeBeamStrands} from "./bending.js";
import {checkedBeam, soffitCracks, type EdgeBeamResult} from "./edgeBeam.js";
import {strandService} from "./service.js";
import type {LoadedSection} from "./unchecked.js";

/**
 * Whether the soffit of a beam with strands cracks in service whatever the losses: with all of the initial jacking stress
 * left in all of its strands, and these as low as any can lie (P/A + P e/Sb - M/Sb beyond the tension of class T, ACI
 * 318-19 24.5.2.1). It saves making a member of sizes that are far from enough.
 */
export function surelyCracks({edgeBeam: {steel, strands, strengthPsi}}: Pick<Design, "edgeBeam">, catalog: Catalog, {section: {shape: {section}}, demand}: LoadedSection): boolean {
  if (steel !== "strands") return false;
  const mostKip = strands * strandOfSize(catalog).areaIn2 * JACKING_STRESS_KSI;
  const tensionKsi = demand.serviceKipIn / section.sbIn3 - mostKip * (1 / section.areaIn2 + Math.max(0, section.ybIn - LOWEST_IN) / section.sbIn3);
  return exceeds(tensionKsi, (TENSION_COEFFICIENT.T * Math.sqrt(strengthPsi)) / 1000);
}

/** A beam whose section and loads are known; undefined where the soffit of one with strands cracks in service. */
export function uncrackedBeam(design: Design, catalog: Catalog, member: Member, {section, loads, demand}: LoadedSection): EdgeBeamResult | undefined {
  if (surelyCracks(design, catalog, {section, loads, demand})) return undefined;
  const strands = edgeBeamStrands(design, catalog, section, loads);
  if (strands && soffitCracks(design, demand, strands)) return undefined;
  return checkedBeam(design, catalog, member, {section, loads, demand, strands, stranded: strands && strandService(design, loads, demand, strands)});
}
