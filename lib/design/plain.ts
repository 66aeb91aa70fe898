/** An object as a file holds it, before anybody has looked into it. */
export type Plain = Readonly<Record<string, unknown>>;

export function isPlain(value: unknown): value is Plain {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** The value at a dotted path such as `bay.spanFt` or `loads.rooms.0.name`; undefined where there is none. */
export function valueAt(whole: object, path: string): unknown {
  return path.split(".").reduce<unknown>((node, key) => (node as Plain | undefined)?.[key], whole);
}
