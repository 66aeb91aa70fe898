import {DESIGN_VERSION} from "./design.js";

type Plain = Record<string, unknown>;

/**
 * Fields that each version of the design file added, with the value that an older file is taken to have meant: what the
 * library did before there was a choice.
 */
const ADDED: Readonly<Record<number, Readonly<Record<string, unknown>>>> = {
  2: {
    "deck.aggregate": "siliceous",
    "criteria.sagLimit": "L/360",
    "criteria.keepCamber": false,
    "criteria.walking": "none",
    "criteria.fireHours": "0",
    "criteria.fireRestrained": false,
  },
};

/** The content of a design file of this or an older version, as one of this version; anything else comes back as it is. */
export function migrate(content: Plain): Plain {
  const from = content["version"];
  if (typeof from !== "number" || !Number.isInteger(from) || from < 1 || from >= DESIGN_VERSION) return content;
  let current: Plain = {...content, version: DESIGN_VERSION};
  for (let version = from + 1; version <= DESIGN_VERSION; version++) {
    for (const [path, value] of Object.entries(ADDED[version] ?? {})) current = withDefault(current, path.split("."), value);
  }
  return current;
}

/** A copy with a value where there was none; a branch that is not an object is left for validation to name. */
function withDefault(branch: Plain, [key, ...rest]: readonly string[], value: unknown): Plain {
  if (key === undefined) return branch;
  if (rest.length === 0) return key in branch ? branch : {...branch, [key]: value};
  const child = branch[key] ?? {};
  return typeof child === "object" && !Array.isArray(child) ? {...branch, [key]: withDefault(child as Plain, rest, value)} : branch;
}
