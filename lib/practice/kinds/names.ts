import type {Catalog, DeckMemberRow} from "../../catalog.js";
import {strandOf} from "../../deck/deckMember.js";
import {usualPatterns, usualStrands} from "../../deck/table.js";
import {parsePattern, patternText, type Profile} from "../../prestress/pattern.js";
import {given} from "../../step.js";
import {feet} from "../../units.js";
import type {Draw} from "../draw.js";
import type {Content, Kind, Option} from "../item.js";
import {oneStep} from "../keys.js";
import {choicePart, numberPart, slip} from "../parts.js";
import {measure, prose} from "../prose.js";
import {article, catalogMember, planks, sectionOf, shapeNamed, shapePicture, spanDrawn, straightPattern, tees} from "./ground.js";

const exactly = {within: 0} as const;

/** What the name of a member says: width and depth, topping included. */
function readDesignation(draw: Draw, catalog: Catalog): Content {
  const row = draw.one([...tees(catalog, "field-topped"), ...planks(catalog).filter(({family}) => family === "hollow core")]);
  const toppingIn = draw.from(2, 4, 0.25);
  const spanFt = spanDrawn(draw, row);
  const shape = shapeNamed(catalog, row.designation);
  const {widthIn, depthIn} = shape;
  return {
    question: [prose`A drawing calls for ${row.designation} with ${measure(toppingIn, "in")} of topping over ${measure(spanFt, "ft")}.`],
    givens: [{name: "member", value: row.designation, unit: ""}, {name: "topping", value: toppingIn, unit: "in"}, {name: "span", value: spanFt, unit: "ft"}],
    picture: shapePicture(shape, false),
    parts: [
      numberPart({
        ask: prose`How wide is one member?`, label: "width", unit: "ft", key: feet(widthIn), tolerance: {percent: 1},
        slips: [slip("depth for width", depthIn, "That is its depth in inches: the number before the letters is the width in feet."), slip("feet for inches", feet(feet(widthIn)), "The number before the letters is in feet already.")],
        because: prose`The number before the letters is the width in feet.`,
      }),
      numberPart({
        ask: prose`How deep is the floor from the soffit to the top of the topping?`, label: "depth", unit: "in", key: depthIn + toppingIn, tolerance: {percent: 0.5},
        slips: [
          slip("forgot the topping", depthIn, "That is the member alone: the topping lies on it."),
          slip("width for depth", feet(widthIn) + toppingIn, "The number before the letters is the width in feet; the depth stands after them, in inches."),
          slip("took the topping off", depthIn - toppingIn, "The topping is cast on top of the member: it adds to its depth."),
        ],
        working: oneStep("Depth of the floor", {
          symbol: "h_t", label: "depth with topping", expression: "h + t", unit: "in", source: "definition", result: depthIn + toppingIn,
          values: {h: given(depthIn, "in", "depth, the number after the letters"), t: given(toppingIn, "in", "topping")},
        }),
      }),
    ],
  };
}

const PROFILES: readonly {readonly profile: Profile; readonly text: string; readonly says: string}[] = [
  {profile: "straight", text: "straight from end to end", says: "Straight strands are marked S."},
  {profile: "one-point", text: "held down at one point, midspan", says: "D1 says that they are depressed at one point."},
  {profile: "two-point", text: "held down at two points", says: "D2 says that they are depressed at two points."},
];

/** What a strand pattern says: number, size and course, and with the table the steel's area. */
function readPattern(draw: Draw, catalog: Catalog): Content {
  const count = draw.from(4, 26, 2);
  const sixteenths = draw.one([6, 7, 8, 9, 10]);
  const {profile} = draw.one(PROFILES);
  const spanFt = draw.from(30, 80, 5);
  const text = patternText(count, sixteenths, profile);
  const pattern = parsePattern(text);
  const strand = strandOf(catalog, pattern);
  const areaIn2 = pattern.count * strand.areaIn2;
  return {
    question: [prose`A tee of ${measure(spanFt, "ft")} is cast with the strand pattern ${text}.`],
    givens: [{name: "strand pattern", value: text, unit: ""}, {name: "span", value: spanFt, unit: "ft"}],
    table: {
      title: "Seven-wire strand", columns: [{name: "diameter", unit: "in"}, {name: "area", unit: "in2"}],
      rows: catalog.strands.map(({diameterIn, areaIn2: each}) => [diameterIn, each]), source: "ASTM A416, Grade 270",
    },
    parts: [
      numberPart({
        ask: prose`How many strands has it?`, label: "strands", unit: "", tolerance: exactly, key: count,
        slips: [slip("read the size with the number", Number(`${count}${sixteenths}`), "The last digit before the hyphen, or 10, is the size in sixteenths of an inch."), slip("the size for the number", sixteenths, "That is the size in sixteenths of an inch.")],
        because: prose`The first digits are the number of strands, the digit before the hyphen (or 10) their diameter in sixteenths of an inch.`,
      }),
      numberPart({
        ask: prose`How thick is one of them?`, label: "diameter", unit: "in", tolerance: {percent: 1}, key: strand.diameterIn,
        slips: [slip("tenths for sixteenths", sixteenths / 10, "The digit counts sixteenths of an inch, not tenths."), slip("eighths for sixteenths", sixteenths / 8, "The digit counts sixteenths of an inch, not eighths."), slip("inches for sixteenths", sixteenths, "The digit counts sixteenths of an inch.")],
      }),
      choicePart({
        ask: prose`How do they run?`, key: profile,
        options: PROFILES.map(({profile: id, text: words, says}): Option => ({id, text: [words], slip: {name: `took them as ${words}`, says}})),
      }),
      numberPart({
        ask: prose`How much strand is that in all?`, label: "area of strand", unit: "in2", key: areaIn2, tolerance: {percent: 1},
        slips: [slip("one strand for all", strand.areaIn2, "That is one strand."), slip("gross for net", (count * Math.PI * strand.diameterIn ** 2) / 4, "A strand is seven wires: its steel is less than the circle around it. Take the table\u2019s area.")],
        working: oneStep("Area of strand", {
          symbol: "A_ps", label: "area of all strands", expression: "n * A", unit: "in2", source: "ASTM A416", result: areaIn2,
          values: {n: given(count, "", "strands"), A: given(strand.areaIn2, "in2", "area of one")},
        }),
      }),
    ],
  };
}

/** Which of some drawn sections has a name. */
function sectionByName(draw: Draw, catalog: Catalog): Content {
  const row = draw.one(catalog.deckMembers);
  const pieces = draw.from(8, 60, 1);
  const lengthFt = spanDrawn(draw, row);
  const otherRows = (keep: (other: DeckMemberRow) => boolean) => draw.shuffled(catalog.deckMembers.filter((other) => other.designation !== row.designation && keep(other)));
  const near = otherRows(({family}) => family === row.family).slice(0, 2);
  const far = otherRows(({family}) => family !== row.family).slice(0, 1);
  const shown = draw.shuffled([row, ...near, ...far]);
  const letters = ["a", "b", "c", "d"];
  return {
    question: [prose`Four sections are drawn to one scale. A schedule lists ${pieces} pieces of ${row.designation}, each ${measure(lengthFt, "ft")} long.`],
    givens: [{name: "member", value: row.designation, unit: ""}, {name: "pieces", value: pieces, unit: ""}, {name: "length", value: lengthFt, unit: "ft"}],
    parts: [choicePart({
      ask: prose`Which section is it?`,
      options: shown.map((other, i): Option => ({
        id: letters[i] as string, picture: shapePicture(shapeNamed(catalog, other.designation), true), text: [`Section ${(letters[i] as string).toUpperCase()}`],
        ...(other === row ? {} : {slip: other.family === row.family
          ? {name: "same family, other size", says: "The number before the letters is the width in feet, the one after them the depth in inches."}
          : {name: "another family", says: "DT is a double tee, HC a hollow-core plank, FS a solid flat slab."}}),
      })),
      key: letters[shown.indexOf(row)] as string,
      because: prose`${row.designation} is ${measure(feet(shapeNamed(catalog, row.designation).widthIn), "ft")} wide and ${measure(shapeNamed(catalog, row.designation).depthIn, "in")} deep.`,
    })],
  };
}

/** How many strands of a size come to an area, and the pattern's name: the name written, not read. */
function writePattern(draw: Draw, catalog: Catalog): Content {
  const row = draw.one(tees(catalog));
  const sixteenths = draw.one(usualStrands(row));
  const pattern = parsePattern(draw.one(usualPatterns(row, sixteenths)));
  const lengthFt = spanDrawn(draw, row);
  const strand = strandOf(catalog, pattern);
  const course = pattern.profile === "straight" ? "run straight" : "are held down at midspan";
  const wrong = [
    {text: patternText(pattern.count, sixteenths, pattern.profile === "straight" ? "one-point" : "straight"), name: "the other course", says: "S stands for straight, D with a number for depressed at so many points."},
    {text: patternText(pattern.count, sixteenths === 8 ? 10 : 8, pattern.profile), name: "the other size", says: "The size counts sixteenths of an inch: 8 for 1/2 in, 10 for 0.6 in strand."},
    {text: patternText(pattern.count / 2, sixteenths, pattern.profile), name: "strands of one stem", says: "The number counts the strands of the whole tee, both stems."},
  ];
  const shown = draw.shuffled([{text: pattern.text, name: "", says: ""}, ...wrong]);
  return {
    question: [prose`Each of the two stems of ${article(row.designation)} ${row.designation}, ${measure(lengthFt, "ft")} long, holds ${pattern.count / 2} strands of ${measure(strand.diameterIn, "in")}, which ${course}.`],
    givens: [
      {name: "member", value: row.designation, unit: ""}, {name: "length", value: lengthFt, unit: "ft"}, {name: "strands in a stem", value: pattern.count / 2, unit: ""}, {name: "diameter", value: strand.diameterIn, unit: "in"},
      {name: "course", value: pattern.profile === "straight" ? "straight" : "held down at midspan", unit: ""},
    ],
    picture: sectionOf(catalogMember(catalog, row, straightPattern(draw, row), 0), false),
    parts: [choicePart({
      ask: prose`How is the pattern written?`, key: pattern.text,
      options: shown.map(({text, name, says}): Option => ({id: text, text: [text], ...(name ? {slip: {name, says}} : {})})),
    })],
  };
}

export const NAMES_KINDS: readonly Kind[] = [
  {id: "read-designation", topic: "deck", level: 1, title: "What a member\u2019s name says", make: readDesignation},
  {id: "read-strand-pattern", topic: "member", level: 1, title: "What a strand pattern says", make: readPattern},
  {id: "write-strand-pattern", topic: "member", level: 1, title: "How a strand pattern is written", make: writePattern},
  {id: "section-by-name", topic: "deck", level: 1, title: "Which section has this name", make: sectionByName},
];
