import {createHash} from "node:crypto";
import {existsSync, mkdirSync, readFileSync, readdirSync, renameSync, rmSync, writeFileSync} from "node:fs";
import {join} from "node:path";
import type {Study} from "../../lib/schemes/study.js";
import {VERSION} from "../../lib/version.js";
import {UsageError} from "./command.js";
import type {Shard} from "./studyShard.js";

/** Schemes that go to one file together. */
export const BLOCK = 1000;

/** A stretch of a study's schemes that is made and written as one. */
export interface Block {
  readonly number: number;
  readonly first: number;
  readonly count: number;
}

/** The blocks of one shard of a study: every so many-th, so that shards are alike in size and in what they hold. */
export function blocksOf({count}: Pick<Study, "count">, {index, of}: Shard, size = BLOCK): Block[] {
  const blocks: Block[] = [];
  for (let number = index - 1; number * size < count; number += of) blocks.push({number, first: number * size, count: Math.min(size, count - number * size)});
  return blocks;
}

/** The folder of a study's files: what is done stays, what a killed run left unfinished goes. */
export class StudyFolder {
  constructor(private readonly folder: string) {}

  /**
   * Makes the folder for a study, or takes one up that the same study began.
   *
   * @throws UsageError if another study, or another version of the kit, has files there
   */
  open(studyText: string, size: number): void {
    mkdirSync(this.folder, {recursive: true});
    const plan = JSON.stringify({study: createHash("sha256").update(studyText).digest("hex"), kit: VERSION, block: size});
    const file = join(this.folder, "plan.json");
    if (existsSync(file)) {
      if (readFileSync(file, "utf8").trim() === plan) return;
      throw new UsageError(`${this.folder}: holds the files of another study, of other blocks or of another version of the kit; choose another folder`);
    }
    // Two shards may begin at once: each writes the same.
    const own = `${file}.${process.pid}`;
    writeFileSync(own, `${plan}\n`);
    renameSync(own, file);
  }

  parquetFile({number}: Pick<Block, "number">): string {
    return join(this.folder, `part-${String(number).padStart(6, "0")}.parquet`);
  }

  csvFile(block: Pick<Block, "number">): string {
    return this.parquetFile(block).replace(/parquet$/, "csv");
  }

  /** Those of some blocks that are not written yet; what was left of them is removed. */
  left(blocks: readonly Block[]): Block[] {
    const there = new Set(readdirSync(this.folder));
    const name = (file: string) => file.slice(this.folder.length + 1);
    return blocks.filter((block) => {
      const done = there.has(name(this.parquetFile(block)));
      for (const file of [this.csvFile(block), `${this.csvFile(block)}.unfinished`, `${this.parquetFile(block)}.unfinished`]) rmSync(file, {force: true});
      return !done;
    });
  }
}
