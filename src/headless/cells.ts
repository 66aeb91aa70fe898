import {join} from "node:path";
import {pathToFileURL} from "node:url";
import ts from "typescript";
import {ROOT} from "./root.js";

/** A piece of a page as the generator's own parser takes it apart: prose, or an expression in it that ends at `pos`. */
interface Piece {
  readonly type: string;
  readonly content: string;
  readonly pos: number;
}

const GENERATOR = pathToFileURL(join(ROOT, "node_modules", "@observablehq", "framework", "dist", "placeholder.js")).href;
const {parsePlaceholder} = (await import(GENERATOR)) as {parsePlaceholder(input: string): Iterable<Piece>};

/** A cell of a page, or an expression in its prose. */
interface Part {
  readonly code: string;
  /** Place of its code in the page's text. */
  readonly start: number;
  readonly inline: boolean;
}

/**
 * The code of a page as one TypeScript module that has each line where the page has it. A cell becomes a function; what
 * it declares and others use is handed to these as the generator does it.
 */
export function cellModule(page: string): string {
  const parts = partsOf(page).map((part) => ({...part, ...read(part)}));
  let text = "";
  let end = 0;
  parts.forEach((part, i) => {
    const {code, start, inline, declared, expression} = part;
    const names = new Set(parts.flatMap((other) => (other === part ? [] : [...other.used])));
    const given = declared.filter((name) => names.has(name)).join(", ");
    const [imports, body] = [code.slice(0, part.importsEnd), code.slice(part.importsEnd)];
    const shown = inline || expression;
    text += blank(page.slice(end, start));
    text += `${imports}; export async function $${i}() { ${shown ? `$shown(${body.replace(/;\s*$/, "\n")})` : body} ${given ? `return {${given}};` : ""} }`;
    if (given) text += ` const {${given}} = $cell($${i});`;
    end = start + code.length;
  });
  return text + blank(page.slice(end)) + "export {};";
}

function partsOf(page: string): Part[] {
  const parts: Part[] = [];
  const prose = (from: number, to: number) => {
    let at = from;
    for (const {type, content, pos} of parsePlaceholder(page.slice(from, to))) {
      if (type !== "placeholder") continue;
      at = from + pos - content.length - 1;
      parts.push({code: content, start: at, inline: true});
    }
  };
  let end = 0;
  for (const fence of page.matchAll(/^```(\w*)[^\n]*\n([\s\S]*?)^```$/gm)) {
    prose(end, fence.index);
    const start = fence.index + fence[0].indexOf("\n") + 1;
    if (fence[1] === "js" || fence[1] === "ts") parts.push({code: fence[2] as string, start, inline: false});
    end = fence.index + fence[0].length;
  }
  prose(end, page.length);
  return parts;
}

/** What a part declares for others, which names stand in it, where its imports end, and whether it is an expression alone. */
function read({code, inline}: Part): {declared: string[]; used: Set<string>; importsEnd: number; expression: boolean} {
  const source = ts.createSourceFile("cell.ts", inline ? `(${code})` : code, ts.ScriptTarget.Latest, true);
  const declared: string[] = [];
  const used = new Set<string>();
  let importsEnd = 0;
  const bind = (name: ts.BindingName): void => {
    if (ts.isIdentifier(name)) declared.push(name.text);
    else for (const element of name.elements) if (ts.isBindingElement(element)) bind(element.name);
  };
  for (const statement of source.statements) {
    if (ts.isImportDeclaration(statement)) importsEnd = statement.end;
    else if (ts.isVariableStatement(statement)) for (const {name} of statement.declarationList.declarations) bind(name);
    else if ((ts.isFunctionDeclaration(statement) || ts.isClassDeclaration(statement)) && statement.name) declared.push(statement.name.text);
  }
  const visit = (node: ts.Node): void => {
    // The name of a property is no use of a variable.
    const isProperty = (ts.isPropertyAccessExpression(node.parent) || ts.isPropertyAssignment(node.parent)) && node.parent.name === node;
    if (ts.isIdentifier(node) && !isProperty) used.add(node.text);
    ts.forEachChild(node, visit);
  };
  ts.forEachChild(source, visit);
  const [only, ...more] = source.statements;
  return {declared, used, importsEnd, expression: !inline && more.length === 0 && only !== undefined && ts.isExpressionStatement(only) && !/;\s*$/.test(code)};
}

/** The same lines without a word. */
const blank = (text: string) => text.replace(/[^\n]/g, "");
