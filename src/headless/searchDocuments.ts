import {readFileSync, readdirSync} from "node:fs";
import {dirname, join} from "node:path";
import type {Catalog} from "../../lib/catalog.js";
import type {Check} from "../../lib/checks.js";
import {LIMITS, limitNamed} from "../../lib/deck/limits.js";
import type {Design} from "../../lib/design/design.js";
import {FIELDS} from "../../lib/design/fields.js";
import {columnsOf, evaluate, type Evaluation} from "../../lib/evaluate.js";
import {anchorOf} from "../components/search/anchors.js";
import type {Document} from "../components/search/searchIndex.js";
import type {PageEntry} from "../components/shared/pageList.js";
import type {RawTables} from "./readCatalog.js";
import {sectionsOf} from "./pageProse.js";
import {sourceOf} from "./pages.js";

type Unnumbered = Omit<Document, "id">;

/** Everything that can be found, but for symbols, which have a table of their own. */
export function searchDocuments(pages: readonly PageEntry[], tables: RawTables, designs: readonly Design[], catalog: Catalog): Document[] {
  const all = [...pages.flatMap(pageDocuments), ...wordDocuments(tables), ...limitDocuments(), ...checkDocuments(designs, catalog), ...inputDocuments(pages)];
  return all.map((each, i) => ({id: String(i), ...each}));
}

function pageDocuments({name, title, description}: PageEntry): Unnumbered[] {
  const [own, ...sections] = sectionsOf(readFileSync(sourceOf(name), "utf8"));
  return [
    {group: "page", title, beside: description, page: name, anchor: "", also: name, text: own?.text ?? ""},
    ...sections.map((section): Unnumbered => ({group: "page", title: section.title, beside: title, page: name, anchor: section.anchor, also: "", text: section.text})),
  ];
}

function wordDocuments(tables: RawTables): Unnumbered[] {
  const forms = new Map(tables["glossary-forms"]?.map(({term, forms: own}) => [term, own]));
  return (tables["glossary"] ?? []).map(({term = "", meaning = "", source = ""}) =>
    ({group: "word", title: term, beside: meaning, page: "glossary", anchor: anchorOf.word(term), also: forms.get(term) ?? "", text: source}));
}

function limitDocuments(): Unnumbered[] {
  return LIMITS.map(limitNamed).map(({name, asks, clause}) => ({group: "check", title: name, beside: `${asks} ${clause}`, page: "limits", anchor: "", also: "limit", text: ""}));
}

/** Where the checks of each part are decided, as in the strip. */
const CHECKS: readonly (readonly [page: string, checks: (e: Evaluation, catalog: Catalog) => readonly Check[] | undefined])[] = [
  ["deck", (e) => e.deck.checks], ["loads", (e) => e.loads.checks], ["topping", (e) => e.topping?.checks], ["topping", (e) => e.joint?.checks],
  ["edge-beam", (e) => e.edgeBeam.checks], ["girder", (e) => e.girder?.checks], ["snow", (e) => e.roofLoads.checks], ["roof", (e) => e.roof?.checks],
  ["columns", (e) => e.diaphragm.checks], ["story", (e) => e.story.checks], ["story", (e) => e.services.checks], ["daylight", (e) => e.daylight?.checks], ["parking", (e) => e.parking?.checks],
  ["columns", (e, catalog) => columnsOf(e, catalog).columns.flatMap(({checks}) => checks)],
];

/** The column that a check is of: all columns have the same. */
const POSITION = /^[A-Za-z ]+ column: /;

const capitalized = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);

/** Each check once, however many designs and columns have it. */
function checkDocuments(designs: readonly Design[], catalog: Catalog): Unnumbered[] {
  const found = new Map<string, Unnumbered>();
  for (const evaluation of designs.map((design) => evaluate(design, catalog))) {
    for (const [page, checksOf] of CHECKS) {
      for (const {label, clause} of checksOf(evaluation, catalog) ?? []) {
        const title = capitalized(label.replace(POSITION, ""));
        const key = `${page} ${title}`;
        if (!found.has(key)) found.set(key, {group: "check", title, beside: clause, page, anchor: "", also: "check", text: ""});
      }
    }
  }
  return [...found.values()];
}

/** Fields of the design, each with the first page in reading order whose source has its control. */
function inputDocuments(pages: readonly PageEntry[]): Unnumbered[] {
  const sources = pages.map(({name, title}) => ({name, title, text: sourcesOf(name)}));
  return Object.entries(FIELDS).flatMap(([path, field]): Unnumbered[] => {
    const page = sources.find(({text}) => text.includes(`"${path}"`) && /control/i.test(text));
    return page ? [{group: "input", title: field.label, beside: page.title, page: page.name, anchor: anchorOf.input(path), also: "", text: field.help}] : [];
  });
}

/** A page's Markdown with the modules beside it. */
function sourcesOf(page: string): string {
  const source = sourceOf(page);
  const folder = page === "index" ? join(dirname(source), "pages", page) : dirname(source);
  return [source, ...readdirSync(folder).filter((file) => file.endsWith(".ts")).map((file) => join(folder, file))].map((file) => readFileSync(file, "utf8")).join("\n");
}
