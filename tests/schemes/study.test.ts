import {readFileSync} from "node:fs";
import {join} from "node:path";
import {describe, expect, test} from "vitest";
import {caseAt, readStudy} from "../../lib/schemes/study.js";
import {catalog} from "../support/designs.js";
import {refused} from "../support/errors.js";

const TEXT = readFileSync(join(import.meta.dirname, "../../seeds/studies/spans-and-ceilings.json"), "utf8");
type Content = Record<string, unknown> & {briefs: Record<string, unknown>[]};
const content = (): Content => JSON.parse(TEXT) as Content;
const study = (changes: Record<string, unknown>) => readStudy(JSON.stringify({...content(), ...changes}), catalog);

describe("a study", () => {
  test("asks every brief with every choice of one value from each field, the last field fastest", () => {
    const [one] = content().briefs;
    const two = study({briefs: [one, {...one, name: "Another"}], fields: {"ceilingFt": [9, 10], "partitions": [true, false], "criteria.fireHours": ["1", "2"]}});
    expect(two.fields).toEqual(["ceilingFt", "partitions", "criteria.fireHours"]);
    expect(two.cases.map(({brief, values}) => [brief.name === "Another", ...values])).toEqual([false, true].flatMap((another) => [9, 10].flatMap((ceilingFt) => [true, false].flatMap((partitions) => ["1", "2"].map((hours) => [another, ceilingFt, partitions, hours])))));
    // Each stands in the brief: the ceiling and partitions of its own, the fire rating among what it fixes.
    for (const {brief, values: [ceilingFt, partitions, hours]} of two.cases) expect([brief.ceilingFt, brief.base.loads.partitions, brief.base.criteria.fireHours]).toEqual([ceilingFt, partitions, hours]);
  });

  test("keeps what its briefs fix themselves", () => {
    const [one] = content().briefs;
    const [first] = study({briefs: [{...one, fixed: {"criteria.humidityPercent": 40}}], fields: {"criteria.fireHours": ["2"]}}).cases;
    expect(first?.brief.base.criteria).toMatchObject({humidityPercent: 40, fireHours: "2"});
  });

  test("without fields asks each brief once", () => {
    const {fields, ...plain} = content();
    expect(fields).toBeDefined();
    const once = readStudy(JSON.stringify(plain), catalog);
    expect([once.fields, once.cases.map(({values}) => values), once.columns]).toEqual([[], [[]], false]);
    expect(study({columns: true}).columns).toBe(true);
  });

  test("numbers its schemes case after case", () => {
    const {cases, count} = study({});
    expect(cases.map(({first}) => first)).toEqual([0, 1, 2, 3].map((i) => (i * count) / 4));
    const each = count / 4;
    expect([0, each - 1, each, count - 1].map((index) => cases.indexOf(caseAt({...study({}), cases}, index)))).toEqual([0, 0, 1, 3]);
    for (const index of [-1, count]) expect(() => caseAt(study({}), index)).toThrow(RangeError);
  });

  test("is refused by the field that is wrong, with what is allowed", () => {
    refused(() => study({version: 2}), {path: "version"});
    refused(() => study({columns: "yes"}), {path: "columns", allowed: "true or false"});
    for (const briefs of [[], {}, undefined]) refused(() => study({briefs}), {path: "briefs", allowed: "a list of one or more briefs"});
    refused(() => study({briefs: ["none"]}), {path: "briefs.0"});
    for (const values of [[], 9, [9, null], [[9]]]) refused(() => study({fields: {ceilingFt: values}}), {path: "fields.ceilingFt", allowed: "a list of 1 to 200 numbers or words"});
    refused(() => study({fields: {ceilingFt: Array.from({length: 201}, () => 9)}}), {path: "fields.ceilingFt"});
    refused(() => study({fields: {ceilingFt: [9, 3]}}), {path: "briefs.0.ceilingFt", value: 3});
    refused(() => study({fields: {"criteria.firehours": ["1"]}}), {path: "briefs.0.fixed.criteria.firehours"});
    refused(() => study({fields: Object.fromEntries(Array.from({length: 13}, (_, i) => [`f${i}`, [1]]))}), {path: "fields", value: 13, allowed: "12 at most"});
    refused(() => study({cases: 1}), {path: "cases"});
  });
});
