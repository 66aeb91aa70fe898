import {AMOUNT, AS_IS, FEET_INCHES, INCHES, IN_WORDS, NOT_INCHES, NUMBER_WORDS, PER, SERIES, UNIT, WORD_END} from "./grammar.js";
import {metersText, millimetersText, readNumber, siText} from "./figures.js";
import {PA_IN_WATER, TEXT_UNITS, textUnit, type TextUnit} from "./siUnit.js";

/** A stretch of a text that names a US quantity or unit, and what it is in SI. */
export interface Piece {
  readonly from: number;
  readonly to: number;
  readonly si: string;
  /** Whether the SI words may stand beside the US ones; words without a number are only ever replaced. */
  readonly hasNumber: boolean;
}

const NB = "\u00a0";
const BEFORE = "(?<![\\w./\\u2044]|\\d,|[A-Za-z]-)";

/** All that is looked for, in the order in which it is tried at a place. */
const FOUND = new RegExp([
  `(?<asIs>${BEFORE}(?:${AS_IS}))`,
  `(?<feet>${BEFORE}${FEET_INCHES})`,
  `(?<inches>${BEFORE}${INCHES})`,
  `(?<water>${BEFORE}(?<head>${AMOUNT})[ \\u00a0](?:in|inches)(?:(?<waterOf> of water)(?<long>(?: per |\\/)100 ft)?|\\/100 ft))`,
  `(?<money>\\$(?<sum>${AMOUNT})(?: a|\\/| per) ?(?<goods>square foot|foot|ft\\u00b2|ft|cubic yard|yd\\u00b3|lb|ton))`,
  `(?<measure>${BEFORE}(?<series>${SERIES})(?<gap>[ \\u00a0\\u202f-]?)(?<unit>${UNIT})${WORD_END})`,
  `(?<words>(?<![\\w-])(?:${IN_WORDS})${WORD_END})`,
  `(?<many>(?<![\\w-])few feet)`,
  // Figures that are hidden until a guess.
  "(?<hidden>(?<![\\w?])\\?[?,]*'(?:-[? /.]*\\?\")?|(?<![\\w?])\\?[? /.]*\")",
  "(?<strain>inches per inch)",
  `(?<bare>(?<![\\w-])(?:(?<taken>[Pp]er|of) (?<below>square foot|square inch|cubic foot|cubic yard|linear foot|foot|inch|ft\\u00b2|ft|lb|pound)|(?<loose>${UNIT}))${WORD_END})`,
].join("|"), "g");

/** The quantities of a text, in order and without overlap. */
export function piecesOf(text: string): Piece[] {
  const pieces: Piece[] = [];
  FOUND.lastIndex = 0;
  for (let match = FOUND.exec(text); match; match = FOUND.exec(text)) {
    const piece = pieceOf(match, text);
    if (piece) {
      pieces.push(piece);
      FOUND.lastIndex = piece.to;
    } else if (match.groups?.["measure"] !== undefined) {
      // The number was none of a quantity; what comes behind it may be.
      FOUND.lastIndex = match.index + 1;
    }
  }
  return pieces;
}

function pieceOf(match: RegExpExecArray, text: string): Piece | undefined {
  const groups = match.groups as Record<string, string | undefined>;
  const from = match.index;
  const piece = (si: string, to = from + match[0].length, hasNumber = true): Piece => ({from, to, si, hasNumber});
  if (groups["feet"] !== undefined) return piece(`${metersText(feetInchesIn(match[0]))}${NB}m`);
  if (groups["inches"] !== undefined) return quoted(text, from + match[0].length - 1) ? undefined : piece(inchesText(match[0].slice(0, -1)));
  if (groups["water"] !== undefined) return piece(waterText(groups));
  if (groups["money"] !== undefined) return moneyPiece(groups, piece);
  if (groups["measure"] !== undefined) return measurePiece(match, text, piece);
  if (groups["words"] !== undefined) return wordsPiece(match[0], text, from, piece);
  if (groups["many"] !== undefined) return piece("meter or two", undefined, false);
  if (groups["hidden"] !== undefined) {
    // Its first sign stays where it is: it may stand in a frame of its own.
    const sign = (/^\?+/.exec(match[0]) as RegExpExecArray)[0].length;
    return {from: from + sign, to: from + match[0].length, si: `${NB}${match[0].includes("'") ? "m" : "mm"}`, hasNumber: false};
  }
  if (groups["strain"] !== undefined) return piece("mm per mm", undefined, false);
  if (groups["bare"] !== undefined) return barePiece(groups, text, from, piece);
  return undefined;
}

type MakePiece = (si: string, to?: number, hasNumber?: boolean) => Piece;

/** Inches in `\u221211'-2 1/2"`. */
function feetInchesIn(text: string): number {
  const [, sign = "", feet = "", inch = ""] = /^([\u2212-]?)([\d,]+)'-?([^"]*)"?$/.exec(text) ?? [];
  const size = Number(feet.replace(/,/g, "")) * 12 + (inch === "" ? 0 : readNumber(inch).value);
  return sign ? -size : size;
}

/** Inches by their mark, `8 1/2` or `24.5`. */
function inchesText(text: string): string {
  const number = readNumber(text);
  return `${/[/\u00bc-\u00be]/.test(text) || number.decimals === 0 ? millimetersText(number.value) : siText(number, TEXT_UNITS["in"] as TextUnit)}${NB}mm`;
}

/** Whether a mark behind a number closes a quotation rather than saying inches. */
function quoted(text: string, at: number): boolean {
  const open = text.lastIndexOf("\"", at - 1);
  return open >= 0 && /(?:^|[\s(])$/.test(text.slice(0, open)) && /[A-Za-z]/.test(text.charAt(open + 1));
}

function waterText(groups: Record<string, string | undefined>): string {
  const along = groups["waterOf"] === undefined || groups["long"] !== undefined;
  const unit: TextUnit = along ? {si: "Pa/m", factor: PA_IN_WATER / 30.48, places: 1} : {si: "Pa", factor: PA_IN_WATER, places: 2};
  const number = readNumber(groups["head"] as string);
  return `${siText({...number, decimals: 0}, unit)}${NB}${unit.si}`;
}

/** What the unit below is in SI: its word, its sign, and how many of the US unit it is. */
const BELOW: Readonly<Record<string, {readonly word: string; readonly sign: string; readonly count: number}>> = {
  "square foot": {word: "square meter", sign: "m\u00b2", count: 1 / 0.09290304}, "ft\u00b2": {word: "m\u00b2", sign: "m\u00b2", count: 1 / 0.09290304},
  "square inch": {word: "square millimeter", sign: "mm\u00b2", count: 1 / 645.16},
  "cubic foot": {word: "cubic meter", sign: "m\u00b3", count: 1 / 0.028316846592},
  "cubic yard": {word: "cubic meter", sign: "m\u00b3", count: 1 / 0.764554857984}, "yd\u00b3": {word: "m\u00b3", sign: "m\u00b3", count: 1 / 0.764554857984},
  "linear foot": {word: "meter", sign: "m", count: 1 / 0.3048}, "foot": {word: "meter", sign: "m", count: 1 / 0.3048}, "ft": {word: "m", sign: "m", count: 1 / 0.3048},
  "inch": {word: "meter", sign: "m", count: 1 / 0.0254}, "in": {word: "m", sign: "m", count: 1 / 0.0254},
  "pound": {word: "kilogram", sign: "kg", count: 1 / 0.45359237}, "lb": {word: "kg", sign: "kg", count: 1 / 0.45359237}, "ton": {word: "metric ton", sign: "t", count: 1 / 0.90718474},
};

function moneyPiece({sum, goods}: Record<string, string | undefined>, piece: MakePiece): Piece | undefined {
  const below = BELOW[goods as string];
  return below && piece(`$${siText(readNumber(sum as string), {si: "", factor: below.count, places: 1})}/${below.sign}`);
}

/** A unit with what stands between it and what it is taken per: `lb of strand per square foot`. */
const TAKEN = new RegExp(`^((?: (?!per\\b|and\\b|or\\b|is\\b|at\\b|in\\b|of span)[A-Za-z\\u2082-]+){1,4})( (?:per|on each|on every|for each|for every)) (square foot|cubic foot|cubic yard|foot)\\b`);
/** What a unit without a US part may be taken per: kg of a whole floor is kg in both systems. */
const METRIC = /^kg( ?CO[\u20822]e)?$/;

function measurePiece(match: RegExpExecArray, text: string, piece: MakePiece): Piece | undefined {
  const {series = "", gap = "", unit: words = ""} = match.groups as Record<string, string>;
  const end = match.index + match[0].length;
  const rest = text.slice(end);
  // "1 in offices": a preposition; "1.2k": a letter.
  if (/^in$/.test(words) && (gap === "-" || !rest.startsWith("/")) && !new RegExp(`^${NOT_INCHES}`).test(rest)) return undefined;
  if (words === "in" && gap === "" && !/\d$/.test(series)) return undefined;
  const taken = TAKEN.exec(rest);
  if (taken) {
    const [whole, between = "", joint = "", per = ""] = taken;
    const pair = textUnit(`${words}/${per}`) ?? textUnit(`${words} per ${per}`) ?? perMetric(words, per);
    const below = BELOW[per];
    if (pair && below) {
      const numerator = METRIC.test(words) ? words : pair.si === "kPa" ? "kN" : (pair.si.split("/")[0] as string);
      return piece(`${seriesText(series, pair)}${NB}${numerator}${between}${joint} ${below.word}`, end + whole.length);
    }
  }
  const unit = textUnit(perWords(words)) ?? perMetric(...split(words));
  if (unit) return piece(`${seriesText(series, unit)}${NB}${unit.si}`);
  // A unit with a tail that is none of a unit's: "60 ft a year".
  const [core, tail] = split(words);
  const alone = tail === "" ? undefined : textUnit(core);
  return alone && piece(`${seriesText(series, alone)}${NB}${alone.si}`, end - (words.length - core.length));
}

const SPLIT = new RegExp(`^(.*?)(${PER})$`);
const split = (words: string): [core: string, below: string] => {
  const [, core = words, tail = ""] = SPLIT.exec(words) ?? [];
  return [core, tail.replace(/^(?:\/| ?(?:per|on each|on every|on one|on a|for each|for every|each|every|a) )/, "").replace(/^\u00a0/, "")];
};

/** `lb on each square foot` as `lb per square foot`. */
const perWords = (words: string): string => {
  const [core, below] = split(words);
  return below === "" ? core : words.includes("/") ? words : `${core} per ${below}`;
};

/** A metric or nameless amount per US unit, such as `kg per square foot`. */
function perMetric(core: string, below: string): TextUnit | undefined {
  const per = BELOW[below.replace("2", "\u00b2")];
  return per && METRIC.test(core) ? {si: `${core}/${per.sign}`, factor: per.count, places: 1} : undefined;
}

const EACH = new RegExp(AMOUNT, "g");

/** Every number of a series in SI, what stands between them as it is. */
function seriesText(series: string, unit: TextUnit): string {
  return series.replace(EACH, (number, at: number) => {
    // A hyphen behind a digit joins two numbers and is no sign.
    const joined = /^-/.test(number) && at > 0 && /\d/.test(series.charAt(at - 1));
    return joined ? `\u2013${siText(readNumber(number.slice(1)), unit)}` : siText(readNumber(number), unit);
  });
}

const WORDS = new RegExp(`^${IN_WORDS}$`);

function wordsPiece(whole: string, text: string, from: number, piece: MakePiece): Piece | undefined {
  const [, count = "", words = ""] = WORDS.exec(whole) ?? [];
  const unit = textUnit(words);
  const value = NUMBER_WORDS[count.charAt(0).toLowerCase() + count.slice(1)];
  if (!unit || value === undefined) return undefined;
  // The foot of a column is none of a measure, and a school has a yard.
  if (words === "foot" && /^(?: of (?:the|a|its|all|every) (?:column|wall|story|interior))/.test(text.slice(from + whole.length))) return undefined;
  if (words === "yard" || (words === "ton" && count === "a")) return undefined;
  const digits = Math.max(1, String(value).replace(/^0?\.|0+$/g, "").length);
  const other = / or two\b/.exec(text.slice(from + whole.length));
  if (other?.index === 0 && value === 1) return piece(`${siText({value, digits, decimals: 0}, unit)} or ${siText({value: 2, digits, decimals: 0}, unit)}${NB}${unit.si}`, from + whole.length + other[0].length);
  const lead = /^(each added|every added|one more|each|every|the|added|whole|a darker)\b/i.exec(count)?.[0];
  return piece(`${lead ? `${lead} ` : ""}${siText({value, digits, decimals: words.includes("square") ? 2 : 0}, unit)}${NB}${unit.si}`);
}

/** Units in words where no number stands before them. */
const NAMES: Readonly<Record<string, string>> = {
  "feet": "meters", "inches": "millimeters", "pounds": "kilonewtons", "kips": "kilonewtons", "square feet": "square meters", "square inches": "square millimeters", "cubic yards": "cubic meters", "cubic feet": "cubic meters",
  "square foot": "square meter", "square inch": "square millimeter", "cubic yard": "cubic meter", "cubic foot": "cubic meter", "kip-inches": "kilonewton-meters", "kip-feet": "kilonewton-meters", "cubic feet per minute": "liters per second",
  "pounds per square foot": "kilopascals", "pounds per foot": "kilonewtons per meter", "pounds per cubic foot": "kilograms per cubic meter",
};
/** Words that are units only beside a number. */
const NO_UNIT_ALONE = new Set(["foot", "in", "inch", "pound", "ton", "tons", "yard", "yards", "k", "kg", "miles", "lb"]);

function barePiece({taken, below, loose}: Record<string, string | undefined>, text: string, from: number, piece: MakePiece): Piece | undefined {
  if (taken !== undefined) {
    const per = BELOW[below as string];
    return per && taken.toLowerCase() === "per" ? piece(`${taken} ${per.word}`, undefined, false) : undefined;
  }
  const words = loose as string;
  const lower = words.toLowerCase();
  const name = NAMES[perWords(lower)];
  if (name !== undefined) {
    if (/\bthe $/.test(text.slice(0, from)) && lower === "feet") return undefined;
    return piece(/^[A-Z]/.test(words) ? name.charAt(0).toUpperCase() + name.slice(1) : name, undefined, false);
  }
  // "span, in": a label that ends in its unit.
  const labeled = /\? $/.test(text.slice(0, from)) || /(?:, |\(|^|\? )$/.test(text.slice(0, from)) && /^(?:$|[),:;]| \u2192)/.test(text.slice(from + words.length));
  if (NO_UNIT_ALONE.has(lower) && !labeled) return undefined;
  if (words === "in" && text.trim() !== "in" && !labeled) return undefined;
  const unit = textUnit(perWords(words)) ?? perMetric(...split(words));
  return unit && piece(unit.si, undefined, false);
}
