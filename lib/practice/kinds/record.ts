import {atLeast, atMost, comparison, type Check} from "../../checks.js";
import {given} from "../../step.js";
import type {Draw} from "../draw.js";
import type {Content, Kind, Option} from "../item.js";
import {oneStep} from "../keys.js";
import {choicePart, numberPart, slip} from "../parts.js";
import {measure, prose} from "../prose.js";
import {unitText} from "../../units.js";

/** Checks that a record lists: what is compared, on which side the limit lies, and a limit that such a thing may have. */
const COMPARED = [
  {id: "deck", label: "Superimposed load on the deck", unit: "psf", side: "at most", limit: [80, 180, 1]},
  {id: "beam", label: "Moment in the edge beam", unit: "kip-ft", side: "at most", limit: [300, 900, 10]},
  {id: "seat", label: "Seat of the deck after tolerances", unit: "in", side: "at least", limit: [3, 4.5, 0.25]},
  {id: "sag", label: "Sag under live load", unit: "in", side: "at most", limit: [1.2, 2, 0.1]},
  {id: "ceiling", label: "Ceiling height", unit: "in", side: "at least", limit: [90, 108, 1]},
  {id: "column", label: "Axial load on the interior column", unit: "kip", side: "at most", limit: [400, 1200, 10]},
] as const;

/** What the list of checks of a record says: which one fails, and which is used most. */
function readChecks(draw: Draw): Content {
  const chosen = draw.shuffled(COMPARED).slice(0, 4);
  // Uses in whole percents, far enough apart to tell; one at most above 100 %.
  const top = draw.one([88, 92, 96, 104, 108, 112, 117, 125]);
  const high = draw.shuffled([top, draw.from(74, 82, 1)]);
  const rest = draw.shuffled([draw.from(58, 70, 1), draw.from(30, 52, 1)]);
  // Nobody builds a ceiling three times as high as it must be.
  const least = chosen.filter(({side}) => side === "at least");
  const inOrder = [...least, ...chosen.filter(({side}) => side === "at most")];
  const uses = new Map([...high, ...rest].map((use, i) => [inOrder[i]?.id, use]));
  const checks = chosen.map(({id, label, unit, side, limit: [from, to, step]}): Check => {
    const limit = draw.from(from, to, step);
    const use = (uses.get(id) ?? top) / 100;
    const text = {id, label, unit, clause: "", holds: "", fails: ""};
    // To three digits, as a record prints them.
    return side === "at most" ? atMost(text, Number((use * limit).toPrecision(3)), limit) : atLeast(text, Number((limit / use).toPrecision(3)), limit);
  });
  const failing = checks.find(({verdict}) => verdict === "fails");
  const most = checks.reduce((one, other) => (other.utilization > one.utilization ? other : one));
  const nearest = checks.reduce((one, other) => (Math.abs(other.demand - other.capacity) < Math.abs(one.demand - one.capacity) ? other : one));
  const inverse = checks.find(({sense, verdict}) => sense === "at least" && verdict !== "fails");
  const NONE = "none";
  return {
    question: [prose`A record lists four checks, each with what was found and its limit.`],
    givens: checks.flatMap((check) => {
      const numbers = comparison(check);
      return numbers ? [{name: check.label, value: numbers.found, unit: check.unit}, {name: `${check.label}, ${numbers.side}`, value: numbers.limit, unit: check.unit}] : [];
    }),
    table: {
      title: "Checks", columns: ["check", "found", "limit", "unit"].map((name) => ({name, unit: ""})), source: "a made-up design",
      rows: checks.map((check) => {
        const numbers = comparison(check);
        return [check.label, numbers?.found ?? "", `${numbers?.side} ${numbers?.limit}`, unitText(check.unit)];
      }),
    },
    parts: [
      choicePart({
        ask: prose`Which of them fails?`, key: failing?.id ?? NONE,
        options: [
          ...checks.map(({id, label, sense}): Option => ({id, text: [label], slip: id === inverse?.id && sense === "at least"
            ? {name: "read a least as a most", says: "That one must be at least so much, and it is more."} : {name: "took one that holds", says: "It is on the right side of its limit."}})),
          {id: NONE, text: ["none"], slip: {name: "overlooked a failing check", says: "One of them is on the wrong side of its limit."}},
        ],
      }),
      numberPart({
        ask: prose`How much of its limit does the check use that is used most (of a least value: the least over what is there)?`, label: "use", unit: "%", key: 100 * most.utilization, tolerance: {percent: 1},
        slips: [
          slip("upside down", 100 / most.utilization, "Of a most: found over limit. Of a least: limit over found."), slip("what is missing for the use", Math.abs(100 - 100 * most.utilization), "That is how far it is from its limit."),
          slip("smallest difference for greatest use", 100 * nearest.utilization, "A difference of one foot is little of a hundred and much of two: compare shares."),
        ],
        working: oneStep("Use of the limit", {symbol: "u", label: `use of: ${most.label.toLowerCase()}`, expression: "100 * d / c", unit: "%", source: "definition", result: 100 * most.utilization, values: {d: given(most.demand, most.unit, most.sense === "at most" ? "found" : "least value"), c: given(most.capacity, most.unit, most.sense === "at most" ? "limit" : "found")}}),
        because: prose`It is the check: ${most.label.toLowerCase()}, ${measure(Math.round(100 * most.utilization), "%")} used.`,
      }),
    ],
  };
}

export const RECORD_KINDS: readonly Kind[] = [
  {id: "read-checks", topic: "record", level: 1, title: "Reading a list of checks", make: readChecks},
];
