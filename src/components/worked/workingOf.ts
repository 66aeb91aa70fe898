import type {WORKINGS} from "../../lib/steps/workings.js";
import type {Working} from "../../lib/step.js";

/** A design's working by name. The workings are many, so a page fetches them when its reader first asks why. */
export async function workingOf<K extends keyof typeof WORKINGS>(name: K, ...of: Parameters<(typeof WORKINGS)[K]>): Promise<Working> {
  const {WORKINGS: workings} = await import("../../lib/steps/workings.js");
  return (workings[name] as (...given: typeof of) => Working)(...of);
}
