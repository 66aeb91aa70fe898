import {caseOf, designOf, type Case} from "./designs.js";
import {faultOf, type Fault} from "./laws.js";
import {outcomeOf} from "./results.js";
import {shrunk} from "./shrink.js";

/** One way in which a law is broken, as it was first met. */
export interface Found {
  readonly fault: Fault;
  readonly least: Case;
  /** Of the first case that showed it. */
  readonly seed: number;
  times: number;
}

/** How often progress is reported. */
const PROGRESS = 1000;

/** Runs the cases of the seeds from one on; each way of breaking a law is shrunk and told once. */
export function run(cases: number, seed: number, {tell, progress}: {tell?: (found: Found) => void; progress?: (done: number) => void} = {}): {readonly found: readonly Found[]; readonly refused: number} {
  const found = new Map<string, Found>();
  let refused = 0;
  for (let i = 0; i < cases; i++) {
    const one = caseOf(seed + i);
    const design = designOf(one);
    const outcome = outcomeOf(design);
    const fault = faultOf(design, one, outcome);
    if (fault) {
      const key = `${fault.kind} ${fault.where}`;
      const known = found.get(key);
      if (known) known.times += 1;
      else {
        const first: Found = {...shrunk(one, fault), seed: seed + i, times: 1};
        found.set(key, first);
        tell?.(first);
      }
    } else if (outcome.kind === "refusal") refused += 1;
    if ((i + 1) % PROGRESS === 0) progress?.(i + 1);
  }
  return {found: [...found.values()].sort((a, b) => b.times - a.times), refused};
}
