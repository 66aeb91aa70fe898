import {describe, expect, test} from "vitest";
import {checkedDaylight} from "../../lib/daylight/input.js";
import {refused} from "../support/errors.js";
import {ROOM, WINDOW} from "./room.js";

const withWindow = (changes: object) => ({...ROOM, window: {...WINDOW, ...changes}});

describe("checkedDaylight", () => {
  test("lets an ordinary room pass, with one window or two", () => {
    expect(checkedDaylight(ROOM)).toBe(ROOM);
    expect(() => checkedDaylight({...ROOM, opposite: {...WINDOW, widthFt: "endless"}})).not.toThrow();
  });

  test("refuses an upstand that reaches the window head", () => {
    refused(() => checkedDaylight(withWindow({sillIn: 120})), {path: "window.sillIn", value: 120, message: /no glass/});
    refused(() => checkedDaylight(withWindow({sillIn: 125})), {path: "window.sillIn", allowed: "below the window head, 120 in"});
  });

  test("refuses a window that does not fit into its wall", () => {
    refused(() => checkedDaylight(withWindow({widthFt: 24.5})), {path: "window.widthFt", allowed: "0.5 to 24 ft"});
    refused(() => checkedDaylight(withWindow({headIn: 127})), {path: "window.headIn", allowed: "1 to 126 in"});
    refused(() => checkedDaylight({...ROOM, opposite: {...WINDOW, widthFt: 30}}), {path: "opposite.widthFt"});
  });

  test.each([
    ["depthFt", {depthFt: 0}], ["widthFt", {widthFt: Number.NaN}], ["ceilingIn", {ceilingIn: 0}], ["workPlaneIn", {workPlaneIn: 200}], ["offsetFt", {offsetFt: 13}],
    ["reflectances.wallShare", {reflectances: {...ROOM.reflectances, wallShare: 1}}],
    ["window.frameShare", withWindow({frameShare: 0.9})], ["window.transmittanceShare", withWindow({transmittanceShare: 1.2})],
    ["window.maintenanceShare", withWindow({maintenanceShare: 0})], ["window.revealIn", withWindow({revealIn: -1})],
    ["window.obstruction.angleDeg", withWindow({obstruction: {angleDeg: 90}})],
    ["window.obstruction.distanceFt", withWindow({obstruction: {heightFt: 20, distanceFt: 0}})],
    ["window.obstruction.heightFt", withWindow({obstruction: {heightFt: Infinity, distanceFt: 10}})],
  ])("refuses a bad %s", (path, changes) => {
    refused(() => checkedDaylight({...ROOM, ...changes}), {path});
  });
});
