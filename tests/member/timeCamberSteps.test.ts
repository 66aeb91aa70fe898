import {expect, it} from "vitest";
import {camberAfter, timeCamber, type TimeCamberOptions} from "../../lib/member/timeCamber.js";
import {TIME_MEMBERS} from "./timeMembers.js";

it.each(Object.entries(TIME_MEMBERS))("camber by time steps hardly changes with more places or more steps: %s", (_, make) => {
  const member = make();
  const at = (moment: Parameters<typeof camberAfter>[1], options?: TimeCamberOptions) => camberAfter(timeCamber(member, 60, 100, options), moment).camberIn;
  for (const moment of ["release", "erection", "end"] as const) {
    expect(Math.abs(at(moment) - at(moment, {intervals: 32}))).toBeLessThan(0.002);
    expect(Math.abs(at(moment) - at(moment, {steps: 80}))).toBeLessThan(0.01);
  }
});
