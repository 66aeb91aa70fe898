/** Keeps something small of this reader's in the browser, beside the design; without storage it lasts as long as the page. */
export function keep(key: string, value: unknown): void {
  try {
    localStorage.setItem(`plank-and-tee/${key}`, JSON.stringify(value));
  } catch {
    // A browser that keeps nothing for the site is no reason to stop.
  }
}

/** What was kept under a key; undefined where there is nothing that can be read. */
export function recall(key: string): unknown {
  try {
    const text = localStorage.getItem(`plank-and-tee/${key}`);
    return text === null ? undefined : (JSON.parse(text) as unknown);
  } catch {
    return undefined;
  }
}
