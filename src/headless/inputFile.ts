import {readFileSync} from "node:fs";
import {text} from "node:stream/consumers";
import {InputError} from "../../lib/errors.js";
import {UsageError} from "./command.js";

/** The name that stands for standard input in place of a file's. */
const STANDARD_INPUT = "-";
/** Longest part of a file's name that a message shows. */
const SHOWN_LETTERS = 80;

/** What is wrong with a file, by the system's code for it; any other code is given in the system's words. */
const REASONS: Readonly<Record<string, string>> = {
  ENOENT: "there is no such file",
  EISDIR: "is a directory, not a file",
  ENOTDIR: "a part of the path is a file, not a directory",
  ENAMETOOLONG: "the name is too long",
  ELOOP: "its links lead in a circle",
  EACCES: "may not be read",
  ERR_FS_FILE_TOO_LARGE: "the file is too large",
  ERR_STRING_TOO_LONG: "the file is too large",
};

/**
 * What a command makes of the text of a file, or of standard input where the name is `-`.
 *
 * @throws UsageError in one line that begins with the file's name, where it cannot be read or its content not be used
 */
export async function fromFile<T>(name: string, work: (content: string) => T): Promise<T> {
  const content = await read(name);
  try {
    return work(content);
  } catch (problem) {
    throw problem instanceof InputError ? new UsageError(`${shown(name)}: ${problem.message}`) : problem;
  }
}

async function read(name: string): Promise<string> {
  try {
    return name === STANDARD_INPUT ? await text(process.stdin) : readFileSync(name, "utf8");
  } catch (problem) {
    const {code = "", message} = problem as NodeJS.ErrnoException;
    throw new UsageError(`${shown(name)}: ${REASONS[code] ?? `cannot be read (${message})`}`);
  }
}

/** A name as it may stand in a message: both ends of one that is long. */
function shown(name: string): string {
  if (name === STANDARD_INPUT) return "standard input";
  return name.length > SHOWN_LETTERS ? `${name.slice(0, SHOWN_LETTERS / 2)}...${name.slice(-SHOWN_LETTERS / 2)}` : name;
}
