/**
 * Work that is done when it is first asked for, and then kept: for what several tests of a file begin from, so that nothing
 * is computed while the file is read. Not for what the file tests: a mutant is tried only against the tests that run its
 * code, and that would be the first one alone.
 */
export function once<T>(work: () => T): () => T {
  let kept: {readonly value: T} | undefined;
  return () => (kept ??= {value: work()}).value;
}
