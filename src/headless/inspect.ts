import {readFileSync, readdirSync} from "node:fs";
import {join, posix, relative, sep} from "node:path";

/** All files below a folder, as paths with forward slashes. */
export function listFiles(folder: string): string[] {
  return readdirSync(folder, {recursive: true, withFileTypes: true})
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join("/"))
    .sort();
}

/** What is wrong with a built site, one line each: error blocks, dead links, and addresses that a page would fetch from elsewhere. */
export function inspectSite(folder: string): string[] {
  const files = new Set(listFiles(folder));
  const read = (file: string) => readFileSync(join(folder, file), "utf8");
  const pages = new Map([...files].filter((file) => file.endsWith(".html")).map((file) => [file, read(file)]));
  const problems: string[] = [];
  for (const [file, html] of pages) {
    for (const error of html.matchAll(/class="observablehq--inspect observablehq--error"[^>]*>([^<]*)/g)) {
      problems.push(`${file}: ${error[1]}`);
    }
    if (html.includes("observablehq--error") && !problems.length) problems.push(`${file}: an error block`);
    for (const {url, follows} of addresses(html)) {
      if (/^(data|mailto|blob):/.test(url)) continue;
      if (/^(\w+:)?\/\//.test(url)) {
        if (follows) problems.push(`${file}: would fetch ${url}`);
      } else {
        const problem = deadLink(file, url, pages, files);
        if (problem) problems.push(`${file}: ${problem}`);
      }
    }
  }
  for (const file of files) {
    if (file.endsWith(".css")) problems.push(...remoteInStyle(file, read(file)));
    if (file.endsWith(".js")) problems.push(...remoteInScript(file, read(file)));
  }
  return problems;
}

/** Every address in a page; `follows` marks those that a browser fetches by itself. */
function addresses(html: string): {url: string; follows: boolean}[] {
  const found: {url: string; follows: boolean}[] = [];
  const withoutScripts = html.replace(/(<script\b[^>]*>)[\s\S]*?<\/script>/g, "$1");
  for (const [, tag, name, url] of withoutScripts.matchAll(/<(\w+)\b[^>]*?\s(href|src|srcset|poster)="([^"]*)"/g)) {
    const target = (url as string).replace(/&amp;/g, "&");
    found.push({url: target, follows: !(tag === "a" && name === "href")});
  }
  // Words of the prose may read like an import, so only scripts are looked through.
  for (const [script] of html.matchAll(/<script\b[^>]*>[\s\S]*?<\/script>/g)) {
    for (const [, url] of script.matchAll(/\b(?:from|import)\s*\(?\s*"([^"]+)"/g)) found.push({url: url as string, follows: true});
  }
  return found;
}

function deadLink(from: string, url: string, pages: ReadonlyMap<string, string>, files: ReadonlySet<string>): string | undefined {
  const [pathAndQuery = "", anchor] = url.split("#");
  const path = decodeURI(pathAndQuery.split("?")[0] as string);
  const joined = path === "" ? from : posix.join(path.startsWith("/") ? "." : posix.dirname(from), path);
  const target = [joined, `${joined}.html`, posix.join(joined, "index.html")].find((candidate) => files.has(candidate));
  if (!target) return `broken link ${url}`;
  if (!anchor) return undefined;
  const page = pages.get(target);
  const wanted = decodeURIComponent(anchor);
  const known = page !== undefined && new RegExp(`\\bid="${wanted.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")}"`).test(page);
  return known ? undefined : `broken anchor ${url}`;
}

function remoteInStyle(file: string, css: string): string[] {
  const found = [...css.matchAll(/(?:url\(\s*["']?|@import\s+["'])((?:https?:)?\/\/[^"')\s]+)/g)];
  return found.map(([, url]) => `${file}: would fetch ${url}`);
}

/** Imports from another origin only: a namespace or a link in a string is not fetched. */
function remoteInScript(file: string, script: string): string[] {
  const found = [...script.matchAll(/(?:\bfrom|\bimport)\s*\(?\s*["'`]((?:https?:)?\/\/[^"'`\s]+)/g)];
  return found.map(([, url]) => `${file}: would fetch ${url}`);
}
