import type {Catalog} from "../catalog.js";
import type {Check} from "../checks.js";
import {fieldLabel, fieldWords} from "../design/fieldWords.js";
import {usedPercent} from "../pair.js";
import type {FieldChange} from "./changes.js";
import {plainId} from "./checkNames.js";
import {OUTSIDE, namedBy} from "./remedies.js";
import type {Mend} from "./trial.js";

/** A remedy in plain words: what to change, and what comes of it; where there is none, what the check itself advises and why that does not do. */
export interface RemedyWords {
  /** "Set the edge beam's ledge projection to 8 in rather than 6 in"; empty where nothing mends the check. */
  readonly change: string;
  /** "the check then holds (93 % of its limit); nothing new fails."; where nothing mends it, that this is so and why. */
  readonly outcome: string;
  /** The check's own words, where nothing mends it; empty elsewhere. */
  readonly own: string;
}

/** The words of what was found for a check, or of that nothing was. */
export function remedyWords(check: Check, mend: Mend | undefined, {checks, catalog}: {readonly checks: readonly Check[]; readonly catalog: Catalog}): RemedyWords {
  return mend ? {change: changeWords(mend.changes), outcome: outcomeWords(mend, checks), own: ""} : {change: "", outcome: noneWords(check, catalog), own: check.message};
}

/** What a remedy changes, as one sentence without its full stop. */
function changeWords(changes: readonly FieldChange[]): string {
  const own = (group: string, name: string) => changes.find(({path}) => path === `${group}.${name}`);
  const pieces = ["deck", "roof"].map((group) => pieceWords(group, own(group, "member"), own(group, "pattern")));
  const rest = changes.filter(({path}) => !/^(deck|roof)\.(member|pattern)$/.test(path));
  const set = rest.filter(({to}) => to !== undefined).map(({path, from, to}) => `${nameOf(path)} to ${valueWords(path, to)}${from === undefined ? "" : ` rather than ${valueWords(path, from)}`}`);
  const gone = rest.filter(({to}) => to === undefined).map(({path, from}) => `${nameOf(path)} of ${valueWords(path, from)}`);
  const parts = [...pieces.flatMap((words) => words ?? []), ...(set.length > 0 ? [`set ${joined(set)}`] : []), ...(gone.length > 0 ? [`give up ${joined(gone)}`] : [])];
  return capital(parts.join("; "));
}

/** Member and strands are chosen together. */
function pieceWords(group: string, member: FieldChange | undefined, pattern: FieldChange | undefined): string | undefined {
  const of = group === "roof" ? " in the roof" : "";
  if (member) return `take ${String(member.to)}${of}${pattern ? ` with strands ${String(pattern.to)}` : ""} rather than ${String(member.from)}${pattern ? ` with ${String(pattern.from)}` : ""}`;
  return pattern && `use strands ${String(pattern.to)}${of} rather than ${String(pattern.from)}`;
}

/** Where a label does not read as a noun with its article, or does not name its part. */
const NAMES: Readonly<Record<string, string>> = {
  "air.baysServed": "the number of bays along that a main serves",
  "air.returnEvery": "\u201ca return in every n-th free space\u201d",
  "air.rows": "the number of rows of bays that a main serves",
  "air.supplyEvery": "\u201ca feeder in every n-th space between stems\u201d",
  "bay.baysAlong": "the number of bays along the edge",
  "bay.floors": "the number of floors carried",
  "criteria.fireRestrained": "\u201crestrained in a fire\u201d",
  "edgeBeam.jointGapIn": "the joint at the beam's face",
  "parking.baysPerModule": "the number of bays to a module",
  "parking.endFt": "what is kept free at each end",
  "parking.rampRuns": "the number of runs to a story",
  "parking.setbackIn": "the setback of the heads of stalls",
  "parking.vans": "where accessible vans park",
  "roof.drainage": "what makes the roof fall",
  "services.lightIn": "the height of light fittings",
  "story.ceilingDropIn": "the ceiling's drop below the ledge",
  "story.floorToFloorFt": "the floor-to-floor height",
  "topping.followShare": "the share of the camber that the surface follows",
  "walls.endFill": "what fills the deck where whole pieces do not cover the length",
  "walls.panelStories": "the number of stories in one panel",
  "walls.panelSupport": "how the panels are carried",
  "walls.spandrelUpstandIn": "the height of the end spandrel above the floor",
};

/** Whose field it is, where its label does not say so. */
const OWNERS: Readonly<Record<string, {readonly owner: string; readonly said: RegExp}>> = {
  deck: {owner: "the deck's", said: /deck|topping/},
  edgeBeam: {owner: "the edge beam's", said: /beam/},
};

function nameOf(path: string): string {
  const label = fieldLabel(path);
  if (/^loads\.rooms\.\d+\.own\.livePsf$/.test(path)) return "the live load entered for the room";
  const owner = OWNERS[path.split(".")[0] ?? ""];
  return NAMES[path] ?? (owner && !owner.said.test(label) ? `${owner.owner} ${label}` : `the ${label}`);
}

/** A value in its field's words; a choice of several words in quotation marks. */
function valueWords(path: string, value: unknown): string {
  const words = fieldWords(path, value);
  return typeof value === "string" && words.includes(" ") ? `\u201c${words}\u201d` : words;
}

/** Checks that are named before the rest is counted. */
const NAMED = 3;

function outcomeWords({check: after, checks: then, newly}: Mend, checks: readonly Check[]): string {
  const own = `the check ${after ? holdsAt(after) : "is then no longer asked"}`;
  const count = (all: readonly Check[]) => all.filter(({verdict}) => verdict === "fails").length;
  const [before, left] = [count(checks), count(then)];
  if (newly.length > 0) {
    const breaks = newly.every(({verdict}) => verdict === "fails") ? "fail" : "fail or lie beyond the method";
    return `${own}, but ${listed(newly)} would then ${breaks}${left < before ? `: ${left} ${left === 1 ? "fails" : "fail"} where ${before} do now` : ", so that no fewer checks fail"}.`;
  }
  if (left === 0) return `${own}, and no check fails any more.`;
  const others = before - left - 1;
  return `${own}${others > 0 ? `, and so ${others === 1 ? "does one other" : `do ${others} others`}` : ""}; nothing new fails.`;
}

function holdsAt({utilization}: Check): string {
  return utilization > JUST ? "then just holds" : `then holds (${usedPercent(utilization)} of its limit)`;
}

/** From here on a use would read as the whole. */
const JUST = 0.995;

function listed(checks: readonly Check[]): string {
  const named = checks.slice(0, NAMED).map(({label}) => `\u201c${label}\u201d`);
  const more = checks.length - named.length;
  return joined(more > 0 ? [...named, `${more} more`] : named);
}

function joined(words: readonly string[]): string {
  return words.length > 1 ? `${words.slice(0, -1).join(", ")} and ${words.at(-1)}` : words.join("");
}

/** That nothing which was tried makes the check hold, and what of its own words no field of a design holds. */
function noneWords(check: Check, catalog: Catalog): string {
  const named = namedBy(check, catalog);
  const beyond = named.flatMap(({remedy: {outside}}) => outside ?? []).join("; ");
  const detail = OUTSIDE[plainId(check)];
  if (detail !== undefined) return `No field of the design mends it; what does is ${detail}.`;
  if (!named.some(({ways}) => ways)) return `No field of the design mends it${beyond && `: ${beyond}`}.`;
  return `Nothing of that which is a field of the design makes it hold, alone or together, within the fields' ranges${beyond && `; and ${beyond}`}.`;
}

/** A remedy's words as one text. */
export function remedyText({change, outcome, own}: RemedyWords): string {
  return change ? `${change}: ${outcome}` : `${own} ${outcome}`;
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
