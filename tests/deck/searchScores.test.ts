import {describe, expect, test} from "vitest";
import type {Candidate, CandidateMeasures} from "../../lib/deck/search.js";
import {deckMeasures} from "../../lib/deck/measures.js";
import {camber} from "../../lib/member/camber.js";
import {withValues} from "../../lib/design/edit.js";
import {candidates, demandOf, evaluate} from "../../lib/evaluate.js";
import {catalog, seed} from "../support/designs.js";
import {once} from "../support/once.js";

const few = once(() => ({...catalog, deckMembers: catalog.deckMembers.filter(({designation}) => ["10DT32", "12DT32", "12DT30", "15DT34", "4HC12", "4FS8"].includes(designation))}));
const design = once(() => withValues(seed("branch-library"), {
  "consider.fieldToppedTees": true, "consider.pretoppedTees": true, "consider.planks": true,
  "preferences.shallow": 3, "preferences.fewStrands": 2, "preferences.straight": 1, "preferences.light": 4, "preferences.wide": 2.5,
}));
const find = (changes: Record<string, unknown> = {}) => candidates(withValues(design(), changes), few());
const found = () => find();
const working = () => found().filter(({works}) => works);
const least = (pick: (measures: CandidateMeasures) => number) => Math.min(...working().map(({measures}) => pick(measures)));

describe("the score of a candidate", () => {
  test("is the sum of what it has over the least of all that work, weighted; depressed strand is half as dear again", () => {
    expect(working().length).toBeGreaterThan(3);
    for (const {measures: m, penalties, score, designation} of working()) {
      expect(penalties.shallow, designation).toBeCloseTo(3 * (m.depthIn / least((one) => one.depthIn) - 1), 12);
      expect(penalties.fewStrands).toBeCloseTo(2 * (m.strandPsf / least((one) => one.strandPsf) - 1), 12);
      expect(penalties.light).toBeCloseTo(4 * (m.weightPsf / least((one) => one.weightPsf) - 1), 12);
      expect(penalties.wide).toBeCloseTo(2.5 * (m.piecesPer100Ft / least((one) => one.piecesPer100Ft) - 1), 12);
      expect(penalties.straight).toBe(m.depressed ? 0.5 : 0);
      expect(score).toBeCloseTo(penalties.shallow + penalties.fewStrands + penalties.light + penalties.wide + penalties.straight, 12);
    }
    expect(Math.min(...working().map(({penalties}) => penalties.shallow))).toBe(0);
  });

  test("knows nothing below 0: a candidate that does not work may be shallower than all that do", () => {
    for (const {penalties} of found()) for (const penalty of Object.values(penalties)) expect(penalty).toBeGreaterThanOrEqual(0);
    expect(Math.min(...found().map(({measures}) => measures.depthIn))).toBeLessThan(least(({depthIn}) => depthIn));
  });

  test("is by the measures of the deck: depth, strand, weight, and how many pieces cover a hundred feet", () => {
    for (const {member, measures, profile, longTermCamberIn} of found()) {
      const {depthIn, strandPsf, weightPsf} = deckMeasures(member, catalog.carbonFactors);
      expect(longTermCamberIn).toBe(camber(member, design().bay.spanFt, demandOf(design(), catalog, evaluate(design(), catalog).loads).criteria.superimposedDeadPsf * member.widthFt).longTermIn);
      expect(measures).toEqual({depthIn, strandPsf: expect.closeTo(strandPsf, 12), weightPsf: expect.closeTo(weightPsf, 9), piecesPer100Ft: 100 / member.widthFt, depressed: profile !== "straight"});
    }
  });
});

describe("the reason of a candidate", () => {
  const numberIn = (text: string, pattern: RegExp) => {
    const match = pattern.exec(text);
    return match ? Number(match[1]) : undefined;
  };

  test("tells by how much it is deeper, heavier, or takes more strand or pieces than the first", () => {
    const [first] = working() as [Candidate];
    let told = 0;
    for (const {reason, measures: m} of working().slice(1)) {
      const by: readonly (readonly [number | undefined, number])[] = [
        [numberIn(reason, /is ([\d.]+) in deeper/), m.depthIn - first.measures.depthIn],
        [numberIn(reason, /is ([\d.]+) psf heavier/), m.weightPsf - first.measures.weightPsf],
        [numberIn(reason, /takes ([\d.]+) % more strand/), 100 * (m.strandPsf / first.measures.strandPsf - 1)],
        [numberIn(reason, /takes ([\d.]+) % more pieces/), 100 * (m.piecesPer100Ft / first.measures.piecesPer100Ft - 1)],
      ];
      for (const [said, is] of by) if (said !== undefined) {
        expect(Math.abs(said - is), reason).toBeLessThanOrEqual(0.5);
        told++;
      }
      if (reason.includes("depressed")) expect(m.depressed).toBe(true);
    }
    expect(told).toBeGreaterThan(3);
  });

  test("names the two things that cost it most against the first, the greater first", () => {
    const [first] = working() as [Candidate];
    const words = {shallow: "in deeper", fewStrands: "more strand", straight: "depressed", light: "psf heavier", wide: "more pieces"} as const;
    for (const {reason, penalties} of working().slice(1)) {
      const margins = (Object.keys(words) as (keyof typeof words)[]).map((key) => ({key, by: penalties[key] - first.penalties[key]}))
        .filter(({by}) => by > 0.005).sort((a, b) => b.by - a.by).map(({key}) => words[key]);
      expect(reason).toContain(first.id);
      const places = margins.slice(0, 2).map((word) => reason.indexOf(word));
      expect(Math.min(...places), reason).toBeGreaterThan(0);
      expect(places).toEqual([...places].sort((a, b) => a - b));
      for (const word of Object.values(words)) if (!margins.slice(0, 2).includes(word)) expect(reason).not.toContain(word);
    }
  });

  test("is that it is as good as the first, where nothing that it has more of counts", () => {
    const indifferent = find(Object.fromEntries(["shallow", "fewStrands", "straight", "light", "wide"].map((key) => [`preferences.${key}`, 0]))).filter(({works}) => works);
    expect(indifferent[0]?.reason).toBe("The best by your weights.");
    expect(indifferent.length).toBeGreaterThan(3);
    for (const {reason} of indifferent.slice(1)) expect(reason).toBe("As good as the first by your weights.");
  });

  test("tells of the one thing that counts, where one alone does: 2 in deeper, a third more strand", () => {
    const alone = (name: string) => find({...Object.fromEntries(["shallow", "fewStrands", "straight", "light", "wide"].map((key) => [`preferences.${key}`, 0])), [`preferences.${name}`]: 3}).filter(({works}) => works);
    const told = (list: readonly Candidate[], word: RegExp, by: (one: Candidate, first: Candidate) => number) => {
      const [first] = list as [Candidate];
      let count = 0;
      for (const one of list.slice(1)) {
        const more = by(one, first);
        if (more <= 0.01) expect(one.reason).toBe("As good as the first by your weights.");
        else {
          expect(Math.abs(Number(word.exec(one.reason)?.[1]) - more), one.reason).toBeLessThanOrEqual(0.5);
          expect(one.reason).not.toContain(" and ");
          count++;
        }
      }
      expect(count).toBeGreaterThan(2);
    };
    told(alone("shallow"), /it is ([\d.]+) in deeper\.$/, (one, first) => one.measures.depthIn - first.measures.depthIn);
    told(alone("fewStrands"), /it takes ([\d.]+) % more strand\.$/, (one, first) => 100 * (one.measures.strandPsf / first.measures.strandPsf - 1));
  });

  test("is how much it lacks, and by which limit, where it does not carry the load", () => {
    const weak = find({"bay.spanFt": 70}).filter(({reason}) => reason.startsWith("Carries"));
    expect(weak.length).toBeGreaterThan(2);
    for (const {reason, safe, works} of weak) {
      const [, carried, asked, limit] = /^Carries (\d+) of the (\d+) psf required, at its strongest; ([a-z ]+) governs\.$/.exec(reason) ?? [];
      expect(works).toBe(false);
      expect(Number(carried), reason).toBeCloseTo(safe.safeLoadPsf, -0.31);
      expect(Number(asked)).toBeGreaterThan(Number(carried));
      expect(limit).toBe(safe.governs);
    }
  });

  test("is the gate that it does not pass, in words", () => {
    const said: Record<string, RegExp> = {
      "vibration": /people would feel others walk/, "fire": /does not reach the required fire rating/, "soffit compression": /compress the soffit of an empty floor/, "transfer": /^Needs [\d,.]+ psi at release/,
    };
    const gates = new Set<string>();
    for (const changes of [{"bay.spanFt": 50, "loads.rooms": design().loads.rooms, "criteria.walking": "quiet"}, {"criteria.fireHours": "4", "criteria.walking": "none"}, {"bay.spanFt": 24, "deck.releaseStrengthPsi": 5000, "criteria.walking": "none"}]) {
      for (const {gates: [gate], reason} of find(changes)) {
        if (gate === undefined || reason.startsWith("Carries ") && reason.includes(" of the ")) continue;
        expect(reason).toMatch(said[gate]!);
        gates.add(gate);
      }
    }
    expect(gates.size).toBeGreaterThan(1);
  });
});

describe("what is tried", () => {
  test("has two inches of topping on bare tees where the design has none, its own where it has, and planks with and without", () => {
    for (const [toppingIn, triedIn] of [[0, 2], [3, 3]] as const) {
      const list = find({"deck.toppingIn": toppingIn});
      const of = (name: string) => new Set(list.filter(({designation}) => designation === name).map((one) => one.toppingIn));
      expect(of("10DT32")).toEqual(new Set([triedIn]));
      expect(of("12DT30")).toEqual(new Set([0]));
      expect(of("4HC12")).toEqual(new Set([0, triedIn]));
    }
  });

  test("is what fits: strands beyond the room of a plank are passed over", () => {
    const planks = (mostStrands: number) => candidates(design(), {...few(), deckMembers: few().deckMembers.map((row) => (row.designation === "4HC12" ? {...row, mostStrands} : row))}).filter(({designation}) => designation === "4HC12").map(({id}) => id);
    // Seven do not carry it; ten do no better than fail, and an eleventh has no web to lie in.
    expect(planks(40)).toEqual(planks(10));
    expect(planks(10)).toContain("4HC12+2 108-S");
  });

  test("takes the fewest strands of each profile that work, and the strongest where none does", () => {
    const [straight] = found().filter(({designation, profile}) => designation === "10DT32" && profile === "straight");
    expect(straight?.works).toBe(true);
    const withMost = (mostStrands: number, leastStrands = mostStrands) => candidates(design(), {...few(), deckMembers: few().deckMembers.filter(({designation}) => designation === "10DT32").map((row) => ({...row, leastStrands, mostStrands}))});
    // Where one pair fewer 1/2 in strands do not work, as many 0.6 in strands have more steel than the pair had.
    const [larger] = withMost(straight!.member.layout.count - 2, 4).filter(({profile}) => profile === "straight");
    expect([larger?.works, larger?.member.layout.strand.diameterIn]).toEqual([true, 0.6]);
    const [weak] = withMost(4).filter(({profile}) => profile === "straight");
    expect([weak?.works, weak?.pattern]).toEqual([false, "410-S"]);
  });
});
