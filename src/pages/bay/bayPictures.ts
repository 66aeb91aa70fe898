import type {Evaluation} from "../../lib/evaluate.js";
import {valueOf, type SchemeRow} from "../../lib/schemes/schemeRow.js";
import {feetText} from "../../lib/units.js";
import {bayPlan} from "../../components/drawings/bayPlan.js";
import {storySection} from "../../components/drawings/storySection.js";
import {element} from "../../components/dom.js";
import {figure} from "../../components/figure.js";
import {acrossSection} from "../../components/shared/acrossSection.js";
import {planPicture, storyPicture} from "../../components/shared/pictures.js";

/** Width from which plan and story stand beside each other, and the gap between them, px. */
const PAIR_FROM_PX = 900;
const GAP_PX = 24;
const LEAST_PX = 240;

/** A scheme as section across the building, plan, and story at its edge, true to scale. */
export function bayPictures(result: Evaluation, row: SchemeRow, widthPx: number): HTMLElement {
  const {parking} = result.design;
  const modules = Math.max(0, Math.round(valueOf(row, "parkingModules") ?? 0));
  const each = Math.max(LEAST_PX, widthPx >= PAIR_FROM_PX ? Math.floor((widthPx - GAP_PX) / 2) : widthPx);
  return element("div", {},
    figure(acrossSection(result, {modules, stallLengthIn: parking.stallLengthIn, aisleIn: parking.aisleIn}, Math.max(LEAST_PX, widthPx)), {wide: true, title: `${row.deck} over ${feetText(row.span_ft)}, beams of ${feetText(row.beam_span_ft)}`, caption: "The whole width, true to scale: the daylight on the floor by its class, and below it a level of cars as far as a module fits."}),
    element("div", {class: "scheme-pair"},
      figure(bayPlan({...planPicture(result), widthPx: each}), {title: "The plan", caption: "Columns, beams and the joints of the deck, true to scale."}),
      figure(storySection({...storyPicture(result), own: false, widthPx: each, mostHeightPx: 420}), {title: "The story at its edge", caption: "A cut through the edge of the building, true to scale."})));
}
