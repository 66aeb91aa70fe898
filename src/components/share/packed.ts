import {InputError} from "../../lib/errors.js";

/**
 * A text made short enough for the address of a page: compressed by the platform's own streams, with their checksum, in letters that an address
 * leaves alone. The fragment of an address never leaves the browser.
 */
export async function pack(text: string): Promise<string> {
  const bytes = new Uint8Array(await through(new TextEncoder().encode(text), new CompressionStream("deflate")).arrayBuffer());
  let letters = "";
  for (const byte of bytes) letters += String.fromCharCode(byte);
  return btoa(letters).replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/, "");
}

/**
 * The text that {@link pack} made short.
 *
 * @param what - what the text is called in a refusal: "link"
 * @param mostBytes - a text that grows beyond this is refused, for a few letters can stand for a text without end
 * @throws InputError where the letters are no packed text, or of one that is too long
 */
export async function unpack(packed: string, what: string, mostBytes: number): Promise<string> {
  const refuse = (allowed: string) => new InputError({path: "", label: what, value: packed, reads: `"${packed}"`, allowed});
  const broken = "whole, as it was copied; some of it is missing or changed";
  const bytes = bytesOf(packed);
  if (!bytes) throw refuse(broken);
  const reader = through(bytes, new DecompressionStream("deflate")).body?.getReader() as ReadableStreamDefaultReader<Uint8Array>;
  const decoder = new TextDecoder("utf-8", {fatal: true});
  let text = "";
  let length = 0;
  for (;;) {
    const {done, value} = await reader.read().catch(() => {
      throw refuse(broken);
    });
    if (done) break;
    length += value.length;
    if (length > mostBytes) {
      void reader.cancel();
      throw refuse(`at most ${mostBytes.toLocaleString("en-US")} bytes when unpacked`);
    }
    text += decoded(() => decoder.decode(value, {stream: true}));
  }
  return text + decoded(() => decoder.decode());

  function decoded(work: () => string): string {
    try {
      return work();
    } catch {
      throw refuse(broken);
    }
  }
}

function bytesOf(packed: string): Uint8Array<ArrayBuffer> | undefined {
  if (!/^[\w-]+$/.test(packed)) return undefined;
  try {
    return Uint8Array.from(atob(packed.replaceAll("-", "+").replaceAll("_", "/")), (letter) => letter.charCodeAt(0));
  } catch {
    return undefined;
  }
}

function through(bytes: Uint8Array<ArrayBuffer>, stream: CompressionStream | DecompressionStream): Response {
  return new Response(new Blob([bytes]).stream().pipeThrough(stream));
}
