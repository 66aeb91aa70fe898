import type {Catalog} from "../../lib/catalog.js";
import {withValue} from "../../lib/design/edit.js";
import {evaluate, type Evaluation} from "../../lib/evaluate.js";
import {pairText} from "../../lib/pair.js";
import {designedSchemes} from "../../lib/story/schemes.js";
import {decimals, feetAndInches, kipFt} from "../../lib/units.js";
import {checkMark, verdictWord} from "../../components/checks.js";
import {worst} from "../../lib/checks.js";
import {element} from "../../components/dom.js";
import {figureOf} from "../../components/quantity.js";
import {height, inches} from "../../components/shared/part.js";
import {said} from "../../components/shared/said.js";
import {steelWords} from "../../components/shared/pictures.js";
import {untilGuessed} from "../../components/veil.js";

type Beam = Evaluation["edgeBeam"];

/** What the beam of each kind costs, in a sentence. */
export const KIND_COSTS: Readonly<Record<Beam["kind"], string>> = {
  ledge: "A ledge is simple to cast and forgiving to build on. Its price is torsion, because the whole deck bears off to one side of the web, and its own depth below the deck.",
  pockets: "Pockets bring the stems into the web, so torsion is small and nothing projects into the room. Their price is a web wide enough to be cut into, a form for every pocket, and tees that must be set from above.",
  below: "A beam under the deck is the simplest to cast and has no torsion. Its price is its whole depth at the window, where light and view come in.",
};

/** What a beam hung below the deck would cost. */
export function belowSentence(result: Evaluation, catalog: Catalog): string {
  const {edgeBeam, story, design} = result;
  if (edgeBeam.kind === "below") return `All of it hangs below the deck, so the window can reach no higher than ${height(Math.max(0, story.headIn))} above the floor${design.edgeBeam.upstandIn > 0 ? "; the sill is then a separate wall" : ""}.`;
  const [beside, below] = designedSchemes(result, catalog);
  const loweredIn = beside.stack.headIn - below.stack.headIn;
  const such = `A beam that carried the deck on top would have to be ${inches(below.beamDepthIn)} deep, all of it under the deck`;
  if (loweredIn <= 0) return `${such}; here it would still end above the window.`;
  const where = below.stack.headIn > 0 ? `${height(below.stack.headIn)} above the floor instead of ${height(story.headIn)}` : "nowhere above the floor at all";
  return `${such}: the head of the window would be ${where}, ${feetAndInches(loweredIn)} lower, and the view and the ceiling at the window would drop with it.`;
}

/** The three kinds of beam for the same floor, beside each other. */
export function kindsTable({design}: Evaluation, catalog: Catalog): HTMLElement {
  const kinds = [["ledge", "deck on a ledge"], ["pockets", "stems in pockets"], ["below", "deck on its top"]] as const;
  const rows = kinds.map(([kind, words]) => {
    const {edgeBeam, story} = evaluate(withValue(design, "edgeBeam.kind", kind), catalog);
    const verdict = worst(edgeBeam.checks);
    const own = kind === design.edgeBeam.kind;
    return element("tr", {"aria-current": own ? "true" : undefined},
      element("th", {scope: "row"}, own ? element("strong", {}, `${words} (this design)`) : words),
      element("td", {class: "numeric"}, own ? figureOf("beam depth, in", inches(edgeBeam.depthIn)) : untilGuessed("beamDepth", element("span", {}, inches(edgeBeam.depthIn)))),
      element("td", {class: "numeric"}, inches(edgeBeam.belowDeckIn)),
      element("td", {class: "numeric"}, story.headIn <= 0 ? "none" : own ? figureOf("head, in", height(story.headIn)) : height(story.headIn)),
      element("td", {class: "numeric"}, own ? figureOf("beam twist, kip-ft", `${decimals(kipFt(edgeBeam.torsionKipIn))} kip-ft`) : `${decimals(kipFt(edgeBeam.torsionKipIn))} kip-ft`),
      element("td", {class: "numeric"}, own ? figureOf("beam weight, kip", `${decimals(edgeBeam.handling.weightKip)} kip`) : `${decimals(edgeBeam.handling.weightKip)} kip`),
      element("td", {}, checkMark(verdict), ` ${verdictWord(verdict)}`));
  });
  const columns = ["Kind", "Depth", "Below the deck", "Head of the window", "Torsion at the ends", "Weight", "Checks"];
  return element("table", {class: "beam-kinds"},
    element("thead", {}, element("tr", {}, ...columns.map((name, i) => element("th", {scope: "col", class: i > 0 && i < 6 ? "numeric" : undefined}, name)))),
    element("tbody", {}, ...rows));
}

/** How the stems differ from an even load, as a chart's title. */
export function stemFinding(stems: Beam["demand"]["bending"]["stems"]): string {
  if (stems.beam.points.length === 0) return "Planks load the beam evenly";
  const percentOff = (ratio: number) => Math.round(100 * (ratio - 1));
  const [moment, end] = [percentOff(stems.momentRatio), percentOff(stems.reactionRatio)];
  const words = (off: number) => (off === 0 ? "as much as an even load" : `${Math.abs(off)} % ${off > 0 ? "more" : "less"} than an even load`);
  if (moment === 0 && end === 0) return "Stems this close bend the beam as an even load does";
  return moment === end
    ? `Stems bend the beam and load its worse end ${words(moment)}`
    : `Stems bend the beam ${words(moment)}, and load its worse end ${words(end)}`;
}

/** What the stems' places change, in a sentence. */
export function stemSentence({edgeBeam, design, member}: Evaluation): string {
  const {demand} = edgeBeam;
  if (!demand.stemmed) return "Planks sit side by side without gaps, so they load the beam evenly.";
  const fits = Math.abs((design.bay.beamSpanFt / member.widthFt) % 1) < 1e-6;
  const fall = fits
    ? `The beam's span is a whole number of tees, so the stems land in the same places in every bay.`
    : `The beam's span is not a whole number of tees, so the stems land differently in each bay; bay ${demand.end.bay} loads its end most, and it governs.`;
  const off = Math.round(100 * (demand.end.stems.torsionRatio - 1));
  return `${fall} ${off === 0 ? "An even load would twist the ends just as much." : `An even load would twist the worse end ${Math.abs(off)} % ${off > 0 ? "less" : "more"} than these stems do.`}`;
}

/** The steel of the bottom, and whether it suffices. */
export function barSentence({edgeBeam}: Evaluation): string {
  const {bars, barsSuffice, strands, strength, momentKipIn} = edgeBeam;
  const rows = bars.rows.length > 1 ? ` in ${bars.rows.length} rows` : "";
  const enough = strength.designMomentKipIn >= momentKipIn;
  if (strands) {
    const besides = bars.count > 0 ? `, with ${bars.count} ${bars.bar.size} bars added, the fewest that they need` : " and need no added bars";
    return barsSuffice ? `${strands.member.layout.count} strands carry the bending${besides}.` : `${strands.member.layout.count} strands are not enough, even with ${bars.count} ${bars.bar.size} bars added.`;
  }
  if (barsSuffice) return `${bars.count} ${bars.bar.size} bars${rows} in the bottom are the fewest that carry the bending and their share of the torsion.`;
  return `Even ${bars.count} ${bars.bar.size} bars${rows}, the most that help, do not ${enough ? "carry bending and torsion together" : "carry the bending"}: larger bars, a deeper ledge or upstand, or a shorter span are needed.`;
}

/** The beam in service: cracks and sag, or stress and camber. */
export function serviceSentence({edgeBeam}: Evaluation): string {
  const {service} = edgeBeam;
  const counted = pairText(service.countedIn, service.allowedIn, 2);
  const sag = `live load deflects it ${decimals(service.liveIn, 2)} in; the movement that the deflection limit counts is ${counted.asked} of ${counted.given} in`;
  if (service.steel === "bars") {
    const apart = pairText(service.spacingIn, service.greatestSpacingIn, 1);
    return `In service the bars are stressed to ${decimals(service.steelKsi)} ksi and spaced ${apart.asked} in apart, where ${apart.given} in keeps cracks fine; ${sag}.`;
  }
  const soffit = service.total.bottomKsi;
  return `Under full load its soffit is ${soffit >= 0 ? `still in compression at ${decimals(1000 * soffit)} psi` : `in tension at ${decimals(-1000 * soffit)} psi`}; its camber is ${decimals(service.camber.erectionIn, 2)} in at erection, and ${sag}.`;
}

/** How the torsion compares with what may be neglected, and the steel that it requires. */
export function twistSentence({edgeBeam}: Evaluation): string {
  const {torsionKipIn, torsionThresholdKipIn, twist, stirrups} = edgeBeam;
  const times = torsionKipIn / torsionThresholdKipIn;
  if (torsionKipIn === 0) return "Here the pads sit over the middle of the web, and there is no torsion to speak of.";
  if (times <= 1) return "Here the torsion is small enough to neglect.";
  const steel = twist && stirrups
    ? ` It takes closed ${stirrups.bar.size} stirrups ${decimals(stirrups.spacingIn, 1)} in apart at the ends, and ${decimals(twist.design.lengthwiseIn2, 1)} in\u00b2 of longitudinal bars spread around them.`
    : " So much cover leaves no room for the stirrups that it would take.";
  return `Here the torsion is ${decimals(times, 1)} times what may be neglected.${steel}`;
}

/** Whether the slender beam's alternative is open. */
export function slenderSentence({edgeBeam: {twist}}: Evaluation): string {
  if (!twist) return "";
  const {slender} = twist;
  const stopping = slender.limits.find(({verdict}) => verdict === "fails");
  return slender.applies
    ? `This one is ${decimals(slender.aspect, 1)} times as deep as its web is wide and is within the method's limits: ${decimals(slender.uprightIn2PerFt, 2)} in\u00b2 of vertical bars per foot on the inner face, within one depth of each end, would do instead, if both ends are held near top and bottom.`
    : `This one is not within the method's limits: ${stopping ? stopping.message.replace(/\. Design the web with closed stirrups instead\.$/, "").replace(/^./, (first) => first.toLowerCase()).replace(/\.$/, "") : "a limit is exceeded"}. It takes closed stirrups.`;
}

/** The ledge under its loads. */
export function ledgeSentence({edgeBeam}: Evaluation): string {
  const {ledge, demand} = edgeBeam;
  if (!ledge) return edgeBeam.kind === "ledge" ? "This ledge is too thin for two layers of bars, so nothing more about it is computed." : "";
  if (ledge.linePlf !== undefined) return `Planks load the ledge all along its length, ${decimals(ledge.loadKip, 1)} kip per foot; it can carry ${decimals(ledge.linePlf / 1000, 1)}. There is no single stem to punch through it.`;
  const [worstPlace] = [...ledge.punching].sort((a, b) => a.punching.designKip - b.punching.designKip);
  if (!worstPlace) return "";
  const views = worstPlace.punching.views.map((view) => `${view.label.toLowerCase()} ${decimals(view.designKip, 1)}`).join(", ");
  const beamKip = demand.end.stems.stemKip;
  const more = ledge.loadKip > beamKip + 0.05 ? `, more than the ${decimals(beamKip, 1)} kip counted for the beam: the floor of one tee is fully loaded more often than all of the floor on the beam` : "";
  return `Each stem brings ${decimals(ledge.loadKip, 1)} kip${more}. The ledge is weakest ${worstPlace.place === "end" ? "under a stem near the end of the beam" : "where the beam itself is stressed most"}, and there the three methods give, in kips: ${views}. The lowest governs.`;
}

/** What holds the beam's end upright. */
export function uprightSentence({edgeBeam: {twist, demand}}: Evaluation): string {
  if (!twist) return "";
  if (demand.endTorsionKipIn === 0) return "Here nothing rolls the end: bearing alone supports it, and connections only hold it in place.";
  return `At its worse end the beam puts ${decimals(demand.reactionKip)} kip on its support. To balance the deck by that alone, the support would have to be ${decimals(demand.reactionOffsetIn, 1)} in off the middle of the web. It is under the middle, so two connections ${feetAndInches(twist.leverIn)} apart hold the end, each with ${decimals(Math.abs(twist.rotation.topKip), 1)} kip.`;
}

/** The bottom steel in words, for a title. */
export function steelFinding({edgeBeam}: Evaluation): HTMLElement {
  return said`${steelWords(edgeBeam)} carry ${decimals(kipFt(edgeBeam.strength.designMomentKipIn))} kip-ft; the load requires ${figureOf("beam moment, kip-ft", decimals(kipFt(edgeBeam.momentKipIn)))}`;
}
