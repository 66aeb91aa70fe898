import {feetText} from "../../lib/units.js";
import {rowOf, type Pupil} from "./classData.js";

/** What the class chose, in a sentence or two. */
export function classSentence(pupils: readonly Pupil[]): string {
  const [first] = pupils;
  if (!first) return "Drop your class\u2019s design files here and see, in one table, what each student chose, what fails, and who gave reasons.";
  const spans = pupils.map(({design}) => design.bay.spanFt);
  const [least, most] = [Math.min(...spans), Math.max(...spans)];
  const rows = pupils.flatMap((pupil) => rowOf(pupil) ?? []);
  const failing = rows.filter(({fails}) => fails.length > 0).length;
  const reasoned = rows.filter(({count}) => count.none === 0 && count.earlier === 0).length;
  const many = pupils.length === 1 ? "One design" : `${pupils.length} designs`;
  const spread = least === most ? `with a span of ${feetText(least)}` : `with spans from ${feetText(least)} to ${feetText(most)}`;
  const rest = rows.length < pupils.length ? "" : ` ${failing === 0 ? "None fails a check" : `${failing} ${failing === 1 ? "fails" : "fail"} a check`}; ${reasoned === 0 ? "none has" : reasoned === 1 ? "one has" : `${reasoned} have`} a standing reason for every decision.`;
  return `${many} ${spread}.${rest}`;
}
