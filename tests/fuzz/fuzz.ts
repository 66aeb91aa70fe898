/**
 * `npm run fuzz -- --cases N --seed S`: random designs against the laws in `laws.ts`. Prints each way in which a law is
 * broken once, with the seed that repeats it and the least design that shows it, and a summary; exit code 1 if there is one.
 */
import {parseArgs} from "node:util";
import {UsageError, runCommand} from "../../src/headless/command.js";
import {run, type Found} from "./run.js";

await runCommand((words) => {
  const {values} = parseArgs({args: words, options: {cases: {type: "string", default: "1000"}, seed: {type: "string", default: "1"}}});
  const [cases, seed] = [wholeNumber("cases", values.cases), wholeNumber("seed", values.seed)];
  const began = Date.now();
  const {found, refused} = run(cases, seed, {
    tell: (one) => process.stderr.write(`${told(one)}\n`),
    progress: (done) => process.stderr.write(`${done} cases, ${((Date.now() - began) / 1000).toFixed(0)} s\n`),
  });
  if (found.length > 0) process.exitCode = 1;
  const total = found.reduce((sum, one) => sum + one.times, 0);
  return [
    `${cases} cases from seed ${seed}: ${cases - refused} with results, ${refused} refused with the name of a field, ${total} that break a law`,
    ...found.map(({fault, times, seed: first}) => `${String(times).padStart(6)}  ${fault.kind}: ${fault.where} (--cases 1 --seed ${first})`),
  ].join("\n") + "\n";
});

function told({fault, least, seed}: Found): string {
  const changes = JSON.stringify(least.changes);
  return `${fault.kind}: ${fault.where}\n  ${fault.detail}\n  --cases 1 --seed ${seed}; ${least.starter} with ${changes}${fault.kind === "jump" ? `, moving ${least.moved}` : ""}`;
}

function wholeNumber(name: string, text: string): number {
  if (/^\d{1,9}$/.test(text) && Number(text) > 0) return Number(text);
  throw new UsageError(`--${name} takes a whole number from 1, not ${text}`);
}
