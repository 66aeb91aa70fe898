import {rules} from "./standalone.js";

const kept = new Map<string, Promise<string>>();

/**
 * The site's own faces of some families, as a style that holds the fonts themselves: a picture outside of the site finds no
 * file beside it.
 *
 * @param families - as a style sheet writes them: `"Source Sans 3", sans-serif`
 */
export async function fontFaces(families: string): Promise<string> {
  const faces = rules().filter((rule): rule is CSSFontFaceRule => rule instanceof CSSFontFaceRule)
    .filter((face) => families.includes(face.style.getPropertyValue("font-family").replace(/["']/g, "")));
  return (await Promise.all(faces.map(({cssText, parentStyleSheet}) => embedded(cssText, parentStyleSheet?.href ?? location.href)))).join("");
}

/** All that the site's style sheets say, the fonts within; as they were written, for a browser's own account of a rule leaves parts out. */
export async function wholeStyle(): Promise<string> {
  const addresses = [...document.styleSheets].flatMap(({href}) => (href === null ? [] : [href]));
  return (await Promise.all(addresses.map(async (address) => embedded(await (await fetch(address)).text(), address)))).join("\n");
}

/** A style with the files that it names within it. */
async function embedded(css: string, base: string): Promise<string> {
  const named = [...css.matchAll(/url\(["']?(?!data:|#)([^"')]+)["']?\)/g)].map((found) => found[1] as string);
  let whole = css;
  for (const address of new Set(named)) whole = whole.replaceAll(address, await dataOf(new URL(address, base).href));
  return whole;
}

function dataOf(address: string): Promise<string> {
  let data = kept.get(address);
  if (!data) kept.set(address, (data = readData(address)));
  return data;
}

async function readData(address: string): Promise<string> {
  let letters = "";
  for (const byte of new Uint8Array(await (await fetch(address)).arrayBuffer())) letters += String.fromCharCode(byte);
  return `data:font/woff2;base64,${btoa(letters)}`;
}
