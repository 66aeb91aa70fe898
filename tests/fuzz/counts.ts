import {someNumber, type Outcome} from "./results.js";

/**
 * What comes in whole pieces or in steps, by the name it has in the results: where one of these changes, what rests on
 * it may jump.
 *
 * - strands, bars and how many lie in each row, legs of stirrups and their spacing in steps of an inch;
 * - pieces of deck, stems on a beam, ducts;
 * - sizes that go up in steps: a column's side, a corbel's depth and bearing, a footing's side and depth, a beam's depth.
 */
const COUNTS = /\.(count|bars|legs|pieces|stems|strands|perRow|perFloor|mains|branches|sideIn|depthIn|bearingLengthIn|thicknessIn|spacingIn|rows\.\d+)$/;
/** Checks that compare whole numbers. */
const COUNTING = /strands$/;
/** Steps are quarters of an inch at the least; a value between them is continuous, whatever it is called. */
const STEP = 0.25;

/**
 * All counts of a design's results as one text, with the sizes of the columns' bars, what a check counts, and which
 * columns are slender: from that limit on the code enlarges their moments, and from its least moment (ACI 318-19 6.2.5.1, 6.6.4.5.4).
 */
export function countsOf({evaluation, columns, checks}: Extract<Outcome, {kind: "results"}>): string {
  const {design: _given, ...results} = evaluation;
  const counts: string[] = [];
  someNumber({results, columns}, (path, value) => {
    if (Number.isInteger(value / STEP) && COUNTS.test(path)) counts.push(`${path}=${value}`);
    return false;
  });
  for (const {id, demand, capacity} of checks) if (COUNTING.test(id)) counts.push(`${id}: ${demand} of ${capacity}`);
  for (const {position, column} of columns.columns) {
    counts.push(`${position}: ${column.section.bar.size} ${column.section.ties.size} ${column.stories.map(({along, across}) => `${along.slenderness.slender} ${across.slenderness.slender}`).join()}`);
  }
  return counts.join(" ");
}
