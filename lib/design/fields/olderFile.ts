/** What an older file holds at a field of a group, which nobody has checked yet; where it holds none, validation names that group first. */
export function of<T>(group: unknown, name: string): T {
  return ((group ?? {}) as Readonly<Record<string, T>>)[name] as T;
}
