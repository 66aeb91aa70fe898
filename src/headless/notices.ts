import {existsSync, readFileSync, readdirSync} from "node:fs";
import {join} from "node:path";
import {ROOT} from "./root.js";

/** Packages of the faces, which are no modules. */
const FACES = ["@fontsource/source-sans-3", "@fontsource/source-serif-4"];

/**
 * The notices of every package whose code or letters the built site carries, as its license asks.
 *
 * @throws Error naming the packages that come without a license text
 */
export function notices(packages: readonly string[]): string {
  const all = [...new Set([...packages, ...FACES])].sort().map((name) => ({name, text: licenseOf(name)}));
  const bare = all.filter(({text}) => text === undefined).map(({name}) => name);
  if (bare.length > 0) throw new Error(`The site would carry packages without their license: ${bare.join(", ")}`);
  return [
    "This site carries the packages below. Each is used under its own license, which follows its name.",
    ...all.map(({name, text}) => `${name} ${versionOf(name)}\n${"-".repeat(name.length)}\n\n${(text as string).trim()}`),
  ].join("\n\n\n") + "\n";
}

function licenseOf(name: string): string | undefined {
  const folder = join(ROOT, "node_modules", name);
  const file = existsSync(folder) ? readdirSync(folder).find((entry) => /^(licen[sc]e|copying)/i.test(entry)) : undefined;
  return file && readFileSync(join(folder, file), "utf8");
}

function versionOf(name: string): string {
  return (JSON.parse(readFileSync(join(ROOT, "node_modules", name, "package.json"), "utf8")) as {version: string}).version;
}
