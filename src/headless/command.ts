import {InputError} from "../../lib/errors.js";

/** A command whose words cannot be used; shown as it is. */
export class UsageError extends Error {}

/** Exit code for words or files that cannot be used. */
const UNUSABLE = 2;
/** Exit code where the output has nowhere to go. */
const UNWRITABLE = 1;

/**
 * Runs a command: what it returns goes to standard output. Words or a file that cannot be used give one line on
 * standard error, nothing on standard output, and exit code 2. Where the reader of the output goes away before its end
 * (`| head`), the command ends quietly.
 */
export async function runCommand(work: (words: string[]) => string | Promise<string>): Promise<void> {
  process.stdout.on("error", endOfOutput);
  // Nobody is left to tell.
  process.stderr.on("error", () => undefined);
  let output: string;
  try {
    output = await work(process.argv.slice(2));
  } catch (problem) {
    if (!isOfTheUser(problem)) throw problem;
    complain(problem.message, UNUSABLE);
    return;
  }
  process.stdout.write(output);
}

function endOfOutput(problem: NodeJS.ErrnoException): void {
  if (problem.code !== "EPIPE") complain(`standard output: ${problem.message}`, UNWRITABLE);
}

function complain(message: string, exitCode: number): void {
  process.stderr.write(`${message.replace(/\s*\n\s*/g, " ")}\n`);
  process.exitCode = exitCode;
}

/** Refuses an option that is given twice: the parser would take the last one and say nothing of the other. */
export function requireOnce(tokens: readonly {readonly kind: string; readonly name?: string}[]): void {
  const names = tokens.flatMap(({kind, name}) => (kind === "option" && name !== undefined ? [name] : []));
  const twice = names.find((name, i) => names.indexOf(name) < i);
  if (twice !== undefined) throw new UsageError(`--${twice} is given more than once; it can be said once only`);
}

function isOfTheUser(problem: unknown): problem is Error {
  if (problem instanceof InputError || problem instanceof UsageError) return true;
  // What the argument parser says is about the user's words too.
  const code = problem instanceof Error ? (problem as NodeJS.ErrnoException).code : undefined;
  return code !== undefined && code.startsWith("ERR_PARSE_ARGS");
}
