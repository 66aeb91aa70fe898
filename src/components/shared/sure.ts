/** A value of a list that must be there; throws by its name where it is not, so that no page says something else in its place. */
export function sure<T>(value: T | undefined, what: string): T {
  if (value === undefined) throw new Error(`there is no ${what}`);
  return value;
}
