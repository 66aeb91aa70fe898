import type {Catalog} from "../catalog.js";
import {exceeds, type Check} from "../checks.js";
import type {Design} from "../design/design.js";
import type {FloorLoads} from "../loads/floorLoads.js";
import {allowables} from "../member/allowables.js";
import type {Member} from "../member/member.js";
import {CRACKING_MARGIN} from "../member/minimumStrength.js";
import {handled, type Handled} from "../member/stripping.js";
import {transfer, type Transfer} from "../member/transfer.js";
import {girderBent, type GirderResult} from "./girder.js";
import {girderLedgeChecks, ofGirder} from "./girderChecks.js";
import type {GirderSeat} from "./seat.js";
import {
  crackControlKipIn, girderAtMidspan, girderBending, girderMovement, girderSeatOn, girderShear, girderStrength, serviceMomentKipIn,
  type GirderAtMidspan, type GirderBending, type GirderShear, type GirderStrength,
} from "./unchecked.js";

/** A girder that is tried with some number of strands, of which no more is computed than is asked for. */
export class GirderTrial {
  readonly at: GirderAtMidspan;
  #strength: GirderStrength | undefined;
  #movement: ReturnType<typeof girderMovement> | undefined;
  #lacksAtMidspan: boolean | undefined;
  #cut: Transfer | undefined;
  #stripping: Handled | undefined;
  #shear: GirderShear | undefined;
  #seat: GirderSeat | undefined;
  #bent: GirderBending | undefined;

  /**
   * @param like - one of the same size and concrete
   * @throws InputError if its sizes make no girder
   */
  constructor(private readonly design: Design, catalog: Catalog, private readonly deck: Member, private readonly loads: FloorLoads, like?: GirderTrial) {
    this.at = girderAtMidspan(design, catalog, deck, loads, like?.at);
  }

  strength(): GirderStrength {
    return (this.#strength ??= girderStrength(this.at));
  }

  #moves(): ReturnType<typeof girderMovement> {
    return (this.#movement ??= girderMovement(this.design, this.at));
  }

  #transfer(): Transfer {
    return (this.#cut ??= transfer(this.at.member, this.at.spanFt));
  }

  #stripped(): Handled {
    return (this.#stripping ??= handled(this.at.member, this.at.spanFt, "stripping"));
  }

  #sheared(): GirderShear {
    return (this.#shear ??= girderShear(this.at));
  }

  #seated(): GirderSeat {
    return (this.#seat ??= girderSeatOn(this.design, this.deck, this.loads, this.at, () => this.strength(), () => this.#sheared()));
  }

  #bends(): GirderBending {
    return (this.#bent ??= girderBending(this.design, this.at, this.strength(), this.#moves(), this.#transfer()));
  }

  /** Whether anything fails at midspan that more strands would mend: strength, minimum strength, tension, cracks, sag. What fails most often comes first. */
  lacksAtMidspan(): boolean {
    return (this.#lacksAtMidspan ??= cracks(this.design, this.at) || tooWeak(this.at, this.strength()) || exceeds(this.#moves().movementIn, this.#moves().allowedMovementIn));
  }

  /** Whether anything fails that more strands would mend, there or elsewhere: load, strength, minimum strength, tension, cracks, sag, development, by the numbers of their checks. */
  lacks(): boolean {
    return this.lacksAtMidspan() || overloaded(this.#bends());
  }

  /** Whether its strands press the young concrete too hard, as they are cut or as it is lifted from its form, by the numbers of those checks. */
  crushes(): boolean {
    return crushedAtTransfer(this.at.member, this.#transfer()) || exceeds(this.#stripped().compressionKsi, this.#stripped().allowedCompressionKsi);
  }

  /** Checks of an inverted tee's ledges; none of a rectangle. */
  ledge(): Check[] {
    return this.at.kind === "inverted tee" ? ofGirder(girderLedgeChecks(this.#seated())) : [];
  }

  whole(): GirderResult {
    return girderBent(this.design, this.deck, this.loads, this.#bends(), {shear: this.#sheared(), seat: this.#seated(), stripping: this.#stripped()});
  }
}

function cracks({criteria: {tensionClass}}: Design, at: GirderAtMidspan): boolean {
  return tensionClass === "C"
    ? exceeds(serviceMomentKipIn(at), crackControlKipIn(at))
    : exceeds(Math.max(0, -at.totalStresses.bottomKsi), allowables(at.member, tensionClass).serviceTensionKsi);
}

function tooWeak({momentKipIn}: GirderAtMidspan, {strength: {designMomentKipIn}, crackingMomentKipIn}: GirderStrength): boolean {
  return exceeds(momentKipIn, designMomentKipIn) || exceeds(Math.min(CRACKING_MARGIN * crackingMomentKipIn, 2 * momentKipIn), designMomentKipIn);
}

function overloaded({development, demandPlf, capacity}: GirderBending): boolean {
  return exceeds(development.factoredMomentKipIn, development.strength.designMomentKipIn) || exceeds(demandPlf, capacity.safeLoadPlf);
}

function crushedAtTransfer(member: Member, {places}: Transfer): boolean {
  const allowed = allowables(member, "U");
  return places.some(({place, stresses: {bottomKsi, topKsi}}) =>
    exceeds(Math.max(bottomKsi, topKsi), place === "end" ? allowed.transferCompressionEndKsi : allowed.transferCompressionKsi));
}
