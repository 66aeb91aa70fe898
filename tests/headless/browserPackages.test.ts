import {mkdtempSync, readFileSync, rmSync} from "node:fs";
import {tmpdir} from "node:os";
import {dirname, join} from "node:path";
import {pathToFileURL} from "node:url";
import {expect, test} from "vitest";
import {writeBrowserSides} from "../../src/headless/browserPackages.js";
import {ROOT} from "../../src/headless/root.js";

test("the table library comes to the pages by its public entry, with nothing that only Node has and its own packages beside it", async () => {
  const cache = mkdtempSync(join(tmpdir(), "cache-"));
  try {
    writeBrowserSides(ROOT, cache);
    const {version} = JSON.parse(readFileSync(join(ROOT, "node_modules", "arquero", "package.json"), "utf8")) as {version: string};
    const file = join(cache, "_node", `arquero@${version}`, "index.js");
    const imported = [...readFileSync(file, "utf8").matchAll(/\bfrom "([^"]+)"/g)].map(([, name]) => name as string);
    expect(imported.length).toBeGreaterThan(0);
    expect(imported.filter((name) => !/^\.\.\/.+@[\d.]+\/index\.js$/.test(name))).toEqual([]);
    for (const name of imported) expect(readFileSync(join(dirname(file), name), "utf8")).not.toMatch(/\bfrom "node:/);
    const {table, desc} = await import(pathToFileURL(file).href) as typeof import("arquero");
    expect(table({spanFt: [30, 50, 40]}).orderby(desc("spanFt")).array("spanFt")).toEqual([50, 40, 30]);
  } finally {
    rmSync(cache, {recursive: true, force: true});
  }
});
