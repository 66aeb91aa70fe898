import type {Catalog} from "../../lib/catalog.js";
import type {Kind} from "../../lib/practice/item.js";
import {itemOf} from "../../lib/practice/kinds.js";
import {COUNT_RULE, LONGEST_TITLE, MOST_IN_SET, POINTS_RULE, SEED_RULE, countOf, type Recipe} from "../../lib/practice/recipe.js";
import {ownPoints} from "../../lib/practice/setItems.js";
import {InputError} from "../../lib/errors.js";
import {requireNumber} from "../../lib/check.js";
import {button} from "../../components/controls.js";
import {numberBox, type SetNumber} from "../../components/controls/numberBox.js";
import {element, uniqueId} from "../../components/dom.js";
import type {DraftStore} from "./draft.js";

type Pages = readonly {readonly name: string; readonly title: string}[];

/** Where a set is put together: its title and seed, its rules, kinds to choose from, and those that were chosen. */
export function composer(draft: DraftStore, kinds: readonly Kind[], catalog: Catalog, pages: Pages): HTMLElement {
  return element("div", {class: "composer no-print"}, titleAndSeed(draft),
    element("div", {class: "composer-lists"}, chooser(draft, kinds, catalog, pages), chosen(draft, kinds)), rules(draft));
}

function titleAndSeed(draft: DraftStore): HTMLElement {
  const id = uniqueId("title");
  const input = element("input", {id, type: "text", maxlength: LONGEST_TITLE, autocomplete: "off"});
  input.addEventListener("input", () => draft.setRecipe({title: input.value}));
  const seed = boxed("Seed", {rule: SEED_RULE, get: () => draft.get().recipe.seed, set: (value) => draft.setRecipe({seed: requireNumber(value, SEED_RULE)})}, "Another seed, other numbers in every exercise; the same seed, the same set.");
  draft.observe(({recipe: {title}}) => {
    if (input.value !== title) input.value = title;
    seed.show();
  });
  return element("div", {class: "composer-head"}, element("div", {class: "control text"}, element("label", {for: id, class: "control-label"}, "Title"), input), seed.node);
}

/** A number with its label before it. */
function boxed(label: string, number: SetNumber, help: string): {node: HTMLElement; show: () => void} {
  const box = numberBox(number);
  return {
    show: box.show,
    node: element("div", {class: "control"}, element("label", {for: box.input.id, class: "control-label"}, label), box.entry, box.message.node, element("p", {class: "control-help"}, help)),
  };
}

const RULES: readonly {readonly of: "variants" | "hints" | "checked"; readonly label: string; readonly help: string}[] = [
  {of: "variants", label: "Each student has numbers of their own", help: "They follow from the seed and the name or number that the student types, so the link needs none. By numbers such as seats no two students meet the same numbers in any exercise; by names two may, now and then."},
  {of: "hints", label: "Hints can be opened", help: "The worked steps of an exercise, one at a time, with their numbers withheld. How many were opened goes into the answer file."},
  {of: "checked", label: "Students can check their answers in the page", help: "As often as they like; a usual slip is told by name, the last answer counts, and every try goes into the file. The worked steps can then be opened too, and close the answer. Switched off, answers and steps stay locked until you mark them."},
];

function rules(draft: DraftStore): HTMLElement {
  return element("fieldset", {class: "set-rules"}, element("legend", {class: "control-heading"}, "What students may do"), ...RULES.map(({of, label, help}) => {
    const id = uniqueId("rule");
    const input = element("input", {id, type: "checkbox", role: "switch", class: "switch", "aria-describedby": `${id}-help`});
    input.addEventListener("change", () => draft.setRecipe({[of]: input.checked}));
    draft.observe(({recipe}) => (input.checked = recipe[of]));
    return element("div", {class: "control switch-control"}, element("span", {class: "switch-line"}, input, element("label", {for: id, class: "control-label"}, label)), element("p", {class: "control-help", id: `${id}-help`}, help));
  }));
}

const LEVELS = ["Any level", "1: one rule", "2: two or three joined", "3: sizes something"] as const;

/** Kinds by page and level, each with a button that puts it into the set. */
function chooser(draft: DraftStore, kinds: readonly Kind[], catalog: Catalog, pages: Pages): HTMLElement {
  const [topicId, levelId] = [uniqueId("topic"), uniqueId("level")];
  const topics = pages.filter(({name}) => kinds.some(({topic}) => topic === name));
  const topic = element("select", {id: topicId}, element("option", {value: ""}, "All pages"), ...topics.map(({name, title}) => element("option", {value: name}, title)));
  const level = element("select", {id: levelId}, ...LEVELS.map((words, i) => element("option", {value: i === 0 ? "" : String(i)}, words)));
  topic.value = "deck";
  const told = element("p", {class: "control-help", role: "status"});
  const list = element("ul", {class: "kind-list"});
  const add = ({id, title}: Kind) => {
    const {recipe} = draft.get();
    if (countOf(recipe) >= MOST_IN_SET) throw new InputError({path: "kinds", label: "number of exercises of the set", value: countOf(recipe) + 1, allowed: `1 to ${MOST_IN_SET}`});
    const known = recipe.kinds.find(({kind}) => kind === id);
    const entry = known ? {...known, count: requireNumber(known.count + 1, COUNT_RULE)} : {kind: id, count: 1, points: ownPoints(itemOf(id, recipe.seed, catalog))};
    draft.setKind(id, entry);
    told.textContent = `${title}: ${entry.count === 1 ? "added to the set" : `${entry.count} of them now`}.`;
  };
  const show = () => {
    const own = kinds.filter((kind) => (topic.value === "" || kind.topic === topic.value) && (level.value === "" || kind.level === Number(level.value)));
    list.replaceChildren(...own.map((kind) => element("li", {class: "kind-row"}, element("span", {}, kind.title, element("small", {}, ` level ${kind.level}`)), button("Add", () => add(kind), {name: `Add ${kind.title}`}))));
    told.textContent = own.length === 0 ? "That page has no exercise of this level." : own.length === 1 ? "One kind." : `${own.length} kinds.`;
  };
  for (const select of [topic, level]) select.addEventListener("change", show);
  show();
  return element("section", {class: "kind-chooser", "aria-label": "Kinds of exercise"}, element("h3", {class: "control-heading"}, "Kinds of exercise"),
    element("div", {class: "practice-choice"}, element("div", {class: "control compact"}, element("label", {for: topicId, class: "control-label"}, "From which page?"), topic), element("div", {class: "control compact"}, element("label", {for: levelId, class: "control-label"}, "How hard?"), level)),
    told, list);
}

/** What is in the set, in its order, with numbers and points. */
function chosen(draft: DraftStore, kinds: readonly Kind[]): HTMLElement {
  const sum = element("p", {class: "set-sum", role: "status"});
  const list = element("ol", {class: "chosen-list"});
  const rows = new Map<string, {node: HTMLElement; show: () => void}>();
  const rowOf = (id: string) => {
    const title = kinds.find((kind) => kind.id === id)?.title ?? id;
    const entry = () => draft.get().recipe.kinds.find(({kind}) => kind === id);
    const box = (of: "count" | "points", rule: typeof COUNT_RULE | typeof POINTS_RULE) => numberBox({
      rule, name: `${of === "count" ? "How many" : "Points of each"}: ${title}`, get: () => entry()?.[of],
      set: (value) => {
        const now = entry();
        if (now) draft.setKind(id, {...now, [of]: requireNumber(value, rule)});
      },
    });
    const [count, points] = [box("count", COUNT_RULE), box("points", POINTS_RULE)];
    const moved = (by: number, name: string, sign: string) => {
      const node: HTMLButtonElement = button(sign, () => {
        draft.move(id, by);
        node.focus();
      }, {quiet: true, name: `Move ${title} ${name}`});
      return node;
    };
    const node = element("li", {class: "chosen-row"}, element("span", {class: "chosen-title"}, title),
      element("span", {class: "control chosen-number"}, count.entry, element("span", {"aria-hidden": "true"}, "\u00d7"), points.entry, element("span", {"aria-hidden": "true"}, "points")),
      element("span", {class: "chosen-moves"}, moved(-1, "up", "\u2191"), moved(1, "down", "\u2193"), button("\u00d7", () => {
        draft.setKind(id, undefined);
        (list.querySelector("button") ?? sum).focus();
      }, {quiet: true, name: `Take out ${title}`})), count.message.node, points.message.node);
    return {node, show: () => [count, points].forEach((each) => each.show())};
  };
  draft.observe(({recipe}) => {
    const nodes = recipe.kinds.map(({kind}) => {
      const row = rows.get(kind) ?? rowOf(kind);
      rows.set(kind, row);
      row.show();
      return row.node;
    });
    // What has the focus stays where it is unless the order changed.
    if (nodes.length !== list.children.length || nodes.some((node, i) => list.children[i] !== node)) list.replaceChildren(...nodes);
    sum.textContent = sumWords(recipe);
  });
  return element("section", {class: "chosen", "aria-label": "In the set"}, element("h3", {class: "control-heading"}, "In the set"), sum, list);
}

function sumWords(recipe: Recipe): string {
  const count = countOf(recipe);
  if (count === 0) return "Nothing yet: add kinds from the list.";
  const points = recipe.kinds.reduce((total, each) => total + each.count * each.points, 0);
  return `${count === 1 ? "One exercise" : `${count} exercises`}, ${points === 1 ? "one point" : `${points} points`}. How many of each, and the points of one:`;
}
