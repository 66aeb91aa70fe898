/** Type-checks and lints the cells of pages and the expressions in their prose, which neither the compiler nor the linter sees by itself. */
import {readFileSync} from "node:fs";
import {join, relative} from "node:path";
import {fileURLToPath} from "node:url";
import {ESLint} from "eslint";
import ts from "typescript";
import {cellModule} from "./cells.js";
import {listPages, sourceOf} from "./pages.js";
import {ROOT} from "./root.js";

/** A page as it lies in the sources. */
export interface PageSource {
  /** Its file, such as `src/index.md`, from the project's folder. */
  readonly file: string;
  readonly text: string;
}

/** The compiler's numbers for a name that nobody uses. */
const UNUSED = new Set([6133, 6192, 6198]);

/** The module that stands for a page. */
const moduleOf = (file: string) => join(ROOT, file).replace(/\.md$/, ".cells.ts");

/** A program with a module for each page and all that the pages import. */
export function programWith(pages: readonly PageSource[]): ts.Program {
  const {config} = ts.readConfigFile(join(ROOT, "tsconfig.json"), ts.sys.readFile) as {config: object};
  const options = ts.parseJsonConfigFileContent(config, ts.sys, ROOT).options;
  const texts = new Map(pages.map(({file, text}) => [moduleOf(file), cellModule(text)]));
  const host = ts.createCompilerHost(options);
  const {fileExists, readFile, getSourceFile} = host;
  host.fileExists = (name) => texts.has(name) || fileExists(name);
  host.readFile = (name) => texts.get(name) ?? readFile(name);
  host.getSourceFile = (name, ...rest) => {
    const text = texts.get(name);
    return text === undefined ? getSourceFile(name, ...rest) : ts.createSourceFile(name, text, ts.ScriptTarget.ES2022, true);
  };
  const roots = ["src/headless/pageGlobals.d.ts", "src/components/env.d.ts"].map((file) => join(ROOT, file));
  return ts.createProgram([...texts.keys(), ...roots], options, host);
}

/** What the compiler says of the pages, each with page and line. */
export function typeProblems(program: ts.Program, pages: readonly PageSource[]): string[] {
  return pages.flatMap(({file}) => {
    const source = program.getSourceFile(moduleOf(file));
    if (!source) throw new Error(`${file} has no module`);
    // What is handed from cell to cell may share its name with a variable of the other's own.
    const handed = [...source.text.matchAll(/ const \{[^}]*\} = \$cell\(/g)].map(({index, 0: {length}}) => ({index, end: index + length}));
    const found = [...program.getSyntacticDiagnostics(source), ...program.getSemanticDiagnostics(source)]
      .filter(({code, start = 0}) => !(UNUSED.has(code) && handed.some(({index, end}) => index <= start && start < end)));
    return found.map(({start, messageText}) =>
      `${file}:${source.getLineAndCharacterOfPosition(start ?? 0).line + 1}: ${ts.flattenDiagnosticMessageText(messageText, "\n")}`);
  });
}

/** What the linter says of the pages, each with page and line. */
export async function lintProblems(pages: readonly PageSource[]): Promise<string[]> {
  // The compiler tells of names that nobody uses, and knows which cell uses what of another.
  const eslint = new ESLint({cwd: ROOT, overrideConfig: {rules: {"@typescript-eslint/no-unused-vars": "off"}}});
  const results = await Promise.all(pages.map(async ({file, text}) => {
    const [result] = await eslint.lintText(cellModule(text), {filePath: moduleOf(file)});
    return (result?.messages ?? []).map(({line, message, ruleId}) => `${file}:${line}: ${message} (${ruleId})`);
  }));
  return results.flat();
}

/** A page's source, by its file. */
export function pageSource(file: string): PageSource {
  return {file: relative(ROOT, file), text: readFileSync(file, "utf8")};
}


if (process.argv[1] && fileURLToPath(import.meta.url) === process.argv[1]) {
  const pages = listPages().map(({name}) => pageSource(sourceOf(name)));
  const problems = [...typeProblems(programWith(pages), pages), ...(await lintProblems(pages))];
  if (problems.length > 0) {
    console.error(problems.join("\n"));
    process.exitCode = 1;
  }
}
