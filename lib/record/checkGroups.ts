import type {Check} from "../checks.js";
import type {CheckGroup, CheckRow} from "./parts.js";

/** The checks of one part as a table of one column; none where there are none. */
export function checksOf(title: string, checks: readonly Check[]): CheckGroup[] {
  return groupOf(title, [], checks.map((check) => ({label: bare(title, check.label), clause: check.clause, cells: [check]})));
}

/**
 * The same checks of several parts side by side: those of one name stand in one row, so that a grid's columns take one
 * table and not one each. Labels and names begin with the part's name and a colon, which the table's heads say.
 */
export function checksBeside(title: string, parts: readonly {readonly name: string; readonly checks: readonly Check[]}[]): CheckGroup[] {
  const rows = new Map<string, {label: string; clauses: Set<string>; cells: (Check | "none")[]}>();
  parts.forEach(({name, checks}, column) => {
    for (const check of checks) {
      const label = bare(name, check.label);
      const key = `${label} ${check.unit}`;
      const row = rows.get(key) ?? {label, clauses: new Set(), cells: parts.map(() => "none" as const)};
      rows.set(key, row);
      row.clauses.add(check.clause);
      row.cells[column] = check;
    }
  });
  return groupOf(title, parts.map(({name}) => name), [...rows.values()].map(({label, clauses, cells}) => ({label, clause: [...clauses].join("; "), cells})));
}

function groupOf(title: string, parts: readonly string[], rows: readonly CheckRow[]): CheckGroup[] {
  if (rows.length === 0) return [];
  return [{title, parts, rows, noted: checksIn(rows).filter(({verdict, word}) => verdict === "near" && word !== undefined)}];
}

/** Every check of a table, row by row. */
export function checksIn(rows: readonly CheckRow[]): Check[] {
  return rows.flatMap(({cells}) => cells.filter((check) => check !== "none"));
}

/** How the checks of a table end: "all 29 hold", "27 of 29 hold, 2 near the limit". */
export function outcome({rows}: CheckGroup): string {
  const checks = checksIn(rows);
  const count = (which: Check["verdict"]) => checks.filter(({verdict}) => verdict === which).length;
  const [fail, beyond, near] = [count("fails"), count("out of range"), count("near")];
  if (fail + beyond + near === 0) return checks.length === 1 ? "it holds" : `all ${checks.length} hold`;
  return [`${checks.length - fail - beyond - near} of ${checks.length} hold`, fail && `${fail} fail${fail === 1 ? "s" : ""}`, beyond && `${beyond} out of range`, near && `${near} near the limit or with a note`]
    .filter(Boolean).join(", ");
}

/** A label without the name of the part that its table is about. */
function bare(part: string, label: string): string {
  const prefix = `${part}: `;
  if (!label.toLowerCase().startsWith(prefix.toLowerCase())) return label;
  const rest = label.slice(prefix.length);
  return rest.charAt(0).toUpperCase() + rest.slice(1);
}
