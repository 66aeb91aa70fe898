import type {Catalog} from "../catalog.js";
import type {Check} from "../checks.js";
import {withValues} from "../design/edit.js";
import type {Design} from "../design/design.js";
import {fieldOf, type NumberPath} from "../design/fields.js";
import {InputError} from "../errors.js";
import type {FloorLoads} from "../loads/floorLoads.js";
import type {Member} from "../member/member.js";
import {edgeBeam, type EdgeBeamResult} from "./edgeBeam.js";

/** The least of something for which the edge beam holds, all else kept. */
export interface BeamTake {
  /** The beam with it. */
  readonly beam: EdgeBeamResult;
  /** What makes it the least: the check that would fail with a step less, or that is used most where there is no less. */
  readonly governs: Check;
  /** Fields of the design that it changes, with their new values. */
  readonly changes: Readonly<Record<string, unknown>>;
  /** What fails with it and does not without: more strands carry a beam that they crack as it is lifted. */
  readonly breaks: readonly Check[];
}

/** An answer before it is known what it breaks. */
type Found = Omit<BeamTake, "breaks">;

/** Answers to "what would it take"; an answer is undefined where nothing within the fields' ranges suffices. */
export interface EdgeBeamTakes {
  /** Least ledge depth; undefined without a ledge. */
  readonly ledgeDepth: BeamTake | undefined;
  readonly webWidth: BeamTake | undefined;
  /** Least area of bottom bars over all their sizes; of strands the fewest. */
  readonly bars: BeamTake | undefined;
  readonly strands: BeamTake | undefined;
}

/** Checks that a deeper ledge is the remedy for. */
const OF_LEDGE: readonly string[] = [
  "ledge depth", "ledge layers", "ledge punching interior", "ledge punching end", "ledge line", "ledge shear", "ledge lever", "ledge bars", "beam stirrups",
];
/** Checks that a wider web is the remedy for. */
const OF_WEB: readonly string[] = [
  "beam cage", "beam strength", "beam least steel", "beam ductility", "beam bottom steel", "beam strands", "beam shear", "beam shear and torsion",
  "beam stirrups", "pocket web", "beam cracks",
];
/** Checks that more or other bars are the remedy for. */
const OF_BARS: readonly string[] = [
  "beam strength", "beam least steel", "beam ductility", "beam bottom steel", "beam cracks", "beam sag", "ledge punching interior", "ledge punching end", "beam shear and torsion",
];
/** Checks that more strands are the remedy for, or that tell of too many. */
const OF_STRANDS: readonly string[] = [
  "beam strength", "beam least steel", "beam bottom steel", "beam strands", "beam tension", "beam total compression", "beam sustained compression", "beam sag",
  "beam transfer compression end", "beam transfer compression midspan", "ledge punching interior", "ledge punching end",
];

/**
 * The least ledge, web and steel for which the checks hold that each is the remedy for, each with all else of the design
 * kept. Every value of the field's steps is tried from the least up, because more is not always better: a deeper ledge
 * makes the beam deeper and heavier.
 */
export function edgeBeamTakes(design: Design, catalog: Catalog, member: Member, loads: FloorLoads): EdgeBeamTakes {
  const at = (changes: Readonly<Record<string, unknown>>): EdgeBeamResult | undefined => {
    try {
      return edgeBeam(withValues(design, changes), catalog, member, loads);
    } catch (problem) {
      // Some sizes within the fields' ranges make no beam: a ledge deeper than the beam, a joint wider than a pocket.
      if (problem instanceof InputError) return undefined;
      throw problem;
    }
  };
  const {kind, steel} = design.edgeBeam;
  const leastOf = (path: NumberPath, ids: readonly string[]) => first(stepsOf(path), (value) => ({[path]: value}), at, ids);
  const failed = new Set(at({})?.checks.filter(fails).map(({id}) => id));
  const answer = (take: Found | undefined): BeamTake | undefined => take && {...take, breaks: take.beam.checks.filter((check) => fails(check) && !failed.has(check.id))};
  return {
    ledgeDepth: kind === "ledge" ? answer(leastOf("edgeBeam.ledgeDepthIn", OF_LEDGE)) : undefined,
    webWidth: answer(leastOf("edgeBeam.webWidthIn", OF_WEB)),
    bars: steel === "bars" ? answer(leastBars(at)) : undefined,
    // Stryker disable next-line ConditionalExpression: of a beam with bars no number of strands leaves none
    strands: steel === "strands" ? answer(first(stepsOf("edgeBeam.strands"), (strands) => ({"edgeBeam.strands": strands}), at, OF_STRANDS, ({bars}) => bars.count === 0)) : undefined,
  };
}

type At = (changes: Readonly<Record<string, unknown>>) => EdgeBeamResult | undefined;

/** Every value of a number field from its least to its most. */
function stepsOf(path: NumberPath): number[] {
  const {min, max, step} = fieldOf(path);
  // Stryker disable next-line ArithmeticOperator: values beyond the field's are refused, and so passed over
  return Array.from({length: Math.floor((max - min) / step + 1e-9) + 1}, (_, i) => min + i * step);
}

/** The first value for which none of the checks fails. */
function first(
  values: readonly number[], changesOf: (value: number) => Readonly<Record<string, unknown>>, at: At, ids: readonly string[],
  also: (beam: EdgeBeamResult) => boolean = () => true,
): Found | undefined {
  let before: Check | undefined;
  for (const value of values) {
    const changes = changesOf(value);
    const beam = at(changes);
    if (!beam) continue;
    const failing = failingOf(beam, ids);
    if (!failing && also(beam)) return {beam, changes, governs: before ?? mostUsed(beam, ids)};
    before = failing ?? mostUsed(beam, ids);
  }
  return undefined;
}

function fails({verdict}: Check): boolean {
  return verdict === "fails" || verdict === "out of range";
}

/** The failing check that is passed most. */
function failingOf({checks}: EdgeBeamResult, ids: readonly string[]): Check | undefined {
  const failing = checks.filter((check) => ids.includes(check.id) && fails(check));
  // Stryker disable next-line EqualityOperator: of two alike either does
  return failing.length === 0 ? undefined : failing.reduce((most, check) => (check.utilization > most.utilization ? check : most));
}

function mostUsed({checks}: EdgeBeamResult, ids: readonly string[]): Check {
  // Stryker disable next-line EqualityOperator: of two alike either does
  return checks.filter(({id}) => ids.includes(id)).reduce((most, check) => (check.utilization > most.utilization ? check : most));
}

/** The size of bar whose fewest bars make the least area; of equal ones the larger, which are fewer. */
function leastBars(at: At): Found | undefined {
  let least: Found | undefined;
  for (const barSize of Object.keys(fieldOf("edgeBeam.barSize").choices)) {
    const changes = {"edgeBeam.barSize": barSize};
    const beam = at(changes);
    // Stryker disable next-line EqualityOperator: no two areas part by so little
    if (!beam || failingOf(beam, OF_BARS) || (least && beam.bars.areaIn2 > least.beam.bars.areaIn2 + 1e-9)) continue;
    least = {beam, changes, governs: mostUsed(beam, OF_BARS.filter((id) => !id.startsWith("ledge")))};
  }
  return least;
}
