import type {Catalog} from "../../lib/catalog.js";
import type {Kind} from "../../lib/practice/item.js";
import type {itemOf as ItemOf} from "../../lib/practice/kinds.js";
import {NO_TALLY, nextKind, tallied, tallyOf, tallyWords} from "../../lib/practice/tally.js";
import {button} from "../../components/controls.js";
import {element, uniqueId} from "../../components/dom.js";
import {readerSystem, whenReadAnew} from "../../components/reader/system.js";
import {keepText, keptText, plainIn} from "../../components/shared/keptText.js";
import {hrefOf} from "../../components/shared/pageList.js";
import {exerciseView} from "./exerciseView.js";
import {BLANK, type PartState} from "./partState.js";

/** What this page fetches when it is opened: all kinds of exercise. */
export interface Kinds {
  readonly KINDS: readonly Kind[];
  readonly itemOf: typeof ItemOf;
}

const TALLY_KEY = "plank-and-tee/practice-tally";
/** What the fragment of an address says to begin with: one exercise; a topic stands among its questions. */
const EXERCISE = /^#exercise=([\w-]+)\.(\d{1,10})$/;
/** Seeds that are drawn: short enough to be read out. */
const DRAWN_SEEDS = 100_000;
const LEVELS = ["Any level", "1: one rule", "2: two or three joined", "3: sizes something"] as const;
const RIGHT = new Set(["right", "right from there"]);

/** Exercises one after the other, by topic and level, with a tally. */
export function freePractice({KINDS, itemOf}: Kinds, catalog: Catalog, pages: readonly {readonly name: string; readonly title: string}[], fragment: string): HTMLElement {
  let tally = tallyOf(plainIn(keptText(TALLY_KEY)));
  let last: string | undefined;
  let seedOpen = 0;
  const titleOf = (topic: string) => pages.find(({name}) => name === topic)?.title ?? topic;
  const topics = pages.map(({name}) => name).filter((name) => KINDS.some(({topic}) => topic === name));
  const topicId = uniqueId("topic");
  const levelId = uniqueId("level");
  const topic = element("select", {id: topicId}, element("option", {value: ""}, "All pages"), ...topics.map((name) => element("option", {value: name}, titleOf(name))));
  const level = element("select", {id: levelId}, ...LEVELS.map((words, i) => element("option", {value: i === 0 ? "" : String(i)}, words)));
  const found = element("p", {class: "control-help", role: "status"});
  const place = element("div", {class: "exercise-place"});
  const told = element("p", {class: "practice-tally"});
  const forget = button("Start the count anew", () => {
    tally = NO_TALLY;
    keepText(TALLY_KEY, undefined);
    showTally();
  }, {quiet: true});
  const showTally = () => {
    const words = tallyWords(tally);
    told.replaceChildren(words ? `${words} The count is kept in this browser alone. ` : "No answers yet. What you answer is counted in this browser alone.");
    forget.hidden = words === undefined;
  };

  const ids = () => KINDS.filter((kind) => (topic.value === "" || kind.topic === topic.value) && (level.value === "" || kind.level === Number(level.value))).map(({id}) => id);
  const open = (kind: string, seed: number, focus: boolean) => {
    last = kind;
    seedOpen = seed;
    const item = itemOf(kind, seed, catalog);
    let states: PartState[] = item.parts.map(() => BLANK);
    const card = exerciseView(item, {
      rules: {hints: true, checked: true, inSet: false}, system: readerSystem(), states: () => states,
      change: (index, state) => (states = states.map((each, i) => (i === index ? state : each))),
      marked: (_, mark, first) => {
        if (!first || mark.verdict === "unreadable") return;
        tally = tallied(tally, kind, RIGHT.has(mark.verdict), mark.slip);
        keepText(TALLY_KEY, JSON.stringify(tally));
        showTally();
      },
    });
    const from = element("a", {href: hrefOf(item.topic)}, titleOf(item.topic));
    place.replaceChildren(card, element("div", {class: "row"}, button("Next exercise", () => next(true)), button("The same kind, other numbers", () => open(kind, drawnSeed(), true), {quiet: true})),
      element("p", {class: "exercise-from"}, "From the page ", from, `; level ${item.level}. `, element("a", {href: `#exercise=${kind}.${seed}`}, "A link to this very exercise")));
    if (focus) card.querySelector<HTMLElement>(".exercise-title")?.focus();
  };
  // An answer without a unit is in the units of the question, so the exercise begins anew in others.
  whenReadAnew(place, () => {
    if (last !== undefined) open(last, seedOpen, false);
  });
  const next = (focus: boolean) => {
    const kind = nextKind(ids(), tally, last, Math.random());
    if (kind !== undefined) open(kind, drawnSeed(), focus);
  };
  const choose = () => {
    const count = ids().length;
    found.textContent = count === 0 ? "No exercise of that page has this level; choose another." : `${count === 1 ? "One kind of exercise" : `${count} kinds of exercise`}; each comes with new numbers every time.`;
    if (count > 0) next(false);
  };
  for (const select of [topic, level]) select.addEventListener("change", choose);

  const wanted = new URLSearchParams(location.search).get("topic");
  if (wanted !== null && topics.includes(wanted)) topic.value = wanted;
  showTally();
  choose();
  const [, kind = "", seed] = EXERCISE.exec(fragment) ?? [];
  if (KINDS.some(({id}) => id === kind) && Number(seed) < 2 ** 32) open(kind, Number(seed), false);
  return element("div", {class: "practice-free"},
    element("div", {class: "practice-choice"},
      element("div", {class: "control compact"}, element("label", {for: topicId, class: "control-label"}, "What about?"), topic),
      element("div", {class: "control compact"}, element("label", {for: levelId, class: "control-label"}, "How hard?"), level), found),
    place, element("div", {class: "practice-so-far"}, told, forget));
}

function drawnSeed(): number {
  return 1 + Math.floor(Math.random() * DRAWN_SEEDS);
}
