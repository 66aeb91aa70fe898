import {decimals, feetText} from "../units.js";
import type {Entry, List} from "./entries.js";
import {entryAt} from "./fields.js";

/** What the value at a path is called, lower case. */
export function fieldLabel(path: string): string {
  return entryAt(path)?.label ?? path;
}

/** A field's value as a reader meets it: with its unit, a choice in its words, a list entry by entry, "none" for nothing. */
export function fieldWords(path: string, value: unknown): string {
  if (value === undefined) return "none";
  const entry = entryAt(path);
  if (entry?.kind === "list" && Array.isArray(value)) return value.map((item) => itemWords(path, entry, item as Readonly<Record<string, unknown>>)).join(", ") || "none";
  if (entry?.kind === "lengths" && typeof value === "object") return Object.entries(value as Readonly<Record<string, number>>).map(([name, inches]) => `${name} ${plain(inches)}`).join(", ") || "none";
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (entry?.kind === "number" && typeof value === "number" && entry.unit === "ft") return feetText(value);
  if (entry?.kind === "number" && typeof value === "number") return `${plain(value)}${entry.unit ? ` ${entry.unit}` : ""}`;
  return entry?.kind === "choice" ? (entry.choices[String(value)] ?? String(value)) : String(value);
}

/** A number with as many decimals as it has, four at the most. */
export function plain(value: number): string {
  const places = (String(value).split(".")[1] ?? "").length;
  return decimals(value, Math.min(4, places));
}

/** One entry of a list: its first text names it, and the rest says what it is, a single number beside the name and more in parentheses. */
function itemWords(path: string, {entries}: List, item: Readonly<Record<string, unknown>>): string {
  const [[naming], ...others] = Object.entries<Entry>(entries) as [[string, Entry], ...[string, Entry][]];
  const rest = others.flatMap(([key, entry]) => partWords(`${path}.*.${key}`, entry, item[key]));
  const name = String(item[naming]);
  if (others.length === 1 && others[0]?.[1].kind === "number") return [name, ...rest].join(" ");
  return rest.length ? `${name} (${rest.join(", ")})` : name;
}

/** What one part of a list's entry says; nothing where it is left out. A number without a unit and a switch say what they are. */
function partWords(path: string, entry: Entry, value: unknown): string[] {
  if (value === undefined || value === "") return [];
  if (entry.kind === "group") {
    const inside = Object.entries<Entry>(entry.entries).flatMap(([key, each]) => partWords(`${path}.${key}`, each, (value as Readonly<Record<string, unknown>>)[key]));
    return [`${entry.label}: ${inside.join(", ")}`];
  }
  const bare = entry.kind === "switch" || (entry.kind === "number" && entry.unit === "");
  return [bare ? `${entry.label}: ${fieldWords(path, value)}` : fieldWords(path, value)];
}
