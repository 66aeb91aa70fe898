/**
 * Makes what the site generator needs and what is not kept under version control: the link to the library, the folders
 * that spare it a look-up in the registry, packages as browsers take them, and the stylesheet with the fonts. Safe to call again and again; needs no
 * network. Called by the site's configuration, by the tests and by `npm run check`.
 */
import {existsSync, mkdirSync, readFileSync, readdirSync, rmSync, symlinkSync, writeFileSync} from "node:fs";
import {dirname, join} from "node:path";
import {fileURLToPath} from "node:url";
import {writeBrowserSides} from "./browserPackages.js";
import {ROOT} from "./root.js";

/** Where the generator keeps what it has made. */
export const CACHE = join(ROOT, "src", ".observablehq", "cache");

/**
 * Packages that the generator's own client can load on demand. It asks the registry for the newest version of each
 * even when no page uses it; an empty folder named after a version answers the question instead. A page that did use
 * one would fail loudly, which is what a site without network wants.
 */
const NOT_USED = [
  "@duckdb/duckdb-wasm", "@observablehq/plot", "@observablehq/sample-datasets", "@uwdata/vgplot", "@viz-js/viz",
  "apache-arrow", "arquero", "d3", "d3-dsv", "echarts", "exceljs", "htl", "isoformat", "jszip", "katex", "leaflet",
  "lodash", "mapbox-gl", "mermaid", "parquet-wasm", "react", "react-dom", "sql.js", "topojson-client", "vega",
  "vega-lite", "vega-lite-api",
];

/** Faces of the pages: Latin letters, and the Greek ones of the equations; no more, so that the page stays light. */
const FONTS = [
  {family: "Source Serif 4", name: "source-serif-4", style: "normal", weight: 400, letters: "latin"},
  {family: "Source Serif 4", name: "source-serif-4", style: "normal", weight: 600, letters: "latin"},
  {family: "Source Serif 4", name: "source-serif-4", style: "italic", weight: 400, letters: "latin"},
  {family: "Source Serif 4", name: "source-serif-4", style: "normal", weight: 400, letters: "greek"},
  {family: "Source Serif 4", name: "source-serif-4", style: "italic", weight: 400, letters: "greek"},
  {family: "Source Sans 3", name: "source-sans-3", style: "normal", weight: 400, letters: "latin"},
  {family: "Source Sans 3", name: "source-sans-3", style: "normal", weight: 600, letters: "latin"},
] as const;

/** Prepares the project's folder; see above. */
export function prepare(): void {
  linkLibrary();
  for (const name of NOT_USED) mkdirSync(join(CACHE, "_npm", `${name}@0.0.0`), {recursive: true});
  writeBrowserSides(ROOT, CACHE);
  writeFonts();
}

/**
 * Removes what earlier builds left behind. The generator goes on using a loader's old output after the loader, the
 * library or a table has changed, so both the build and the preview begin with an empty cache.
 */
export function clearCache(): void {
  if (!existsSync(CACHE)) return;
  for (const entry of readdirSync(CACHE)) {
    if (entry !== "_npm") rmSync(join(CACHE, entry), {recursive: true, force: true});
  }
}

/** Pages may import from below `src` only, so the library is linked into it (a junction where links need rights). */
function linkLibrary(): void {
  const link = join(ROOT, "src", "lib");
  if (existsSync(link)) return;
  rmSync(link, {force: true});
  symlinkSync(process.platform === "win32" ? join(ROOT, "lib") : "../lib", link, "junction");
}

/** The generator's style bundler knows no font files, so the fonts are written into a stylesheet; the build makes files of them again. */
function writeFonts(): void {
  const target = join(ROOT, "src", "generated", "fonts.css");
  const css = FONTS.map(({family, name, style, weight, letters}) => {
    const file = readFileSync(join(ROOT, "node_modules", "@fontsource", name, "files", `${name}-${letters}-${weight}-${style}.woff2`));
    return [
      "@font-face {",
      `  font-family: "${family}";`,
      `  font-style: ${style};`,
      `  font-weight: ${weight};`,
      "  font-display: swap;",
      // Faces of one family stand side by side, so the Greek one must not answer for the rest.
      ...(letters === "greek" ? ["  unicode-range: U+0370-03FF;"] : ["  unicode-range: U+0000-036F, U+2000-22FF;"]),
      `  src: url("data:font/woff2;base64,${file.toString("base64")}") format("woff2");`,
      "}",
    ].join("\n");
  }).join("\n\n");
  if (existsSync(target) && readFileSync(target, "utf8") === css) return;
  mkdirSync(dirname(target), {recursive: true});
  writeFileSync(target, css);
}

if (process.argv[1] && fileURLToPath(import.meta.url) === process.argv[1]) prepare();
