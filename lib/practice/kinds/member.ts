import type {Catalog} from "../../catalog.js";
import {strandOf} from "../../deck/deckMember.js";
import {simpleSpanMomentKipIn} from "../../beams/statics.js";
import {allowables} from "../../member/allowables.js";
import {developmentOf} from "../../member/development.js";
import {prestressState} from "../../member/prestressState.js";
import {fiberStresses} from "../../member/stress.js";
import {JACKING_STRESS_KSI} from "../../prestress/losses.js";
import {parsePattern} from "../../prestress/pattern.js";
import {given, type Working} from "../../step.js";
import {lossesWorking} from "../../steps/prestress.js";
import {kipFt} from "../../units.js";
import type {Draw} from "../draw.js";
import type {Content, Earlier, Kind} from "../item.js";
import {oneStep} from "../keys.js";
import {choicePart, numberAt, numberPart, slip} from "../parts.js";
import {measure, prose} from "../prose.js";
import {article, catalogMember, sectionOf, stated, teeOnSpan} from "./ground.js";

/** What is left of the pull after all losses. */
function lossShare(draw: Draw, catalog: Catalog): Content {
  const {row, pattern, spanFt, toppingIn, member} = teeOnSpan(draw, catalog, "field-topped");
  const {losses, effectiveForceKip} = prestressState(member, spanFt, 0.5, 15 * member.widthFt);
  const parts = [["elastic shortening", losses.elasticKsi], ["creep", losses.creepKsi], ["shrinkage", losses.shrinkageKsi], ["relaxation", losses.relaxationKsi]] as const;
  const {areaIn2} = member.layout;
  return {
    question: [
      prose`The strands of ${article(row.designation)} ${row.designation}, pattern ${pattern}, ${measure(areaIn2, "in2")} in all, are pulled to ${measure(JACKING_STRESS_KSI, "ksi")}. Over ${measure(spanFt, "ft")} with ${measure(toppingIn, "in")} of topping, the losses come to`,
      prose`${parts.flatMap(([name, ksi], i) => [`${i === 3 ? "and " : ""}`, measure(stated(ksi, 1), "ksi"), ` by ${name}${i === 3 ? "." : ", "}`])}`,
    ],
    givens: [
      {name: "jacking stress", value: JACKING_STRESS_KSI, unit: "ksi"}, {name: "area of strand", value: stated(areaIn2, 3), unit: "in2"}, ...parts.map(([name, ksi]) => ({name, value: stated(ksi, 1), unit: "ksi"})),
      {name: "span", value: spanFt, unit: "ft"}, {name: "topping", value: toppingIn, unit: "in"},
    ],
    parts: [
      numberPart({
        ask: prose`What stress is left in the strands?`, label: "effective prestress", unit: "ksi", key: losses.effectiveStressKsi, tolerance: {percent: 1},
        slips: [slip("the loss for what is left", losses.totalKsi, "That is what is lost; the question asks for what stays."), slip("forgot the elastic shortening", losses.effectiveStressKsi + losses.elasticKsi, "Elastic shortening, at release, is a loss as well.")],
        working: oneStep("Effective prestress", {
          symbol: "f_se", label: "effective prestress", expression: "f_pj - (ES + CR + SH + RE)", unit: "ksi", source: "definition", result: losses.effectiveStressKsi,
          values: {
            f_pj: given(JACKING_STRESS_KSI, "ksi", "jacking stress"), ES: given(losses.elasticKsi, "ksi", "elastic shortening"), CR: given(losses.creepKsi, "ksi", "creep"),
            SH: given(losses.shrinkageKsi, "ksi", "shrinkage"), RE: given(losses.relaxationKsi, "ksi", "relaxation"),
          },
        }),
      }),
      numberPart({
        ask: prose`With what force do they hold the concrete in compression in the long term?`, label: "effective force", unit: "kip", key: effectiveForceKip,
        slips: [slip("jacking force", areaIn2 * JACKING_STRESS_KSI, "That is the force at the jacks, before any loss."), slip("the loss for what is left", areaIn2 * losses.totalKsi, "That is the force that is lost.")],
        working: oneStep("Effective force", {
          symbol: "P", label: "effective prestress force", expression: "A_ps * f_se", unit: "kip", source: "definition", result: effectiveForceKip,
          values: {A_ps: given(areaIn2, "in2", "area of all strands"), f_se: given(losses.effectiveStressKsi, "ksi", "effective prestress")},
        }),
      }),
    ],
  };
}

/** What elastic shortening takes at release. */
function elasticShortening(draw: Draw, catalog: Catalog): Content {
  const releasePsi = draw.from(3500, 4800, 100);
  const {row, pattern, spanFt} = teeOnSpan(draw, catalog, "pretopped");
  const member = catalogMember(catalog, row, pattern, 0, releasePsi);
  const state = prestressState(member, spanFt, 0.5, 0);
  const {section, layout, releaseModulusKsi, selfWeightPlf} = member;
  const {elasticKsi, concreteStressKsi} = state.losses;
  const working = lossesWorking(member, spanFt, state, 0);
  const forceKip = layout.areaIn2 * JACKING_STRESS_KSI;
  const momentKipFt = kipFt(simpleSpanMomentKipIn(selfWeightPlf, spanFt));
  const steelKsi = working.steps[2]?.values["E_ps"]?.value ?? 0;
  return {
    question: [
      prose`${article(row.designation, "A")} ${row.designation} with the pattern ${pattern} is pulled with ${measure(stated(forceKip, 1), "kip")}, ${measure(stated(state.eccentricityIn, 2), "in")} below its centroid. Its section has ${measure(stated(section.areaIn2, 0), "in2")} and ${measure(stated(section.inertiaIn4, 0), "in4")}; its own weight over ${measure(spanFt, "ft")} makes a moment of ${measure(stated(momentKipFt, 1), "kip-ft")}.`,
      prose`The concrete\u2019s modulus at release is ${measure(stated(releaseModulusKsi, 0), "ksi")}, the steel\u2019s ${measure(steelKsi, "ksi")}. Take 0.9 of the pull for the force right after release.`,
    ],
    givens: [
      {name: "force at the jacks", value: stated(forceKip, 1), unit: "kip"}, {name: "eccentricity", value: stated(state.eccentricityIn, 2), unit: "in"}, {name: "area", value: stated(section.areaIn2, 0), unit: "in2"},
      {name: "second moment of area", value: stated(section.inertiaIn4, 0), unit: "in4"}, {name: "moment of own weight", value: stated(momentKipFt, 1), unit: "kip-ft"}, {name: "span", value: spanFt, unit: "ft"},
      {name: "modulus at release", value: stated(releaseModulusKsi, 0), unit: "ksi"}, {name: "modulus of the strand", value: steelKsi, unit: "ksi"},
    ],
    picture: sectionOf(member, false),
    parts: [numberPart({
      ask: prose`How much stress do the strands lose as the concrete shortens at release?`, label: "elastic shortening", unit: "ksi", key: elasticKsi, tolerance: {percent: 3},
      slips: [
        slip("concrete for steel", concreteStressKsi, "That is the stress in the concrete beside the strands; the steel shortens as much, and is stiffer."),
        slip("forgot the own weight", (steelKsi / releaseModulusKsi) * (0.9 * (forceKip / section.areaIn2 + (forceKip * state.eccentricityIn ** 2) / section.inertiaIn4)), "The member arches off its bed as the strands are cut, so its own weight acts at once and relieves the concrete there."),
        slip("forgot the eccentricity", (steelKsi / releaseModulusKsi) * 0.9 * (forceKip / section.areaIn2), "The strands do not pull at the centroid: they bend the member as well."),
      ],
      working: {title: "Elastic shortening", steps: working.steps.slice(0, 3)},
    })],
  };
}

/** Stress in the soffit: eccentricity, moment, stress, and whether it may be. */
function soffitStress(draw: Draw, catalog: Catalog): Content {
  const {row, pattern, spanFt, member} = teeOnSpan(draw, catalog, "pretopped");
  const loadPsf = draw.from(40, 100, 5);
  const {section, layout, widthFt, selfWeightPlf} = member;
  const state = prestressState(member, spanFt, 0.5, 10 * widthFt);
  const forceKip = stated(state.effectiveForceKip, 0);
  const heightIn = stated(layout.centroidCenterIn, 2);
  const plf = selfWeightPlf + loadPsf * widthFt;
  const limitKsi = allowables(member, "T").serviceTensionKsi;
  const stress = (earlier: Earlier) => fiberStresses({section, full: section, composite: undefined}, {eccentricityIn: numberAt(earlier, 0)}, forceKip, {precastKipIn: 12 * numberAt(earlier, 1), fullKipIn: 0}).bottomKsi;
  const moment = kipFt(simpleSpanMomentKipIn(plf, spanFt));
  return {
    question: [
      prose`A pretopped ${row.designation} with the pattern ${pattern} spans ${measure(spanFt, "ft")}. It weighs ${measure(stated(selfWeightPlf, 0), "plf")}, is ${measure(widthFt, "ft")} wide and carries ${measure(loadPsf, "psf")} besides.`,
      prose`Its section: area ${measure(stated(section.areaIn2, 0), "in2")}, centroid ${measure(stated(section.ybIn, 2), "in")} above the soffit, modulus of the soffit ${measure(stated(section.sbIn3, 0), "in3")}. The strands lie ${measure(heightIn, "in")} above the soffit and hold ${measure(forceKip, "kip")} in the long term.`,
    ],
    givens: [
      {name: "span", value: spanFt, unit: "ft"}, {name: "own weight", value: stated(selfWeightPlf, 0), unit: "plf"}, {name: "width", value: widthFt, unit: "ft"}, {name: "superimposed load", value: loadPsf, unit: "psf"},
      {name: "area", value: stated(section.areaIn2, 0), unit: "in2"}, {name: "centroid above the soffit", value: stated(section.ybIn, 2), unit: "in"}, {name: "modulus of the soffit", value: stated(section.sbIn3, 0), unit: "in3"},
      {name: "strands above the soffit", value: heightIn, unit: "in"}, {name: "effective force", value: forceKip, unit: "kip"}, {name: "member", value: row.designation, unit: ""},
    ],
    picture: sectionOf(member, false),
    parts: [
      numberPart({
        ask: prose`How far below the centroid do the strands pull?`, label: "eccentricity", unit: "in", key: section.ybIn - heightIn, tolerance: {percent: 1},
        slips: [slip("height for eccentricity", heightIn, "That is their height above the soffit; the eccentricity is measured from the centroid."), slip("from the top", section.ytIn, "That is the top above the centroid.")],
        working: oneStep("Eccentricity", {symbol: "e", label: "strands below the centroid", expression: "y_b - y_s", unit: "in", source: "geometry", result: section.ybIn - heightIn, values: {y_b: given(section.ybIn, "in", "centroid above the soffit"), y_s: given(heightIn, "in", "strands above the soffit")}}),
      }),
      numberPart({
        ask: prose`What moment does the whole load make at midspan?`, label: "moment", unit: "kip-ft", key: moment,
        slips: [
          slip("superimposed for total", kipFt(simpleSpanMomentKipIn(loadPsf * widthFt, spanFt)), "The tee carries its own weight as well."),
          slip("forgot the width", kipFt(simpleSpanMomentKipIn(selfWeightPlf + loadPsf, spanFt)), "The superimposed load is on a square foot: the tee is wider than that."),
          slip("span not squared", moment / spanFt, "The moment grows with the square of the span."),
        ],
        working: {title: "Moment at midspan", steps: [
          {symbol: "w", label: "load on a foot of the tee", expression: "w_o + q * b", unit: "plf", source: "geometry", result: plf, values: {w_o: given(selfWeightPlf, "plf", "own weight"), q: given(loadPsf, "psf", "superimposed load"), b: given(widthFt, "ft", "width")}},
          {symbol: "M", label: "moment at midspan", expression: "w * L^2 / 8 / 1000", unit: "kip-ft", source: "statics", result: moment, values: {w: given(plf, "plf", "load on a foot of the tee"), L: given(spanFt, "ft", "span")}},
        ]},
      }),
      numberPart({
        ask: prose`What stress does that leave in the soffit, compression positive?`, label: "stress in the soffit", unit: "ksi", tolerance: {within: 0.04}, key: stress,
        slips: (earlier) => {
          const [axial, lift, bend] = [forceKip / section.areaIn2, (forceKip * numberAt(earlier, 0)) / section.sbIn3, (12 * numberAt(earlier, 1)) / section.sbIn3];
          return [
            slip("tension positive", -(axial + lift - bend), "Compression counts as positive here."),
            slip("kip-ft for kip-in", axial + lift - bend / 12, "The moment must be in kip-in before it is divided by cubic inches."),
            slip("forgot P/A", lift - bend, "The strands press the whole section as well as bending it."),
            slip("prestress bends the wrong way", axial - lift - bend, "Strands below the centroid press the soffit: their moment works against the load\u2019s."),
            slip("load presses the soffit", axial + lift + bend, "The load stretches the soffit."),
          ];
        },
        working: (earlier): Working => oneStep("Stress in the soffit", {
          symbol: "f_b", label: "stress in the soffit, compression positive", expression: "P / A + P * e / S_b - 12 * M / S_b", unit: "ksi", source: "elastic theory", result: stress(earlier),
          values: {
            P: given(forceKip, "kip", "effective force"), A: given(section.areaIn2, "in2", "area"), e: given(numberAt(earlier, 0), "in", "eccentricity"), S_b: given(section.sbIn3, "in3", "modulus of the soffit"),
            M: given(numberAt(earlier, 1), "kip-ft", "moment at midspan"),
          },
        }),
      }),
      choicePart({
        ask: prose`Class T allows ${measure(stated(limitKsi, 3), "ksi")} of tension in the soffit. Is it kept?`, key: (earlier) => (-numberAt(earlier, 2) <= limitKsi ? "yes" : "no"),
        options: [
          {id: "yes", text: ["yes"], slip: {name: "overlooked the tension", says: "Your stress is a tension greater than that."}},
          {id: "no", text: ["no"], slip: {name: "compression for tension", says: "What counts here is tension, a negative stress, and yours is not beyond that."}},
        ],
      }),
    ],
  };
}

/** How far from its end a strand has taken hold. */
function transferLength(draw: Draw, catalog: Catalog): Content {
  const effectiveKsi = draw.from(150, 180, 1);
  const ultimateKsi = draw.from(255, 268, 1);
  const strand = strandOf(catalog, parsePattern(draw.one(["88-S", "810-S", "87-S"])));
  const {transferIn, developmentIn} = developmentOf(effectiveKsi, ultimateKsi, strand.diameterIn);
  const values = {f_se: given(effectiveKsi, "ksi", "effective prestress"), d_b: given(strand.diameterIn, "in", "diameter of the strand")};
  return {
    question: [prose`Strands of ${measure(strand.diameterIn, "in")} keep an effective prestress of ${measure(effectiveKsi, "ksi")}; at the member\u2019s strength they reach ${measure(ultimateKsi, "ksi")}.`],
    givens: [{name: "diameter", value: strand.diameterIn, unit: "in"}, {name: "effective prestress", value: effectiveKsi, unit: "ksi"}, {name: "stress at strength", value: ultimateKsi, unit: "ksi"}],
    parts: [
      numberPart({
        ask: prose`Over what length from its end does a strand hand its prestress to the concrete?`, label: "transfer length", unit: "in", key: transferIn,
        slips: [slip("development for transfer", developmentIn, "That is the development length, in which the full strength is reached."), slip("forgot the third", 3 * transferIn, "A third of the stress in ksi, times the diameter."), slip("stress at strength for effective prestress", (ultimateKsi / 3) * strand.diameterIn, "Only the effective prestress is transferred.")],
        working: oneStep("Transfer length", {symbol: "l_tr", label: "transfer length", expression: "f_se / 3 * d_b", unit: "in", source: "ACI 318-19 25.4.8.1", result: transferIn, values}),
      }),
      numberPart({
        ask: prose`And how far from its end can it be pulled to that greater stress?`, label: "development length", unit: "in", key: developmentIn,
        slips: [slip("transfer for development", transferIn, "That is the transfer length; more length is needed to pull the strand further."), slip("added length alone", developmentIn - transferIn, "That is the length beyond the transfer length: the two add up."), slip("stress without the prestress taken off", transferIn + ultimateKsi * strand.diameterIn, "Only the stress beyond the effective prestress needs more length.")],
        working: oneStep("Development length", {symbol: "l_d", label: "development length", expression: "f_se / 3 * d_b + (f_ps - f_se) * d_b", unit: "in", source: "ACI 318-19 25.4.8.1", result: developmentIn, values: {...values, f_ps: given(ultimateKsi, "ksi", "stress at strength")}}),
      }),
    ],
  };
}

export const MEMBER_KINDS: readonly Kind[] = [
  {id: "loss-share", topic: "member", level: 1, title: "What is left of the pull", make: lossShare},
  {id: "elastic-shortening", topic: "member", level: 3, title: "What release takes from the strands", make: elasticShortening},
  {id: "soffit-stress", topic: "member", level: 3, title: "Stress in the soffit under full load", make: soffitStress},
  {id: "transfer-length", topic: "member", level: 2, title: "Where a strand has taken hold", make: transferLength},
];
