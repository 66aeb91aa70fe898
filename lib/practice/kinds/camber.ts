import type {Catalog} from "../../catalog.js";
import {CAMBER_MULTIPLIERS, camber, strandLiftIn} from "../../member/camber.js";
import {JACKING_STRESS_KSI} from "../../prestress/losses.js";
import {given, type Step} from "../../step.js";
import type {Draw} from "../draw.js";
import type {Content, Kind, Option} from "../item.js";
import {oneStep} from "../keys.js";
import {mistakePart, numberPart, orderPart, slip} from "../parts.js";
import {measure, prose} from "../prose.js";
import {article, catalogMember, sectionOf, stated, teeOnSpan} from "./ground.js";

const HUNDREDTHS = {within: 0.05} as const;
const up = (value: number) => given(value, "in", "lift by the strands");
const down = (value: number) => given(value, "in", "sag under own weight, downward negative");

/** Camber at release and when the member is set, from lift and sag. */
function camberWhenSet(draw: Draw, catalog: Catalog): Content {
  const {row, pattern, spanFt, member, toppingIn} = teeOnSpan(draw, catalog, "field-topped");
  const found = camber(member, spanFt, 10 * member.widthFt);
  const [liftIn, sagIn] = [stated(found.prestressIn, 2), stated(found.selfIn, 2)];
  const {erectionPrestress, erectionSelf} = CAMBER_MULTIPLIERS.topped;
  return {
    question: [
      prose`As its strands are cut, ${article(row.designation)} ${row.designation} with the pattern ${pattern}, ${measure(spanFt, "ft")} long, is lifted ${measure(liftIn, "in")} by them and sags ${measure(-sagIn, "in")} under its own weight.`,
      prose`Until it is set, creep multiplies the lift by ${erectionPrestress} and the sag by ${erectionSelf}. It will get ${measure(toppingIn, "in")} of topping.`,
    ],
    givens: [{name: "member", value: row.designation, unit: ""}, {name: "lift by the strands", value: liftIn, unit: "in"}, {name: "sag under own weight", value: -sagIn, unit: "in"}, {name: "span", value: spanFt, unit: "ft"}, {name: "multiplier of the lift", value: erectionPrestress, unit: ""}, {name: "multiplier of the sag", value: erectionSelf, unit: ""}, {name: "topping", value: toppingIn, unit: "in"}, {name: "strand pattern", value: pattern, unit: ""}],
    parts: [
      numberPart({
        ask: prose`What camber has it at release?`, label: "camber at release", unit: "in", tolerance: HUNDREDTHS, key: found.releaseIn,
        slips: [slip("lift alone", found.prestressIn, "Its own weight pulls it down at the same time."), slip("sag added", found.prestressIn - found.selfIn, "Lift and sag work against each other.")],
        working: oneStep("Camber at release", {symbol: "d_1", label: "camber at release", expression: "d_p + d_o", unit: "in", source: "sum", result: found.releaseIn, values: {d_p: up(found.prestressIn), d_o: down(found.selfIn)}}),
      }),
      numberPart({
        ask: prose`And when the crane sets it?`, label: "camber when set", unit: "in", tolerance: HUNDREDTHS, key: found.erectionIn,
        slips: [
          slip("camber at release", found.releaseIn, "That is its camber on the day the strands are cut; weeks of creep have raised it since."),
          slip("sag left unmultiplied", erectionPrestress * found.prestressIn + found.selfIn, "Creep makes the sag grow as well."),
          slip("lift left unmultiplied", found.prestressIn + erectionSelf * found.selfIn, "Creep makes the lift grow as well."),
          slip("sag added", erectionPrestress * found.prestressIn - erectionSelf * found.selfIn, "Lift and sag work against each other."),
        ],
        working: oneStep("Camber when set", {symbol: "d_2", label: "camber when the member is set", expression: "m_p * d_p + m_o * d_o", unit: "in", source: "Martin 1977, multipliers", result: found.erectionIn, values: {m_p: given(erectionPrestress, "", "multiplier of the lift"), d_p: up(found.prestressIn), m_o: given(erectionSelf, "", "multiplier of the sag"), d_o: down(found.selfIn)}}),
      }),
    ],
  };
}

/** Lift of straight strands by the area under their moment. */
function strandLift(draw: Draw, catalog: Catalog): Content {
  const releasePsi = draw.from(3500, 4800, 100);
  const {row, pattern, spanFt} = teeOnSpan(draw, catalog, "pretopped");
  const member = catalogMember(catalog, row, pattern, 0, releasePsi);
  const {section, layout, releaseModulusKsi: modulusKsi} = member;
  const forceKip = stated(0.9 * JACKING_STRESS_KSI * layout.areaIn2, 0);
  const eccentricityIn = stated(section.ybIn - layout.centroidCenterIn, 2);
  const lift = (change: object = {}) => strandLiftIn({forceKip, spanFt, modulusKsi, inertiaIn4: section.inertiaIn4, endEccentricityIn: eccentricityIn, dropIn: 0, holdDownShare: 0.5, ...change});
  return {
    question: [
      prose`Straight strands, pattern ${pattern}, pull ${article(row.designation)} ${row.designation} with ${measure(forceKip, "kip")} at release, ${measure(eccentricityIn, "in")} below its centroid from end to end. It is ${measure(spanFt, "ft")} long.`,
      prose`Its second moment of area is ${measure(stated(section.inertiaIn4, 0), "in4")}, its concrete\u2019s modulus at release ${measure(stated(modulusKsi, 0), "ksi")}.`,
    ],
    givens: [{name: "force at release", value: forceKip, unit: "kip"}, {name: "eccentricity", value: eccentricityIn, unit: "in"}, {name: "span", value: spanFt, unit: "ft"}, {name: "second moment of area", value: stated(section.inertiaIn4, 0), unit: "in4"}, {name: "modulus at release", value: stated(modulusKsi, 0), unit: "ksi"}],
    picture: sectionOf(member, false),
    parts: [numberPart({
      ask: prose`How far do the strands lift it at midspan?`, label: "lift", unit: "in", key: lift(), tolerance: {percent: 3},
      slips: [
        slip("feet for inches", lift() / 144, "The span must be in inches, as the modulus and the second moment are."),
        slip("a uniform load\u2019s 5/384", (lift() * 8 * 5) / 384, "The moment of straight strands is the same all along: its lift is an eighth, not 5/384."),
        slip("cantilever for simple span", 4 * lift(), "That would be the end of a cantilever: P e L\u00b2 over 2 E I."),
        slip("span not squared", lift() / (12 * spanFt), "The lift grows with the square of the span."),
      ],
      working: oneStep("Lift by straight strands", {
        symbol: "d_p", label: "lift at midspan", expression: "P * e * (12 * L)^2 / (8 * E_ci * I)", unit: "in", source: "moment-area", result: lift(),
        values: {P: given(forceKip, "kip", "force at release"), e: given(eccentricityIn, "in", "eccentricity"), L: given(spanFt, "ft", "span"), E_ci: given(modulusKsi, "ksi", "modulus at release"), I: given(section.inertiaIn4, "in4", "second moment of area")},
      }),
    })],
  };
}

/** A camber that somebody worked out, with one mistake in it. */
function camberMistake(draw: Draw, catalog: Catalog): Content {
  const {row, pattern, spanFt, member, toppingIn} = teeOnSpan(draw, catalog, "field-topped");
  const wrong = draw.from(1, 3, 1);
  const found = camber(member, spanFt, 0);
  const m = CAMBER_MULTIPLIERS.topped;
  const [p, o, t] = [stated(found.prestressIn, 2), stated(found.selfIn, 2), stated(found.toppingIn, 2)];
  const parts = {d_p: up(p), d_o: down(o), d_t: given(t, "in", "sag under the topping, downward negative")};
  const pick = (...names: (keyof typeof parts)[]) => Object.fromEntries(names.map((name) => [name, parts[name]]));
  const step = (symbol: string, label: string, expression: string, values: Step["values"], result: number, source = "Martin 1977, multipliers"): Step => ({symbol, label, expression, values, result, unit: "in", source});
  const release = [step("d_1", "camber at release", "d_p + d_o", pick("d_p", "d_o"), p + o, "sum"), step("d_1", "camber at release", "d_p - d_o", pick("d_p", "d_o"), p - o, "sum")] as const;
  const set = m.erectionPrestress * p + m.erectionSelf * o;
  const setSteps = [
    step("d_2", "camber when the member is set", "1.8 * d_p + 1.85 * d_o", pick("d_p", "d_o"), set),
    step("d_2", "camber when the member is set", "1.8 * d_p + d_o", pick("d_p", "d_o"), m.erectionPrestress * p + o),
  ] as const;
  const given2 = (value: number) => ({d_2: given(value, "in", "camber when set"), d_t: parts.d_t});
  const lines = (bad: number): Step[] => {
    const second = setSteps[bad === 2 ? 1 : 0];
    return [release[bad === 1 ? 1 : 0], second, bad === 3
      ? step("d_3", "camber right after topping", "d_2 + 2.3 * d_t", given2(second.result), second.result + m.finalTopping * t)
      : step("d_3", "camber right after topping", "d_2 + d_t", given2(second.result), second.result + t, "sum")];
  };
  return {
    question: [
      prose`Somebody worked out the camber of ${article(row.designation)} ${row.designation}, pattern ${pattern}, over ${measure(spanFt, "ft")}: the strands lift it ${measure(p, "in")}, its weight makes it sag ${measure(-o, "in")}, and ${measure(toppingIn, "in")} of wet topping ${measure(-t, "in")}. Upward counts as positive.`,
      prose`Creep until it is set multiplies the lift by ${m.erectionPrestress} and the sag of its weight by ${m.erectionSelf}. One of the three lines is wrong; what follows from it goes on with its number.`,
    ],
    givens: [{name: "lift by the strands", value: p, unit: "in"}, {name: "sag under own weight", value: -o, unit: "in"}, {name: "sag under the topping", value: -t, unit: "in"}, {name: "span", value: spanFt, unit: "ft"}, {name: "strand pattern", value: pattern, unit: ""}, {name: "member", value: row.designation, unit: ""}],
    parts: [
      mistakePart({ask: prose`Which line is wrong?`, lines: lines(wrong), wrong, working: {title: "Camber, as it is", steps: lines(0)}, because: [["Lift and sag work against each other: the sag is negative already.", "Creep makes the sag grow as well as the lift.", "Right after the topping is cast it has not crept yet: its sag counts once."][wrong - 1] as string]}),
      numberPart({
        ask: prose`What is the camber right after topping?`, label: "camber after topping", unit: "in", tolerance: HUNDREDTHS, key: set + t,
        slips: [slip("the wrong line kept", lines(wrong)[2]?.result ?? 0, "That is what the wrong line leads to."), slip("camber when set", set, "The topping makes it sag."), slip("topping lifts", set - t, "The topping weighs on it.")],
        working: {title: "Camber, as it is", steps: lines(0)},
      }),
    ],
  };
}

/** The camber's heights over its life in order. */
function camberOrder(draw: Draw, catalog: Catalog): Content {
  const {row, pattern, spanFt, toppingIn, member} = teeOnSpan(draw, catalog, "field-topped");
  const deadPsf = draw.from(5, 25, 5);
  const found = camber(member, spanFt, deadPsf * member.widthFt);
  const m = CAMBER_MULTIPLIERS.topped;
  const moments = [
    {id: "release", text: "at release", value: found.releaseIn}, {id: "set", text: "when set", value: found.erectionIn},
    {id: "topped", text: "right after topping", value: found.toppedIn}, {id: "long", text: "in the long term", value: found.longTermIn},
  ];
  const key = [...moments].sort((a, b) => a.value - b.value).map(({id}) => id).join(",");
  const [p, o, t, s] = [found.prestressIn, found.selfIn, found.toppingIn, found.superimposedIn].map((value) => stated(value, 3)) as [number, number, number, number];
  return {
    question: [
      prose`${article(row.designation, "A")} ${row.designation}, pattern ${pattern}, over ${measure(spanFt, "ft")} is lifted ${measure(p, "in")} by its strands; its weight makes it sag ${measure(-o, "in")}, ${measure(toppingIn, "in")} of topping ${measure(-t, "in")} and ${measure(deadPsf, "psf")} of finishes ${measure(-s, "in")}, each at once and without creep.`,
      prose`Creep multiplies lift and weight by ${m.erectionPrestress} and ${m.erectionSelf} until it is set; in the long term lift, weight, topping and finishes by ${m.finalPrestress}, ${m.finalSelf}, ${m.finalTopping} and ${m.finalSuperimposed}.`,
    ],
    givens: [{name: "lift by the strands", value: p, unit: "in"}, {name: "sag under own weight", value: -o, unit: "in"}, {name: "sag under the topping", value: -t, unit: "in"}, {name: "sag under the finishes", value: -s, unit: "in"}, {name: "span", value: spanFt, unit: "ft"}],
    parts: [orderPart({
      ask: prose`Put its cambers in order.`, by: "from the lowest to the highest", key,
      options: draw.shuffled(moments).map(({id, text}): Option => ({id, text: [text]})),
      slips: [
        {name: "in order of time", order: "release,set,topped,long", says: "That is their order in time: camber first grows, then topping and creep may bring it down again."},
        {name: "from the highest down", order: key.split(",").reverse().join(","), says: "The order is right, the wrong way round."},
      ],
      working: {title: "Camber over the years", steps: [
        {symbol: "d_1", label: "at release", expression: "d_p + d_o", unit: "in", source: "sum", result: found.releaseIn, values: {d_p: up(found.prestressIn), d_o: down(found.selfIn)}},
        {symbol: "d_2", label: "when set", expression: "1.8 * d_p + 1.85 * d_o", unit: "in", source: "Martin 1977, multipliers", result: found.erectionIn, values: {d_p: up(found.prestressIn), d_o: down(found.selfIn)}},
        {symbol: "d_3", label: "right after topping", expression: "d_2 + d_t", unit: "in", source: "sum", result: found.toppedIn, values: {d_2: given(found.erectionIn, "in", "when set"), d_t: given(found.toppingIn, "in", "sag under the topping")}},
        {
          symbol: "d_4", label: "in the long term", expression: `${m.finalPrestress} * d_p + ${m.finalSelf} * d_o + ${m.finalTopping} * d_t + ${m.finalSuperimposed} * d_s`, unit: "in", source: "Martin 1977, multipliers", result: found.longTermIn,
          values: {d_p: up(found.prestressIn), d_o: down(found.selfIn), d_t: given(found.toppingIn, "in", "sag under the topping"), d_s: given(found.superimposedIn, "in", "sag under the finishes")},
        },
      ]},
    })],
  };
}

export const CAMBER_KINDS: readonly Kind[] = [
  {id: "camber-when-set", topic: "camber", level: 1, title: "Camber at release and when set", make: camberWhenSet},
  {id: "strand-lift", topic: "camber", level: 2, title: "How far straight strands lift", make: strandLift},
  {id: "camber-mistake", topic: "camber", level: 2, title: "A camber with a mistake in it", make: camberMistake},
  {id: "camber-order", topic: "camber", level: 3, title: "When it stands highest", make: camberOrder},
];
