/** How this notebook's texts write quantities; the pieces of the pattern by which {@link piecesOf} finds them. */

const SPACE = "[ \\u00a0\\u202f]";
/** A size without its sign: `8 1/2`, `1/2`, `1\u00bd`, `1,234.5`, `.25`. */
const SIZE = "(?:(?:\\d+[ \\u00a0-])?\\d+\\/\\d+|\\d*[\\u00bc-\\u00be\\u2153\\u2154\\u215b-\\u215e]|(?:\\d{1,3}(?:,\\d{3})+|\\d+)(?:\\.\\d+)?|\\.\\d+)";
export const AMOUNT = `[\\u2212-]?${SIZE}`;
/** What stands between the numbers of a range, a size or a choice whose unit stands at the end alone. */
const JOINT = `(?:${SPACE}(?:to|by|x|\\u00d7|or|of|of the|\\u2013)${SPACE}|\\u00d7|\\u2013)`;
const RANGE = `${AMOUNT}(?:${SPACE}to${SPACE}${AMOUNT})?`;
const LIST = `${RANGE}(?:,${SPACE}${RANGE})+,?${SPACE}(?:and|or)${SPACE}${RANGE}`;
const BETWEEN = `(?<=(?:between|limits of)${SPACE})${AMOUNT}${SPACE}and${SPACE}${AMOUNT}`;
export const SERIES = `(?:${BETWEEN}|${LIST}|${AMOUNT}(?:${JOINT}${AMOUNT})*)`;

const RAISED = "[234\\u00b2\\u00b3\\u2074]?";
const AREA_WORDS = "(?:[Ss]quare|[Cc]ubic|sq\\.?|cu\\.?) (?:foot|feet|inch(?:es)?|yards?|ft|in|yd)";
const WHOLE = [
  "ft-kips?", "kips?[-\\u00b7](?:ft|in|feet|inches)", "lb-(?:ft|in)", "ft-lb", "kips?", "lbs?f?", "pounds?", "tons?",
  "psf", "ksf", "plf", "klf", "psi", "ksi", "pcf", "pci", "cfm", "fpm", "mph", "miles", AREA_WORDS, `ft${RAISED}`, `in${RAISED}`, `yd${RAISED}`, "inch(?:es)?", "foot", "feet", "yards?", "kg ?CO[\\u20822]e", "kg",
];
const BELOW = `(?:square foot|square inch|cubic foot|cubic yard|linear foot|100 ft|foot|ft${RAISED}|yd${RAISED}|inch|in[\\u00b2\\u00b33]|in(?! )|minute|min|hour|hr?|second|s2?|s\\u00b2)`;
/** What a unit is taken per: `/ft\u00b2`, ` per foot`, ` on each square foot`, ` a minute`. */
export const PER = `(?:\\/${BELOW}|${SPACE}(?:per|on each|on every|on one|on a|for each|for every|each|every|a) ${BELOW})`;
/** A unit, and whatever it is taken per; not the beginning of a longer word. */
export const UNIT = `(?:${WHOLE.join("|")})(?:${PER})?`;
export const WORD_END = "(?![\\w\\u00b2\\u00b3\\u2074])";

/** Feet and inches as drawings write them. */
export const FEET_INCHES = "[\\u2212-]?\\d{1,3}(?:,\\d{3})*'(?:-?(?:\\d+ \\d+\\/\\d+|\\d+\\/\\d+|\\d+(?:\\.\\d+)?)\")?(?![\\w'])";
/** Inches by their mark; the mark stands next to the number, and no letter follows. */
export const INCHES = `[\\u2212-]?${SIZE}"(?!\\w)`;

/** Words for numbers that stand before a unit in words. */
export const NUMBER_WORDS: Readonly<Record<string, number>> = {
  "a quarter of an": 1 / 4, "quarter of an": 1 / 4, "half an": 1 / 2, "half a": 1 / 2, "the quarter": 1 / 4, "a quarter": 1 / 4, "quarter": 1 / 4, "half": 1 / 2, "a hundredth of a": 1 / 100,
  "a": 1, "an": 1, "one": 1, "each": 1, "every": 1, "one more": 1, "each added": 1, "every added": 1, "added": 1, "whole": 1, "a darker": 1, "two": 2, "three": 3, "three and a half": 3.5, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9, "ten": 10,
  "twelve": 12, "twenty": 20, "twenty-seven": 27, "thirty": 30, "forty": 40, "fifty": 50, "sixty": 60, "a hundred": 100, "a thousand": 1000,
};
const WORDED = Object.keys(NUMBER_WORDS).sort((a, b) => b.length - a.length).map((words) => words.replace(/^[a-z]/, (letter) => `[${letter}${letter.toUpperCase()}]`)).join("|");
/** A number in words with a unit in words: `half an inch`, `a thousand square feet`. */
export const IN_WORDS = `(${WORDED})[ -]((?:square |cubic )?(?:foot|feet|inch(?:es)?|yards?)|pounds?|kips?|ksi|miles?|tons?)`;

/** Words that keep their units: designations of products, and what a designation counts in. */
export const AS_IS = "Grade \\d+|sixteenths of an inch|(?:[Hh]alf[ -]inch|(?:1\\/2|9\\/16|7\\/16|3\\/8|0\\.5|0\\.6|0\\.500|0\\.600)[ \\u00a0-]in(?:ch|\\.)?)(?: diameter| special)?[ -]strands?|US units|(?:the )?short tons?(?: of 2,000 lb)?|metric tons?";
/** What follows a preposition "in" that stands behind a number. */
export const NOT_INCHES = "(?! (?:all\\b|the open|offices|libraries|each of|which|total\\b|number\\b|turn\\b|place\\b|tension\\b|compression\\b|service\\b|[A-Z]|\\d+(?![\\d-])))";
