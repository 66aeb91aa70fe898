import type {Catalog} from "../catalog.js";
import {HANDBOOK_HUMIDITY_PERCENT, HANDBOOK_STRENGTHS_PSI} from "../deck/criteria.js";
import {deckRow} from "../deck/deckMember.js";
import {patternMember} from "../deck/table.js";
import {allowables} from "../member/allowables.js";
import type {Member} from "../member/member.js";

/** An allowed stress, psi, by its name in the published rows, for concrete of a strength (at release, where it is one). */
export function allowedStressPsi(catalog: Catalog, limit: string, strengthPsi: number): number {
  const atRelease = limit.startsWith("transfer");
  const member = memberOf(catalog, atRelease ? HANDBOOK_STRENGTHS_PSI.member : strengthPsi, atRelease ? strengthPsi : HANDBOOK_STRENGTHS_PSI.release);
  const allowed = allowables(member, limit.endsWith("U") ? "U" : "T");
  const byName: Readonly<Record<string, number>> = {
    "service tension U": allowed.serviceTensionKsi,
    "service tension T": allowed.serviceTensionKsi,
    "transfer compression end": allowed.transferCompressionEndKsi,
    "transfer compression": allowed.transferCompressionKsi,
    "transfer tension end": allowed.transferTensionEndKsi,
    "transfer tension": allowed.transferTensionKsi,
    "sustained compression": allowed.sustainedCompressionKsi,
    "total compression": allowed.totalCompressionKsi,
  };
  return 1000 * (byName[limit] ?? NaN);
}

/** The limits ask for a member's strengths alone; any member of the catalog will do. */
function memberOf(catalog: Catalog, strengthPsi: number, releaseStrengthPsi: number): Member {
  return patternMember(catalog, deckRow(catalog, "10DT24"), "68-S", {
    concreteKind: "normalweight", strengthPsi, releaseStrengthPsi, toppingIn: 0,
    toppingStrengthPsi: HANDBOOK_STRENGTHS_PSI.topping, humidityPercent: HANDBOOK_HUMIDITY_PERCENT,
  });
}
