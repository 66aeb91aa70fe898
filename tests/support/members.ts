import {deckRow, layoutOf, strandOf} from "../../lib/deck/deckMember.js";
import {HANDBOOK_HUMIDITY_PERCENT, HANDBOOK_STRENGTHS_PSI} from "../../lib/deck/criteria.js";
import {makeMember, type Member, type MemberInput} from "../../lib/member/member.js";
import {parsePattern} from "../../lib/prestress/pattern.js";
import {shapeOf} from "../../lib/sections/designation.js";
import {catalog} from "./designs.js";

/** What a test member may have otherwise than the handbook's tables. */
interface Different extends Partial<Omit<MemberInput, "layout">> {
  /** Heights of the strands' centroid, in; without them the usual layout is taken. */
  readonly endIn?: number;
  readonly centerIn?: number;
}

/** A catalog member with a pattern, in the concretes of the handbook's tables, untopped unless otherwise stated. */
export function memberWith(designation: string, text: string, different: Different = {}): Member {
  const {endIn, centerIn, ...input} = different;
  const row = deckRow(catalog, designation);
  const shape = shapeOf(catalog, designation);
  const pattern = parsePattern(text);
  return makeMember({
    shape,
    layout: layoutOf(shape, pattern, strandOf(catalog, pattern), row, endIn, centerIn),
    concreteKind: "normalweight",
    strengthPsi: HANDBOOK_STRENGTHS_PSI.member,
    releaseStrengthPsi: HANDBOOK_STRENGTHS_PSI.release,
    toppingIn: 0,
    toppingStrengthPsi: HANDBOOK_STRENGTHS_PSI.topping,
    humidityPercent: HANDBOOK_HUMIDITY_PERCENT,
    ...input,
  });
}
