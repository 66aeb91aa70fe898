import {InputError} from "../../lib/errors.js";

/** A command whose words cannot be used; shown as it is. */
export class UsageError extends Error {}

/** Exit code for words or files that cannot be used. */
const UNUSABLE = 2;

/**
 * Runs a command: what it returns goes to standard output. Words or a file that cannot be used give one line on
 * standard error, nothing on standard output, and exit code 2.
 */
export function runCommand(work: (words: string[]) => string): void {
  let output: string;
  try {
    output = work(process.argv.slice(2));
  } catch (problem) {
    if (!isOfTheUser(problem)) throw problem;
    process.stderr.write(`${problem.message.replace(/\s*\n\s*/g, " ")}\n`);
    process.exitCode = UNUSABLE;
    return;
  }
  process.stdout.write(output);
}

function isOfTheUser(problem: unknown): problem is Error {
  if (problem instanceof InputError || problem instanceof UsageError) return true;
  // What the argument parser and the file system say is about the user's words and files too.
  const code = problem instanceof Error ? (problem as NodeJS.ErrnoException).code : undefined;
  return code !== undefined && (code.startsWith("ERR_PARSE_ARGS") || ["ENOENT", "EISDIR", "EACCES", "ENOTDIR"].includes(code));
}
