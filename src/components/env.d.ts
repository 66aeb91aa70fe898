/** What the site generator offers to a module under the name `observablehq:stdlib`; the parts that we use. */
declare module "observablehq:stdlib" {
  export function FileAttachment(name: string): {json(): Promise<unknown>; text(): Promise<string>; readonly href: string};
  export const Generators: {
    observe<T>(initialize: (change: (value: T) => void) => (() => void) | void): AsyncGenerator<T>;
  };
}

/** The part of the reader of text tables that we use. */
declare module "d3-dsv" {
  export function csvParseRows(text: string): string[][];
  export function csvFormatRows(rows: readonly (readonly string[])[]): string;
}
