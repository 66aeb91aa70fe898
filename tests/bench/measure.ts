/** One line of the table: what was measured, how fast, and the goal where there is one. */
export interface Line {
  readonly what: string;
  readonly value: string;
  readonly goal?: string;
  readonly note?: string;
}

/** The share's value of sorted numbers: 0.5 is the median. */
function percentile(sorted: readonly number[], share: number): number {
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? NaN;
}

/** Median and 95th percentile of times, ms. */
export function spread(timesMs: readonly number[]): {medianMs: number; p95Ms: number} {
  const sorted = [...timesMs].sort((a, b) => a - b);
  return {medianMs: percentile(sorted, 0.5), p95Ms: percentile(sorted, 0.95)};
}

/** Times of many runs, ms, after some that warm up. */
export function timesMs(work: () => void, runs: number, warmUp = Math.ceil(runs / 5)): number[] {
  for (let i = 0; i < warmUp; i++) work();
  return Array.from({length: runs}, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  });
}

/** Runs of a piece of work per second: the median of several batches. */
export function perSecond(work: (index: number) => void, count: number, batches = 9): number {
  for (let i = 0; i < count; i++) work(i);
  const rates = Array.from({length: batches}, () => {
    const start = performance.now();
    for (let i = 0; i < count; i++) work(i);
    return (1000 * count) / (performance.now() - start);
  });
  return rates.sort((a, b) => a - b)[batches >> 1] as number;
}

/** The lines as a table of plain text. */
export function table(title: string, lines: readonly Line[]): string {
  const rows = [["measured", "value", "goal", "note"], ...lines.map((line) => [line.what, line.value, line.goal ?? "", line.note ?? ""])];
  const widths = [0, 1, 2, 3].map((column) => Math.max(...rows.map((row) => (row[column] as string).length)));
  const text = rows.map((row) => row.map((cell, i) => (i === 1 ? cell.padStart(widths[i] as number) : cell.padEnd(widths[i] as number))).join("  ").trimEnd());
  text.splice(1, 0, widths.map((width) => "-".repeat(width)).join("  "));
  return `${title}\n\n${text.join("\n")}\n`;
}

export const ms = (value: number): string => `${value.toFixed(value < 10 ? 2 : 1)} ms`;
export const seconds = (valueMs: number): string => `${(valueMs / 1000).toFixed(3)} s`;
export const whole = (value: number): string => Math.round(value).toLocaleString("en-US");
