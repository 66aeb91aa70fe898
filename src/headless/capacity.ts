import {parseArgs} from "node:util";
import {beamCapacity} from "../../lib/beams/beamCapacity.js";
import {handbookBeamCriteria} from "../../lib/beams/beamCriteria.js";
import {isBeam, prestressedBeam} from "../../lib/beams/prestressedBeam.js";
import {readCatalog, type Catalog} from "../../lib/catalog.js";
import {HANDBOOK_HUMIDITY_PERCENT, HANDBOOK_STRENGTHS_PSI, handbookCriteria} from "../../lib/deck/criteria.js";
import {deckRow, layoutOf, strandOf, unlistedStrands} from "../../lib/deck/deckMember.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {InputError} from "../../lib/errors.js";
import {camber} from "../../lib/member/camber.js";
import {makeMember, type Member} from "../../lib/member/member.js";
import {parsePattern} from "../../lib/prestress/pattern.js";
import {readMemberFile} from "../../lib/report/memberFile.js";
import {shapeOf} from "../../lib/sections/designation.js";
import {isDeckFamily} from "../../lib/sections/shape.js";
import {UsageError, requireOnce, runCommand} from "./command.js";
import {fromFile} from "./inputFile.js";
import {readRawTables} from "./readCatalog.js";

const USAGE = "usage: npm run -s capacity -- --member 10DT24 --pattern 68-S --spans 30:56:2 [--ys 4 | --ys 14.4/4.0] [--topping 2] [--lightweight]"
  + "; for a beam --member 28IT28 --strands 13 --spans 20:30:2 [--ys 3.08] [--lightweight]; for any shape --file FILE.json --spans 30:56:2";
/** Most spans that one table may have. */
const MOST_SPANS = 2000;

// npm run -s capacity: safe superimposed loads by span as CSV, by the criteria of the handbook's load tables.
await runCommand(async (args) => {
  const {values, tokens} = parseArgs({args, tokens: true, options: {
    member: {type: "string"}, file: {type: "string"}, pattern: {type: "string"}, strands: {type: "string"}, spans: {type: "string"},
    ys: {type: "string"}, topping: {type: "string"}, lightweight: {type: "boolean"},
  }});
  requireOnce(tokens);
  if (!values.spans || (values.member === undefined) === (values.file === undefined)) throw new UsageError(USAGE);
  const catalog = readCatalog(readRawTables());
  const member = values.file ? await memberOfFile(catalog, values.file, values) : memberOfWords(catalog, values.member as string, values);
  const spansFt = spans(values.spans);
  return `${(isDeckFamily(member.shape.family) ? deckLines(member, spansFt) : beamLines(member, spansFt)).join("\n")}\n`;
});

/** The words of the command besides member and spans. */
interface Words {
  readonly pattern?: string | undefined;
  readonly strands?: string | undefined;
  readonly ys?: string | undefined;
  readonly topping?: string | undefined;
  readonly lightweight?: boolean | undefined;
}

/** A member of any shape from its file, which says all but the spans. */
function memberOfFile(catalog: Catalog, file: string, words: Words): Promise<Member> {
  for (const name of ["pattern", "strands", "ys", "topping", "lightweight"] as const) {
    if (words[name] !== undefined) throw new UsageError(`--file says all of the member, so --${name} cannot be given as well`);
  }
  return fromFile(file, (content) => readMemberFile(content, catalog).member);
}

function memberOfWords(catalog: Catalog, designation: string, words: Words): Member {
  return isBeam(catalog, designation) ? beamOf(catalog, designation, words) : deckOf(catalog, designation, words);
}

function deckOf(catalog: Catalog, designation: string, words: Words): Member {
  if (words.strands !== undefined) throw new UsageError(`a deck member such as ${shapeOf(catalog, designation).designation} takes --pattern, not --strands`);
  if (!words.pattern) throw new UsageError(USAGE);
  const toppingIn = words.topping === undefined ? 0 : numberOf("topping", "topping thickness", words.topping);
  const [endIn, centerIn] = words.ys === undefined ? [] : strandHeights(words.ys);
  return memberOf(catalog, {designation, pattern: words.pattern, endIn, centerIn, toppingIn, lightweight: words.lightweight ?? false});
}

function beamOf(catalog: Catalog, designation: string, words: Words): Member {
  if (words.pattern !== undefined) throw new UsageError(`a beam such as ${designation} takes --strands, not --pattern`);
  if (words.topping !== undefined) throw new UsageError(`a beam such as ${designation} takes no --topping`);
  if (words.strands === undefined) throw new UsageError(`a beam such as ${designation} takes --strands, the number of its 1/2 in strands`);
  return prestressedBeam(catalog, {
    designation,
    strands: numberOf("strands", "strands", words.strands),
    strandHeightIn: words.ys === undefined ? undefined : oneHeight(words.ys),
    concreteKind: words.lightweight ? "sand-lightweight" : "normalweight",
  });
}

/** A deck member's loads to a tenth of a psf. */
function deckLines(member: Member, spansFt: readonly number[]): string[] {
  const criteria = handbookCriteria(member.topping !== undefined);
  return ["span_ft,safe_load_psf,governs,camber_erection_in,camber_long_in", ...spansFt.map((spanFt) => {
    const {safeLoadPsf, governs} = safeLoad(member, spanFt, criteria);
    const {erectionIn, longTermIn} = camber(member, spanFt, criteria.superimposedDeadPsf * member.widthFt);
    return [plain(spanFt), safeLoadPsf.toFixed(1), governs, fixed(erectionIn, 2), fixed(longTermIn, 2)].join(",");
  })];
}

/** A beam's loads rounded down to 10 plf, as the handbook prints them; half of the load is dead and bends the camber down. */
function beamLines(member: Member, spansFt: readonly number[]): string[] {
  const criteria = handbookBeamCriteria();
  return ["span_ft,safe_load_plf,governs,camber_erection_in,camber_long_in", ...spansFt.map((spanFt) => {
    const {safeLoadPlf, tabulatedPlf, governs} = beamCapacity(member, spanFt, criteria);
    const {erectionIn, longTermIn} = camber(member, spanFt, criteria.deadShare * safeLoadPlf);
    return [plain(spanFt), String(tabulatedPlf), governs, fixed(erectionIn, 2), fixed(longTermIn, 2)].join(",");
  })];
}

interface MemberWords {
  readonly designation: string;
  readonly pattern: string;
  readonly endIn: number | undefined;
  readonly centerIn: number | undefined;
  readonly toppingIn: number;
  readonly lightweight: boolean;
}

function memberOf(catalog: Catalog, words: MemberWords): Member {
  const row = deckRow(catalog, words.designation);
  const shape = shapeOf(catalog, row.designation);
  const pattern = parsePattern(words.pattern);
  const member = makeMember({
    shape,
    layout: layoutOf(shape, pattern, strandOf(catalog, pattern), row, words.endIn, words.centerIn),
    concreteKind: words.lightweight ? "sand-lightweight" : "normalweight",
    strengthPsi: HANDBOOK_STRENGTHS_PSI.member,
    releaseStrengthPsi: HANDBOOK_STRENGTHS_PSI.release,
    toppingIn: words.toppingIn,
    toppingStrengthPsi: HANDBOOK_STRENGTHS_PSI.topping,
    humidityPercent: HANDBOOK_HUMIDITY_PERCENT,
  });
  const note = unlistedStrands(row, pattern);
  if (note) process.stderr.write(`note: ${note}\n`);
  return member;
}

/** The one height of straight strands. */
function oneHeight(text: string): number {
  if (!text.includes("/")) return numberOf("ys", "strand height", text);
  throw new InputError({path: "ys", label: "strand height", value: text, allowed: "one height in inches: the strands of a beam are straight"});
}

/** One height, or `end/center`. */
function strandHeights(text: string): [number, number] {
  const heights = text.split("/").map((part) => numberOf("ys", "strand height", part));
  const [endIn, centerIn = endIn] = heights;
  if (endIn === undefined || centerIn === undefined || heights.length > 2) {
    throw new InputError({path: "ys", label: "strand height", value: text, allowed: "one height in inches, or end/center such as 14.4/4.0"});
  }
  return [endIn, centerIn];
}

/** `from:to:step`, `from:to` by 1 ft, or one span. */
function spans(text: string): number[] {
  const parts = text.split(":").map((part) => numberOf("spans", "spans", part));
  const [from, to = from, step = 1] = parts;
  const count = from === undefined || to === undefined ? NaN : Math.floor((to - from) / step + 1e-9) + 1;
  if (from === undefined || parts.length > 3 || !(step > 0) || !(count >= 1 && count <= MOST_SPANS)) {
    throw new InputError({path: "spans", label: "spans", value: text, allowed: `from:to:step in feet, rising, at most ${MOST_SPANS} spans; for example 30:56:2`});
  }
  return Array.from({length: count}, (_, i) => from + i * step);
}

function numberOf(path: string, label: string, text: string): number {
  const value = Number(text);
  if (text.trim() !== "" && Number.isFinite(value)) return value;
  throw new InputError({path, label, value: text, allowed: "a number"});
}

/** A number without the noise of binary fractions. */
function plain(value: number): string {
  return String(Number(value.toFixed(6)));
}

/** Fixed decimals without a negative zero. */
function fixed(value: number, places: number): string {
  const text = value.toFixed(places);
  return Number(text) === 0 ? (0).toFixed(places) : text;
}
