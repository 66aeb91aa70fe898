import type {Move} from "./way.js";

/** A remedy as a failed check words it, and what a reader who follows those words changes. */
export interface Remedy {
  /** Found in the check's message. */
  readonly says: RegExp;
  /** Undefined where a design has no field for it: then why. */
  readonly move: Move | undefined;
  readonly outside?: string;
}

/** Remedies by the check whose failure names them. */
export type Remedies = Readonly<Record<string, readonly Remedy[]>>;

export const remedy = (says: RegExp, move: Move): Remedy => ({says, move});
/** A remedy that is no field of a design, and why it is named all the same. */
export const outside = (says: RegExp, why: string): Remedy => ({says, move: undefined, outside: why});
