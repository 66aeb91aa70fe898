import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import type {Design} from "../../lib/design/design.js";
import {candidates, columnsOf, evaluate} from "../../lib/evaluate.js";
import type {ReasonState} from "../../lib/design/reasons.js";
import {changesSentence, reasonTitle} from "../../lib/record/reasonWords.js";
import {checksIn} from "../../lib/record/checkGroups.js";
import type {RecordSection} from "../../lib/record/parts.js";
import {designRecord, type DesignRecord} from "../../lib/record/record.js";
import {ASSUMPTIONS, CAUTIONS} from "../../lib/record/texts.js";
import {VERSION} from "../../lib/version.js";
import {catalog, seed, seeds} from "../support/designs.js";
import {plainSentence} from "../support/sentence.js";

/** The decks of the search alone; kinds and spans have tests of their own. */
const ways = (design: Design) => ({candidates: candidates(design, catalog), kinds: [], spans: []});

const RECORDS = new WeakMap<Design, DesignRecord>();
/** The record of a design, worked out once for all tests that read it. */
function recordOf(design: Design): DesignRecord {
  const known = RECORDS.get(design);
  if (known) return known;
  const evaluation = evaluate(design, catalog);
  const record = designRecord(evaluation, ways(design), "2 May 2031", columnsOf(evaluation, catalog));
  RECORDS.set(design, record);
  return record;
}
const LIBRARY = seed("branch-library");
/** A section with its sentences as plain text. */
const plain = (section: RecordSection) => ({...section, decision: plainSentence(section.decision), facts: section.facts.map(({label, value}) => ({label, value: plainSentence(value)})), checks: section.checks.flatMap(({rows}) => checksIn(rows))});
const sectionOf = (design: Design, id: string) => recordOf(design).sections.map(plain).find((section) => section.id === id);

describe("designRecord", () => {
  test("carries title, setting, brief, date and version", () => {
    expect(recordOf(LIBRARY)).toMatchObject({title: LIBRARY.name, setting: LIBRARY.setting, brief: LIBRARY.brief, dateText: "2 May 2031", version: VERSION});
  });

  test("has its author and firm or class where the design names them; an older file and a starter name none", () => {
    expect(recordOf(LIBRARY)).toMatchObject({author: "", firm: ""});
    expect(recordOf(withValues(LIBRARY, {author: " A. Student ", firm: "Structures II"}))).toMatchObject({author: "A. Student", firm: "Structures II"});
  });

  test("has a section for each decision in the order of the job, with the reader's own reason", () => {
    for (const {design} of seeds) {
      const sections = recordOf(design).sections.map(plain);
      expect(sections.map((section) => section.id)).toEqual(["loads", "reduction", "deck", "topping", "edgeBeam", ...(design.roof.given === "deck" ? ["roof"] : []), "frame", "story", "light"]);
      for (const section of sections) {
        expect(section.reason.text).toBe(design.reasons[section.id]);
        expect(section.decision).toMatch(/[.]$/);
      }
    }
  });

  test("marks reasons that were written for another floor, and counts only those that stand", () => {
    const changed = withValues(LIBRARY, {"bay.spanFt": 60, "deck.member": "12DT36", "deck.pattern": "188-D1", "reasons.story": "Ducts between the stems."});
    const {sections, reasons} = recordOf(changed);
    expect(reasons).toEqual({all: 9, reader: 1, starter: 1, rule: 0, earlier: 7, none: 0});
    const deck = sections.find(({id}) => id === "deck")?.reason as ReasonState;
    expect(reasonTitle(deck)).toBe("Reason in the starter\u2019s words, written for an earlier choice and not counted.");
    expect(changesSentence(deck)).toBe("Changed since: span 40 ft \u2192 60 ft; deck member 10DT32 \u2192 12DT36; strand pattern 108-S \u2192 188-D1.");
    const story = sections.find(({id}) => id === "story")?.reason as ReasonState;
    expect([reasonTitle(story), changesSentence(story)]).toEqual(["Reason.", ""]);
    expect(reasonTitle(sections.find(({id}) => id === "loads")?.reason as ReasonState)).toBe("Reason, in the starter\u2019s words.");
  });

  test("says nothing that is not a number where a number belongs", () => {
    for (const {design} of seeds) expect(JSON.stringify(recordOf(design))).not.toMatch(/NaN|Infinity|undefined|null|\[object/);
  });

  test("never hides a check that does not hold", () => {
    const bad = withValues(LIBRARY, {"bay.spanFt": 90, "edgeBeam.upstandIn": 50});
    const evaluation = evaluate(bad, catalog);
    const {open} = designRecord(evaluation, ways(bad), "", columnsOf(evaluation, catalog));
    expect(open.map((check) => check.id)).toEqual(expect.arrayContaining(["deck load", "deck strength", "upstand"]));
    expect(open).toEqual([...evaluation.checks, ...columnsOf(evaluation, catalog).checks].filter((check) => check.verdict === "fails" || check.verdict === "out of range"));
  });

  test("names the ways not taken, five at most, and not the one taken", () => {
    const deck = sectionOf(LIBRARY, "deck");
    const [others] = deck?.alternatives ?? [];
    expect(others?.ways.length).toBeGreaterThan(0);
    expect(others?.ways.length).toBeLessThanOrEqual(5);
    for (const {name, outcome} of others?.ways ?? []) {
      expect(name).not.toBe("10DT32+2 108-S");
      expect(outcome).not.toBe("");
    }
  });

  test("writes the story in feet and inches", () => {
    expect(sectionOf(LIBRARY, "story")?.decision).toMatch(/^15'-0" floor to floor leaves \d+'-\d/);
  });

  test("tells how far the light reaches, and where it is not asked for", () => {
    const light = sectionOf(LIBRARY, "light");
    const {shares} = evaluate(LIBRARY, catalog).daylight?.result ?? {shares: {good: 0, partial: 0}};
    expect(light?.decision).toContain(`both long sides give ${Math.round(100 * (shares.good + shares.partial))}`);
    expect(light?.checks.map(({id}) => id)).toContain("average daylight");
    expect(sectionOf(seed("parking-structure"), "light")).toMatchObject({decision: expect.stringContaining("No one works there"), checks: []});
    expect(sectionOf(withValues(LIBRARY, {"edgeBeam.upstandIn": 60, "story.floorToFloorFt": 8}), "light")?.decision).toBe("No glass, and so no daylight.");
  });

  test("sets down the ducts with the story", () => {
    const facts = sectionOf(LIBRARY, "story")?.facts.map(({label, value}) => `${label}: ${value}`).join("; ");
    expect(facts).toMatch(/Main duct: 26 by 10 in, along the ledge, 1,200 ft\/min with 1,600 cfm for 1,600 ft²; the floor takes 6 such mains/);
    expect(sectionOf(seed("parking-structure"), "story")?.facts.find(({label}) => label === "Ducts")?.value).toMatch(/^none/);
  });

  test("tells a deck without topping from one with", () => {
    expect(sectionOf(LIBRARY, "topping")?.decision).toMatch(/^A topping of at least 2\.00 in/);
    expect(sectionOf(seed("parking-structure"), "topping")?.decision).toMatch(/^No topping/);
  });

  test("says whether any live load is reduced", () => {
    expect(sectionOf(LIBRARY, "reduction")?.facts).toHaveLength(evaluate(LIBRARY, catalog).loads.elements.length);
    const hall = withValues(LIBRARY, {"loads.rooms": [{name: "Hall", occupancy: "assembly-movable"}]});
    expect(sectionOf(hall, "reduction")?.decision).toBe("No live load is reduced.");
  });

  test("sets down a load of one's own with what asks for it, and says where a live load is reduced", () => {
    const rooms = (reason: string, reducible = true) => withValues(LIBRARY, {
      "bay.spanFt": 60, "deck.member": "12DT32", "deck.pattern": "128-D1", "loads.rooms": [{name: "Laboratory", occupancy: "laboratory", own: {livePsf: 100, reducible, reason}}],
    });
    const section = sectionOf(rooms("Benches and instruments"), "loads");
    expect(section?.facts[0]).toEqual({label: "Laboratory", value: "100 psf, entered in place of 60 psf (Hospital operating room or laboratory), reduced by that use\u2019s rule: Benches and instruments"});
    expect(section?.decision).toContain("81 psf live, reduced from 100 psf.");
    expect(section?.checks.slice(0, 1)).toMatchObject([{id: "own live load 1", verdict: "ok"}]);
    const whole = sectionOf(rooms("", false), "loads");
    expect(whole?.facts[0]?.value).toContain("taken in full: no reason is given");
    expect(whole?.decision).toContain("100 psf live.");
  });

  test("ends with assumptions and cautions", () => {
    const record = recordOf(LIBRARY);
    expect(record.assumptions).toBe(ASSUMPTIONS);
    expect(record.cautions).toBe(CAUTIONS);
    expect(CAUTIONS.join(" ")).toMatch(/preliminary sizing.*Local codes govern.*licensed engineer/s);
  });
});
