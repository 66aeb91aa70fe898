import jsep from "jsep";

/** A parsed expression. */
export type Tree =
  | {readonly kind: "number"; readonly text: string; readonly value: number; readonly part?: string}
  | {readonly kind: "name"; readonly name: string; readonly part?: string}
  | {readonly kind: "minus"; readonly of: Tree}
  | {readonly kind: "operation"; readonly operator: Operator; readonly left: Tree; readonly right: Tree}
  | {readonly kind: "call"; readonly name: string; readonly args: readonly Tree[]};

export type Operator = "+" | "-" | "*" | "/" | "^";

const OPERATORS: readonly string[] = ["+", "-", "*", "/", "^"];

interface Parser {
  index: number;
  readonly char: string;
  gobbleSpaces(): void;
  gobbleToken(): jsep.Expression | false;
  throwError(message: string): never;
}

jsep.addBinaryOp("^", 11, true);
// The parser binds a minus sign more tightly than a power; on paper -x^2 is -(x^2).
jsep.hooks.add("gobble-token", function (this: unknown, env: {node?: unknown}) {
  const parser = this as Parser;
  if (parser.char !== "-") return;
  parser.index += 1;
  parser.gobbleSpaces();
  env.node = {type: "UnaryExpression", operator: "-", prefix: true, argument: power(parser)};
} as never);

/** A token and the powers that follow it. */
function power(parser: Parser): jsep.Expression {
  const base = parser.gobbleToken();
  if (!base) return parser.throwError("Expected a value after the sign");
  parser.gobbleSpaces();
  if (parser.char !== "^") return base;
  parser.index += 1;
  parser.gobbleSpaces();
  return {type: "BinaryExpression", operator: "^", left: base, right: power(parser)};
}

/** Parses the expression of a step; throws an error that quotes it where it is none. */
export function parseExpression(text: string): Tree {
  try {
    return convert(jsep(text));
  } catch (cause) {
    throw new Error(`cannot read the expression "${text}": ${cause instanceof Error ? cause.message : String(cause)}`);
  }
}

function convert(node: jsep.Expression): Tree {
  switch (node.type) {
    case "Literal": {
      const {raw, value} = node as jsep.Literal;
      if (typeof value === "number") return {kind: "number", text: raw, value};
      break;
    }
    case "Identifier":
      return {kind: "name", name: (node as jsep.Identifier).name};
    case "UnaryExpression": {
      const {operator, argument} = node as jsep.UnaryExpression;
      if (operator === "-") return {kind: "minus", of: convert(argument)};
      if (operator === "+") return convert(argument);
      break;
    }
    case "BinaryExpression": {
      const {operator, left, right} = node as jsep.BinaryExpression;
      if (OPERATORS.includes(operator)) {
        return {kind: "operation", operator: operator as Operator, left: convert(left), right: convert(right)};
      }
      break;
    }
    case "CallExpression": {
      const {callee, arguments: args} = node as jsep.CallExpression;
      if (callee.type === "Identifier") {
        return {kind: "call", name: (callee as jsep.Identifier).name, args: args.map(convert)};
      }
    }
  }
  throw new Error(`${node.type} has no place in a step`);
}

/** The same tree with every name replaced by its value; a name without one stays. */
export function substitute(tree: Tree, values: Readonly<Record<string, {readonly value: number}>>, write: (value: number) => string): Tree {
  switch (tree.kind) {
    case "number":
      return tree;
    case "name": {
      const value = Object.hasOwn(values, tree.name) ? values[tree.name]?.value : undefined;
      if (value === undefined) return tree;
      const size: Tree = {kind: "number", text: write(Math.abs(value)), value: Math.abs(value), ...(tree.part === undefined ? {} : {part: tree.part})};
      return value < 0 ? {kind: "minus", of: size} : size;
    }
    case "minus":
      return {kind: "minus", of: substitute(tree.of, values, write)};
    case "operation":
      return {...tree, left: substitute(tree.left, values, write), right: substitute(tree.right, values, write)};
    case "call":
      return {...tree, args: tree.args.map((arg) => substitute(arg, values, write))};
  }
}

/** A tree whose symbols carry the part of the drawings that each stands for, where it is known; their numbers carry it with them. */
export function withParts(tree: Tree, partOf: (name: string) => string | undefined): Tree {
  switch (tree.kind) {
    case "number":
      return tree;
    case "name": {
      const part = partOf(tree.name);
      return part === undefined ? tree : {...tree, part};
    }
    case "minus":
      return {kind: "minus", of: withParts(tree.of, partOf)};
    case "operation":
      return {...tree, left: withParts(tree.left, partOf), right: withParts(tree.right, partOf)};
    case "call":
      return {...tree, args: tree.args.map((arg) => withParts(arg, partOf))};
  }
}

const RANK: Readonly<Record<Operator, number>> = {"+": 1, "-": 1, "*": 2, "/": 2, "^": 4};
const MINUS_RANK = 3;

/** How tightly a tree holds together. */
export function rankOf(tree: Tree): number {
  if (tree.kind === "operation") return RANK[tree.operator];
  return tree.kind === "minus" ? MINUS_RANK : 5;
}

/** Which side of an operation needs parentheses, written on one line. */
export function needsParentheses(tree: Tree & {kind: "operation"}): {left: boolean; right: boolean} {
  const {operator, left, right} = tree;
  const rank = RANK[operator];
  const minusRight = startsWithMinus(right);
  if (operator === "^") return {left: rankOf(left) <= rank, right: rankOf(right) < rank};
  const rightBinds = operator === "-" || operator === "/" ? rankOf(right) <= rank : rankOf(right) < rank;
  return {left: rankOf(left) < rank, right: rightBinds || minusRight};
}

/** Whether a tree is written with a minus sign in front. */
export function startsWithMinus(tree: Tree): boolean {
  if (tree.kind === "minus") return true;
  return tree.kind === "operation" && !needsParentheses(tree).left && startsWithMinus(tree.left);
}

/** The tree as text again, with the fewest parentheses; a test evaluates it. */
export function writeExpression(tree: Tree): string {
  switch (tree.kind) {
    case "number":
      return tree.text.replace(/,/g, "");
    case "name":
      return tree.name;
    case "minus":
      return `-${inParentheses(writeExpression(tree.of), rankOf(tree.of) < MINUS_RANK || startsWithMinus(tree.of))}`;
    case "operation": {
      const wrap = needsParentheses(tree);
      const left = inParentheses(writeExpression(tree.left), wrap.left);
      return `${left} ${tree.operator} ${inParentheses(writeExpression(tree.right), wrap.right)}`;
    }
    case "call":
      return `${tree.name}(${tree.args.map(writeExpression).join(", ")})`;
  }
}

function inParentheses(text: string, wrap: boolean): string {
  return wrap ? `(${text})` : text;
}
