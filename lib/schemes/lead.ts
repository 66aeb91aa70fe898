import {failsOf, groups, isMade, valueOf, type SchemeRow} from "./schemeRow.js";

/** Of the schemes of one span the one that leads: the fewest failed checks, then the least embodied carbon. */
export function leadOf(rows: readonly SchemeRow[]): SchemeRow | undefined {
  const made = rows.filter(isMade);
  const rank = (row: SchemeRow) => [failsOf(row).length, valueOf(row, "carbonKgPerFt2") ?? valueOf(row, "carbonWithoutColumnsKgPerFt2") ?? Infinity, row.index] as const;
  return made.sort((a, b) => {
    const [x, y] = [rank(a), rank(b)];
    return x[0] - y[0] || (x[1] === y[1] ? 0 : x[1] - y[1]) || x[2] - y[2];
  })[0];
}

/** The leading scheme of every span that has one, narrowest first. */
export function leadsOf(rows: readonly SchemeRow[]): SchemeRow[] {
  const spans = groups(rows, ({span_ft}) => span_ft);
  return [...spans.values()].flatMap((list) => leadOf(list) ?? []).sort((a, b) => a.span_ft - b.span_ft);
}
