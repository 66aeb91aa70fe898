import type {Catalog, DeckMemberRow} from "../../lib/catalog.js";
import {HANDBOOK_HUMIDITY_PERCENT, HANDBOOK_STRENGTHS_PSI, handbookCriteria, type Criteria} from "../../lib/deck/criteria.js";
import {deckRow} from "../../lib/deck/deckMember.js";
import {LIMITS, type LimitName} from "../../lib/deck/limits.js";
import {SPAN_RANGE_FT} from "../../lib/deck/safeLoad.js";
import type {SweepInput} from "../../lib/deck/sweep.js";
import {fieldOf, type NumberPath} from "../../lib/design/fields.js";
import type {Evaluation} from "../../lib/evaluate.js";
import type {ConcreteKind} from "../../lib/materials/concrete.js";
import {parsePattern} from "../../lib/prestress/pattern.js";
import {element} from "../../components/dom.js";
import {KINDS, diameterWords} from "../../components/shared/deckWords.js";
import {limitSwitches} from "../../components/tables/limitSwitches.js";
import {group, listEntry, numberEntry, tick, type Tick} from "../../components/tables/parts.js";

/** Whose rules the loads are found by. */
export type Rules = "handbook" | "floor";

/** All that a table is made from, with what its notes have to say. */
export interface Chosen {
  readonly input: SweepInput;
  readonly rules: Rules;
  /** Limits that do not count in it. */
  readonly leftOut: readonly LimitName[];
}

/** The reader's choices for a table; they are the page's own, no part of the design. */
export interface TableChoices {
  readonly node: HTMLElement;
  read(): Chosen;
}

const TOPPINGS_IN = [0, 2, 2.5, 3, 4];

/** The choices, as the open design would have them to begin with. `now` is the open design, computed. */
export function tableChoices(catalog: Catalog, now: () => Evaluation): TableChoices {
  const {design, member} = now();
  const ownUse = deckRow(catalog, design.deck.member).use;
  const members = KINDS.map(([use, words]) => kindTicks(catalog, use, words, use === ownUse));
  const ownSize = parsePattern(design.deck.pattern).sixteenths;
  const sizes = catalog.strands.map(({sixteenths}) => ({sixteenths, ...tick(diameterWords(sixteenths), {checked: sixteenths === ownSize})}));
  const toppings = [...new Set([...TOPPINGS_IN, design.deck.toppingIn])].sort((a, b) => a - b)
    .map((toppingIn) => ({toppingIn, ...tick(toppingIn === 0 ? "none" : `${toppingIn} in`, {checked: toppingIn === design.deck.toppingIn})}));
  const limit = {...SPAN_RANGE_FT};
  const [least, most] = member.shape.family === "double tee" ? [20, 84] : [12, 48];
  const from = numberEntry("From", "ft", {value: least, ...limit});
  const to = numberEntry("To", "ft", {value: most, ...limit});
  const step = numberEntry("Every", "ft", {value: member.shape.family === "double tee" ? 4 : 2, min: 0.1, max: 140});
  const rules = listEntry("Rules", [["floor", "this floor\u2019s"], ["handbook", "the handbook\u2019s tables"]]);
  const kind = listEntry("Concrete", [["normalweight", "normalweight"], ["sand-lightweight", "sand-lightweight"]]);
  const strength = numberEntry("Strength", "psi", {...rangeOf("deck.strengthPsi"), step: 100});
  const release = numberEntry("When cut", "psi", {...rangeOf("deck.releaseStrengthPsi"), max: fieldOf("deck.strengthPsi").max, step: 100});
  const topping = numberEntry("Topping", "psi", {...rangeOf("deck.toppingStrengthPsi"), step: 100});
  const humidity = numberEntry("Humidity", "%", rangeOf("criteria.humidityPercent"));
  const switches = limitSwitches();

  const ruled = () => {
    const {design: {deck, criteria}, deck: {criteria: own}} = now();
    const handbook = rules.select.value === "handbook";
    kind.select.value = handbook ? "normalweight" : deck.concrete;
    strength.put(handbook ? HANDBOOK_STRENGTHS_PSI.member : deck.strengthPsi);
    release.put(handbook ? HANDBOOK_STRENGTHS_PSI.release : deck.releaseStrengthPsi);
    topping.put(handbook ? HANDBOOK_STRENGTHS_PSI.topping : deck.toppingStrengthPsi);
    humidity.put(handbook ? HANDBOOK_HUMIDITY_PERCENT : criteria.humidityPercent);
    switches.set(handbook ? handbookCriteria(false).limits : own.limits, own);
  };
  rules.select.addEventListener("change", ruled);
  ruled();

  return {
    node: element("div", {class: "sweep-choices no-print"},
      group("Members", element("div", {class: "kinds"}, ...members.map(({node}) => node))),
      element("div", {class: "group-row"},
        group("Strand", element("div", {class: "ticks"}, ...sizes.map(({node}) => node))),
        group("Topping on members that take one", element("div", {class: "ticks"}, ...toppings.map(({node}) => node))),
        group("Spans", element("div", {class: "table-choices"}, from.node, to.node, step.node))),
      group("Rules and concrete", element("div", {class: "table-choices"}, rules.node, kind.node, strength.node, release.node, topping.node, humidity.node)),
      group("Limits that count", switches.node)),
    read() {
      const limits = switches.chosen();
      const own = now().deck.criteria;
      const criteria = (topped: boolean): Criteria => ({
        ...own,
        // What the handbook's rules leave to the reader is as this floor has it.
        ...(rules.select.value === "handbook" ? {...handbookCriteria(topped), sagLimit: own.sagLimit, seatIn: own.seatIn, walking: own.walking, fire: own.fire} : {}),
        limits,
      });
      return {
        rules: rules.select.value as Rules,
        leftOut: LIMITS.filter((name) => !limits.includes(name)),
        input: {
          members: members.flatMap(({chosen}) => chosen()),
          sixteenths: sizes.filter(({input}) => input.checked).map(({sixteenths}) => sixteenths),
          toppingsIn: toppings.filter(({input}) => input.checked).map(({toppingIn}) => toppingIn),
          spansFt: {fromFt: from.value() ?? NaN, toFt: to.value() ?? NaN, stepFt: step.value() ?? NaN},
          conditions: {
            concreteKind: kind.select.value as ConcreteKind, strengthPsi: strength.value() ?? NaN, releaseStrengthPsi: release.value() ?? NaN,
            toppingStrengthPsi: topping.value() ?? NaN, humidityPercent: humidity.value() ?? NaN,
          },
          criteria: {untopped: criteria(false), topped: criteria(true)},
        },
      };
    },
  };
}

function rangeOf(path: NumberPath): {min: number; max: number} {
  const {min, max} = fieldOf(path);
  return {min, max};
}

/** The members of a kind, each with its box, and one box for all of them. */
function kindTicks(catalog: Catalog, use: DeckMemberRow["use"], words: string, checked: boolean): {node: HTMLElement; chosen: () => string[]} {
  const each: (Tick & {readonly designation: string})[] = catalog.deckMembers.filter((row) => row.use === use)
    .map(({designation}) => ({designation, ...tick(designation, {checked})}));
  const all = tick(element("strong", {}, words), {checked});
  const settle = () => {
    const count = each.filter(({input}) => input.checked).length;
    all.input.checked = count === each.length;
    all.input.indeterminate = count > 0 && count < each.length;
  };
  all.input.addEventListener("change", () => {
    for (const {input} of each) input.checked = all.input.checked;
  });
  for (const {input} of each) input.addEventListener("change", settle);
  return {
    node: element("div", {class: "kind"}, all.node, element("div", {class: "ticks"}, ...each.map(({node}) => node))),
    chosen: () => each.filter(({input}) => input.checked).map(({designation}) => designation),
  };
}
