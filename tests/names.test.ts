import {readFileSync, readdirSync} from "node:fs";
import {join} from "node:path";
import ts from "typescript";
import {expect, test} from "vitest";
import {ROOT} from "../src/headless/root.js";

/** The names that a module exports, its own and those that it hands on. */
function exportsOf(file: string, text: string): string[] {
  return ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true).statements.flatMap((each): string[] => {
    if (ts.isExportDeclaration(each)) return each.exportClause && ts.isNamedExports(each.exportClause) ? each.exportClause.elements.map(({name}) => name.text) : ["*"];
    if (!ts.canHaveModifiers(each) || !ts.getModifiers(each)?.some(({kind}) => kind === ts.SyntaxKind.ExportKeyword)) return [];
    if (ts.isVariableStatement(each)) return each.declarationList.declarations.map(({name}) => name.getText());
    return (each as ts.DeclarationStatement).name ? [(each as ts.DeclarationStatement).name!.text] : [];
  });
}

/** Names that several modules export, each with the modules. */
function twice(modules: readonly {readonly file: string; readonly text: string}[]): string[] {
  const places = new Map<string, Set<string>>();
  for (const {file, text} of modules) for (const name of exportsOf(file, text)) places.set(name, (places.get(name) ?? new Set()).add(file));
  return [...places].filter(([, files]) => files.size > 1).map(([name, files]) => `${name}: ${[...files].join(", ")}`);
}

test("no name is exported by two modules of the library, nor handed on by a second", () => {
  const lib = join(ROOT, "lib");
  const files = readdirSync(lib, {recursive: true, encoding: "utf8"}).filter((file) => file.endsWith(".ts"));
  expect(files.length).toBeGreaterThan(200);
  expect(twice(files.map((file) => ({file, text: readFileSync(join(lib, file), "utf8")})))).toEqual([]);
});

test("a name that stands twice is found, whether it is declared, listed or a type", () => {
  const text = "export const span = 1;";
  for (const other of ["export function span() {}", "export type span = number;", "export interface span {}", 'export {span} from "./a.js";', 'export {a as span} from "./b.js";']) {
    expect(twice([{file: "one.ts", text}, {file: "two.ts", text: other}])).toEqual(["span: one.ts, two.ts"]);
  }
  expect(twice([{file: "one.ts", text}, {file: "two.ts", text: "const span = 2; export const other = span;"}])).toEqual([]);
});
