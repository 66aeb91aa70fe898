import {mkdtempSync, rmSync} from "node:fs";
import {availableParallelism, tmpdir} from "node:os";
import {dirname, join} from "node:path";
import {parseArgs} from "node:util";
import {Worker} from "node:worker_threads";
import {build} from "esbuild";
import {readCatalog} from "../../lib/catalog.js";
import {readStudy} from "../../lib/schemes/study.js";
import {UsageError, requireOnce, runCommand} from "./command.js";
import {fromFile} from "./inputFile.js";
import {ParquetWriter} from "./parquet.js";
import {readRawTables} from "./readCatalog.js";
import {studyColumns} from "./studyColumns.js";
import {BLOCK, StudyFolder, blocksOf, type Block} from "./studyPlan.js";
import {shardOf} from "./studyShard.js";
import type {WorkerStart} from "./studyWorker.js";

const USAGE = "usage: npm run -s study -- STUDY.json --out DIR [--shard 3/16] [--workers N] [--block N]";
/** Room of a worker: what it keeps takes less than half of it, and without a limit it would let what it no longer needs pile up. */
const HEAP = {maxOldGenerationSizeMb: 112, maxYoungGenerationSizeMb: 24} as const;
/** How often progress is told, ms. */
const TELL_MS = 2000;

// npm run -s study: all schemes of a study, over all processors, to Parquet files in a folder; a run that was killed goes on where it stopped.
await runCommand(async (words) => {
  const {positionals, values, tokens} = parseArgs({args: words, allowPositionals: true, tokens: true, options: {
    out: {type: "string"}, shard: {type: "string"}, workers: {type: "string"}, block: {type: "string"},
  }});
  requireOnce(tokens);
  const [file] = positionals;
  const {out} = values;
  if (!file || positionals.length > 1 || !out) throw new UsageError(USAGE);
  const shard = shardOf(values.shard, process.env);
  const workers = numberOf("workers", values.workers, availableParallelism(), 256);
  const size = numberOf("block", values.block, BLOCK, 100_000);
  const tables = readRawTables();
  const catalog = readCatalog(tables);
  const {studyText, study} = await fromFile(file, (text) => ({studyText: text, study: readStudy(text, catalog)}));
  const folder = new StudyFolder(out);
  folder.open(studyText, size);
  const blocks = blocksOf(study, shard, size);
  const left = folder.left(blocks);
  const schemes = total(left);
  const started = performance.now();
  const writer = await ParquetWriter.open(studyColumns(study));
  let done = 0;
  const rate = () => (1000 * done) / Math.max(1, performance.now() - started);
  const tell = () => {
    const seconds = done > 0 ? Math.ceil((schemes - done) / rate()) : undefined;
    process.stderr.write(`${done} of ${schemes} schemes${seconds === undefined ? "" : `, ${rate().toFixed(0)} a second, about ${seconds} s left`}\n`);
  };
  const timer = setInterval(tell, TELL_MS);
  try {
    await inParallel(left, Math.min(workers, left.length), {studyText, tables}, async (block) => {
      await writer.write(folder.csvFile(block), folder.parquetFile(block));
      done += block.count;
    }, (block) => folder.csvFile(block));
  } finally {
    clearInterval(timer);
  }
  return `${JSON.stringify({study: study.name, schemes: study.count, shard: `${shard.index}/${shard.of}`, made: done, there_before: total(blocks) - schemes, per_second: Number(rate().toFixed(1)), files: `${out}/*.parquet`})}\n`;
});

function total(blocks: readonly Block[]): number {
  return blocks.reduce((sum, {count}) => sum + count, 0);
}

function numberOf(name: string, text: string | undefined, otherwise: number, most: number): number {
  if (text === undefined) return otherwise;
  const value = Number(text);
  if (Number.isInteger(value) && value >= 1 && value <= most) return value;
  throw new UsageError(`--${name} ${text} is not possible (whole number, 1 to ${most})`);
}

/** Hands blocks to workers, each the next as soon as it is free, and finishes each block as it comes. */
async function inParallel(blocks: readonly Block[], workers: number, start: WorkerStart, finish: (block: Block) => Promise<void>, csvFile: (block: Block) => string): Promise<void> {
  const queue = [...blocks];
  const script = await bundledWorker();
  // One file is written at a time: the writer has one connection.
  let writing = Promise.resolve();
  await Promise.all(Array.from({length: workers}, () => new Promise<void>((resolve, reject) => {
    const worker = new Worker(script, {workerData: start, execArgv: [], resourceLimits: HEAP});
    let block = queue.shift();
    const next = () => {
      if (block) worker.postMessage({block, csvFile: csvFile(block)});
      else void worker.terminate().then(() => resolve(), reject);
    };
    worker.on("error", reject);
    worker.on("message", () => {
      const made = block as Block;
      block = queue.shift();
      next();
      writing = writing.then(() => finish(made));
      writing.catch(reject);
    });
    next();
  })));
  await writing;
  rmSync(dirname(script), {recursive: true, force: true});
}

/** The worker as one plain file: a thread does not read TypeScript by itself. */
async function bundledWorker(): Promise<string> {
  const outfile = join(mkdtempSync(join(tmpdir(), "study-")), "worker.mjs");
  await build({entryPoints: [join(import.meta.dirname, "studyWorker.ts")], outfile, bundle: true, platform: "node", format: "esm", logLevel: "warning"});
  return outfile;
}
