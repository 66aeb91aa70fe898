import type {Design} from "../../lib/design/design.js";
import type {Evaluation} from "../../lib/evaluate.js";
import type {DesignDaylight} from "../../lib/daylight/designDaylight.js";
import {placedStrands} from "../../lib/prestress/layout.js";
import {factorChart} from "../../components/charts/daylight.js";
import {bayPlan} from "../../components/drawings/bayPlan.js";
import {beamSection} from "../../components/drawings/beamSection.js";
import {crossSection} from "../../components/drawings/crossSection.js";
import {girderSection} from "../../components/drawings/girderSection.js";
import {storySection} from "../../components/drawings/storySection.js";
import {toppingProfile} from "../../components/drawings/toppingProfile.js";
import {girderPicture} from "../../components/shared/girderParts.js";
import {beamPicture, planPicture, storyPicture} from "../../components/shared/pictures.js";

/** Daylight over the depth of the floor, as one picture. */
function factorSketch({input, result}: DesignDaylight, widthPx: number): SVGSVGElement | undefined {
  const chart = factorChart(result, input.depthFt, input.opposite !== undefined, Math.min(widthPx, 560));
  chart.setAttribute("role", "img");
  chart.setAttribute("aria-label", "Daylight factor over the depth of the floor");
  for (const group of chart.querySelectorAll("g[aria-label]")) group.removeAttribute("aria-label");
  return chart instanceof SVGSVGElement ? chart : undefined;
}

/** Height of a drawing, so that its letters stay legible where paper gives it no more, px. */
const MOST_HEIGHT_PX = 280;

/** The small drawing that belongs to a decision, if one does. */
export function recordDrawing(id: keyof Design["reasons"], result: Evaluation, widthPx: number): SVGSVGElement | undefined {
  const {member, topping, design} = result;
  switch (id) {
    case "loads":
      return bayPlan({...planPicture(result), widthPx, mostHeightPx: MOST_HEIGHT_PX});
    case "deck":
      return crossSection({
        shape: member.shape, strands: placedStrands(member.shape, member.layout, 0.5), toppingIn: design.deck.toppingIn, widthPx, mostHeightPx: MOST_HEIGHT_PX,
        strandsEnd: member.layout.profile === "straight" ? undefined : placedStrands(member.shape, member.layout, 0),
      });
    case "topping":
      return topping && toppingProfile({
        spanFt: design.bay.spanFt, minimumIn: topping.leastIn, endIn: topping.points[0]?.thicknessIn ?? topping.leastIn, followShare: design.topping.followShare, widthPx,
        points: topping.points.map(({share, riseIn, thicknessIn}) => ({share, soffitRiseIn: riseIn, thicknessIn})),
      });
    case "edgeBeam":
      return beamSection({...beamPicture(result), widthPx, mostHeightPx: MOST_HEIGHT_PX});
    case "frame":
      return result.girder && girderSection({...girderPicture(result, result.girder), widthPx, mostHeightPx: MOST_HEIGHT_PX});
    case "light":
      return result.daylight && factorSketch(result.daylight, widthPx);
    case "story":
      return storySection({...storyPicture(result), widthPx, mostHeightPx: MOST_HEIGHT_PX});
    default:
      return undefined;
  }
}
