import type {ReasonCount, ReasonState} from "../design/reasons.js";
import {decimals} from "../units.js";

/** How many of a design's decisions have a reason, in a sentence or two: what does not stand is not counted. */
export function reasonsSentence({all, reader, starter, earlier, none}: ReasonCount): string {
  const standing = reader + starter;
  const many = (count: number) => (count === all ? "all" : decimals(count));
  const have = standing === 0 ? `None of its ${decimals(all)} decisions has a reason that stands`
    : `${standing === all ? "All" : decimals(standing)} of its ${decimals(all)} decisions ${standing === 1 ? "has" : "have"} a reason that stands`;
  const whose = standing === 0 ? "" : starter === 0 ? ", in your words" : reader === 0 ? ", in the starter\u2019s words" : `, ${decimals(reader)} in your words and ${decimals(starter)} in the starter\u2019s`;
  const rest = [
    earlier > 0 ? `${many(earlier)} ${earlier === 1 ? "was" : "were"} written for an earlier choice and ${earlier === 1 ? "does" : "do"} not count` : "",
    none > 0 && none < all ? `${decimals(none)} ${none === 1 ? "has" : "have"} none` : "",
  ].filter(Boolean).join("; ");
  return `${have}${whose}.${rest ? ` ${rest.charAt(0).toUpperCase()}${rest.slice(1)}.` : ""}`;
}

/** Whose words a reason has, to stand before them on the record. */
export function reasonTitle({standing, by}: ReasonState): string {
  if (standing === "earlier choice") return `Reason${by === "starter" ? " in the starter\u2019s words" : ""}, written for an earlier choice and not counted.`;
  return by === "starter" ? "Reason, in the starter\u2019s words." : "Reason.";
}

/** Changes that are reported one by one; of more the number is reported. */
const MOST_CHANGES = 8;

/** What has changed since a reason was written: "span: 40 ft, now 60 ft". Nothing while it stands. */
export function changesSentence({changes}: ReasonState): string {
  if (changes.length === 0) return "";
  const told = changes.slice(0, MOST_CHANGES).map(({label, then, now}) => `${label} ${then} \u2192 ${now}`);
  const more = changes.length - told.length;
  return `Changed since: ${told.join("; ")}${more > 0 ? `; and ${decimals(more)} more` : ""}.`;
}
