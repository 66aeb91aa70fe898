import {SI, toSi} from "../../lib/units.js";
import {dataTable} from "../../components/figure.js";
import {unitText} from "../../components/symbols.js";
import {formatForEquation} from "../../components/worked/numbers.js";

/** What one of each customary unit is in SI. */
export function unitsTable(): HTMLTableElement {
  const rows = Object.keys(SI).map((unit) => {
    const si = toSi(1, unit);
    return [`1 ${unitText(unit)}`, `${formatForEquation(si.value)} ${unitText(si.unit)}`];
  });
  const table = dataTable({columns: ["Customary", "SI"], rows});
  table.dataset["units"] = "as is";
  return table;
}
