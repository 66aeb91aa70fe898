import {symbolTex} from "../symbols.js";
import {needsParentheses, rankOf, type Tree} from "./expression.js";
import {numberTex} from "./numbers.js";

const FUNCTIONS: Readonly<Record<string, string>> = {
  min: "\\min", max: "\\max", cos: "\\cos", sin: "\\sin", tan: "\\tan", log10: "\\log_{10}", log: "\\ln", exp: "\\exp",
};

/** A tree as TeX: fractions for quotients, roots, powers, and no parentheses that the layout makes needless. */
export function treeTex(tree: Tree): string {
  switch (tree.kind) {
    case "number":
      return partTex(tree.part, numberTex(tree.text));
    case "name":
      return partTex(tree.part, symbolTex(tree.name));
    case "minus":
      return `-${wrapped(tree.of, isSum(tree.of) || showsMinus(tree.of))}`;
    case "operation":
      return operationTex(tree);
    case "call":
      return callTex(tree.name, tree.args);
  }
}

/** TeX that lights with a part of the drawings, see `drawings/parts.ts`. */
export const partTex = (part: string | undefined, tex: string): string => (part === undefined ? tex : `\\data{part=${part}}{${tex}}`);

function operationTex(tree: Tree & {kind: "operation"}): string {
  const {operator, left, right} = tree;
  switch (operator) {
    case "/":
      // A fraction holds its parts together by its bar, and a sign of the numerator is clearer before it.
      if (left.kind === "minus") return `-\\frac{${treeTex(left.of)}}{${treeTex(right)}}`;
      return `\\frac{${treeTex(left)}}{${treeTex(right)}}`;
    case "^":
      // A prime is an exponent too, so the symbol that bears it is set in braces.
      if (left.kind === "name" && treeTex(left).includes("'")) return `{${treeTex(left)}}^{${inlineTex(right)}}`;
      return `${wrapped(left, rankOf(left) < 5 || isPowerOfTen(left))}^{${inlineTex(right)}}`;
    case "*": {
      const leftTex = wrapped(left, isSum(left));
      const rightTex = wrapped(right, isSum(right) || showsMinus(right));
      return `${leftTex}${productSign(left, right)}${rightTex}`;
    }
    default: {
      const wrapRight = showsMinus(right) || (operator === "-" && isSum(right));
      return `${treeTex(left)} ${operator} ${wrapped(right, wrapRight)}`;
    }
  }
}

/** Symbols stand side by side; numbers need a sign between them, or they would read as one. */
function productSign(left: Tree, right: Tree): string {
  if (beginsWithNumber(right) || (isNumeric(left) && isNumeric(right))) return " \\times ";
  return "\\,";
}

function beginsWithNumber(tree: Tree): boolean {
  if (tree.kind === "number") return true;
  return tree.kind === "operation" && (tree.operator === "^" || tree.operator === "*") && beginsWithNumber(tree.left);
}

/** Whether no name stands anywhere in the tree. */
function isNumeric(tree: Tree): boolean {
  switch (tree.kind) {
    case "number":
      return true;
    case "name":
      return false;
    case "minus":
      return isNumeric(tree.of);
    case "operation":
      return isNumeric(tree.left) && isNumeric(tree.right);
    case "call":
      return tree.args.every(isNumeric);
  }
}

/** An exponent stays on one line: x^{1/2} rather than a fraction in small print. */
function inlineTex(tree: Tree): string {
  if (tree.kind !== "operation" || tree.operator !== "/") return treeTex(tree);
  const wrap = needsParentheses(tree);
  return `${wrapped(tree.left, wrap.left)}/${wrapped(tree.right, wrap.right)}`;
}

function callTex(name: string, args: readonly Tree[]): string {
  const inside = args.map(treeTex);
  if (name === "sqrt") return `\\sqrt{${inside[0] ?? ""}}`;
  if (name === "abs") return `\\left|${inside[0] ?? ""}\\right|`;
  return `${FUNCTIONS[name] ?? `\\operatorname{${name}}`}\\left(${inside.join(",\\ ")}\\right)`;
}

function wrapped(tree: Tree, wrap: boolean): string {
  return wrap ? `\\left(${treeTex(tree)}\\right)` : treeTex(tree);
}

/** Whether the tree is typeset with a minus sign in front. */
function showsMinus(tree: Tree): boolean {
  if (tree.kind === "minus") return true;
  if (tree.kind !== "operation" || tree.operator === "^") return false;
  if (tree.operator === "/") return tree.left.kind === "minus";
  return !(tree.operator === "*" && isSum(tree.left)) && showsMinus(tree.left);
}

function isSum(tree: Tree): boolean {
  return tree.kind === "operation" && (tree.operator === "+" || tree.operator === "-");
}

function isPowerOfTen(tree: Tree): boolean {
  return tree.kind === "number" && tree.text.includes("e");
}
