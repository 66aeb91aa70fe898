import {expect, test} from "vitest";
import {HANDBOOK_LIMITS} from "../../lib/deck/limits.js";
import {handbookCriteria} from "../../lib/deck/criteria.js";

test("handbookCriteria count 10 psf of the load as dead on bare members and 15 psf on topped ones", () => {
  expect(handbookCriteria(false)).toMatchObject({superimposedDeadPsf: 10, sustainedLiveShare: 0, tensionClass: "T", deadFactor: 1.2, liveFactor: 1.6, deadOnlyFactor: 1.2});
  expect(handbookCriteria(false).limits).toEqual(HANDBOOK_LIMITS);
  expect(handbookCriteria(true)).toEqual({...handbookCriteria(false), superimposedDeadPsf: 15});
});
