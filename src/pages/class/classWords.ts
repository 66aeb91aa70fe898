import {feetText} from "../../lib/units.js";
import {rowOf, type Student} from "./classData.js";

/** What the class chose, in a sentence or two. */
export function classSentence(students: readonly Student[]): string {
  const [first] = students;
  if (!first) return "Drop your class\u2019s design files here and see, in one table, what each student chose, what fails, and who gave reasons.";
  const spans = students.map(({design}) => design.bay.spanFt);
  const [least, most] = [Math.min(...spans), Math.max(...spans)];
  const rows = students.flatMap((student) => rowOf(student) ?? []);
  const failing = rows.filter(({fails}) => fails.length > 0).length;
  const reasoned = rows.filter(({count}) => count.none === 0 && count.earlier === 0).length;
  const many = students.length === 1 ? "One design" : `${students.length} designs`;
  const spread = least === most ? `with a span of ${feetText(least)}` : `with spans from ${feetText(least)} to ${feetText(most)}`;
  const rest = rows.length < students.length ? "" : ` ${failing === 0 ? "None fails a check" : `${failing} ${failing === 1 ? "fails" : "fail"} a check`}; ${reasoned === 0 ? "none has" : reasoned === 1 ? "one has" : `${reasoned} have`} a standing reason for every decision.`;
  return `${many} ${spread}.${rest}`;
}
