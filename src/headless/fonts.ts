import {createHash} from "node:crypto";
import {mkdirSync, readFileSync, readdirSync, writeFileSync} from "node:fs";
import {join} from "node:path";

/** A font that a style sheet holds as text, which is how the generator takes it. */
const FONT = /url\("?data:font\/woff2;base64,([^")]+)"?\)/g;

/** Takes the fonts out of the site's style sheets and makes files of them, so that no text waits for them. */
export function fontsAsFiles(folder: string): void {
  const styles = join(folder, "_import");
  for (const name of readdirSync(styles).filter((file) => file.endsWith(".css"))) {
    const css = readFileSync(join(styles, name), "utf8").replace(FONT, (_, text: string) => {
      const bytes = Buffer.from(text, "base64");
      const file = `fonts/${createHash("sha256").update(bytes).digest("hex").slice(0, 8)}.woff2`;
      mkdirSync(join(styles, "fonts"), {recursive: true});
      writeFileSync(join(styles, file), bytes);
      return `url("./${file}")`;
    });
    writeFileSync(join(styles, name), css);
  }
}
