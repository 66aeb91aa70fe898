import {atLeast, outOfRange} from "../../checks.js";
import {fireNeeds, fireRating, type FireSetting} from "../../member/fire.js";
import type {Member} from "../../member/member.js";
import {given, type StepValue} from "../../step.js";
import type {Cell} from "../cell.js";
import {GATE_LOOK, type Gate} from "../limit.js";

/** Use of a rating that there is nothing to set against: far beyond it. */
const BEYOND = 99;

/** The floor keeps heat out, and strength in, for the hours required. */
export const fireLimit: Gate<"fire"> = {
  name: "fire", kind: "gate", setting: "fire",
  clause: "IBC 2021 722.2.2, 722.2.3",
  asks: "Does it hold back the heat and keep its strength for the hours required?",
  look: {letter: "I", ...GATE_LOOK},

  use({member, rules: {fire: asked}}) {
    if (!asked) return undefined;
    const {byThicknessHours, byCoverHours} = fireRating(member, asked);
    return Math.min(BEYOND, asked.hours / Math.min(byThicknessHours, byCoverHours ?? 0));
  },

  checks({member, rules: {fire: asked}}, {service: {fire: rating}}) {
    // Stryker disable next-line LogicalOperator: there is a rating where hours are asked, and only there
    if (!asked || !rating) return [];
    const cover = {id: "deck fire cover", label: "Fire: cover of the strands", unit: "h"};
    return [
      atLeast({
        id: "deck fire thickness", label: "Fire: thickness against heat", unit: "h", clause: "IBC 2021 722.2.2.1", meetingIsEnough: true,
        holds: "The floor keeps the room above cool for the hours required.",
        fails: "The floor is too thin to keep the room above cool: a thicker topping, or carbonate or lightweight aggregate.",
      }, rating.byThicknessHours, asked.hours),
      rating.byCoverHours === undefined
        ? outOfRange({...cover, clause: fireLimit.clause, message: "The stems are smaller than the code's table covers; only a fire test can tell."}, asked.hours, 0)
        : atLeast({
          ...cover, clause: "IBC 2021 722.2.3", meetingIsEnough: true,
          holds: "The strands stay cool enough for the hours required.",
          fails: `The strands would get too hot: ${coolerStrands(member, asked)}.`,
        }, rating.byCoverHours, asked.hours),
    ];
  },

  measure({member, rules}) {
    const asked = rules.fire as NonNullable<Cell["rules"]["fire"]>;
    const {byThicknessHours, byCoverHours} = fireRating(member, asked);
    const values: Record<string, StepValue> = {R_t: given(byThicknessHours, "h", "rating by thickness")};
    if (byCoverHours !== undefined) values["R_c"] = given(byCoverHours, "h", "rating by cover of the strands");
    return {
      symbol: "R", label: `fire rating, where ${asked.hours} h is required`, unit: "h", source: fireLimit.clause,
      expression: byCoverHours === undefined ? "R_t" : "min(R_t, R_c)", values, result: Math.min(byThicknessHours, byCoverHours ?? Infinity),
      note: byCoverHours === undefined ? "The stems are smaller than those in the code\u2019s table for cover, so they have no rating." : undefined,
    };
  },

  loses: () => "Carries the load, but does not reach the required fire rating.",
};

/** What keeps the strands cooler for the hours required; some stems are too thin for any cover, some even in a frame that restrains the floor. */
function coolerStrands(member: Member, asked: FireSetting & {readonly hours: number}): string {
  const restrainedHours = asked.restrained ? 0 : fireRating(member, {...asked, restrained: true}).byCoverHours ?? 0;
  const ways = [
    ...(fireNeeds(member, asked, asked.hours).coverIn === undefined ? [] : ["higher strands"]),
    ...(restrainedHours < asked.hours ? [] : ["a frame that restrains the floor"]),
  ];
  return ways.length > 0 ? ways.join(", or ") : "wider stems or a coating that insulates them";
}
