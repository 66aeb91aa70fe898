import {describe, expect, test} from "vitest";
import {handbookCriteria, type Criteria} from "../../lib/deck/criteria.js";
import {deckState} from "../../lib/deck/deckResult.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {sagCurve, walkingCurve, type SagPoint} from "../../lib/deck/serviceCurves.js";
import {vibration} from "../../lib/member/vibration.js";
import {memberWith} from "../support/members.js";
import {once} from "../support/once.js";

const member = once(() => memberWith("10DT24", "68-S"));
const floor: Criteria = {...handbookCriteria(false), sustainedLiveShare: 0.4};

/** The curve's sag at a load, by straight lines between its corners. */
function along(points: readonly SagPoint[], livePsf: number): number {
  const i = Math.max(1, points.findIndex((point) => point.livePsf >= livePsf));
  const [a, b] = [points[i - 1] as SagPoint, points[i] as SagPoint];
  return a.sagIn + ((b.sagIn - a.sagIn) * (livePsf - a.livePsf)) / (b.livePsf - a.livePsf);
}

describe.each(["L/360", "L/480", "L/240"] as const)("sag by %s", (sagLimit) => {
  const criteria = {...floor, sagLimit};
  const curve = () => sagCurve(member(), 44, criteria, 60, 200);

  test("runs straight between its corners, through today's sag", () => {
    expect(curve().cracks).toBeDefined();
    for (const livePsf of [0, 30, 60, 90, 140, 200]) {
      const {service} = deckState(member(), 44, criteria, livePsf);
      expect(along(curve().points, livePsf)).toBeCloseTo(service.movementIn, 9);
    }
    const {service} = deckState(member(), 44, criteria, 60);
    expect(curve().today).toEqual({livePsf: 60, sagIn: service.movementIn});
    expect(curve().allowedIn).toBe(service.allowedMovementIn);
  });

  test("grows steeper where the soffit cracks", () => {
    const [start, cracks, end] = curve().points as [SagPoint, SagPoint, SagPoint];
    expect((end.sagIn - cracks.sagIn) / (end.livePsf - cracks.livePsf)).toBeGreaterThan(1.5 * ((cracks.sagIn - start.sagIn) / cracks.livePsf));
  });

  test("crosses the limit at the load that deflection allows", () => {
    const {limitsPsf} = safeLoad(member(), 44, {...criteria, limits: ["deflection"]});
    const livePsf = (limitsPsf.deflection as number) - criteria.superimposedDeadPsf;
    if (livePsf > 0) expect(along(sagCurve(member(), 44, criteria, 60, 400).points, livePsf)).toBeCloseTo(curve().allowedIn, 9);
    else expect(curve().points[0]?.sagIn).toBeGreaterThan(curve().allowedIn);
  });
});

test("a member that stays whole has one straight stretch", () => {
  const curve = sagCurve(memberWith("10DT24", "148-S"), 24, floor, 40, 80);
  expect(curve.cracks).toBeUndefined();
  expect(curve.points).toHaveLength(2);
});

test("one that its dead load has cracked has one as well", () => {
  const curve = sagCurve(member(), 70, floor, 40, 80);
  expect(curve.cracks).toBeUndefined();
  expect(curve.points).toHaveLength(2);
});

describe("walking over the span", () => {
  const curve = () => walkingCurve(member(), 10, "quiet", [20, 40, 60, 80]);

  test("tells what the member does at each span", () => {
    for (const {spanFt, frequencyHz, accelerationPercent} of curve().points) {
      const found = vibration(member(), spanFt, 100, "quiet");
      expect(frequencyHz).toBe(found.frequencyHz);
      expect(accelerationPercent).toBeCloseTo(100 * found.acceleration, 12);
    }
    expect(curve().allowedPercent).toBe(0.5);
  });
});

test("a walking curve over no span is empty", () => {
  expect(walkingCurve(member(), 10, "quiet", [])).toEqual({points: [], allowedPercent: 0});
});
