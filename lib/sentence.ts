import type {QuantityName} from "./quantities.js";

/** A number in a sentence, with the quantity that it stands for. */
export interface Shown {
  readonly quantity: QuantityName;
  readonly text: string;
}

/** A sentence, in pieces where numbers in it say what they stand for. */
export type Sentence = string | readonly (string | Shown)[];

/** A number as text that says what it stands for, so that whatever shows it can be held against all else that does. */
export function shown(quantity: QuantityName, text: string): Shown {
  return {quantity, text};
}

/** A sentence with such numbers in it: sentence`It is ${shown("beam depth", "4'-0\"")} deep.` */
export function sentence(words: TemplateStringsArray, ...values: readonly (Sentence | Shown | number)[]): Sentence {
  return words.flatMap((text, i) => {
    const value = values[i];
    const parts = value === undefined ? [] : typeof value === "number" ? [String(value)] : isPieces(value) ? value : [value];
    return [text, ...parts];
  }).filter((part) => part !== "");
}

function isPieces(value: Sentence | Shown): value is readonly (string | Shown)[] {
  return Array.isArray(value);
}
