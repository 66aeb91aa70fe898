import {GATES, LIMITS, limitNamed, type LimitName} from "../../lib/deck/limits.js";
import type {Design} from "../../lib/design/design.js";
import type {Evaluation} from "../../lib/evaluate.js";
import {limitCurvesChart} from "./limitCurves.js";
import {follow} from "../../components/controls/follow.js";
import {element} from "../../components/dom.js";
import {figure} from "../../components/figure.js";
import type {DesignStore} from "../../components/store.js";
import {untilGuessed} from "../../components/veil.js";
import {limitSwitches} from "../../components/tables/limitSwitches.js";
import {capital, limitCurvesOf, limitFinding, limitPicture, limitTable, limitsAbove} from "./limitPicture.js";

/** The chart of all limits, and the switches beside it. Both stay as they are while the design changes. */
export interface LimitExplorer {
  readonly chart: HTMLElement;
  readonly switches: HTMLElement;
}

const HINT = "Point at a limit, or move to it with the keyboard, and it says what question it asks.";

/** What the limits are and which of them decides, learned by switching them. Switches belong to the page, not to the design. */
export function limitExplorer(store: DesignStore, evaluated: (design: Design) => Evaluation, widthPx: number): LimitExplorer {
  const curvesOf = limitCurvesOf();
  const own = new Map<LimitName, boolean>();
  let notAsked: readonly LimitName[] = [];
  const switches = limitSwitches((left) => words(left, notAsked));
  const asks = element("p", {class: "limit-asks", "aria-live": "polite"}, HINT);
  const chart = element("div", {});
  let rules = "";
  const draw = (design: Design) => {
    const result = evaluated(design);
    const {criteria} = result.deck;
    const key = JSON.stringify([criteria.limits, criteria.walking, criteria.tensionClass, criteria.fire?.hours, result.member.topping !== undefined]);
    if (key !== rules) {
      rules = key;
      notAsked = LIMITS.filter((name) => !criteria.limits.includes(name) && !GATES.includes(name));
      // "Camber" asks nothing until it is wanted, and yet it can be looked at; what does not exist here cannot.
      const nothing = LIMITS.filter((name) => limitNamed(name).applies?.(result.member, criteria) === false);
      switches.set(LIMITS.filter((name) => own.get(name) ?? !notAsked.includes(name)), criteria, nothing);
    }
    const picture = limitPicture(result, curvesOf(result), switches.chosen());
    const open = chart.querySelector("details")?.open === true;
    chart.replaceChildren(untilGuessed("halfSpan", figure(limitCurvesChart(picture, widthPx), {
      title: limitFinding(picture),
      caption: `One line for each limit, with its letter; that limit alone would allow load up to its line. The broad band follows the lowest of those switched on, and each name shows how far its limit reaches under this floor\u2019s load.${limitsAbove(picture)}`,
      table: limitTable(picture),
    })));
    const details = chart.querySelector("details");
    if (details) details.open = open;
  };
  switches.node.addEventListener("change", () => {
    const chosen = switches.chosen();
    for (const name of LIMITS) own.set(name, chosen.includes(name));
    draw(store.get());
  });
  const tell = (event: Event) => {
    const label = event.target instanceof Element ? event.target.closest(".tick") : null;
    const index = label ? [...switches.node.querySelectorAll(".tick")].indexOf(label) : -1;
    const name = LIMITS[index];
    if (name) asks.textContent = `${capital(name)}: ${limitNamed(name).asks}`;
  };
  switches.node.addEventListener("pointerover", tell);
  switches.node.addEventListener("focusin", tell);
  follow(store, chart, draw);
  return {chart, switches: element("fieldset", {class: "choice-group limit-choices"}, element("legend", {}, "Limits that count in the picture"), asks, switches.node)};
}

/** What is left out, and that it counts all the same. */
function words(left: readonly LimitName[], notAsked: readonly LimitName[]): string {
  const missing = left.filter((name) => !notAsked.includes(name));
  const free = left.filter((name) => notAsked.includes(name));
  const first = missing.length === 0
    ? "Nothing that this floor requires is left out."
    : `Left out in this picture: ${missing.join(", ")}. A real floor has to meet them all; the checks below still count them.`;
  return free.length === 0 ? first : `${first} Not required here: ${free.join(", ")}.`;
}
