import {expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {briefOf, type Brief} from "../../lib/schemes/brief.js";
import {ruleWords} from "../../lib/schemes/ruleWords.js";
import {schemesOf, type Scheme} from "../../lib/schemes/scheme.js";
import {wantedCeilingFt} from "../../lib/schemes/wanted.js";
import {catalog, seed} from "../support/designs.js";

/** The classroom wing with one bay of classrooms as deep as the deck spans, windows on one side. */
function wing(spanFt: number, changes: Partial<Brief> = {}): Scheme {
  const design = seed("classroom-wing");
  const brief = briefOf(design, wantedCeilingFt(evaluate(design, catalog)), {spansFt: [spanFt], beamSpansFt: [24], kinds: ["fieldToppedTees"]});
  const scheme = schemesOf({...brief, ...changes}, catalog).at(0);
  if ("none" in scheme) throw new Error(scheme.none);
  return scheme;
}
const failed = ({fails}: Pick<Scheme, "fails">) => fails.map(({id}) => id);

test("a room a little too deep for the head of its window has its ceiling raised by as many inches as it takes", () => {
  const scheme = wing(36);
  const {raisedIn} = scheme.found.story;
  expect([3, 6, 9, 12]).toContain(raisedIn);
  expect(failed(scheme)).not.toContain("room depth");
  // L/W + L/H against 2/(1 - Rb), by hand: a room of 36 ft, 168 ft wide, Rb of half of floor and ceiling, back and side walls.
  const {floor, design} = scheme;
  const [headFt, ceilingFt] = [floor.story.glassHeadIn / 12, floor.story.ceilingHeightIn / 12];
  const [depthFt, widthFt] = [36, design.bay.beamSpanFt * design.bay.baysAlong];
  const [levels, walls] = [(depthFt / 2) * widthFt, ceilingFt * (depthFt + widthFt)];
  const back = (levels * (0.2 + 0.7) + walls * 0.5) / (2 * levels + walls);
  expect(depthFt / widthFt + depthFt / headFt).toBeLessThanOrEqual(2 / (1 - back));
  // One step lower the back is gloomy.
  const lower = evaluate(withValues(design, {"story.floorToFloorFt": design.story.floorToFloorFt - 0.25}), catalog);
  expect(lower.checks.some(({id, verdict}) => id === "room depth" && verdict === "fails")).toBe(true);
  expect(ruleWords(scheme).story).toContain(`made for ${raisedIn} in more than is wanted`);
});

test("one that a foot does not help, or that the brief holds down, keeps the ceiling that is wanted and says what fails", () => {
  for (const scheme of [wing(48), wing(36, {limits: {floorToFloorFt: wing(36).design.story.floorToFloorFt - 0.25}})]) {
    expect(scheme.found.story.raisedIn).toBe(0);
    expect(failed(scheme)).toContain("room depth");
    expect(failed(scheme)).not.toContain("brief: floor to floor");
  }
});

test("a room of no greater depth than its window serves stays as it is wanted", () => {
  expect(wing(28).found.story.raisedIn).toBe(0);
});
