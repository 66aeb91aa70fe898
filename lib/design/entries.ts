/**
 * What an entry of the table of fields may be. An entry says all that is known of a field before any design is there:
 * what it is called, its unit, its range or choices, since which version a design file has it and what an older file
 * meant. The type of a design follows from the entries ({@link ValueOf}), and so do validation, migration and controls.
 */
export type Entry = Field | Lengths | Group | List;

/** Entries by the names that they have in a file. */
export type Entries = Readonly<Record<string, Entry>>;

/** One value that a reader can set. */
export type Field = NumberField | ChoiceField | TextField | SwitchField;

interface Named {
  /** Plain-language name, lower case; of a group as it stands over its fields. */
  readonly label: string;
  /** Whether a file may leave it out; its absence has a meaning of its own. */
  readonly optional?: boolean;
}

interface FieldBase extends Named {
  /** What the value means and why one would change it; one or two sentences. */
  readonly help: string;
  /** None where the first version of the file had it. */
  readonly since?: Since;
}

/** The version of the file that brought a field, and what an older file is taken to have meant, such as what was done before there was a choice. */
export interface Since {
  readonly version: number;
  /** A value, or a function of the older file's content, which nobody has checked yet. */
  readonly meant: unknown;
}

export interface NumberField extends FieldBase {
  readonly kind: "number";
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  /** Step of the control; a file may hold any value in the range. */
  readonly step: number;
  readonly integer?: boolean;
}

export interface ChoiceField<Choice extends string = string> extends FieldBase {
  readonly kind: "choice";
  /** Value in the file and the words that the reader sees. */
  readonly choices: Readonly<Record<Choice, string>>;
}

export interface TextField extends FieldBase {
  readonly kind: "text";
  readonly maxLength: number;
  readonly multiline?: boolean;
}

export interface SwitchField extends FieldBase {
  readonly kind: "switch";
}

/** Lengths by names that depend on the rest of the design: dimensions of a shape, in. */
export interface Lengths extends Named {
  readonly kind: "lengths";
  readonly min: number;
  readonly max: number;
}

export interface Group<Inside = Entries> extends Named {
  readonly kind: "group";
  readonly entries: Inside;
}

/** A list of groups alike. */
export interface List<Inside = Entries> extends Named {
  readonly kind: "list";
  readonly min: number;
  readonly max: number;
  readonly entries: Inside;
  /** None where the first version of the file had it. */
  readonly since?: Since;
}

/** The type of an entry's value in a design. */
export type ValueOf<E> =
  E extends NumberField ? number
  : E extends ChoiceField<infer Choice> ? Choice
  : E extends TextField ? string
  : E extends SwitchField ? boolean
  : E extends Lengths ? Readonly<Record<string, number>>
  : E extends Group<infer Inside> ? ValuesOf<Inside>
  : E extends List<infer Inside> ? readonly ValuesOf<Inside>[]
  : never;

/** The type of a group's values: those that a file may leave out are optional. Comments on the entries go with them. */
export type ValuesOf<Inside> = [OptionalIn<Inside>] extends [never]
  ? Spelled<Inside>["out"]
  : Values<Inside, Exclude<keyof Inside, OptionalIn<Inside>>> & Partial<Values<Inside, OptionalIn<Inside>>>;

/** A type whose name does not stand before its parts, so that an editor shows these. */
interface Spelled<Inside> {
  readonly out: {readonly [Name in keyof Inside]: ValueOf<Inside[Name]>};
}
type Values<Inside, Key extends keyof Inside> = {readonly [Name in Key]: ValueOf<Inside[Name]>};
type OptionalIn<Inside> = {[Name in keyof Inside]: Inside[Name] extends {readonly optional: true} ? Name : never}[keyof Inside];

/** Paths of entries with what each holds; `*` stands for any index of a list. */
export type EntriesByPath<Inside, Before extends string = ""> = {
  [Name in keyof Inside & string]:
    | readonly [`${Before}${Name}`, Inside[Name]]
    | (Inside[Name] extends Group<infer Deeper> ? EntriesByPath<Deeper, `${Before}${Name}.`>
      : Inside[Name] extends List<infer Deeper> ? EntriesByPath<Deeper, `${Before}${Name}.*.`>
      : never)
}[keyof Inside & string];

export const number = (label: string, unit: string, min: number, max: number, step: number, help: string): NumberField => ({
  kind: "number", label, unit, min, max, step, help,
});
export const count = (label: string, unit: string, min: number, max: number, help: string): NumberField => ({
  kind: "number", label, unit, min, max, step: 1, integer: true, help,
});
export const choice = <const Choices extends Readonly<Record<string, string>>>(label: string, choices: Choices, help: string): ChoiceField<keyof Choices & string> => ({
  kind: "choice", label, choices, help,
});
export const text = (label: string, maxLength: number, help: string): TextField => ({kind: "text", label, maxLength, help});
/** Text of several lines. */
export const longText = (label: string, maxLength: number, help: string): TextField => ({kind: "text", label, maxLength, help, multiline: true});
export const toggle = (label: string, help: string): SwitchField => ({kind: "switch", label, help});
export const lengths = (label: string, min: number, max: number): Lengths => ({kind: "lengths", label, min, max});
export const group = <const Inside extends Entries>(label: string, entries: Inside): Group<Inside> => ({kind: "group", label, entries});
export const list = <const Inside extends Entries>(label: string, min: number, max: number, entries: Inside): List<Inside> => ({kind: "list", label, min, max, entries});

/** An entry that a file may leave out. */
export const optional = <E extends Entry>(entry: E): E & {readonly optional: true} => ({...entry, optional: true});

/** A field or a list that older files have not, with what each of them is taken to have meant: a value, or a function of its content. */
export const since = <F extends Field | List>(version: number, meant: ValueOf<F> | ((content: Readonly<Record<string, unknown>>) => ValueOf<F>), field: F): F => ({...field, since: {version, meant}});
