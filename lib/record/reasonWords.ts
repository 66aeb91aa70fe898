import type {ReasonCount, ReasonState} from "../design/reasons.js";
import {decimals} from "../units.js";

/** How many of a design's decisions have a reason, in a sentence or two: what does not stand is not counted. */
export function reasonsSentence({all, reader, starter, rule, earlier, none}: ReasonCount): string {
  const standing = reader + starter + rule;
  const many = (count: number) => (count === all ? "all" : decimals(count));
  const have = standing === 0 ? `None of its ${decimals(all)} decisions has a reason that stands`
    : `${standing === all ? "All" : decimals(standing)} of its ${decimals(all)} decisions ${standing === 1 ? "has" : "have"} a reason that stands`;
  const hands = ([[reader, "in your words"], [starter, "in the starter\u2019s"], [rule, "in the rules\u2019"]] as const).filter(([count]) => count > 0);
  const whose = hands.length === 0 ? "" : hands.length === 1 ? `, ${hands[0]?.[1]}${reader > 0 ? "" : " words"}`
    : `, ${hands.map(([count, whose]) => `${decimals(count)} ${whose}`).join(hands.length === 2 ? " and " : ", ")}`;
  const rest = [
    earlier > 0 ? `${many(earlier)} ${earlier === 1 ? "was" : "were"} written for an earlier choice and ${earlier === 1 ? "does" : "do"} not count` : "",
    none > 0 && none < all ? `${decimals(none)} ${none === 1 ? "has" : "have"} none` : "",
  ].filter(Boolean).join("; ");
  return `${have}${whose}.${rest ? ` ${rest.charAt(0).toUpperCase()}${rest.slice(1)}.` : ""}`;
}

/** Whose words a reason has, to stand before them on the record. */
export function reasonTitle({standing, by}: ReasonState): string {
  if (standing === "earlier choice") return `Reason${HAND[by ?? "reader"]}, written for an earlier choice and not counted.`;
  return by === "reader" || by === undefined ? "Reason." : `Reason,${HAND[by]}.`;
}

/** In whose words a reason is, where they are not the reader's. */
const HAND = {reader: "", starter: " in the starter\u2019s words", rule: " in the rule\u2019s words"} as const;

/** Changes that are reported one by one; of more the number is reported. */
const MOST_CHANGES = 8;

/** What has changed since a reason was written: "span: 40 ft, now 60 ft". Nothing while it stands. */
export function changesSentence({changes}: ReasonState): string {
  if (changes.length === 0) return "";
  const told = changes.slice(0, MOST_CHANGES).map(({label, then, now}) => `${label} ${then} \u2192 ${now}`);
  const more = changes.length - told.length;
  return `Changed since: ${told.join("; ")}${more > 0 ? `; and ${decimals(more)} more` : ""}.`;
}
