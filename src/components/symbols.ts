import {unitText} from "../lib/units.js";

/** Greek letters as they are spelled in a symbol's name, and in TeX where it differs. */
const GREEK: Readonly<Record<string, string>> = {
  alpha: "\\alpha", beta: "\\beta", gamma: "\\gamma", delta: "\\delta", epsilon: "\\varepsilon", zeta: "\\zeta",
  eta: "\\eta", theta: "\\theta", kappa: "\\kappa", lambda: "\\lambda", mu: "\\mu", nu: "\\nu", xi: "\\xi", pi: "\\pi",
  rho: "\\rho", sigma: "\\sigma", tau: "\\tau", phi: "\\phi", chi: "\\chi", psi: "\\psi", omega: "\\omega",
  Gamma: "\\Gamma", Delta: "\\Delta", Theta: "\\Theta", Lambda: "\\Lambda", Sigma: "\\Sigma", Phi: "\\Phi",
  Psi: "\\Psi", Omega: "\\Omega",
};

/**
 * A symbol's name as TeX. The first part is the symbol, what follows an underscore its subscript; Greek letters are
 * spelled and a prime is written out: `f_ciprime` is f'_{ci}, `epsilon_ps` is ε_{ps}.
 */
export function symbolTex(name: string): string {
  const parts = name.split("_").map((part) => ({text: part.replace(/prime$/, ""), prime: /.prime$/.test(part)}));
  const [base, ...subscripts] = parts;
  const prime = parts.some((part) => part.prime) ? "'" : "";
  const below = subscripts.map((part) => letters(part.text)).filter(Boolean).join(",");
  return `${letters(base?.text ?? "", true)}${prime}${below ? `_{${below}}` : ""}`;
}

/** A part of a symbol: a Greek letter, a Greek letter with more behind it (`beta1`), or plain letters. */
function letters(text: string, base = false): string {
  const greek = GREEK[text];
  if (greek) return greek;
  const word = Object.keys(GREEK).find((name) => text.startsWith(name) && /^\d+$/.test(text.slice(name.length)));
  if (word) return `${GREEK[word]}${text.slice(word.length)}`;
  // Letters side by side would read as a product, so a name of several is set upright.
  return base && text.length > 1 ? `\\mathrm{${text}}` : text;
}

export {unitText};

/** A unit as TeX, set upright with a space before it; empty for a pure number. */
export function unitTex(unit: string): string {
  if (unit === "") return "";
  if (unit === "%") return "\\,\\%";
  return `\\ \\text{${unitText(unit).replace(/([%#&$_])/g, "\\$1")}}`;
}
