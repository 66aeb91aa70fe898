import {UNANSWERED, type PartAnswer} from "../../lib/practice/answerFile.js";

/** What stands of one part: what is typed or chosen now, and what was checked before. */
export interface PartState extends PartAnswer {
  readonly standing: string;
}

/** Nothing answered yet. */
export const BLANK: PartState = {...UNANSWERED, standing: ""};

/** The part as a file has it: what stands counts as the last try, checked or not. */
export function answerOf({standing, tries, hints, shown}: PartState): PartAnswer {
  return {tries: standing === "" || standing === tries.at(-1) ? tries : [...tries, standing], hints, shown};
}

/** Whether anything stands or was tried. */
export function isAnswered(state: PartState): boolean {
  return state.standing !== "" || state.tries.length > 0;
}

/** Whether plain data is what stands of one part. */
export function isPartState(value: unknown): value is PartState {
  if (typeof value !== "object" || value === null) return false;
  const {standing, tries, hints, shown} = value as Record<string, unknown>;
  return typeof standing === "string" && Array.isArray(tries) && tries.every((text) => typeof text === "string") && Number.isInteger(hints) && typeof shown === "boolean";
}
