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
  return (await Promise.all(faces.map(async ({cssText, parentStyleSheet}) => {
    const address = /url\(["']?(?!data:)([^"')]+)["']?\)/.exec(cssText)?.[1];
    if (address === undefined) return cssText;
    const whole = new URL(address, parentStyleSheet?.href ?? location.href).href;
    let data = kept.get(whole);
    if (!data) kept.set(whole, (data = dataOf(whole)));
    return cssText.replace(address, await data);
  }))).join("");
}

async function dataOf(address: string): Promise<string> {
  let letters = "";
  for (const byte of new Uint8Array(await (await fetch(address)).arrayBuffer())) letters += String.fromCharCode(byte);
  return `data:font/woff2;base64,${btoa(letters)}`;
}
