/**
 * The house's layers, as `DEVELOPERS.md` lists them, and who may import whom. Types count as code does.
 *
 * - In `lib/` a room (a folder, or a file beside the folders) imports rooms above it in the list, and nothing else.
 * - In `src/` pages import components and `lib/`, components import each other and `lib/`; a page never another page. Its
 *   prose may stand beside its folder: `index.md` has to.
 * - No file and no room of components can be reached from what it imports.
 */
import {existsSync, readFileSync, readdirSync} from "node:fs";
import {dirname, join, normalize, relative, sep} from "node:path";
import {fileURLToPath} from "node:url";

export const ROOT = fileURLToPath(new URL("..", import.meta.url));
/** What the files of each folder of `src/` may import beside `lib/` and their own folder; pages have a folder each. */
const BESIDE = {
  components: [],
  headless: ["components"],
  data: ["components", "headless"],
  pages: ["components"],
};

/** The rooms of `lib/` from the first to the last, out of the text of `DEVELOPERS.md`. */
export function roomsInOrder(text) {
  const [, list = ""] = text.split("`lib/` reads like the job.");
  const rows = list.trimStart().split("\n").slice(1).join("\n").trimStart().split("\n\n")[0].split("\n").slice(2);
  return rows.flatMap((row) => [...(row.split("|")[1] ?? "").matchAll(/`([\w]+)(?:\/|\.ts)?`/g)].map(([, room]) => room));
}

/** Path of an imported file from the repository's root; the link `src/lib` stands for `lib/`. Undefined for a package. */
export function importedFile(from, specifier) {
  if (!specifier.startsWith(".")) return undefined;
  return normalize(join(dirname(from), specifier)).split(sep).join("/").replace(/^src\/lib\//, "lib/").replace(/\.js$/, ".ts");
}

/** The room that a file belongs to: `lib/deck`, `src/components/store`, `src/pages/deck`; `store.ts` is the door of `store/`. */
export function roomOf(file) {
  if (/^src\/index\.(md|cells\.ts)$/.test(file)) return "src/pages/index";
  const [top, folder, ...rest] = file.split("/");
  if (top === "lib") return `lib/${folder.replace(/\.ts$/, "")}`;
  return folder === "components" || folder === "pages" ? `src/${folder}/${(rest[0] ?? "").replace(/\.ts$/, "")}` : `src/${folder}`;
}

/** Why one file may not import the other, by their layers; undefined where it may. */
export function misplaced(from, to, order) {
  const [own, other] = [roomOf(from), roomOf(to)];
  if (own === other) return undefined;
  if (from.startsWith("lib/")) {
    if (!to.startsWith("lib/")) return "the library imports nothing from the pages";
    const [at, of] = [own, other].map((room) => order.indexOf(room.slice("lib/".length)));
    const unlisted = at < 0 ? own : of < 0 ? other : undefined;
    if (unlisted) return `${unlisted} has no place in the list of DEVELOPERS.md`;
    return of < at ? undefined : `${other} stands below ${own} in the list of DEVELOPERS.md`;
  }
  if (!to.startsWith("src/")) return undefined;
  const [layer, below] = [own, other].map((room) => room.split("/")[1]);
  if (layer === below && layer !== "pages") return undefined;
  if (BESIDE[layer]?.includes(below)) return undefined;
  return layer === "pages" && below === "pages" ? `${own} and ${other} are pages: what both use belongs to components` : `src/${layer} may not use src/${below}`;
}

/** Every file of the house with the files that it imports. */
export function importsOfAll(root = ROOT) {
  const files = ["lib", "src"].flatMap((top) => readdirSync(join(root, top), {recursive: true, withFileTypes: true})
    .filter((entry) => entry.isFile() && /\.(ts|md)$/.test(entry.name))
    .map((entry) => relative(root, join(entry.parentPath ?? entry.path, entry.name)).split(sep).join("/"))
    .filter((file) => !file.startsWith("src/lib/") && !file.startsWith("src/.")));
  const known = new Set(files);
  return new Map(files.map((file) => [file, importsIn(readFileSync(join(root, file), "utf8"))
    .flatMap((specifier) => importedFile(file, specifier) ?? []).filter((to) => known.has(to))]));
}

/** What a text imports: `import ... from`, `export ... from`, and `import(...)` in code and types. */
function importsIn(text) {
  return [...text.matchAll(/(?:\bfrom|\bimport|\bimport\()\s*["']([^"']+)["']/g)].map(([, specifier]) => specifier);
}

/** The way from one place back to another along imports, both named; undefined where there is none. */
export function wayBack(graph, from, to) {
  const before = new Map([[from, undefined]]);
  for (const place of before.keys()) {
    if (place === to) {
      const way = [];
      for (let at = place; at !== undefined; at = before.get(at)) way.unshift(at);
      return way;
    }
    for (const next of graph.get(place) ?? []) if (!before.has(next)) before.set(next, place);
  }
  return undefined;
}

/** Rooms with the rooms that their files import. */
export function importsOfRooms(files) {
  const rooms = new Map();
  for (const [file, imported] of files) {
    const room = roomOf(file);
    const others = rooms.get(room) ?? new Set();
    for (const to of imported) if (roomOf(to) !== room) others.add(roomOf(to));
    rooms.set(room, others);
  }
  return rooms;
}

/** What is wrong with one file's import of another, in words; undefined where nothing is. */
export function fault(from, to, {order, files, rooms}) {
  const why = misplaced(from, to, order);
  if (why) return why;
  const way = wayBack(files, to, from);
  if (way) return `imports go round: ${[from, ...way].join(" > ")}`;
  const [own, other] = [roomOf(from), roomOf(to)];
  const round = own === other ? undefined : wayBack(rooms, other, own);
  return round && `rooms go round: ${[own, ...round].join(" > ")}`;
}

/** The house as it stands on the disk. */
export function readHouse(root = ROOT) {
  const files = importsOfAll(root);
  return {order: roomsInOrder(readFileSync(join(root, "DEVELOPERS.md"), "utf8")), files, rooms: importsOfRooms(files)};
}

let house;

/** An ESLint rule: an import that the layers do not allow, or that leads back to where it stands. */
export const layers = {
  meta: {type: "problem", schema: [], messages: {fault: "{{why}}"}},
  create(context) {
    // A cell of a page's prose is named after its page.
    const from = relative(ROOT, context.filename).split(sep).join("/").replace(/\.md\/.*$/, ".md");
    if (!/^(lib|src)\//.test(from)) return {};
    // Read once for all files of a run.
    house ??= readHouse();
    const check = ({source}) => {
      const to = typeof source?.value === "string" ? importedFile(from, source.value) : undefined;
      if (to === undefined || !existsSync(join(ROOT, to))) return;
      const why = fault(from, to, house);
      if (why) context.report({node: source, messageId: "fault", data: {why}});
    };
    return {
      ImportDeclaration: check, ImportExpression: check, ExportAllDeclaration: check, ExportNamedDeclaration: check, TSImportType: check,
    };
  },
};
