import {UsageError} from "./command.js";

/** A part of a study: the index-th of so many, from 1. */
export interface Shard {
  readonly index: number;
  readonly of: number;
}

type Environment = Readonly<Record<string, string | undefined>>;

/**
 * The shard that a command is given: `3/16`, or `/16` with the index from the environment: `JOB_COMPLETION_INDEX` of a
 * Kubernetes indexed job (from 0), or `SLURM_ARRAY_TASK_ID` of a Slurm job array, counted from `SLURM_ARRAY_TASK_MIN`.
 * Without a word the whole study is one shard, or in a Slurm job array as many as `SLURM_ARRAY_TASK_COUNT` says.
 *
 * @throws UsageError if the words or the environment make no shard
 */
export function shardOf(words: string | undefined, environment: Environment): Shard {
  const {SLURM_ARRAY_TASK_COUNT: tasks} = environment;
  if (words === undefined) return tasks === undefined ? {index: 1, of: 1} : shard(indexOf(environment), Number(tasks), "SLURM_ARRAY_TASK_COUNT");
  const [, index = "", of = ""] = /^(\d*)\/(\d+)$/.exec(words) ?? [];
  if (of === "") throw new UsageError(`--shard ${words}: write the shard and their number, such as 3/16, or /16 to take the first from the environment`);
  return shard(index === "" ? indexOf(environment) : Number(index), Number(of), "--shard");
}

function shard(index: number, of: number, name: string): Shard {
  if (Number.isInteger(index) && Number.isInteger(of) && index >= 1 && index <= of) return {index, of};
  throw new UsageError(`${name}: shard ${index} of ${of} is not possible (1 to ${of})`);
}

function indexOf({JOB_COMPLETION_INDEX: job, SLURM_ARRAY_TASK_ID: task, SLURM_ARRAY_TASK_MIN: first = "0"}: Environment): number {
  if (job !== undefined) return Number(job) + 1;
  if (task !== undefined) return Number(task) - Number(first) + 1;
  throw new UsageError("--shard: neither JOB_COMPLETION_INDEX nor SLURM_ARRAY_TASK_ID says which shard this is");
}
