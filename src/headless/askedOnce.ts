import fs from "node:fs";
import {syncBuiltinESMExports} from "node:module";
import {posix, sep} from "node:path";

/** The pages' folder, as the generator names it. */
const SOURCES = `src${sep}`;
/** What the generator writes there itself. */
const ITS_OWN = `${SOURCES}.observablehq${sep}`;

/**
 * Lets the generator ask the file system once whether a file of the pages is there, and of what date. It asks anew for
 * every import of every module of every page, some hundred thousand times, and that takes more than half of a build. The
 * answers hold only while nothing below `src` changes: for a build, not for the preview.
 */
export function askFilesOnce(): void {
  Object.assign(fs, {existsSync: askedOnce(fs.existsSync), statSync: askedOnce(fs.statSync)});
  // It joins the same few thousand paths millions of times over.
  posix.join = joinedOnce(posix.join);
  syncBuiltinESMExports();
}

/** Joins the same parts of a path once. */
export function joinedOnce(join: typeof posix.join): typeof posix.join {
  const known = new Map<string, string>();
  return (...parts) => {
    const key = parts.join("\0");
    const before = known.get(key);
    if (before !== undefined) return before;
    const joined = join(...parts);
    known.set(key, joined);
    return joined;
  };
}

/** A question to the file system that is asked once for each path below `src`, but for what the generator writes there; what it throws is thrown each time. */
export function askedOnce<T>(ask: (path: fs.PathLike, options?: fs.StatSyncOptions) => T): typeof ask {
  const known = new Map<string, T>();
  return (path, options) => {
    if (options !== undefined || typeof path !== "string" || !path.startsWith(SOURCES) || path.startsWith(ITS_OWN)) return ask(path, options);
    if (!known.has(path)) known.set(path, ask(path));
    return known.get(path) as T;
  };
}
