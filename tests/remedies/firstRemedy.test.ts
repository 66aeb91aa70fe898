import {describe, expect, test} from "vitest";
import type {Check} from "../../lib/checks.js";
import type {Design} from "../../lib/design/design.js";
import {withValue, withValues} from "../../lib/design/edit.js";
import {fieldAt} from "../../lib/design/fields.js";
import {fieldWords} from "../../lib/design/fieldWords.js";
import {valueAt} from "../../lib/design/plain.js";
import {reasonState} from "../../lib/design/reasons.js";
import {usedPercent} from "../../lib/pair.js";
import {valuesOf} from "../../lib/remedies/changes.js";
import {plainId} from "../../lib/remedies/checkNames.js";
import {everyRemedy, failing, firstRemedy, remedyFor, type FirstRemedy, type FoundRemedy} from "../../lib/remedies/firstRemedy.js";
import {remedyText} from "../../lib/remedies/remedyWords.js";
import {allChecks, isHolding} from "../../lib/remedies/trial.js";
import {caseOf, designOf} from "../fuzz/designs.js";
import {once} from "../support/once.js";
import {catalog, seed} from "../support/designs.js";
import {ODD} from "./odd.js";

const done = (design: Design, {changes}: Pick<FoundRemedy, "changes">): Design => withValues(design, valuesOf(changes));
const checksIn = (design: Design): readonly Check[] => allChecks(design, catalog) ?? [];
const opens = (checks: readonly Check[]): string[] => checks.filter((check) => !isHolding(check)).map(({id}) => id);

/** What is found for the check that each odd design was made to fail. */
const found = once(() => ODD.map(({id, design}) => {
  const before = checksIn(design);
  const check = failing(before).find((one) => plainId(one) === id) as Check;
  return {id, design, before, check, remedy: remedyFor(design, catalog, check, before)};
}));

/** Runs a search to its end. */
function first(design: Design): FirstRemedy | undefined {
  const search = firstRemedy(catalog, design);
  for (let step = search.next(); ; step = search.next()) if (step.done) return step.value;
}

describe("the remedy of a failed check", () => {
  test("is found for every check of the table, but for what no field mends or only at another's cost", () => {
    expect(found().filter(({remedy}) => remedy.changes.length === 0).map(({id}) => id)).toEqual(["deck fire cover"]);
    expect(found().filter(({remedy}) => remedy.changes.length > 0 && !remedy.lowers).map(({id}) => id)).toEqual(["parking module"]);
  });

  test("makes it hold once it is done, with as many failing as it said, and breaks nothing of which it does not speak", () => {
    for (const {id, design, before, check, remedy} of found()) {
      if (remedy.changes.length === 0) continue;
      const after = checksIn(done(design, remedy));
      expect(after.filter((one) => one.id === check.id).every(isHolding), id).toBe(true);
      expect(failing(after).length, id).toBe(remedy.failing);
      const newly = after.filter((one) => !isHolding(one) && !opens(before).includes(one.id));
      expect(newly.filter(({label}) => !remedy.words.outcome.includes(`\u201c${label}\u201d`)).map((one) => one.id), id).toEqual([]);
      expect(remedy.lowers, id).toBe(remedy.failing < failing(before).length && opens(after).length < opens(before).length);
      if (newly.length === 0) expect(remedy.words.outcome, id).toMatch(/nothing new fails\.$|no check fails any more\.$/);
    }
  });

  test("says with its fields' own words what the design has before and after, and no other number", () => {
    for (const {id, design, check, remedy} of found()) {
      if (remedy.changes.length === 0) continue;
      const after = done(design, remedy);
      let rest = remedy.words.change;
      for (const {path, from, to} of remedy.changes) {
        expect([valueAt(design, path), valueAt(after, path)], id).toEqual([from, to]);
        if (to !== undefined) expect(remedy.words.change, id).toContain(fieldWords(path, to));
      }
      const known = remedy.changes.flatMap(({path, from, to}) => [from, to].flatMap((value) => (value === undefined ? [] : fieldWords(path, value))));
      // A longer text may begin as a shorter one does.
      for (const words of known.sort((a, b) => b.length - a.length)) rest = rest.replace(words, "");
      expect(rest, id).not.toMatch(/\d/);
      const now = checksIn(after).find((one) => one.id === check.id);
      if (now) expect(remedy.words.outcome, id).toContain(now.utilization > 0.995 ? "the check then just holds" : `then holds (${usedPercent(now.utilization)} of its limit)`);
      else expect(remedy.words.outcome, id).toContain("is then no longer asked");
    }
  });

  test("goes no step farther than it must, where one number does", () => {
    let tried = 0;
    for (const {id, design, before, check, remedy: {changes, lowers}} of found()) {
      const [change, ...more] = changes;
      const field = change && fieldAt(change.path);
      if (!change || more.length > 0 || !lowers || field?.kind !== "number" || typeof change.from !== "number") continue;
      const [from, to] = [change.from, change.to as number];
      const nearer = Number((to - Math.sign(to - from) * field.step).toFixed(6));
      if (Math.sign(nearer - from) !== Math.sign(to - from)) continue;
      tried += 1;
      const after = checksIn(withValue(design, change.path, nearer));
      expect(!after.filter((one) => one.id === check.id).every(isHolding) || opens(after).some((one) => !opens(before).includes(one)), id).toBe(true);
    }
    expect(tried).toBeGreaterThan(40);
  });

  test("takes a second change along where the first would break something", () => {
    const two = found().find(({id, remedy}) => id === "transfer compression hold-down" && remedy.changes.length > 1);
    expect(two?.remedy.words.change).toMatch(/deck's concrete strength.*release strength/);
    expect(two?.remedy.words.outcome).toMatch(/no check fails any more\.$/);
  });

  test("says so where it breaks as much as it mends", () => {
    const module = found().find(({id, remedy}) => id === "parking module" && !remedy.lowers);
    expect(module?.remedy.words.outcome).toMatch(/^the check then just holds, but \u201cAisle against what cars need to turn in\u201d would then fail, so that no fewer checks fail\.$/);
  });

  test("is, where there is none, what the check's own words advise and why no field does it", () => {
    const {check, remedy} = found().find(({id}) => id === "deck fire cover") as ReturnType<typeof found>[number];
    expect(remedy.words).toEqual({change: "", own: check.message, outcome: "No field of the design mends it: stems are as wide as the plant's forms, and a coat is no part of a deck's design."});
    expect(remedyText(remedy.words)).toMatch(/^The strands would get too hot: wider stems or a coating that insulates them\. No field/);
    const [other] = found();
    expect(other && remedyText(other.remedy.words)).toMatch(/^Set the live load entered for the room to 150 psf rather than 30 psf: the check then just holds, and no check fails any more\.$/);
  });
});

/** Seeds of designs drawn at random that are pressed until nothing fails, or nothing more can be done. */
const SEEDS = 15;
const MOST_PRESSES = 60;

describe("the first remedy", () => {
  test("is that of the first check that fails in the order of the job: deck before beam before column", () => {
    const poor = withValues(seed("branch-library"), {"deck.releaseStrengthPsi": 2500, "edgeBeam.padLengthIn": 2, "column.sideIn": 12});
    const checks = checksIn(poor);
    const remedies = [...everyRemedy(catalog, poor)];
    expect(remedies.map(({id}) => id)).toEqual(failing(checks).map(({id}) => id));
    expect(first(poor)).toMatchObject({failing: remedies.length, checks: checks.length, first: {id: remedies[0]?.id}, next: undefined});
    const places = remedies.map(({id}) => (/ column: /.test(id) ? 2 : /^(deck|transfer|stripping|hauling)/.test(id) ? 0 : 1));
    expect(places).toEqual([...places].sort());
    expect(new Set(places).size).toBe(3);
  });

  test("of a design in which all holds is none", () => {
    expect(first(seed("branch-library"))).toBeUndefined();
  });

  test("is told of the next check where the first cannot be mended", () => {
    const design = withValues(seed("records-store"), {"criteria.fireHours": "4", "criteria.fireRestrained": true, "deck.toppingIn": 4.75, "edgeBeam.ledgeDepthIn": 16.5, "girder.ledgeDepthIn": 7});
    const known = first(design);
    expect(known?.first).toMatchObject({id: "deck fire cover", lowers: false});
    expect(known?.next?.lowers).toBe(true);
    expect(failing(checksIn(done(design, known?.next as FoundRemedy))).length).toBe(known?.next?.failing);
  });

  test("pressed again and again, leaves fewer checks failing each time, and ends", () => {
    let pressed = 0;
    for (let number = 1; number <= SEEDS; number++) {
      let design = designOf(caseOf(number));
      const before = allChecks(design, catalog);
      if (!before) continue;
      let left = failing(before).length;
      for (let press = 0; ; press++) {
        expect(press, `seed ${number}`).toBeLessThan(MOST_PRESSES);
        const known = first(design);
        expect(known?.failing ?? 0, `seed ${number}`).toBe(left);
        const remedy = known?.first.lowers ? known.first : known?.next;
        if (!remedy) {
          // Nothing fails, or it says that it cannot.
          if (known) expect(known.first.words.outcome, `seed ${number}`).toMatch(/Nothing of that which|No field of the design|no fewer checks fail|\d fail where \d/);
          break;
        }
        design = done(design, remedy);
        const now = failing(checksIn(design)).length;
        expect(now, `seed ${number}: ${remedy.words.change}`).toBe(remedy.failing);
        expect(now, `seed ${number}: ${remedy.words.change}`).toBeLessThan(left);
        left = now;
        pressed += 1;
      }
    }
    expect(pressed).toBeGreaterThan(10);
  });

  test("marks the reason for the earlier choice as any change does", () => {
    const design = withValue(seed("branch-library"), "edgeBeam.ledgeDepthIn", 5);
    const before = first(design);
    expect(before?.first.changes.map(({path}) => path.split(".")[0])).toContain("edgeBeam");
    const explained = {...design, writtenFor: {}, reasons: {...design.reasons, edgeBeam: ""}} as Design;
    const told = withValue(explained, "reasons.edgeBeam", "Shallow, for the light");
    expect(reasonState(told, "edgeBeam").standing).toBe("stands");
    const {standing, changes} = reasonState(done(told, before?.first as FoundRemedy), "edgeBeam");
    expect(standing).toBe("earlier choice");
    expect(changes.length).toBeGreaterThan(0);
  });
});
