/** Results by key, made once; the oldest are forgotten beyond a number, so that a long run keeps within its memory. */
export class Kept<T, Key extends string | number = string> {
  readonly #kept = new Map<Key, T>();

  /** @param most - results that are kept at most */
  constructor(private readonly most: number) {}

  get(key: Key, make: () => T): T {
    const kept = this.#kept.get(key);
    // That there is none may be a result as well.
    if (kept !== undefined || this.#kept.has(key)) return kept as T;
    const made = make();
    if (this.#kept.size >= this.most) this.#kept.delete(this.#kept.keys().next().value as Key);
    this.#kept.set(key, made);
    return made;
  }
}

/** What is made when it is first asked for, made once. */
export function lazy<T>(make: () => T): () => T {
  let made: {readonly of: T} | undefined;
  return () => (made ??= {of: make()}).of;
}
