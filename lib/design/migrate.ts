import {DESIGN_VERSION} from "./design.js";

type Plain = Record<string, unknown>;

/**
 * Fields that each version of the design file added, with the value that an older file is taken to have meant: what the
 * library did before there was a choice. Where that hung on the rest of the file, a function of it.
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
  3: {
    "edgeBeam.kind": "ledge", "edgeBeam.steel": "bars", "edgeBeam.strands": 12, "edgeBeam.padWidthIn": 4, "edgeBeam.padLengthIn": 4, "edgeBeam.padThicknessIn": 0.375,
    "girder.kind": "inverted tee", "girder.webWidthIn": 16, "girder.ledgeProjectionIn": 8, "girder.ledgeDepthIn": 12, "girder.depthIn": 32, "girder.strands": 16, "girder.strengthPsi": 6000, "girder.releaseStrengthPsi": 4000,
    "column.strengthPsi": 5000, "column.coverIn": 1.5, "column.steelPercent": 1.5, "column.seatIn": 4, "column.sways": false, "column.roofDeadPsf": 80, "column.roofLivePsf": 20,
    "ground.allowablePsf": 4000, "ground.footingStrengthPsi": 3000,
    "diaphragm.lateralPlf": 400,
    "story.frameIn": 2,
    "services.airCfmPerFt2": 1, "services.mainWidthIn": 30, "services.mainDepthIn": 14, "services.branchWidthIn": 14, "services.branchDepthIn": 10, "services.sprinklerIn": 4, "services.lightIn": 4,
    "daylight.sides": "two", "daylight.revealIn": 6, "daylight.frameShare": 0.15, "daylight.transmittanceShare": 0.75, "daylight.obstructionDeg": 10, "daylight.floorShare": 0.2, "daylight.wallShare": 0.5, "daylight.ceilingShare": 0.7,
    "topping.followShare": 0, "topping.ageDays": 45,
    "reasons.frame": "", "reasons.light": "",
  },
  4: {
    // Beams ended 10 in off the column line: half of this and a joint.
    "column.sideIn": 18,
    "services.servedFt2": bayFt2,
  },
};

/** Floor of one bay, whose air alone the main duct carried, ft2; validation names a bay that is none. */
function bayFt2(content: Plain): number {
  const {spanFt, beamSpanFt} = (content["bay"] ?? {}) as Plain;
  return typeof spanFt === "number" && typeof beamSpanFt === "number" ? spanFt * beamSpanFt : 1000;
}

/**
 * Names that an earlier version of the file spelled otherwise, fields and groups: old path, new path, and the version that
 * brought the new one. The fields above are named as they are now.
 */
const RENAMED: readonly {readonly was: string; readonly is: string; readonly since: number}[] = [
  {was: "storey", is: "story", since: 5},
  {was: "deck.strandHeightCentreIn", is: "deck.strandHeightCenterIn", since: 5},
];

/** The content of a design file of this or an older version, as one of this version; anything else comes back as it is. */
export function migrate(content: Plain): Plain {
  const from = content["version"];
  if (typeof from !== "number" || !Number.isInteger(from) || from < 1 || from >= DESIGN_VERSION) return content;
  let current: Plain = {...renamed(content, from), version: DESIGN_VERSION};
  for (let version = from + 1; version <= DESIGN_VERSION; version++) {
    for (const [path, value] of Object.entries(ADDED[version] ?? {})) {
      current = withDefault(current, path.split("."), typeof value === "function" ? (value as (content: Plain) => unknown)(current) : value);
    }
  }
  return current;
}

/** A copy with the names of today for those of a version before: of fields and groups, of reasons, and in what these were written for. */
function renamed(content: Plain, from: number): Plain {
  const since = RENAMED.filter((name) => name.since > from);
  const now = (path: string) => since.reduce((path, {was, is}) => (path === was || path.startsWith(`${was}.`) ? is + path.slice(was.length) : path), path);
  const named = (branch: unknown, nameOf: (key: string) => string, child: (value: unknown, key: string) => unknown = (value) => value): unknown =>
    // A name that the branch has already is not written over: validation names the other one.
    (isPlain(branch) ? Object.fromEntries(Object.entries(branch).map(([key, value]) => [nameOf(key) in branch ? key : nameOf(key), child(value, key)])) : branch);
  const fields = (value: unknown, group: string) => named(value, (key) => now(`${group}.${key}`).split(".").at(-1) as string);
  const written = (entry: unknown) => named(entry, (key) => key, (value, key) => (key === "choice" ? named(value, now) : value));
  return named(content, now, (value, key) =>
    key === "reasons" ? named(value, now) : key === "writtenFor" ? named(value, now, written) : fields(value, key)) as Plain;
}

function isPlain(value: unknown): value is Plain {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** A copy with a value where there was none; a branch that is not an object is left for validation to name. */
function withDefault(branch: Plain, [key, ...rest]: readonly string[], value: unknown): Plain {
  if (key === undefined) return branch;
  if (rest.length === 0) return key in branch ? branch : {...branch, [key]: value};
  const child = branch[key] ?? {};
  return typeof child === "object" && !Array.isArray(child) ? {...branch, [key]: withDefault(child as Plain, rest, value)} : branch;
}
