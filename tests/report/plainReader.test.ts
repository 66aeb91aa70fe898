import {describe, expect, test} from "vitest";
import {fieldOf} from "../../lib/design/fields.js";
import {PlainReader} from "../../lib/report/plainReader.js";
import {refused} from "../support/errors.js";

const SPAN = fieldOf("bay.spanFt");
const reader = (content: unknown) => new PlainReader(content, "member");

describe("reading a file field by field", () => {
  test("takes an object and nothing else", () => {
    for (const content of [null, undefined, [], [{}], 3, "text"]) refused(() => reader(content), {path: "member", allowed: "an object of named fields"});
    expect(reader({}).has("spanFt")).toBe(false);
  });

  test("names a field by its place in the whole file", () => {
    expect(reader({}).at("spanFt")).toBe("member.spanFt");
    expect(new PlainReader({}, "").at("spanFt")).toBe("spanFt");
    expect(reader({a: {}}).branch("a").at("b")).toBe("member.a.b");
    expect(reader({rows: [{}, {}]}).list("rows").map((row) => row.at("count"))).toEqual(["member.rows.0.count", "member.rows.1.count"]);
  });

  test("takes a default for what is left out, and what is there in its place", () => {
    const given = reader({span: 30, kind: "b", name: "Tee", wet: true});
    const none = reader({});
    expect([given.number("span", "span", "ft", 10, 50, 20), none.number("span", "span", "ft", 10, 50, 20)]).toEqual([30, 20]);
    expect([given.choice("kind", "kind", ["a", "b"], "a"), none.choice("kind", "kind", ["a", "b"], "a")]).toEqual(["b", "a"]);
    expect([given.text("name", ""), none.text("name", "")]).toEqual(["Tee", ""]);
    const sways = fieldOf("column.sways");
    expect([given.field("wet", sways, false), none.field("wet", sways, false)]).toEqual([true, false]);
    expect([given.optionalField("span", SPAN), none.optionalField("span", SPAN)]).toEqual([30, undefined]);
  });

  test("refuses what is missing without a default, and what is of another kind", () => {
    refused(() => reader({}).number("span", "span", "ft", 10, 50), {path: "member.span", value: undefined});
    refused(() => reader({}).text("name"), {path: "member.name", allowed: "text"});
    refused(() => reader({name: 3}).text("name", ""), {path: "member.name", value: 3});
    refused(() => reader({wet: "yes"}).field("wet", fieldOf("column.sways"), false), {path: "member.wet", value: "yes", allowed: "true or false"});
    refused(() => reader({}).field("span", SPAN), {path: "member.span", value: undefined});
    refused(() => reader({kind: "c"}).choice("kind", "kind", ["a", "b"]), {path: "member.kind", allowed: "a, b"});
    refused(() => reader({span: 160}).optionalField("span", SPAN), {path: "member.span", message: "span: 160 ft is not possible (10 to 150 ft)"});
  });

  test("takes a list of texts or none, and refuses an empty one or one with a number", () => {
    expect(reader({}).texts("limits")).toBeUndefined();
    expect(reader({limits: ["strength", "shear"]}).texts("limits")).toEqual(["strength", "shear"]);
    for (const limits of [[], ["strength", 3], "strength", null]) refused(() => reader({limits}).texts("limits"), {path: "member.limits", allowed: "a list of texts"});
  });

  test("takes names and numbers, none where there is no such branch", () => {
    expect(reader({}).numbers("dimensions")).toEqual({});
    expect(reader({dimensions: {depthIn: 24, flangeIn: 0}}).numbers("dimensions")).toEqual({depthIn: 24, flangeIn: 0});
    refused(() => reader({dimensions: {depthIn: 301}}).numbers("dimensions"), {path: "member.dimensions.depthIn", allowed: "0 to 300"});
    refused(() => reader({dimensions: {depthIn: "24"}}).numbers("dimensions"), {path: "member.dimensions.depthIn"});
  });

  test("takes a list of one object or more", () => {
    for (const rows of [[], {}, undefined, "two"]) refused(() => reader({rows}).list("rows"), {path: "member.rows", allowed: "a list of one or more objects"});
    refused(() => reader({rows: [3]}).list("rows"), {path: "member.rows.0"});
  });

  test("refuses at the end what nothing has read, and names what there is", () => {
    const read = reader({span: 30, spam: 1});
    read.number("span", "span", "ft", 10, 50);
    refused(() => read.finish(), {path: "member.spam", value: 1, allowed: "no field of this name; member has span"});
    const whole = new PlainReader({spam: 1}, "");
    whole.text("name", "");
    refused(() => whole.finish(), {path: "spam", allowed: "no field of this name; a member file has name"});
    const asked = reader({a: {}});
    expect(asked.optionalBranch("b")).toBeUndefined();
    expect(asked.optionalBranch("a")).toBeInstanceOf(PlainReader);
    expect(() => asked.finish()).not.toThrow();
  });
});
