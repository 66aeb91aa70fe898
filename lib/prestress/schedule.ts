import {requireNumber} from "../check.js";

/** When things happen to a member, in days after its concrete was cast. */
export interface Schedule {
  /** Strands cut. */
  readonly releaseDay: number;
  /** Member at erection. */
  readonly erectionDay: number;
  /** Topping cast; of no account where there is none. */
  readonly toppingDay: number;
  /** Superimposed dead load added. */
  readonly loadingDay: number;
  /** End of the computation. */
  readonly endDay: number;
}

/** A moment of the schedule. */
export type TimeMoment = "release" | "erection" | "topping" | "loading" | "end";

/** An overnight release, set after six weeks, topped after two months, finished after three; and fifty years. */
export const USUAL_SCHEDULE: Schedule = {releaseDay: 0.75, erectionDay: 42, toppingDay: 60, loadingDay: 90, endDay: 18250};

/** Days that the topping sets before anything is put on it, at least. */
const SETTING_DAYS = 1;

/**
 * Returns the schedule if its days are possible and follow each other.
 *
 * @param topped - whether the topping's day counts
 * @throws InputError if a day is out of range: release 0.5 to 28; then each not before the one it follows, the loads a
 * day after the topping, and the end ten days after the loads, 36,500 days (a century) at most
 */
export function checkSchedule(schedule: Schedule, topped: boolean): Schedule {
  const rule = (path: keyof Schedule, label: string, min: number, max: number) =>
    requireNumber(schedule[path], {path, label, unit: "days", min, max});
  rule("releaseDay", "age when the strands are cut", 0.5, 28);
  rule("erectionDay", "age when the member is set", schedule.releaseDay, 1825);
  if (topped) rule("toppingDay", "age when the topping is cast", schedule.erectionDay, 3650);
  rule("loadingDay", "age when the dead load comes", topped ? schedule.toppingDay + SETTING_DAYS : schedule.erectionDay, 7300);
  rule("endDay", "age at the end", schedule.loadingDay + 10, 36500);
  return schedule;
}

/** A day at which a time step ends, and the moments of the schedule that fall on it. */
export interface TimeStop {
  readonly day: number;
  readonly moments: readonly TimeMoment[];
}

/** The moments of a schedule in their order; the topping's only where there is one. */
export function timeMoments(schedule: Schedule, topped: boolean): {moment: TimeMoment; day: number}[] {
  return [
    {moment: "release", day: schedule.releaseDay},
    {moment: "erection", day: schedule.erectionDay},
    ...(topped ? [{moment: "topping" as const, day: schedule.toppingDay}] : []),
    {moment: "loading", day: schedule.loadingDay},
    {moment: "end", day: schedule.endDay},
  ];
}

/**
 * The days at which time steps end, all moments among them. Between two moments the steps' lengths grow with the
 * logarithm of the time since the first, for creep and shrinkage are quick after a change and slow later.
 *
 * @param steps - steps between two moments
 */
export function timeStops(schedule: Schedule, topped: boolean, steps: number): TimeStop[] {
  const moments = timeMoments(schedule, topped);
  const days = [...new Set(moments.map(({day}) => day))];
  return days.flatMap((day, i): TimeStop[] => {
    const stop: TimeStop = {day, moments: moments.filter((one) => one.day === day).map(({moment}) => moment)};
    const next = days[i + 1];
    if (next === undefined) return [stop];
    return [stop, ...Array.from({length: steps - 1}, (_, k) => ({day: day + (1 + next - day) ** ((k + 1) / steps) - 1, moments: []}))];
  });
}
