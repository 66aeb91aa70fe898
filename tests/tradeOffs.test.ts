import {expect, test} from "vitest";
import {withValues} from "../lib/design/edit.js";
import {tradeOffs, type TradeOffInput} from "../lib/tradeOffs.js";
import {catalog, seed} from "./support/designs.js";
import {once} from "./support/once.js";

function run(input: TradeOffInput) {
  const work = tradeOffs(catalog, input);
  let step = work.next();
  let last = 0;
  for (; !step.done; step = work.next()) {
    expect(step.value.tried).toBeGreaterThanOrEqual(last);
    last = step.value.tried;
  }
  return step.value;
}

const PLANKS = withValues(seed("records-store"), {"consider.fieldToppedTees": false, "consider.pretoppedTees": false, "consider.planks": true});
/** With the table's own factors, of planks alone. */
const planks = once(() => run({design: PLANKS, ownFactors: {}, everyKind: false}));

test("the trade-offs of a design keep to the kinds that it considers, or try them all", () => {
  const some = planks();
  const all = run({design: PLANKS, ownFactors: {}, everyKind: true});
  expect(some.decks.every((deck) => deck.use === "plank")).toBe(true);
  expect(all.tried).toBeGreaterThan(some.tried);
  expect(new Set(all.decks.map((deck) => deck.use)).size).toBeGreaterThan(1);
});

test("a reader's own carbon factors change the carbon and nothing else", () => {
  const [first] = catalog.carbonFactors.filter(({material}) => material === "strand");
  const plain = planks();
  const dear = run({design: PLANKS, ownFactors: {[first!.id]: 10 * first!.kgPerUnit}, everyKind: false});
  expect(dear.tried).toBe(plain.tried);
  const same = dear.decks.find(({id}) => id === plain.decks[0]?.id);
  if (same) expect(same.measures.carbonKgPerFt2).toBeGreaterThan(plain.decks[0]!.measures.carbonKgPerFt2);
  expect(dear.worked).toBe(plain.worked);
});

test("plain data come back, fit for a message between worker and page", () => {
  const found = planks();
  expect(structuredClone(found)).toEqual(found);
});
