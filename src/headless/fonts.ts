import {createHash} from "node:crypto";
import {mkdirSync, readFileSync, readdirSync, writeFileSync} from "node:fs";
import {join, posix} from "node:path";
import {listFiles} from "./inspect.js";

/** A face of the site's style sheets, its font held as text, which is how the generator takes it. */
const FACE = /@font-face\s*\{[^}]*\}/g;
const FONT = /url\("?data:font\/woff2;base64,([^")]+)"?\)/;

/** What stands in a page's title, its list of pages and its strip, and so is seen first. */
const SEEN_FIRST = [["Source Serif 4", "600"], ["Source Sans 3", "400"], ["Source Sans 3", "600"]] as const;

/**
 * Takes the fonts out of the site's style sheets and makes files of them, so that no text waits for them. Each page asks
 * for those that are seen first as it asks for its style, so that they seldom come after the text has been laid out.
 */
export function fontsAsFiles(folder: string): void {
  const styles = join(folder, "_import");
  const first = new Set<string>();
  for (const name of readdirSync(styles).filter((file) => file.endsWith(".css"))) {
    const css = readFileSync(join(styles, name), "utf8").replace(FACE, (face) => face.replace(FONT, (_, text: string) => {
      const bytes = Buffer.from(text, "base64");
      const file = `fonts/${createHash("sha256").update(bytes).digest("hex").slice(0, 8)}.woff2`;
      mkdirSync(join(styles, "fonts"), {recursive: true});
      writeFileSync(join(styles, file), bytes);
      if (isSeenFirst(face)) first.add(`_import/${file}`);
      return `url("./${file}")`;
    }));
    writeFileSync(join(styles, name), css);
  }
  if (first.size !== SEEN_FIRST.length) throw new Error(`${first.size} of the ${SEEN_FIRST.length} fonts that are seen first are in the style sheets`);
  for (const page of listFiles(folder).filter((file) => file.endsWith(".html"))) {
    const links = [...first].map((file) => `<link rel="preload" as="font" type="font/woff2" crossorigin href="${posix.relative(posix.dirname(page), file)}">`);
    const html = readFileSync(join(folder, page), "utf8");
    writeFileSync(join(folder, page), html.replace(/(?=<link rel="preload" as="style")/, `${links.join("\n")}\n`));
  }
}

function isSeenFirst(face: string): boolean {
  const of = (property: string) => new RegExp(`${property}:\\s*"?([^;"]+)`).exec(face)?.[1];
  return of("font-style") !== "italic" && SEEN_FIRST.some(([family, weight]) => of("font-family") === family && of("font-weight") === weight);
}
