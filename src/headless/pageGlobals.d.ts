/**
 * What the site generator gives to the cells of a page without an import; only what works without network. Seen by the
 * check of pages alone: a module imports what it needs.
 */

/** What a reader can be shown as it is: anything else would stand on the page as the raw text of an object. */
type Shown = Node | string | number | null | undefined | readonly Shown[];

declare function display<T extends Shown>(value: T): T;
declare function view<T extends Element & {readonly value: unknown}>(input: T): AsyncGenerator<T["value"]>;
// What a file holds is known to the page that asks for it.
// eslint-disable-next-line @typescript-eslint/no-explicit-any
declare function FileAttachment(name: string): {json(): Promise<any>; text(): Promise<string>};
declare const Generators: {
  observe<T>(initialize: (change: (value: T) => void) => (() => void) | void): AsyncGenerator<T>;
  input<T extends Element & {readonly value: unknown}>(input: T): AsyncGenerator<T["value"]>;
};
declare const width: number;
declare const dark: boolean;
declare const now: number;
declare const invalidation: Promise<void>;
declare function visibility<T>(value?: T): Promise<T>;

/** A cell's variable as other cells see it: the generator waits for promises and takes the values of generators one by one. */
type Unwrapped<T> = T extends AsyncGenerator<infer V> | Generator<infer V> | Promise<infer V> ? V : T;
declare function $cell<T>(cell: () => Promise<T>): {readonly [K in keyof T]: Unwrapped<T[K]>};
declare function $shown(value: Shown | Promise<Shown> | AsyncGenerator<Shown> | Generator<Shown>): void;
