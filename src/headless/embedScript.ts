/**
 * Runs in the head of every page, before anything of it: where the address asks for one figure alone (`?embed=NAME`), it says so on the root element,
 * and gives the page a storage that ends with it in the place of the browser's. So nothing of an embed is kept, nothing that this reader keeps is read,
 * and an embed works where a browser refuses storage to what stands in a page of another site. It reads in the units that the address asks for. Nothing waits for a guess there, for what asks is not shown.
 * Where a browser does not allow that, the page is the whole one.
 */
export const EMBED_SCRIPT = `(() => {
  const asked = new URLSearchParams(location.search);
  const name = asked.get("embed");
  const units = asked.get("units");
  if (name === null) return;
  try {
    for (const storage of ["localStorage", "sessionStorage"]) {
      const kept = new Map([["plank-and-tee/guess/*", "null"]]);
      if (units === "SI" || units === "both") kept.set("plank-and-tee/units", JSON.stringify(units));
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
