import {existsSync, mkdirSync, readFileSync, writeFileSync} from "node:fs";
import {dirname, join, relative, sep} from "node:path";
import {buildSync} from "esbuild";

/** Packages whose `browser` field gives browsers other files than Node. */
const TWO_SIDED = ["arquero", "fflate"];

/**
 * Bundles the browser's side of packages that have one into the generator's cache, where it looks first: its own bundler
 * takes Node's side, which no browser can load. Pages import such a package by its name, like any other.
 *
 * @param root - the project's folder
 * @param cache - the generator's cache
 */
export function writeBrowserSides(root: string, cache: string): void {
  for (const name of TWO_SIDED) writeBrowserSide(name, root, join(cache, "_node"));
}

/** The bundle of one package, and of those that it imports, each where the generator would put it. */
function writeBrowserSide(name: string, root: string, folder: string): string {
  const {version, dependencies = {}} = JSON.parse(readFileSync(join(root, "node_modules", name, "package.json"), "utf8")) as {
    version: string; dependencies?: Record<string, string>;
  };
  const file = join(folder, `${name}@${version}`, "index.js");
  if (existsSync(file)) return file;
  const external = Object.keys(dependencies);
  const {outputFiles: [output]} = buildSync({
    stdin: {contents: `export * from ${JSON.stringify(name)};`, resolveDir: root}, bundle: true, format: "esm", platform: "browser", target: "es2022", external, write: false,
  });
  const code = external.reduce((text, other) => {
    const beside = relative(dirname(file), writeBrowserSide(other, root, folder)).split(sep).join("/");
    return text.replaceAll(`from "${other}"`, `from "${beside}"`);
  }, output?.text ?? "");
  mkdirSync(dirname(file), {recursive: true});
  writeFileSync(file, code);
  return file;
}
