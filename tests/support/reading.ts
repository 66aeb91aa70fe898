/** An object beside the paths of all plain values that are read of it, such as `bay.spanFt`. */
export interface Reading<T> {
  readonly of: T;
  readonly read: ReadonlySet<string>;
}

/** Notes what is read of an object: what a key must hold of it. A list counts as one value. */
export function reading<T extends object>(from: T): Reading<T> {
  const read = new Set<string>();
  const noted = <O extends object>(of: O, path: string): O => new Proxy(of, {
    get(target, key) {
      const value: unknown = Reflect.get(target, key);
      if (typeof key === "symbol") return value;
      if (typeof value === "object" && value !== null && !Array.isArray(value)) return noted(value, `${path}${key}.`);
      read.add(`${path}${key}`);
      return value;
    },
  });
  return {of: noted(from, ""), read};
}
