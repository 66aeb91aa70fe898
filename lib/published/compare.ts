/** How a published value came to be known. */
export const CONFIDENCES = ["seen in text", "worked out", "from memory"] as const;
export type Confidence = (typeof CONFIDENCES)[number];

/** What stands beside every published value: how near ours should come, and where it is from. */
export interface Citation {
  /** Greatest difference that counts as agreement, in the value's unit. */
  readonly tolerance: number;
  /** Whether a test asserts it; where not, `note` says why. */
  readonly asserted: boolean;
  readonly source: string;
  readonly confidence: Confidence;
  readonly note: string;
}

/** A published value beside ours. */
export interface Comparison extends Citation {
  /** Where it belongs: a page of a handbook, or a subject. */
  readonly group: string;
  readonly quantity: string;
  readonly unit: string;
  readonly published: number;
  readonly ours: number;
  /** Ours less published. */
  readonly difference: number;
  readonly within: boolean;
}

/** Room for binary fractions, as a share of the value: "exact" means this. */
const ROUNDING = 1e-9;

/** Puts a published value and ours side by side. */
export function compare(
  what: Pick<Comparison, "group" | "quantity" | "unit" | "published">, ours: number, citation: Citation,
): Comparison {
  const {tolerance, asserted, source, confidence, note} = citation;
  const difference = ours - what.published;
  return {
    ...what, ours, difference, tolerance, asserted, source, confidence, note,
    within: Math.abs(difference) <= tolerance + ROUNDING * Math.abs(what.published),
  };
}
