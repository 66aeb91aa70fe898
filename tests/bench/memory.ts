import type {SafeLoad} from "../../lib/deck/safeLoad.js";
import {HANDBOOK, MEMBER_SPANS} from "./mix.js";
import {evaluateOne, mixMembers} from "./mixMembers.js";

/** Memory and time of a process in which a hundred thousand results are made and kept. */
export interface KeptResults {
  readonly mostMib: number;
  readonly beforeMib: number;
  readonly firstMs: number;
  readonly count: number;
}

// Prints them as JSON; run by the benchmark.
const members = mixMembers().map(({member}) => member);
const beforeMib = process.memoryUsage().rss / 2 ** 20;
const start = performance.now();
const results: SafeLoad[] = [];
for (let i = 0; i < MEMBER_SPANS; i++) results.push(evaluateOne(members, HANDBOOK, i));
const firstMs = performance.now() - start;
const kept: KeptResults = {mostMib: process.resourceUsage().maxRSS / 2 ** 10, beforeMib, firstMs, count: results.length};
console.log(JSON.stringify(kept));
