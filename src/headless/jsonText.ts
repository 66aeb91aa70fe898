/** Longest value that stands on one line whatever is in it, characters. */
const LINE = 240;

/** A value as JSON, one line for what has no parts with parts of their own: half as long as with a line for each number. */
export function jsonText(value: unknown): string {
  return lines(JSON.parse(JSON.stringify(value)), "");
}

function lines(value: unknown, indent: string): string {
  const line = JSON.stringify(value);
  if (typeof value !== "object" || value === null || line.length <= LINE || !Object.values(value).some(hasParts)) return line;
  const inner = `${indent} `;
  return Array.isArray(value)
    ? `[\n${value.map((entry) => inner + lines(entry, inner)).join(",\n")}\n${indent}]`
    : `{\n${Object.entries(value).map(([key, entry]) => `${inner}${JSON.stringify(key)}: ${lines(entry, inner)}`).join(",\n")}\n${indent}}`;
}

const hasParts = (value: unknown): boolean => typeof value === "object" && value !== null;
