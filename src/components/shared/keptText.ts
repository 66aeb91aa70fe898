/** What is kept in this browser under a key; undefined where there is nothing, or the browser keeps nothing for this site. */
export function keptText(key: string): string | undefined {
  try {
    return localStorage.getItem(key) ?? undefined;
  } catch {
    return undefined;
  }
}

/** Keeps a text in this browser, or takes it away; says whether it was kept. */
export function keepText(key: string, text: string | undefined): boolean {
  try {
    if (text === undefined) localStorage.removeItem(key);
    else localStorage.setItem(key, text);
    return true;
  } catch {
    return false;
  }
}

/** Plain data in a text; undefined where it is none. */
export function plainIn(text: string | undefined): unknown {
  try {
    return text === undefined ? undefined : JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** All keys with a beginning. */
export function keysBeginning(prefix: string): string[] {
  try {
    return Object.keys(localStorage).filter((key) => key.startsWith(prefix)).sort();
  } catch {
    return [];
  }
}
