import {existsSync, readFileSync, readdirSync} from "node:fs";
import {join} from "node:path";
import {Linter} from "eslint";
import tseslint from "typescript-eslint";
import {describe, expect, test} from "vitest";
import {ROOT, fault, importedFile, importsOfRooms, layers, misplaced, readHouse, roomOf, roomsInOrder, wayBack, type House} from "../../lint/house.js";

const ORDER = ["units", "materials", "deck", "evaluate"];
/** A small house: files with what they import. */
const house = (files: Record<string, readonly string[]>): House => {
  const map = new Map(Object.entries(files));
  return {order: ORDER, files: map, rooms: importsOfRooms(map)};
};

describe("the layers of the house", () => {
  test("are the list of DEVELOPERS.md, which names every room of lib/ and no other", () => {
    const listed = roomsInOrder(readFileSync(join(ROOT, "DEVELOPERS.md"), "utf8"));
    const there = readdirSync(join(ROOT, "lib")).filter((name) => name !== "tsconfig.json").map((name) => name.replace(/\.ts$/, ""));
    expect([...listed].sort()).toEqual(there.sort());
  });

  test("let a room of the library use those above it, and no other", () => {
    expect(misplaced("lib/deck/cell.ts", "lib/units.ts", ORDER)).toBeUndefined();
    expect(misplaced("lib/deck/cell.ts", "lib/deck/limits.ts", ORDER)).toBeUndefined();
    expect(misplaced("lib/deck/cell.ts", "lib/evaluate.ts", ORDER)).toBe("lib/evaluate stands below lib/deck in the list of DEVELOPERS.md");
    expect(misplaced("lib/deck/cell.ts", "lib/attic/box.ts", ORDER)).toBe("lib/attic has no place in the list of DEVELOPERS.md");
    expect(misplaced("lib/deck/cell.ts", "src/components/dom.ts", ORDER)).toMatch("imports nothing from the pages");
  });

  test("let pages use components and the library, components each other, and nobody a page of another", () => {
    expect(misplaced("src/pages/deck/index.md", "lib/deck/cell.ts", ORDER)).toBeUndefined();
    expect(misplaced("src/pages/deck/curves.ts", "src/components/dom.ts", ORDER)).toBeUndefined();
    expect(misplaced("src/pages/deck/index.md", "src/pages/deck/curves.ts", ORDER)).toBeUndefined();
    expect(misplaced("src/index.md", "src/pages/index/tour.ts", ORDER)).toBeUndefined();
    expect(misplaced("src/components/charts/marks.ts", "src/components/dom.ts", ORDER)).toBeUndefined();
    expect(misplaced("src/components/dom.ts", "src/pages/deck/curves.ts", ORDER)).toBe("src/components may not use src/pages");
    expect(misplaced("src/pages/deck/curves.ts", "src/pages/loads/rows.ts", ORDER)).toBe("src/pages/deck and src/pages/loads are pages: what both use belongs to components");
    expect(misplaced("src/components/dom.ts", "src/headless/build.ts", ORDER)).toBe("src/components may not use src/headless");
    expect(misplaced("src/pages/deck/curves.ts", "src/headless/build.ts", ORDER)).toBe("src/pages may not use src/headless");
  });

  test("let no file be reached from what it imports, and no room of components", () => {
    const files = house({"lib/deck/a.ts": ["lib/deck/b.ts"], "lib/deck/b.ts": ["lib/deck/c.ts"], "lib/deck/c.ts": ["lib/deck/a.ts"], "lib/deck/d.ts": ["lib/deck/a.ts"]});
    expect(fault("lib/deck/a.ts", "lib/deck/b.ts", files)).toBe("imports go round: lib/deck/a.ts > lib/deck/b.ts > lib/deck/c.ts > lib/deck/a.ts");
    expect(fault("lib/deck/d.ts", "lib/deck/a.ts", files)).toBeUndefined();
    const rooms = house({"src/components/charts/a.ts": ["src/components/tables/b.ts"], "src/components/tables/c.ts": ["src/components/charts/d.ts"]});
    expect(fault("src/components/charts/a.ts", "src/components/tables/b.ts", rooms))
      .toBe("rooms go round: src/components/charts > src/components/tables > src/components/charts");
  });

  test("take a file beside a folder of its name for that folder's door", () => {
    expect([roomOf("src/components/store.ts"), roomOf("src/components/store/kept.ts")]).toEqual(["src/components/store", "src/components/store"]);
    expect([roomOf("lib/evaluate.ts"), roomOf("lib/deck/cell.ts")]).toEqual(["lib/evaluate", "lib/deck"]);
    expect(importedFile("src/pages/deck/index.md", "../../lib/deck/cell.js")).toBe("lib/deck/cell.ts");
    expect(importedFile("src/pages/deck/curves.ts", "../../../lib/deck/cell.js")).toBe("lib/deck/cell.ts");
    expect(importedFile("lib/deck/cell.ts", "arquero")).toBeUndefined();
    expect(wayBack(new Map([["a", ["b"]], ["b", []]]), "a", "c")).toBeUndefined();
  });

  test("hold in every file as it stands, the prose of pages included", () => {
    const now = readHouse();
    expect(now.files.size).toBeGreaterThan(300);
    expect([...now.files.values()].flat().every((file) => existsSync(join(ROOT, file)))).toBe(true);
    const faults = [...now.files].flatMap(([from, imported]) => imported.flatMap((to) => fault(from, to, now) ?? []));
    expect(faults).toEqual([]);
  });
});

describe("the linter", () => {
  const told = (filename: string, code: string) => new Linter({cwd: ROOT}).verify(code, [{
    files: ["**/*.ts"], languageOptions: {parser: tseslint.parser as never}, plugins: {house: {rules: {layers: layers as never}}}, rules: {"house/layers": "error"},
  }], join(ROOT, filename)).map(({message}) => message);

  test("refuses what the layers do not allow, types and what is loaded late included", () => {
    const below = "lib/deck stands below lib/units in the list of DEVELOPERS.md";
    for (const code of [
      'import {unfactoredPsf} from "./deck/loadOf.js";', 'import type {Cell} from "./deck/cell.js";', 'export * from "./deck/cell.js";',
      'export type {Cell} from "./deck/cell.js";', 'export const late = () => import("./deck/cell.js");', 'export type Late = import("./deck/cell.js").Cell;',
    ]) expect(told("lib/units.ts", code), code).toEqual([below]);
  });

  test("lets pass what stands above, packages, and what no file is", () => {
    expect(told("lib/deck/cell.ts", 'import "../units.js";\nimport "arquero";\nimport "./nowhere.js";')).toEqual([]);
    expect(told("tests/units.test.ts", 'import "../lib/units.js";')).toEqual([]);
  });
});
