import type {Criteria} from "../../lib/deck/criteria.js";
import {safeLoad, type SafeLoad} from "../../lib/deck/safeLoad.js";
import type {Member} from "../../lib/member/member.js";
import {memberWith} from "../support/members.js";
import {MIX, SPANS} from "./mix.js";

/** The members of the mix with their names. */
export function mixMembers(): {name: string; member: Member}[] {
  return MIX.map(([designation, text, toppingIn]) => ({name: `${designation}${toppingIn ? `+${toppingIn}` : ""} ${text}`, member: memberWith(designation, text, {toppingIn})}));
}

/** Evaluates one member-span of the mix. */
export function evaluateOne(members: readonly Member[], criteria: Criteria, i: number): SafeLoad {
  return safeLoad(members[i % members.length] as Member, SPANS.fromFt + (i % SPANS.count), criteria);
}
