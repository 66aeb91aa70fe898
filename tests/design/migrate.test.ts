import {describe, expect, test} from "vitest";
import {columnLineToBeamEndIn} from "../../lib/beams/beamEnds.js";
import type {ReasonName} from "../../lib/design/design.js";
import type {Field} from "../../lib/design/entries.js";
import {DESIGN_VERSION, FIELDS} from "../../lib/design/fields.js";
import {withValue} from "../../lib/design/edit.js";
import {count, group, list, number, optional, since, text} from "../../lib/design/entries.js";
import {migrate, withAdded} from "../../lib/design/migrate.js";
import {valueAt} from "../../lib/design/plain.js";
import {REASON_NAMES, choiceOf, explainedPaths, reasonState} from "../../lib/design/reasons.js";
import {validateDesign, validateField} from "../../lib/design/validate.js";
import {evaluate} from "../../lib/evaluate.js";
import {refused} from "../support/errors.js";
import {catalog, seed, seeds} from "../support/designs.js";

/** A design as the first version of the file held it. */
function firstVersion(id: string): Record<string, unknown> {
  const design = structuredClone(seed(id)) as unknown as Record<string, Record<string, unknown>>;
  for (const name of ["sagLimit", "keepCamber", "walking", "fireHours", "fireRestrained"]) delete design["criteria"]?.[name];
  delete design["deck"]?.["aggregate"];
  for (const group of ["girder", "roof", "column", "ground", "diaphragm", "services", "daylight", "topping"]) delete design[group];
  for (const name of ["kind", "steel", "strands", "padWidthIn", "padLengthIn", "padThicknessIn"]) delete design["edgeBeam"]?.[name];
  delete design["story"]?.["frameIn"];
  for (const name of ["frame", "light", "roof"]) delete design["reasons"]?.[name];
  delete design["writtenFor"];
  const {story, ...rest} = design;
  const {story: reason, ...reasons} = design["reasons"] as Record<string, unknown>;
  return {...rest, storey: story, reasons: {...reasons, storey: reason}, version: 1};
}

describe("an older design file", () => {
  test("of the third version ends its beams where they ended then, 10 in off the column line", () => {
    const {column, ...rest} = seed("parking-structure");
    const {sideIn: _, ...old} = column;
    const now = validateDesign({...rest, column: old, version: 3});
    expect(columnLineToBeamEndIn(now)).toBe(10);
  });

  test("of the third version has a main duct for one bay's floor, as it had then", () => {
    for (const {id} of seeds) {
      const now = validateDesign(firstVersion(id));
      expect(now.services.servedFt2).toBe(now.bay.spanFt * now.bay.beamSpanFt);
    }
    const {bay: _, ...none} = firstVersion("branch-library");
    refused(() => validateDesign(none), {path: "bay"});
  });

  test("of the fourth version keeps all that it held under names spelled otherwise, and its reasons stand", () => {
    for (const {id} of seeds) {
      const now = validateDesign(seed(id));
      // As that version wrote it: the names stand as keys, and at the head of the paths that a reason was written for.
      const old = JSON.parse(JSON.stringify({...now, version: 4}).replaceAll('"story"', '"storey"').replaceAll('"story.', '"storey.').replaceAll('"strandHeightCenterIn"', '"strandHeightCentreIn"').replaceAll("deck.strandHeightCenterIn", "deck.strandHeightCentreIn")) as Record<string, unknown>;
      expect(Object.keys(old)).toContain("storey");
      expect(JSON.stringify(old)).toContain('"storey.floorToFloorFt":');
      expect(validateDesign(old)).toEqual(now);
    }
  });

  test("with a name of today and one of then is refused for the older one", () => {
    const now = seed("branch-library");
    refused(() => validateDesign({...now, version: 4, storey: now.story}), {path: "storey"});
    refused(() => validateDesign({...now, version: 4, reasons: {...now.reasons, storey: "old"}}), {path: "reasons.storey"});
    refused(() => validateDesign({...now, version: 4, story: undefined, storey: {...now.story, floorToFloorFt: 0}}), {path: "storey"});
  });

  test("has its reasons for what stands in it", () => {
    const now = validateDesign(firstVersion("branch-library"));
    expect(Object.keys(now.writtenFor)).toEqual(["loads", "reduction", "deck", "topping", "edgeBeam", "story"].sort((a, b) => REASON_NAMES.indexOf(a as ReasonName) - REASON_NAMES.indexOf(b as ReasonName)));
    for (const name of REASON_NAMES) expect(reasonState(now, name)).toMatchObject({standing: now.reasons[name] ? "stands" : "none", changes: []});
  });

  test("is brought up to this version without losing anything", () => {
    for (const {id} of seeds) {
      const old = firstVersion(id);
      const now = validateDesign(old);
      expect(now.version).toBe(DESIGN_VERSION);
      expect(now).toMatchObject({...JSON.parse(JSON.stringify(old).replaceAll('"storey"', '"story"')) as object, version: DESIGN_VERSION});
    }
  });

  test("asks for nothing that it did not ask for then", () => {
    const {deck} = evaluate(validateDesign(firstVersion("branch-library")), catalog);
    expect(deck.service.fire).toBeUndefined();
    expect(deck.service.vibration).toBeUndefined();
    expect(deck.criteria.limits).not.toContain("camber");
  });

  test("of the first version had no rating, no walkers, camber that might go, columns that do not sway and beams of bars with a ledge", () => {
    const now = validateDesign(firstVersion("branch-library"));
    expect(now.criteria).toMatchObject({sagLimit: "L/360", keepCamber: false, walking: "none", fireHours: "0", fireRestrained: false});
    expect(now.column.sways).toBe(false);
    expect(now.edgeBeam).toMatchObject({kind: "ledge", steel: "bars"});
    expect(now.reasons).toMatchObject({frame: "", light: ""});
  });

  test("keeps what it states itself, in whatever version that came to be asked for", () => {
    const old = firstVersion("branch-library");
    const stated = {...old, version: 2, criteria: {...old["criteria"] as object, sagLimit: "L/480", keepCamber: true, walking: "busy", fireHours: "2", fireRestrained: true}, deck: {...old["deck"] as object, aggregate: "carbonate"}};
    expect(validateDesign(stated).criteria).toMatchObject({sagLimit: "L/480", keepCamber: true, walking: "busy"});
    // The second version asked for these: a file of it that leaves them out is wrong.
    refused(() => validateDesign({...old, version: 2}), {path: "deck.aggregate"});
  });

  test("has reasons that were written for what its fields of later versions are taken to have meant", () => {
    const {sideIn: _, ...column} = seed("parking-structure").column;
    const {"column.sideIn": __, ...choice} = choiceOf(seed("parking-structure"), "frame");
    const old = {...seed("parking-structure"), column, version: 3, writtenFor: {frame: {by: "reader", choice}}};
    const now = validateDesign(old);
    expect(now.writtenFor.frame?.choice).toEqual({...choice, "column.sideIn": 18});
    expect(reasonState(withValue(now, "column.sideIn", 24), "frame").changes).toEqual([{label: "column side that the beams clear", then: "18 in", now: "24 in"}]);
  });

  test("with a bay that is none is refused for the bay, not for what follows from it", () => {
    const old = firstVersion("branch-library");
    for (const [bay, path] of [[{...old["bay"] as object, spanFt: "40"}, "bay.spanFt"], [{...old["bay"] as object, beamSpanFt: null}, "bay.beamSpanFt"]] as const) refused(() => validateDesign({...old, bay}), {path});
  });

  test("of the sixth version has no snow on a roof that nobody uses, whose one number for all that comes and goes stays", () => {
    const {snow: _, ...old} = seed("branch-library");
    const {snow, column} = validateDesign({...old, version: 6});
    expect(snow).toMatchObject({groundPsf: 0, higherFt: 0, use: "ordinary"});
    expect(column.roofLivePsf).toBe(20);
  });

  test("of the fifth version has neither author nor firm, and takes no name that was given up before it", () => {
    const {author: _, firm: __, ...old} = seed("branch-library");
    expect(validateDesign({...old, version: 5})).toMatchObject({author: "", firm: "", version: DESIGN_VERSION});
    refused(() => validateDesign({...old, version: 5, story: undefined, storey: old.story}), {path: "storey"});
    refused(() => validateDesign({...old, version: 5, reasons: {...old.reasons, storey: "old"}}), {path: "reasons.storey"});
  });

  test("of the fifth version is not given names that were changed before it, nor a reason a field that is not of its choice", () => {
    const {author: _, firm: __, story, ...old} = seed("branch-library");
    // "story" is missing, and "storey" has no meaning any more: in the fourth version it would have been taken for it.
    refused(() => validateDesign({...old, version: 5, storey: story}), {path: "storey"});
    expect(() => validateDesign({...old, version: 4, storey: story})).not.toThrow();
    const strange = {frame: {by: "reader", choice: {"deck.pattern": "68-S"}}};
    refused(() => validateDesign({...seed("branch-library"), version: 3, writtenFor: strange}), {path: "writtenFor.frame.choice.deck.pattern"});
  });

  test("keeps what a reason says that it was written for: no field of its own version, or before, is put beside it", () => {
    const old = {...seed("branch-library"), version: 3};
    const choiceNow = (choice: object) => validateDesign({...old, writtenFor: {frame: {by: "reader", choice}}}).writtenFor.frame?.choice;
    // The fourth version brought the two sizes of the column to this choice, and the file tells what they are; later ones brought what they take it to have meant.
    const later = explainedPaths("frame").filter((path) => (FIELDS[path]?.since?.version ?? 1) > 3);
    expect(later).toContain("column.sideIn");
    const now = validateDesign(old);
    expect(choiceNow({"bay.spanFt": 40})).toEqual({"bay.spanFt": 40, ...Object.fromEntries(later.map((path) => [path, valueAt(now, path)]))});
    // Who wrote it without what for: for the file as it stands.
    const named = validateDesign({...old, writtenFor: {frame: {by: "starter"}}});
    expect(named.writtenFor.frame).toEqual({by: "starter", choice: choiceOf(named, "frame")});
  });

  test("is refused where what its reasons were written for is none", () => {
    const old = {...seed("branch-library"), version: 3};
    for (const [writtenFor, path] of [[3, "writtenFor"], [{deck: null}, "writtenFor.deck"], [{deck: {by: "reader", choice: null}}, "writtenFor.deck.choice"], [{ceiling: {by: "reader", choice: {}}}, "writtenFor.ceiling"]] as const) {
      refused(() => validateDesign({...old, writtenFor}), {path});
    }
    refused(() => validateDesign({...old, reasons: null}), {path: "reasons"});
  });

  test("is still refused for what is wrong in it", () => {
    const old = firstVersion("branch-library");
    refused(() => validateDesign({...old, color: "red"}), {path: "color"});
    refused(() => validateDesign({...old, deck: 3}), {path: "deck"});
  });
});

test("migrate leaves this version, a later one and what is no version alone", () => {
  for (const version of [DESIGN_VERSION, DESIGN_VERSION + 1, 0, -1, 1.5, "1", undefined]) {
    const content = {version};
    expect(migrate(content)).toBe(content);
  }
});

describe("a field that came with a later version", () => {
  const wood = {
    roof: group("Roof", {rafters: since(7, ({spanFt}) => Number(spanFt) / 2, count("rafters", "", 1, 90, ""))}),
    walls: list("walls", 0, 9, {name: text("name", 9, ""), layers: since(7, 2, count("layers", "", 1, 5, ""))}),
    porch: optional(group("Porch", {widthFt: since(7, 6, number("width", "ft", 1, 20, 1, ""))})),
    beams: since(7, [{name: "ridge"}], list("beams", 0, 9, {name: text("name", 9, "")})),
    cellar: group("Cellar", {depthFt: number("depth", "ft", 1, 20, 1, "")}),
  };
  const added = (content: Record<string, unknown>) => withAdded(wood, content, 7, content);

  test("is in a group that was not there, with what follows from the rest of the file", () => {
    expect(added({spanFt: 24, beams: []})).toEqual({spanFt: 24, roof: {rafters: 12}, beams: []});
    expect(added({roof: {rafters: 3}, beams: []})).toEqual({roof: {rafters: 3}, beams: []});
  });

  test("may be a list, which a file may state itself, empty too", () => {
    expect(added({spanFt: 24})).toMatchObject({beams: [{name: "ridge"}]});
    expect(withAdded(wood, {beams: undefined}, 7, {})).toMatchObject({beams: undefined});
    expect(withAdded(wood, {}, 6, {})).not.toHaveProperty("beams");
    for (const beams of [[], [{name: "purlin"}], null, 3]) expect(added({beams})).toMatchObject({beams});
  });

  test("is in each entry of a list, and in a part that may be left out only where that is there", () => {
    expect(added({roof: {rafters: 3}, beams: [], walls: [{name: "north"}, {name: "south", layers: 1}], porch: {}})).toEqual({beams: [], roof: {rafters: 3}, walls: [{name: "north", layers: 2}, {name: "south", layers: 1}], porch: {widthFt: 6}});
    expect(added({roof: {rafters: 3}})).not.toHaveProperty("porch");
  });

  test("comes with its own version alone, and leaves what is no branch for validation to name", () => {
    expect(withAdded(wood, {walls: [{name: "north"}]}, 6, {})).toEqual({walls: [{name: "north"}]});
    for (const odd of [null, 3, "roof", []]) expect(added({roof: odd, walls: odd, porch: odd, beams: odd})).toEqual({roof: odd, walls: odd, porch: odd, beams: odd});
    expect(added({roof: {rafters: 3}, walls: [null, 3]})).toMatchObject({walls: [null, 3]});
    expect(withAdded(wood, {roof: {rafters: 3}}, 7, {})).not.toHaveProperty("cellar");
  });

  test("of the sixth version has a roof of two loads, and meanwhile the floor's member and the usual layers for one of its own", () => {
    for (const {design} of seeds) {
      const {roof: _, ...old} = design;
      const {roof} = validateDesign({...old, version: 6});
      expect(roof).toMatchObject({given: "loads", member: design.deck.member, pattern: design.deck.pattern, toppingIn: design.deck.toppingIn, fireHours: design.criteria.fireHours});
      expect(roof.layers.length).toBeGreaterThan(1);
      expect(roof.strengthPsi).toBeUndefined();
    }
  });

  test("of the design is taken to have meant what the field allows", () => {
    for (const [path, {since: brought}] of Object.entries(FIELDS)) {
      if (!brought) continue;
      expect(brought.version, path).toBeGreaterThan(1);
      const {meant} = brought;
      for (const {design} of seeds) expect(() => validateField(FIELDS[path] as Field, path, typeof meant === "function" ? (meant as (content: object) => unknown)(design) : meant), path).not.toThrow();
    }
  });
});
