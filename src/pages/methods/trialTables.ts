import type {BeamTrial} from "../../lib/published/beamTrials.js";
import type {AllowanceTrial} from "../../lib/published/releaseForce.js";
import type {HandbookTrials} from "../../lib/published/handbookTrials.js";
import {decimals, percent} from "../../lib/units.js";
import {dataTable} from "../../components/figure.js";

/** The trials as the site was built with them. */
export function trialsOf(content: unknown): HandbookTrials {
  return content as HandbookTrials;
}

/** What allowances at release do to the handbook's cambers. */
export function allowanceTable(trials: readonly AllowanceTrial[]): HTMLTableElement {
  const table = dataTable({
    columns: ["Allowance", "Set, mean", "worst", "Years, mean", "worst"],
    rows: trials.map(({allowance, erection, longTime}) => [
      percent(allowance),
      ...[erection, longTime].flatMap((spread) => [decimals(spread.meanIn, 3), decimals(spread.worstIn, 2)]),
    ]),
  });
  for (const cell of table.querySelectorAll("th:not(:first-child), td:not(:first-child)")) cell.classList.add("numeric");
  return table;
}

/** What guesses at the handbook's unprinted assumptions do to its loads of beams. */
export function beamTrialsTable(trials: readonly BeamTrial[]): HTMLTableElement {
  const table = dataTable({
    columns: ["Guess", "To the digit", "Least, plf", "Mean", "Most"],
    rows: trials.map((trial) => [trial.words, trial.toTheDigit, decimals(trial.leastPlf, 1), decimals(trial.meanPlf, 1), decimals(trial.mostPlf, 1)]),
  });
  for (const cell of table.querySelectorAll("th:not(:first-child), td:not(:first-child)")) cell.classList.add("numeric");
  return table;
}
