import type {Step, Working} from "../step.js";
import type {Answer, Earlier, Item, Option, ExercisePart, Picture, Tolerance} from "./item.js";
import {hintsOf, keysOf, slipsOf, type Hint} from "./keys.js";
import {proseText, type Prose} from "./prose.js";
import type {UnitSystem} from "../reader/system.js";

/** An exercise as plain data, for files and other programs; numbers are in customary units, words in the reader's. */
export interface PlainItem {
  readonly kind: string;
  readonly topic: string;
  readonly level: number;
  readonly title: string;
  readonly seed: number;
  readonly turn: number;
  readonly number: number;
  readonly question: string;
  readonly givens: Item["givens"];
  readonly table?: Item["table"];
  readonly picture?: object;
  readonly parts: readonly PlainPart[];
  /** With the key: that of the last part, which the exercise comes to; `parts` holds every part's. */
  readonly answer?: Answer;
  readonly unit?: string;
  readonly tolerance?: Tolerance;
  readonly slips?: readonly PlainSlip[];
  readonly steps?: readonly Step[];
}

/** A part of an exercise as plain data. */
export interface PlainPart {
  readonly type: ExercisePart["type"];
  readonly ask: string;
  readonly points: number;
  readonly unit?: string;
  readonly tolerance?: Tolerance;
  readonly options?: readonly {readonly id: string; readonly text: string; readonly picture?: object}[];
  readonly by?: string;
  readonly lines?: readonly Step[];
  readonly answer?: Answer;
  readonly slips?: readonly PlainSlip[];
  readonly steps?: readonly Step[];
  readonly because?: string;
  /** Where hints are wanted: the worked steps with their numbers withheld. */
  readonly hints?: readonly Hint[];
}

/** A usual mistake with the answer that it gives. */
export interface PlainSlip {
  readonly name: string;
  readonly answer: Answer;
  readonly says: string;
}

/** What the plain form of an exercise holds. */
export interface PlainChoices {
  readonly key: boolean;
  readonly hints: boolean;
  readonly system: UnitSystem;
}

/** An exercise as plain data, with its key or without. */
export function plainItem(item: Item, choices: PlainChoices): PlainItem {
  const {kind, topic, level, title, seed, turn, number, question, givens, table, picture} = item;
  const keys = keysOf(item);
  const parts = item.parts.map((part, i) => plainPart(part, keys[i] as Answer, keys.slice(0, i), choices));
  const last = parts.at(-1);
  return {
    kind, topic, level, title, seed, turn, number, question: question.map((each) => proseText(each, choices.system)).join(" "), givens,
    ...(table ? {table} : {}), ...(picture ? {picture: plainPicture(picture)} : {}), parts,
    ...(choices.key && last ? {answer: last.answer, unit: last.unit ?? "", tolerance: last.tolerance ?? {within: 0}, slips: last.slips, steps: last.steps} : {}),
  };
}

function plainPart(part: ExercisePart, key: Answer, earlier: Earlier, {key: withKey, hints, system}: PlainChoices): PlainPart {
  const words = (each: Prose) => proseText(each, system);
  const options = (list: readonly Option[]) => list.map(({id, text, picture}) => ({id, text: words(text), ...(picture ? {picture: plainPicture(picture)} : {})}));
  return {
    type: part.type, ask: words(part.ask), points: part.points,
    ...(part.type === "number" ? {unit: part.unit, tolerance: part.tolerance} : part.type === "mistake" ? {lines: part.lines} : {options: options(part.options)}),
    ...(part.type === "order" ? {by: part.by} : {}),
    ...(hints ? {hints: hintsOf(part, earlier)} : {}),
    ...(withKey ? {answer: key, slips: plainSlips(part, key, earlier), steps: stepsOf(part.working(earlier)), ...(part.because ? {because: words(part.because)} : {})} : {}),
  };
}

function stepsOf({steps}: Working): readonly Step[] {
  return steps;
}

function plainSlips(part: ExercisePart, key: Answer, earlier: Earlier): PlainSlip[] {
  switch (part.type) {
    case "number":
      return slipsOf(part, earlier).map(({name, value, says}) => ({name, answer: value, says}));
    case "choice":
      return part.options.flatMap(({id, slip}) => (slip && id !== key ? [{name: slip.name, answer: id, says: slip.says}] : []));
    case "order":
      return part.slips.filter(({order}) => order !== key).map(({name, order, says}) => ({name, answer: order, says}));
    case "mistake":
      return [];
  }
}

/** A picture without what a designation says already. */
function plainPicture(picture: Picture): object {
  if (picture.kind !== "section") return picture;
  const {shape: {designation, dimensions}, toppingIn, strands} = picture;
  return {kind: "section", designation, dimensions, toppingIn, strands};
}
