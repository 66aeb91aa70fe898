/**
 * Runs in the head of every page, before anything of it: where the address asks for one figure alone (`?embed=NAME`), it says so on the root element,
 * and gives the page a storage that ends with it in the place of the browser's. So nothing of an embed is kept, nothing that this reader keeps is read,
 * and an embed works where a browser refuses storage to what stands in a page of another site. Nothing waits for a guess there, for what asks is not shown.
 * Where a browser does not allow that, the page is the whole one.
 */
export const EMBED_SCRIPT = `(() => {
  const name = new URLSearchParams(location.search).get("embed");
  if (name === null) return;
  try {
    for (const storage of ["localStorage", "sessionStorage"]) {
      const kept = new Map([["plank-and-tee/guess/*", "null"]]);
      Object.defineProperty(window, storage, {value: {
        getItem: (key) => kept.get(key) ?? null,
        setItem: (key, value) => void kept.set(key, String(value)),
        removeItem: (key) => void kept.delete(key),
        clear: () => kept.clear(),
        key: (at) => [...kept.keys()][at] ?? null,
        get length() { return kept.size; },
      }});
    }
    document.documentElement.dataset.embed = name;
  } catch {}
})()`.replace(/\n\s*/g, " ");
