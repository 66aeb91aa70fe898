import {requireChoice, requireNumber} from "../check.js";
import type {Field, NumberField, ValueOf} from "../design/entries.js";
import {isPlain, type Plain} from "../design/plain.js";
import {validateField} from "../design/validate.js";
import {InputError} from "../errors.js";

/**
 * Reads an object of a file field by field. Each field is checked as it is read; {@link finish} refuses those that
 * nothing has read, so that a misspelled one is noticed.
 */
export class PlainReader {
  readonly #content: Plain;
  readonly #read = new Set<string>();

  constructor(content: unknown, private readonly path: string, private readonly label = path) {
    if (!isPlain(content)) throw new InputError({path, label, value: content, allowed: "an object of named fields"});
    this.#content = content;
  }

  /** Path of a field in the whole file. */
  at(key: string): string {
    return this.path ? `${this.path}.${key}` : key;
  }

  has(key: string): boolean {
    return this.#content[key] !== undefined;
  }

  #take(key: string): unknown {
    this.#read.add(key);
    return this.#content[key];
  }

  number(key: string, label: string, unit: string, min: number, max: number, otherwise?: number): number {
    const value = this.#take(key) ?? otherwise;
    return requireNumber(value, {path: this.at(key), label, unit, min, max});
  }

  /** A value that means what a field of the design does, with the field's words, range and choices. */
  field<F extends Field>(key: string, field: F, otherwise?: ValueOf<F>): ValueOf<F> {
    const value = this.#take(key) ?? otherwise;
    validateField(field, this.at(key), value);
    return value as ValueOf<F>;
  }

  optionalField<F extends Field>(key: string, field: F): ValueOf<F> | undefined {
    return this.has(key) ? this.field(key, field) : undefined;
  }

  /** The one number that a field may have, such as a file's version. */
  same(key: string, label: string, wanted: number, advice?: string): void {
    const value = this.#take(key);
    if (value !== wanted) throw new InputError({path: this.at(key), label, value, allowed: String(wanted), advice});
  }

  choice<T extends string>(key: string, label: string, choices: readonly T[], otherwise?: T): T {
    return requireChoice(this.#take(key) ?? otherwise, {path: this.at(key), label, choices});
  }

  text(key: string, otherwise?: string): string {
    const value = this.#take(key) ?? otherwise;
    if (typeof value === "string") return value;
    throw new InputError({path: this.at(key), label: key, value, allowed: "text"});
  }

  texts(key: string): string[] | undefined {
    const value = this.#take(key);
    if (value === undefined) return undefined;
    if (Array.isArray(value) && value.length > 0 && value.every((entry) => typeof entry === "string")) return value;
    throw new InputError({path: this.at(key), label: key, value, allowed: "a list of texts"});
  }

  /** An object of names and numbers; empty where there is none. */
  numbers(key: string): Record<string, number> {
    const value = this.#take(key) ?? {};
    const reader = new PlainReader(value, this.at(key));
    return Object.fromEntries(Object.keys(reader.#content).map((name) => [name, reader.number(name, name, "", 0, 300)]));
  }

  /**
   * Numbers of a field's range: one, a list of them, or evenly spaced ones as `{"from": 20, "to": 60, "by": 4}`.
   *
   * @param spaced - makes the evenly spaced ones
   */
  series(key: string, field: NumberField, most: number, spaced: (range: {from: number; to: number; by: number}) => number[]): number[] {
    const value = this.#take(key);
    const given = isPlain(value) ? this.#spaced(key, field, most, spaced) : Array.isArray(value) ? value as unknown[] : [value];
    if (given.length < 1 || given.length > most) throw new InputError({path: this.at(key), label: field.label, value: given.length, allowed: `1 to ${most} values`});
    given.forEach((one, i) => validateField(field, Array.isArray(value) ? `${this.at(key)}.${i}` : this.at(key), one));
    return [...new Set(given as number[])];
  }

  #spaced(key: string, {label, unit, min, max}: NumberField, most: number, spaced: (range: {from: number; to: number; by: number}) => number[]): number[] {
    const reader = this.branch(key);
    const from = reader.number("from", label, unit, min, max);
    const to = reader.number("to", label, unit, from, max);
    const by = reader.number("by", `step of ${label}`, unit, (to - from) / most, max);
    reader.finish();
    if (by <= 0) throw new InputError({path: reader.at("by"), label: `step of ${label}`, value: by, unit, allowed: "more than 0"});
    return spaced({from, to, by});
  }

  /** One or more of some choices, in the order of the choices. */
  choices<T extends string>(key: string, label: string, choices: readonly T[]): T[] {
    const value = this.#take(key);
    const given = Array.isArray(value) ? value as unknown[] : [value];
    if (given.length === 0) throw new InputError({path: this.at(key), label, value: "none", allowed: choices.join(", ")});
    const found = given.map((one, i) => requireChoice(one, {path: Array.isArray(value) ? `${this.at(key)}.${i}` : this.at(key), label, choices}));
    return choices.filter((choice) => found.includes(choice));
  }

  /** Everything in the object by name, all of it read. */
  entries(): [string, unknown][] {
    return Object.keys(this.#content).map((key) => [key, this.#take(key)]);
  }

  /** Some fields as they stand, read by someone else. */
  rest<Key extends string>(keys: readonly Key[]): Readonly<Partial<Record<Key, unknown>>> {
    return Object.fromEntries(keys.map((key) => [key, this.#take(key)])) as Partial<Record<Key, unknown>>;
  }

  branch(key: string): PlainReader {
    return new PlainReader(this.#take(key), this.at(key));
  }

  optionalBranch(key: string): PlainReader | undefined {
    return this.has(key) ? this.branch(key) : undefined;
  }

  list(key: string): PlainReader[] {
    const value = this.#take(key);
    if (!Array.isArray(value) || value.length === 0) throw new InputError({path: this.at(key), label: key, value, allowed: "a list of one or more objects"});
    return value.map((entry, i) => new PlainReader(entry, this.at(`${key}.${i}`)));
  }

  finish(): void {
    for (const key of Object.keys(this.#content)) {
      if (this.#read.has(key)) continue;
      throw new InputError({path: this.at(key), label: this.at(key), value: this.#content[key],
        allowed: `no field of this name; ${this.path || `a ${this.label || "member file"}`} has ${[...this.#read].join(", ")}`});
    }
  }
}
