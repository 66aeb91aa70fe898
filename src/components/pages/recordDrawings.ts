import type {Design} from "../../lib/design/design.js";
import type {Evaluation} from "../../lib/evaluate.js";
import {placedStrands} from "../../lib/prestress/layout.js";
import {bayPlan} from "../drawings/bayPlan.js";
import {beamSection} from "../drawings/beamSection.js";
import {crossSection} from "../drawings/crossSection.js";
import {girderSection} from "../drawings/girderSection.js";
import {storeySection} from "../drawings/storeySection.js";
import {toppingProfile} from "../drawings/toppingProfile.js";
import {girderPicture} from "./girderParts.js";
import {beamPicture, planPicture, storeyPicture} from "./pictures.js";

/** The small drawing that belongs to a decision, if one does. */
export function recordDrawing(id: keyof Design["reasons"], result: Evaluation, widthPx: number): SVGSVGElement | undefined {
  const {member, topping, design} = result;
  switch (id) {
    case "loads":
      return bayPlan({...planPicture(result), widthPx, mostHeightPx: 330});
    case "deck":
      return crossSection({
        shape: member.shape, strands: placedStrands(member.shape, member.layout, 0.5), toppingIn: design.deck.toppingIn, widthPx, mostHeightPx: 300,
        strandsEnd: member.layout.profile === "straight" ? undefined : placedStrands(member.shape, member.layout, 0),
      });
    case "topping":
      return topping && toppingProfile({
        spanFt: design.bay.spanFt, minimumIn: topping.leastIn, endIn: topping.points[0]?.thicknessIn ?? topping.leastIn, followShare: design.topping.followShare, widthPx,
        points: topping.points.map(({share, riseIn, thicknessIn}) => ({share, soffitRiseIn: riseIn, thicknessIn})),
      });
    case "edgeBeam":
      return beamSection({...beamPicture(result), widthPx, mostHeightPx: 380});
    case "frame":
      return result.girder && girderSection({...girderPicture(result, result.girder), widthPx, mostHeightPx: 380});
    case "storey":
      return storeySection({...storeyPicture(result), widthPx, mostHeightPx: 380});
    default:
      return undefined;
  }
}
