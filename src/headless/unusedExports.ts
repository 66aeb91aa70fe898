/** Finds what a module of the product offers and no product code uses; pages count by the modules that stand for them. */
import {readFileSync, readdirSync} from "node:fs";
import {join, posix} from "node:path";
import {fileURLToPath} from "node:url";
import ts from "typescript";
import {cellModule} from "./cells.js";
import {listPages, sourceOf} from "./pages.js";
import {ROOT} from "./root.js";

/** Modules by their path from the project's folder. */
export type Modules = Readonly<Record<string, string>>;

/** What stays though no page uses it, each with its reason. */
const KEPT: Readonly<Record<string, string>> = {
  "lib/deck/table.ts: safeLoadTable": "a whole table at once, against which tests and benchmarks hold the sweep",
};

/** The names in a module, how often each is written, and what it exports and imports. */
interface Reading {
  readonly offered: readonly string[];
  readonly written: ReadonlyMap<string, number>;
  /** Names by the module that they come from; `*` is all of it. */
  readonly taken: readonly {readonly from: string; readonly name: string}[];
}

/** Exports of `lib` and `src` that no product code uses, their own module included, as `file: name`. What only tests use is dead too. */
export function unusedExports(modules: Modules): string[] {
  const readings = Object.entries(modules).map(([file, text]) => ({file, ...readingOf(file, text)}));
  const taken = new Set(readings.filter(({file}) => !file.startsWith("tests/")).flatMap((reading) => reading.taken.map(({from, name}) => `${from}: ${name}`)));
  return readings.filter(({file}) => /^(lib|src)\//.test(file)).flatMap(({file, offered, written}) =>
    offered.filter((name) => !taken.has(`${file}: ${name}`) && !taken.has(`${file}: *`) && (written.get(name) ?? 0) < 2).map((name) => `${file}: ${name}`));
}

function readingOf(file: string, text: string): Reading {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const offered: string[] = [];
  const written = new Map<string, number>();
  const taken: {from: string; name: string}[] = [];
  const take = (specifier: ts.Node | undefined, names: readonly string[]) => {
    if (!specifier || !ts.isStringLiteral(specifier) || !specifier.text.startsWith(".")) return;
    // Pages reach the library by a link in their own folder.
    const from = posix.join(posix.dirname(file), specifier.text).replace(/^src\/lib\//, "lib/").replace(/\.js$/, ".ts");
    taken.push(...names.map((name) => ({from, name})));
  };
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node)) written.set(node.text, (written.get(node.text) ?? 0) + 1);
    if (ts.isImportDeclaration(node)) {
      const bindings = node.importClause?.namedBindings;
      take(node.moduleSpecifier, bindings && ts.isNamedImports(bindings) ? bindings.elements.map(({name, propertyName}) => (propertyName ?? name).text) : ["*"]);
    } else if (ts.isExportDeclaration(node)) {
      const {exportClause: clause} = node;
      take(node.moduleSpecifier, clause && ts.isNamedExports(clause) ? clause.elements.map(({name, propertyName}) => (propertyName ?? name).text) : ["*"]);
    } else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      take(node.arguments[0], ["*"]);
    } else if (isExported(node)) {
      const names = ts.isVariableStatement(node) ? node.declarationList.declarations.map(({name}) => name) : [(node as ts.DeclarationStatement).name];
      for (const name of names) if (name && ts.isIdentifier(name)) offered.push(name.text);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return {offered, written, taken};
}

function isExported(node: ts.Node): boolean {
  return ts.canHaveModifiers(node) && (ts.getModifiers(node) ?? []).some(({kind}) => kind === ts.SyntaxKind.ExportKeyword);
}

/** All modules of the project; a page is the module that stands for it. */
function projectModules(): Modules {
  const files = ["lib", "src", "tests"].flatMap((folder) => readdirSync(join(ROOT, folder), {recursive: true, withFileTypes: true})
    .filter((entry) => entry.isFile() && entry.name.endsWith(".ts") && !entry.name.endsWith(".d.ts") && !/[\\/]src[\\/](lib|\.observablehq)\b/.test(entry.parentPath))
    .map((entry) => join(entry.parentPath, entry.name)));
  const named = (path: string) => path.slice(ROOT.length + 1).replaceAll("\\", "/");
  const ways = [...files, join(ROOT, "observablehq.config.ts"), join(ROOT, "vitest.config.ts")].map((path) => [named(path), readFileSync(path, "utf8")]);
  const pages = listPages().map(({name}) => [named(sourceOf(name)).replace(/\.md$/, ".cells.ts"), cellModule(readFileSync(sourceOf(name), "utf8")).replaceAll("export async function", "async function")]);
  return Object.fromEntries([...ways, ...pages]) as Modules;
}

if (process.argv[1] && fileURLToPath(import.meta.url) === process.argv[1]) {
  const unused = unusedExports(projectModules());
  const problems = [
    ...unused.filter((each) => !(each in KEPT)).map((each) => `${each} is exported, and no product code uses it`),
    ...Object.keys(KEPT).filter((each) => !unused.includes(each)).map((each) => `${each} is used, and needs no reason to be kept`),
  ];
  if (problems.length > 0) {
    console.error(problems.join("\n"));
    process.exitCode = 1;
  }
}
