/** What the site generator offers to a module under the name `observablehq:stdlib`; the parts that we use. */
declare module "observablehq:stdlib" {
  export function FileAttachment(name: string): {json(): Promise<unknown>; text(): Promise<string>};
  export const Generators: {
    observe<T>(initialize: (change: (value: T) => void) => (() => void) | void): AsyncGenerator<T>;
  };
}

/** Parts of the table library that carry their types with the whole. */
declare module "arquero/src/helpers/desc.js" {
  export {desc} from "arquero";
}
declare module "arquero/src/helpers/escape.js" {
  export {escape} from "arquero";
}
declare module "arquero/src/table/index.js" {
  export {table} from "arquero";
}
