/**
 * Work that is done when it is first asked for, and then kept: for what several tests of a file share, so that nothing is
 * computed while the file is read.
 */
export function once<T>(work: () => T): () => T {
  let kept: {readonly value: T} | undefined;
  return () => (kept ??= {value: work()}).value;
}
