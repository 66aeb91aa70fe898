/** Results by key, made once; the oldest are forgotten beyond a number, so that a long run keeps within its memory. */
export class Kept<T> {
  readonly #kept = new Map<string, T>();

  /** @param most - results that are kept at most */
  constructor(private readonly most: number) {}

  get(key: string, make: () => T): T {
    if (this.#kept.has(key)) return this.#kept.get(key) as T;
    const made = make();
    if (this.#kept.size >= this.most) this.#kept.delete(this.#kept.keys().next().value as string);
    this.#kept.set(key, made);
    return made;
  }
}

/** What is made when it is first asked for, made once. */
export function lazy<T>(make: () => T): () => T {
  let made: {readonly of: T} | undefined;
  return () => (made ??= {of: make()}).of;
}
