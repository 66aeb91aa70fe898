import type {Design} from "../../lib/design/design.js";
import {InputError} from "../../lib/errors.js";
import {BEGINS} from "./fragment.js";
import {pack, unpack} from "./packed.js";

/** The version of this way to write a design into an address; the design has a version of its own. */
const VERSION = "1";

/** Longest link that mail, chats and slides pass on unbroken, characters: common practice; browsers themselves take more. */
export const LONGEST_LINK = 8000;

/** Largest design file that a link may hold when unpacked, bytes: some ten times what the longest texts of a design come to. */
const MOST_BYTES = 1_000_000;

/**
 * The address of the notebook's first page with the whole design in its fragment.
 *
 * @param first - address of the first page, without a fragment
 */
export async function linkOf(design: Design, first: string): Promise<string> {
  return `${first}${BEGINS}${VERSION}.${await pack(JSON.stringify(design))}`;
}

/**
 * The text of the design file that a fragment holds, to be checked like any file.
 *
 * @param fragment - from `#` on; see `holdsDesign`
 * @throws InputError where it was written by a newer kit, or where some of it is missing or changed
 */
export async function designText(fragment: string): Promise<string> {
  const [version, packed = ""] = fragment.slice(BEGINS.length).split(".", 2);
  if (version !== VERSION) {
    throw new InputError({path: "version", label: "version of the link", value: version, reads: `"${version ?? ""}"`, allowed: `this kit reads version ${VERSION}`});
  }
  return unpack(packed, "link", MOST_BYTES);
}
