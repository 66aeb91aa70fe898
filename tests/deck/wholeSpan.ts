import {expect} from "vitest";
import type {DeckMemberRow} from "../../lib/catalog.js";
import {handbookCriteria, type Criteria} from "../../lib/deck/criteria.js";
import type {LimitName} from "../../lib/deck/limits.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {usualPatterns} from "../../lib/deck/table.js";
import {allowables} from "../../lib/member/allowables.js";
import {CRACK_CONTROL_KSI, crackedStateAt} from "../../lib/member/crackedSection.js";
import type {Member} from "../../lib/member/member.js";
import {uniformMomentKipIn} from "../../lib/member/moments.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {memberStrength} from "../../lib/member/strength.js";
import {fiberStresses} from "../../lib/member/stress.js";
import {memberWith} from "../support/members.js";

const own = (member: Member) => (member.selfWeightPlf + member.toppingWeightPlf) / member.widthFt;

/** Stresses at a place under a superimposed load, psf. */
export function stressesUnder(member: Member, spanFt: number, share: number, loadPsf: number, criteria: Criteria) {
  const state = prestressState(member, spanFt, share, criteria.superimposedDeadPsf * member.widthFt);
  const unit = uniformMomentKipIn(1, spanFt, share);
  return fiberStresses(member, state, state.effectiveForceKip, {
    precastKipIn: (member.selfWeightPlf + member.toppingWeightPlf) * unit, fullKipIn: loadPsf * member.widthFt * unit,
  });
}

/** The least load over places a four-hundredth of the span apart, psf, and the greatest that may be missed of it. */
interface Searched {
  readonly leastPsf: number;
  readonly missed: number;
}

/** What each limit would allow if the whole span were searched. */
function searched(member: Member, spanFt: number, criteria: Criteria): Record<string, Searched> {
  const most = allowables(member, criteria.tensionClass);
  const {full, composite} = member;
  const topIn = composite ? composite.interfaceAboveCentroidIn : full.ytIn;
  const least: Record<string, Searched> = {};
  const see = (name: string, psf: number, missed: number) => {
    least[name] = {leastPsf: Math.min(psf, least[name]?.leastPsf ?? Infinity), missed};
  };
  for (let share = 0.15; share < 0.5001; share += 0.0025) {
    const state = prestressState(member, spanFt, share, criteria.superimposedDeadPsf * member.widthFt);
    const perPsf = uniformMomentKipIn(1, spanFt, share) * member.widthFt;
    const bare = stressesUnder(member, spanFt, share, 0, criteria);
    see("strength", memberStrength(member, share, state.losses.effectiveStressKsi).designMomentKipIn / perPsf - own(member), 0.0005);
    see("service tension", ((bare.bottomKsi + most.serviceTensionKsi) * full.sbIn3) / perPsf, 0.001);
    if (topIn > 0) for (const [name, ksi] of [["total compression", most.totalCompressionKsi], ["sustained compression", most.sustainedCompressionKsi]] as const) {
      see(name, ((ksi - bare.topKsi) * full.inertiaIn4) / (perPsf * topIn), 0.001);
    }
    see("crack control", crackedStateAt(member, state, CRACK_CONTROL_KSI.most).momentKipIn / perPsf - own(member), 0.006);
  }
  return least;
}

// Load factors of 1 and a live load that all stays: what a limit allows is then the very load that reaches it.
const PLAIN: Criteria = {
  ...handbookCriteria(false), superimposedDeadPsf: 10, sustainedLiveShare: 1, deadFactor: 1, liveFactor: 1, deadOnlyFactor: 1,
  limits: ["strength", "service tension", "crack control", "total compression", "sustained compression"],
};

/** Holds the loads that limits allow a tee with depressed strands against a search of its whole span. */
export function expectLeastLoads(designation: string, row: DeckMemberRow, spansFt: readonly number[]): void {
  const patterns = usualPatterns(row).filter((text) => !text.endsWith("S"));
  for (const toppingIn of row.use === "pretopped" ? [0] : [0, 2, 4]) for (const text of [patterns.at(0), patterns.at(-1)]) for (const spanFt of spansFt) {
    const member = memberWith(designation, text as string, {toppingIn});
    const classT = safeLoad(member, spanFt, PLAIN).limitsPsf;
    const classC = safeLoad(member, spanFt, {...PLAIN, tensionClass: "C"}).limitsPsf;
    for (const [name, {leastPsf, missed}] of Object.entries(searched(member, spanFt, PLAIN))) {
      const foundPsf = {...classC, ...classT}[name as LimitName] as number;
      // The topping's own top may set a compression limit; the search knows the member's alone.
      if (toppingIn === 0 || !name.endsWith("compression")) expect(foundPsf, `${name}, ${text} with ${toppingIn} in at ${spanFt} ft, too low`).toBeGreaterThan(leastPsf - 0.0001 * (Math.abs(leastPsf) + own(member)));
      expect(foundPsf, `${name}, ${text} with ${toppingIn} in at ${spanFt} ft`).toBeLessThan(leastPsf + missed * (Math.abs(leastPsf) + own(member)));
    }
  }
}
