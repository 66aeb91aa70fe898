import {decimals, feetText} from "../units.js";
import type {Layer, Room} from "./design.js";
import {entryAt} from "./fields.js";

/** What the value at a path is called, lower case. */
export function fieldLabel(path: string): string {
  return entryAt(path)?.label ?? path;
}

/** A field's value as a reader meets it: with its unit, a choice in its words, a list entry by entry, "none" for nothing. */
export function fieldWords(path: string, value: unknown): string {
  if (value === undefined) return "none";
  if (Array.isArray(value)) return value.map((entry) => entryWords(path, entry)).join(", ") || "none";
  const entry = entryAt(path);
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

function entryWords(path: string, entry: unknown): string {
  if (path === "loads.layers" || path === "roof.layers") {
    const {name, loadPsf} = entry as Layer;
    return `${name} ${plain(loadPsf)} psf`;
  }
  const {name, occupancy, own} = entry as Room;
  return `${name} (${occupancy}${own ? `, ${plain(own.livePsf)} psf ${own.reducible ? "entered" : "entered and taken in full"}` : ""})`;
}
