import type {Catalog} from "../catalog.js";
import type {Design} from "../design/design.js";
import type {Member} from "../member/member.js";
import {edgeBeamStrands} from "./bending.js";
import {checkedBeam, soffitCracks, type EdgeBeamResult} from "./edgeBeam.js";
import {strandService} from "./service.js";
import type {LoadedSection} from "./unchecked.js";

/** A beam whose section and loads are known; undefined where the soffit of one with strands cracks in service. */
export function uncrackedBeam(design: Design, catalog: Catalog, member: Member, {section, loads, demand}: LoadedSection): EdgeBeamResult | undefined {
  const strands = edgeBeamStrands(design, catalog, section, loads);
  if (strands && soffitCracks(design, demand, strands)) return undefined;
  return checkedBeam(design, catalog, member, {section, loads, demand, strands, stranded: strands && strandService(design, loads, demand, strands)});
}
