import type {Catalog} from "../catalog.js";
import type {Design} from "../design/design.js";
import type {FloorLoads} from "../loads/floorLoads.js";
import type {FlexuralStrength} from "../member/flexure.js";
import type {Member} from "../member/member.js";
import type {SectionProperties} from "../sections/shape.js";
import type {BarLayout} from "./bars.js";
import type {EdgeBeamStrands} from "./bending.js";
import {edgeBeamDemand, type EdgeBeamDemand, type StemsOnBeam} from "./demand.js";
import type {EdgeBeamHandling} from "./handling.js";
import {ledgeBySize, type EdgeBeamLedge, type LedgeBySize} from "./ledge.js";
import type {LeastSteel} from "./leastSteel.js";
import {loadsOn, type EdgeBeamLoads} from "./loads.js";
import type {EdgeBeamSection} from "./section.js";
import type {EdgeBeamService} from "./service.js";
import type {EdgeBeamTwist, ClosedStirrups} from "./twist.js";

/** The first design of the edge beam before it is checked. */
export interface UncheckedBeam extends EdgeBeamSection {
  readonly section: SectionProperties;
  readonly spanFt: number;
  readonly loads: EdgeBeamLoads;
  readonly demand: EdgeBeamDemand;
  readonly momentKipIn: number;
  readonly shearKip: number;
  /** Torsion at the support, kip-in, and the torsion below which it need not be counted. */
  readonly torsionKipIn: number;
  readonly torsionThresholdKipIn: number;
  readonly bars: BarLayout;
  /** Whether bars within the practical number suffice. */
  readonly barsSuffice: boolean;
  /** The beam as a pretensioned member, where strands carry its bending. */
  readonly strands: EdgeBeamStrands | undefined;
  readonly effectiveDepthIn: number;
  readonly leastSteel: LeastSteel;
  readonly strength: FlexuralStrength;
  /** Bending and torsion on the bottom steel, over what it can pull, where most. */
  readonly bottomUse: number;
  /** phi Vc with at least minimum stirrups, and the most that a section of this size may carry, kip. */
  readonly concreteShearKip: number;
  readonly greatestShearKip: number;
  /** Undefined where the cover leaves no room for stirrups. */
  readonly twist: EdgeBeamTwist | undefined;
  readonly stirrups: ClosedStirrups | undefined;
  /** Undefined without a ledge, and where its bars do not fit. */
  readonly ledge: EdgeBeamLedge | undefined;
  readonly service: EdgeBeamService;
  readonly handling: EdgeBeamHandling;
}

/** What an edge beam of a section carries, whatever its steel. */
export interface LoadedSection {
  readonly section: EdgeBeamSection;
  readonly loads: EdgeBeamLoads;
  readonly demand: EdgeBeamDemand;
  /** The ledge with a cover of its bars, in, by its size alone; undefined where it is too thin for them. */
  ledge(catalog: Catalog, coverIn: number): LedgeBySize | undefined;
}

/**
 * The section of an edge beam under its loads, which are known when they are first read: the section alone tells that many
 * a size does not do.
 *
 * @param stems - where they stand, if it is known
 */
export function loadedSection(design: Design, member: Member, floor: FloorLoads, section: EdgeBeamSection, stems?: StemsOnBeam): LoadedSection {
  return new SectionUnderDeck(section, design, member, floor, stems);
}

class SectionUnderDeck implements LoadedSection {
  #loads: EdgeBeamLoads | undefined;
  #demand: EdgeBeamDemand | undefined;
  #ledge: {readonly coverIn: number; readonly found: LedgeBySize | undefined} | undefined;

  constructor(
    readonly section: EdgeBeamSection, private readonly design: Design, private readonly member: Member, private readonly floor: FloorLoads, private readonly stems: StemsOnBeam | undefined,
  ) {}

  get loads() { return (this.#loads ??= loadsOn(this.design, this.member, this.floor, this.section)); }
  get demand() { return (this.#demand ??= edgeBeamDemand(this.design, this.member, this.section, this.loads, this.stems)); }

  ledge(catalog: Catalog, coverIn: number): LedgeBySize | undefined {
    if (this.#ledge?.coverIn !== coverIn) {
      const {design, member, section, demand} = this;
      this.#ledge = {coverIn, found: ledgeBySize({...design, edgeBeam: {...design.edgeBeam, coverIn}}, catalog, member, section, demand)};
    }
    return this.#ledge.found;
  }
}
