/**
 * Puts the hundreds of modules that the generator wrote into a few files: what the first page needs, what several pages
 * need, charts, equations, and one for each page. A page then asks for some twenty files instead of three hundred.
 */
import {mkdirSync, readFileSync, rmSync, writeFileSync} from "node:fs";
import {dirname, join, posix, relative, sep} from "node:path";
import {minifySync} from "oxc-minify";
import {rollup, type GetModuleInfo, type OutputChunk, type Plugin} from "rollup";
import {listFiles} from "./inspect.js";

/** Where the bundled files lie in the built site. */
const FOLDER = "_import/site";
/** The page that a reader is likely to see first. */
const FIRST = "index";
/** What the entry of a page is called among the modules. */
const ENTRY = "\0page:";
/** The file with the packages that charts are drawn with. */
const CHARTS = {name: "charts", packages: /\/_node\/(@observablehq\/plot|d3|interval-tree|binary-search|isoformat|internmap|delaunator|robust-predicates)/} as const;

/**
 * The files with what at least so many pages need and the first does not: drawings most of all. The library's part is
 * a file of its own, for the work beside the page needs it too, where there is nothing to draw on.
 */
const PARTS = {name: "parts", library: "libparts", pages: 3} as const;

/** A page of the built site. */
interface Page {
  readonly name: string;
  readonly file: string;
  readonly html: string;
  /** Modules that it imports, as absolute paths, in order. */
  readonly modules: readonly string[];
}

/** What was bundled: the packages, by the folders that the generator gave them. */
export interface Bundled {
  readonly packages: readonly string[];
}

/** Bundles the site in a folder, in place. */
export async function bundleSite(folder: string): Promise<Bundled> {
  const pages = listFiles(folder).filter((file) => file.endsWith(".html")).map((file) => readPage(folder, file));
  const build = await rollup({
    input: Object.fromEntries(pages.map(({name}) => [name, ENTRY + name])),
    plugins: [pageEntries(pages), movedAddresses(folder), withoutMapsAndPalettes],
    // Parts of the generator's client that no page asks for and that were never written.
    external: (id) => /\/_npm\/|\/stdlib\/[\w-]+\.js$/.test(id),
    treeshake: {moduleSideEffects: (id) => !id.includes("/_node/") && !id.includes("/_import/lib/")},
    onwarn: ({code, message}) => {
      if (code !== "CIRCULAR_DEPENDENCY") throw new Error(message);
    },
  });
  const {output} = await build.generate({
    format: "es", entryFileNames: "[name].[hash:8].js", chunkFileNames: ({name}) => `${name.replace(/\.[0-9a-f]{8}$/, "")}.[hash:8].js`, hashCharacters: "hex",
    manualChunks: chunkOf(pages), onlyExplicitManualChunks: true, minifyInternalExports: true,
  });
  await build.close();
  const chunks = output.filter((part) => part.type === "chunk");
  for (const each of ["_import/components", "_import/pages", "_import/lib", "_node", "_observablehq"]) rmSync(join(folder, each), {recursive: true, force: true});
  mkdirSync(join(folder, FOLDER), {recursive: true});
  for (const chunk of chunks) {
    const {code, errors} = minifySync(chunk.fileName, chunk.code, {module: true, compress: {target: "es2022"}});
    if (errors[0]) throw new Error(`${chunk.fileName}: ${errors[0].message}`);
    writeFileSync(join(folder, FOLDER, chunk.fileName), code);
  }
  for (const page of pages) writeFileSync(join(folder, page.file), rewritten(folder, page, chunks));
  return {packages: [...new Set(chunks.flatMap((chunk) => Object.keys(chunk.modules).flatMap((id) => packageOf(id) ?? [])))].sort()};
}

function readPage(folder: string, file: string): Page {
  const html = readFileSync(join(folder, file), "utf8");
  const found = [...html.matchAll(/(?:\bimport\(|\bfrom |<script type="module" src=)"((?:\.\.?\/)+_[^"]+\.js)"/g)].map(([, address]) => join(folder, dirname(file), address as string));
  return {name: file.replace(/\.html$/, "").replace(/^pages\/(.+)\/index$/, "$1"), file, html, modules: [...new Set(found)]};
}

/** A page's entry gives out each module that the page imports, by its number. */
function pageEntries(pages: readonly Page[]): Plugin {
  return {
    name: "page entries",
    resolveId: (id) => (id.startsWith(ENTRY) ? {id, moduleSideEffects: true} : null),
    load: (id) => {
      const page = pages.find(({name}) => id === ENTRY + name);
      return page ? page.modules.map((path, i) => `export * as m${i} from ${JSON.stringify(path)};`).join("\n") : null;
    },
  };
}

/** Addresses beside a module still hold from where it is bundled, and a worker is a file of its own. */
function movedAddresses(folder: string): Plugin {
  return {
    name: "moved addresses",
    transform(code, id) {
      if (!code.includes("import.meta")) return null;
      const from = posix.relative(FOLDER, relative(folder, id).split(sep).join("/"));
      return {
        code: code
          .replace(/import\.meta\.resolve\("(\.\/[^"]+)"\)/g, (_, path: string) => `import.meta.ROLLUP_FILE_URL_${this.emitFile({type: "chunk", id: join(dirname(id), path), name: "engine"})}`)
          .replace(/import\.meta\.url/g, `new URL(${JSON.stringify(from)}, import.meta.url).href`),
        map: null,
      };
    },
  };
}

/** The packages by which the charts could draw the globe, color values by their own palettes, count and write dates, and draw legends with axes. */
const NOT_DRAWN = /\/_node\/d3-(axis|geo|scale-chromatic|time|time-format)@/;

/**
 * No chart here is a map, has dates or a legend of the library's own, and every color is one of the style sheet's; the charts' library cannot be had without
 * these but by this. What it would call of them is left out, a fifth of the charts' weight, and throws where it is
 * called. One function is called as the library is read; it makes a projection that none but a map asks for.
 */
const withoutMapsAndPalettes: Plugin = {
  name: "without maps and palettes",
  transform: (_code, id) => (NOT_DRAWN.test(id) ? {
    code: `const absent = () => { throw new Error("This site's charts have no maps, no dates, no legends, and no colors but the style sheet's"); };
export default new Proxy({geoTransform: () => undefined}, {get: (made, name) => made[name] ?? absent});`,
    map: null, syntheticNamedExports: true,
  } : null),
};

/** Which file a module goes into; undefined leaves it with the one page that uses it. */
function chunkOf(pages: readonly Page[]): (id: string, {getModuleInfo}: {getModuleInfo: GetModuleInfo}) => string | undefined {
  let users: Map<string, Set<string>> | undefined;
  return (id, {getModuleInfo}) => {
    users ??= usersOf(pages, getModuleInfo);
    if (id.startsWith(ENTRY)) return undefined;
    const of = users.get(id) ?? new Set();
    const ofLibrary = id.includes("/_import/lib/");
    if (of.has(FIRST)) return ofLibrary ? "lib" : "kit";
    if (CHARTS.packages.test(id)) return CHARTS.name;
    return of.size < PARTS.pages ? undefined : ofLibrary ? PARTS.library : PARTS.name;
  };
}

/** The pages that need each module at once; what they ask for later is not among them. */
function usersOf(pages: readonly Page[], getModuleInfo: GetModuleInfo): Map<string, Set<string>> {
  const users = new Map<string, Set<string>>();
  for (const {name} of pages) {
    const waiting = [ENTRY + name];
    for (let id = waiting.pop(); id !== undefined; id = waiting.pop()) {
      const of = users.get(id) ?? new Set();
      if (of.has(name)) continue;
      users.set(id, of.add(name));
      waiting.push(...(getModuleInfo(id)?.importedIds ?? []));
    }
  }
  return users;
}

/** A page that asks for its bundle, and for the files that this one needs, at once. */
function rewritten(folder: string, {name, file: from, html, modules}: Page, chunks: readonly OutputChunk[]): string {
  const own = chunks.find((chunk) => chunk.isEntry && chunk.facadeModuleId === ENTRY + name);
  if (!own) throw new Error(`${name} has no bundle`);
  const known = new Map(chunks.map((chunk) => [chunk.fileName, chunk]));
  const needed = new Set<string>();
  const waiting = [own.fileName];
  for (let file = waiting.pop(); file !== undefined; file = waiting.pop()) {
    if (needed.has(file)) continue;
    needed.add(file);
    waiting.push(...(known.get(file)?.imports.filter((each) => known.has(each)) ?? []));
  }
  const up = posix.relative(posix.dirname(from), ".");
  const site = `${up || "."}/${FOLDER}`;
  const parts = chunks.filter(({name: of}) => of === PARTS.name || of === PARTS.library).map(({fileName}) => fileName);
  const preload = [
    ...[...needed].map((file) => `<link rel="modulepreload" href="${site}/${file}">`),
    // Whatever page is next, it is likely to need these: they are fetched while the first is read.
    ...(name === FIRST ? parts.filter((file) => !needed.has(file)).map((file) => `<link rel="prefetch" as="script" href="${site}/${file}">`) : []),
  ].join("\n");
  const nameOf = (address: string) => `m${modules.indexOf(join(folder, dirname(from), address))}`;
  const used = new Set<string>();
  const asked = (address: string) => {
    used.add(nameOf(address));
    return nameOf(address);
  };
  const script = /(<script type="module">)([\s\S]*?)(<\/script>)/;
  return html
    .replace(/(<link rel="modulepreload"[^>]*>\s*)+/, `${preload}\n`)
    .replace(/<script type="module" src="[^"]*"><\/script>\s*/g, "")
    .replace(script, (_, begin: string, body: string, end: string) => {
      const cells = body
        .replace(/import (\{[^}]*\}) from "((?:\.\.?\/)+_[^"]+\.js)";/g, (_all, names: string, address: string) => `const ${names.replace(/ as /g, ": ")} = ${asked(address)};`)
        .replace(/\bimport\("((?:\.\.?\/)+_[^"]+\.js)"\)/g, (_all, address: string) => asked(address));
      return `${begin}\nimport {${[...used].join(", ")}} from "${site}/${own.fileName}";\n${cells}${end}`;
    });
}

/** The package that a bundled module is from; undefined for our own. */
function packageOf(id: string): string | undefined {
  if (id.includes("/_observablehq/")) return "@observablehq/framework";
  return /\/_node\/((?:@[^/]+\/)?[^/@]+)@/.exec(id)?.[1];
}
