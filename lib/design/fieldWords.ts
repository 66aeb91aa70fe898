import {decimals, feetText} from "../units.js";
import type {Layer, Room} from "./design.js";
import {LISTS, fieldAt} from "./fields.js";

/** What the value at a path is called, lower case. */
export function fieldLabel(path: string): string {
  return fieldAt(path)?.label ?? LISTS[path]?.label ?? (path === "deck.dimensions" ? "changed dimensions" : path);
}

/** A field's value as a reader meets it: with its unit, a choice in its words, a list entry by entry, "none" for nothing. */
export function fieldWords(path: string, value: unknown): string {
  if (value === undefined) return "none";
  if (Array.isArray(value)) return value.map((entry) => entryWords(path, entry)).join(", ") || "none";
  if (path === "deck.dimensions") return Object.entries(value as Readonly<Record<string, number>>).map(([name, inches]) => `${name} ${plain(inches)}`).join(", ") || "none";
  const field = fieldAt(path);
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (field?.kind === "number" && typeof value === "number" && field.unit === "ft") return feetText(value);
  if (field?.kind === "number" && typeof value === "number") return `${plain(value)}${field.unit ? ` ${field.unit}` : ""}`;
  return field?.kind === "choice" ? (field.choices[String(value)] ?? String(value)) : String(value);
}

/** A number with as many decimals as it has, four at the most. */
export function plain(value: number): string {
  const places = (String(value).split(".")[1] ?? "").length;
  return decimals(value, Math.min(4, places));
}

function entryWords(path: string, entry: unknown): string {
  if (path === "loads.layers") {
    const {name, loadPsf} = entry as Layer;
    return `${name} ${plain(loadPsf)} psf`;
  }
  const {name, occupancy, own} = entry as Room;
  return `${name} (${occupancy}${own ? `, ${plain(own.livePsf)} psf ${own.reducible ? "entered" : "entered and taken in full"}` : ""})`;
}
