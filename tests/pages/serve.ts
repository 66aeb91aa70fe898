import {readFile} from "node:fs/promises";
import {createServer} from "node:http";
import type {AddressInfo} from "node:net";
import {extname, join, normalize, sep} from "node:path";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json",
  ".svg": "image/svg+xml",
};

/** A server of a built site on a free port of this machine. */
export interface Site {
  /** Such as `http://127.0.0.1:40123`. */
  readonly origin: string;
  close(): Promise<void>;
}

/** An empty page of the site's origin that is none of the notebook's: where the visits of tests begin and end. */
export const OUTSIDE = "/outside-the-notebook";
const EMPTY_PAGE = Buffer.from('<!doctype html><link rel="icon" href="data:,"><title>Outside</title>');

/**
 * Serves a folder as a plain host would: files as they are, `/name` as `name.html`, 404 otherwise; and the page {@link OUTSIDE}.
 *
 * @param kept - whether a browser is told to keep what is no page, as the site stays what it is while it is served: a script
 *   need not be compiled anew on each page. Who counts what a page asks for serves without.
 */
export async function serve(folder: string, {kept = true}: {readonly kept?: boolean} = {}): Promise<Site> {
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? "/", "http://localhost").pathname);
    void find(folder, path).then((found) => {
      const type = found?.type ?? "text/plain";
      response.writeHead(found ? 200 : 404, {"content-type": type, ...(kept && found && type !== TYPES[".html"] ? {"cache-control": "max-age=86400, immutable"} : {})});
      response.end(found?.content ?? "not found");
    });
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const {port} = server.address() as AddressInfo;
  return {
    origin: `http://127.0.0.1:${port}`,
    close: () => new Promise((resolve) => {
      server.closeAllConnections();
      server.close(() => resolve());
    }),
  };
}

async function find(folder: string, path: string): Promise<{content: Buffer; type: string} | undefined> {
  if (path === OUTSIDE) return {content: EMPTY_PAGE, type: TYPES[".html"] as string};
  const clean = normalize(path).split(sep).filter((part) => part !== "..").join(sep);
  for (const candidate of [clean, `${clean}.html`, join(clean, "index.html")]) {
    try {
      const content = await readFile(join(folder, candidate));
      return {content, type: TYPES[extname(candidate)] ?? "application/octet-stream"};
    } catch {
      continue;
    }
  }
  return undefined;
}
