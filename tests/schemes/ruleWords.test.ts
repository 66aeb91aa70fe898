import {describe, expect, test} from "vitest";
import {withValue} from "../../lib/design/edit.js";
import {countReasons, REASON_NAMES, reasonState} from "../../lib/design/reasons.js";
import {validateDesign} from "../../lib/design/validate.js";
import {briefOf, usualVary} from "../../lib/schemes/brief.js";
import {designWithReasons, ruleWords} from "../../lib/schemes/ruleWords.js";
import {schemesOf, type Scheme} from "../../lib/schemes/scheme.js";
import {catalog, seeds} from "../support/designs.js";

/** The schemes of one bay and of two, with every kind of edge and girder, on each starter's rooms. */
function schemesFor(design: (typeof seeds)[number]["design"]): Scheme[] {
  const schemes = schemesOf(briefOf(design, 9.5, {...usualVary(design), spansFt: [30], beamSpansFt: [24]}), catalog);
  return Array.from({length: schemes.count}, (_, i) => schemes.at(i)).flatMap((scheme) => ("none" in scheme ? [] : [scheme]));
}

describe.each(seeds)("the rules' words on schemes from $id", ({design}) => {
  test("are reasons that stand until what they explain changes, and none of the base's are left", () => {
    for (const scheme of schemesFor(design)) {
      const read = validateDesign(structuredClone(designWithReasons(scheme)));
      const states = REASON_NAMES.map((name) => reasonState(read, name));
      expect(countReasons(states)).toMatchObject({reader: 0, starter: 0, rule: 4, earlier: 0});
      const changed = withValue(read, "bay.beamSpanFt", 26);
      expect(reasonState(changed, "edgeBeam")).toMatchObject({standing: "earlier choice", by: "rule"});
    }
  });

  test("name what was chosen", () => {
    for (const scheme of schemesFor(design)) {
      const {deck, edgeBeam, frame, story} = ruleWords(scheme);
      const {design: made, floor} = scheme;
      expect(deck).toContain(made.deck.member);
      expect(deck).toContain(made.deck.pattern);
      expect(edgeBeam).toContain(`${Math.round(floor.edgeBeam.depthIn)}`);
      expect(edgeBeam).toContain(made.edgeBeam.steel === "bars" ? made.edgeBeam.barSize : `${made.edgeBeam.strands} strands`);
      expect(frame).toContain(made.bay.baysAcross > 1 ? `${made.girder.strands} strands` : "no girder");
      expect(frame).toContain(`${made.column.sideIn} in`);
      expect(story).toContain(`${Math.floor(made.story.floorToFloorFt)}'`);
      expect(edgeBeam).toContain({ledge: "the shallowest ledge,", pockets: "the shallowest foot below its pockets,", below: "the narrowest beam below the deck"}[made.edgeBeam.kind]);
      const {mains} = scheme.found.story;
      expect(/(One main|\d+ mains) of .* (brings|bring) the air/.test(story ?? ""), story).toBe(made.story.ceiling !== "none" && mains > 0);
      for (const words of [deck, edgeBeam, frame, story]) expect(words).not.toMatch(/undefined|NaN|\s\s/);
    }
  });
});
