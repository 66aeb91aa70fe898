import {inflateSync} from "node:zlib";

/** What is said on each sheet of a PDF as the browser prints it, without spaces: glyphs are turned into letters by each font's own table. */
export function sheetsOf(pdf: Buffer): string[] {
  const text = pdf.toString("latin1");
  const objects = new Map([...text.matchAll(/(\d+) 0 obj\b([\s\S]*?)endobj/g)].map((found) => [found[1] as string, {body: found[2] as string, at: found.index}]));
  const stream = (id: string): string => {
    const object = objects.get(id);
    if (!object) throw new Error(`the file has no object ${id}`);
    const begin = text.indexOf("stream", object.at) + "stream".length;
    const from = begin + (text[begin] === "\r" ? 2 : 1);
    return inflateSync(pdf.subarray(from, text.indexOf("endstream", from))).toString("latin1");
  };
  const tables = new Map<string, Map<number, string>>();
  const tableOf = (font: string): Map<number, string> => {
    const known = tables.get(font);
    if (known) return known;
    const id = /\/ToUnicode (\d+) 0 R/.exec(objects.get(font)?.body ?? "")?.[1];
    const table = id === undefined ? new Map<number, string>() : lettersOf(stream(id));
    tables.set(font, table);
    return table;
  };
  return [...objects.values()].filter(({body}) => /\/Type\s*\/Page\b/.test(body)).map(({body}) => {
    const resources = objects.get(/\/Resources (\d+) 0 R/.exec(body)?.[1] ?? "")?.body ?? body;
    const fonts = new Map([...resources.matchAll(/\/(F\d+) (\d+) 0 R/g)].map(([, name, id]) => [name as string, id as string]));
    let table = new Map<number, string>();
    let said = "";
    for (const [, name, hex] of stream(/\/Contents (\d+) 0 R/.exec(body)?.[1] ?? "").matchAll(/\/(F\d+) [\d.]+ Tf|<([0-9A-Fa-f]+)>/g)) {
      if (name !== undefined) table = tableOf(fonts.get(name) ?? "");
      else for (let i = 0; i < (hex as string).length; i += 4) said += table.get(parseInt((hex as string).slice(i, i + 4), 16)) ?? "";
    }
    return said.replace(/\s/g, "");
  });
}

/** Letters by the numbers of their glyphs. */
function lettersOf(table: string): Map<number, string> {
  const letters = (hex: string) => String.fromCharCode(...(hex.match(/.{4}/g) ?? []).map((unit) => parseInt(unit, 16)));
  const found = new Map<number, string>();
  for (const [, block = ""] of table.matchAll(/beginbfchar([\s\S]*?)endbfchar/g)) {
    for (const [, glyph = "", to = ""] of block.matchAll(/<([0-9A-Fa-f]+)>\s*<([0-9A-Fa-f]+)>/g)) found.set(parseInt(glyph, 16), letters(to));
  }
  for (const [, block = ""] of table.matchAll(/beginbfrange([\s\S]*?)endbfrange/g)) {
    for (const [, first = "", last = "", to = ""] of block.matchAll(/<([0-9A-Fa-f]+)>\s*<([0-9A-Fa-f]+)>\s*<([0-9A-Fa-f]+)>/g)) {
      for (let glyph = parseInt(first, 16); glyph <= parseInt(last, 16); glyph++) found.set(glyph, letters((parseInt(to, 16) + glyph - parseInt(first, 16)).toString(16).padStart(4, "0")));
    }
  }
  return found;
}
