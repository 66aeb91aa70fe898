import type {Catalog} from "../../lib/catalog.js";
import type {Check} from "../../lib/checks.js";
import {edgeBeamTakes, type BeamTake} from "../../lib/edgeBeam/takes.js";
import {valueAt} from "../../lib/design/plain.js";
import type {Evaluation} from "../../lib/evaluate.js";
import {decimals} from "../../lib/units.js";
import {button} from "../../components/controls.js";
import {element} from "../../components/dom.js";
import type {DesignStore} from "../../components/store.js";
import {inches} from "../../components/shared/part.js";
import {untilGuessed} from "../../components/veil.js";

/** Answers to "what would it take" of the edge beam, each with a button that puts it into the design. */
export interface BeamTakesPanel {
  readonly node: HTMLElement;
  show(result: Evaluation): void;
}

/** The least ledge, web and steel of the edge beam, each with all else kept. */
export function beamTakesPanel(store: DesignStore, catalog: Catalog): BeamTakesPanel {
  const body = element("tbody", {});
  const table = element("table", {class: "takes"},
    element("thead", {}, element("tr", {}, ...["All else unchanged", "It takes", "What governs then", ""].map((words) => element("th", {scope: "col"}, words)))), body);
  return {
    node: element("div", {class: "scrolls", role: "region", tabindex: 0, "aria-label": "What the edge beam would take"}, table),
    show: (result) => {
      const {design, laid, loads} = result;
      const takes = edgeBeamTakes(design, catalog, laid, loads);
      const row = (asks: string, take: BeamTake | undefined, answer: (take: BeamTake) => string) => {
        const same = take && Object.entries(take.changes).every(([path, value]) => valueAt(design, path) === value);
        const put = take && !same ? button("Put it in", () => store.setMany(take.changes), {quiet: true, name: `Put it in the design: ${asks}`}) : same ? "as it is" : "";
        return element("tr", {}, element("th", {scope: "row"}, asks), element("td", {}, !take ? "nothing within reach" : "edgeBeam.ledgeDepthIn" in take.changes ? untilGuessed("beamDepth", element("span", {}, answer(take))) : answer(take)), element("td", {"data-name": "then governs:"}, take ? stops(take) : ""), element("td", {class: "no-print"}, put));
      };
      body.replaceChildren(
        ...(design.edgeBeam.kind === "ledge"
          ? [row("Least ledge depth", takes.ledgeDepth, ({changes, beam}) => `${inches(changes["edgeBeam.ledgeDepthIn"] as number)}; the beam is then ${inches(beam.depthIn)} deep`)] : []),
        row("Least web width", takes.webWidth, ({changes, beam}) => `${inches(changes["edgeBeam.webWidthIn"] as number)}, and ${decimals(beam.handling.weightKip)} kip to lift`),
        design.edgeBeam.steel === "bars"
          ? row("Fewest bottom bars", takes.bars, ({beam: {bars}}) => `${bars.count} ${bars.bar.size}: ${decimals(bars.areaIn2, 2)} in\u00b2`)
          : row("Fewest strands, without bars", takes.strands, ({changes}) => `${decimals(changes["edgeBeam.strands"] as number)} strands`),
      );
    },
  };
}

function stops({governs, breaks}: BeamTake): string {
  const small = ({label}: Check) => label.charAt(0).toLowerCase() + label.slice(1);
  return breaks.length === 0 ? small(governs) : `${small(governs)}; but ${breaks.map(small).join(" and ")} then ${breaks.length > 1 ? "fail" : "fails"}`;
}
