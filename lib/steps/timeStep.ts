import {STRAND_MODULUS_KSI, STRAND_YIELD_KSI} from "../materials/strand.js";
import type {Member} from "../member/member.js";
import {relaxationBeforeKsi, timeModels, timeSection} from "../member/timeLosses.js";
import {JACKING_STRESS_KSI} from "../prestress/losses.js";
import {USUAL_SCHEDULE, type Schedule} from "../prestress/schedule.js";
import {makeClock, type TimeStep} from "../prestress/timeClock.js";
import {relaxationKsi, stepThroughTime, type SectionAtTime} from "../prestress/timeStep.js";
import {given, type Step, type Working} from "../step.js";

/**
 * Losses by time steps at midspan: release, the first step after it, and the sum of all steps. The later steps are like
 * the first, with one more change of stress to creep under each time.
 */
export function timeStepWorking(member: Member, spanFt: number, superimposedDeadPlf: number, schedule: Schedule = USUAL_SCHEDULE): Working {
  const section = timeSection(member, spanFt, 0.5, superimposedDeadPlf);
  const models = timeModels(member);
  const clock = makeClock(schedule, models);
  const beforeKsi = relaxationBeforeKsi(schedule);
  const history = stepThroughTime(section, clock, beforeKsi);
  const [cut, next, last] = [history[0], history[1], history.at(-1)] as [SectionAtTime, SectionAtTime, SectionAtTime];
  const first = clock.steps[0] as TimeStep;
  const concreteKsi = (cut.lostKsi.elastic * section.releaseModulusKsi) / STRAND_MODULUS_KSI;
  const slackKsi = relaxationKsi(cut.stressKsi, 24 * first.fromDay, 24 * first.day);
  const shared = {
    A_ps: given(section.strandAreaIn2, "in2", "area of all strands"), A: given(section.areaIn2, "in2", "area"),
    e: given(section.eccentricityIn, "in", "strands below the centroid"), I: given(section.inertiaIn4, "in4", "second moment of area"),
    E_ps: given(STRAND_MODULUS_KSI, "ksi", "modulus of the strand"),
  };
  const eci = given(section.releaseModulusKsi, "ksi", "modulus at release");
  const mo = given(section.selfKipIn, "kip-in", "moment of own weight");
  const fpj = given(JACKING_STRESS_KSI, "ksi", "jacking stress");
  const fpy = given(STRAND_YIELD_KSI, "ksi", "yield stress of the strand");
  const days = {t_0: given(schedule.releaseDay, "days", "age at the cut"), t_1: given(first.day, "days", "age at the end of the first step")};
  const fp0 = given(cut.stressKsi, "ksi", "strand stress just after release");
  const creep = given(models.member.creep, "", "ultimate creep coefficient");
  const steps: Step[] = [
    {
      symbol: "f_R0", label: "relaxation until release", expression: "f_pj * log10(24 * t_0) / 45 * (f_pj / f_py - 0.55)",
      values: {f_pj: fpj, f_py: fpy, t_0: days.t_0}, result: beforeKsi, unit: "ksi", source: "Magura et al. 1964",
    },
    {
      symbol: "f_p0", label: "strand stress just after release", expression: "(f_pj - f_R0 + E_ps / E_ci * M_o * e / I) / (1 + E_ps / E_ci * A_ps * (1 / A + e^2 / I))",
      values: {...shared, f_pj: fpj, f_R0: given(beforeKsi, "ksi", "relaxation until release"), E_ci: eci, M_o: mo},
      result: cut.stressKsi, unit: "ksi", source: "elastic theory",
      note: "The strands shorten with the concrete that they compress, so both are solved at once.",
    },
    {
      symbol: "f_c0", label: "concrete at the strands, just after release", expression: "A_ps * f_p0 * (1 / A + e^2 / I) - M_o * e / I",
      values: {...pick(shared, "A_ps", "A", "e", "I"), f_p0: fp0, M_o: mo}, result: concreteKsi, unit: "ksi", source: "elastic theory",
    },
    {
      symbol: "C_1", label: "growth of the creep coefficient in the first step", expression: "C_u * 1.13 * max(1, t_0)^(-0.094) * (t_1 - t_0)^0.6 / (10 + (t_1 - t_0)^0.6)",
      values: {C_u: creep, ...days}, result: first.creep[0] as number, unit: "", source: "ACI 209R-92 2.2.1, 2.3.1",
    },
    {
      symbol: "epsilon_s1", label: "shrinkage in the first step", expression: "epsilon_su * (t_1 - t_0) / (55 + t_1 - t_0)",
      values: {epsilon_su: given(models.member.shrinkage, "", "ultimate shrinkage"), ...days}, result: first.shrinkage, unit: "", source: "ACI 209R-92 2.2.2",
    },
    {
      symbol: "f_R1", label: "relaxation in the first step", expression: "max(0, f_p0 / 45 * (f_p0 / f_py - 0.55) * log10(t_1 / t_0))",
      values: {f_p0: fp0, f_py: fpy, ...days}, result: slackKsi, unit: "ksi", source: "Magura et al. 1964",
    },
    {
      symbol: "f_p1", label: "strands after the first step", expression: "f_p0 - (E_ps * (C_1 * f_c0 / E_ci + epsilon_s1) + f_R1) / (1 + E_ps / E_c * A_ps * (1 / A + e^2 / I))",
      values: {
        ...shared, f_p0: fp0, C_1: given(first.creep[0] as number, "", "growth of the creep coefficient"), f_c0: given(concreteKsi, "ksi", "concrete at the strands"),
        E_ci: eci, epsilon_s1: given(first.shrinkage, "", "shrinkage in the first step"), f_R1: given(slackKsi, "ksi", "relaxation in the first step"),
        E_c: given(section.modulusKsi, "ksi", "modulus of the member"),
      },
      result: next.stressKsi, unit: "ksi", source: "superposition, plane sections",
      note: `The divisor accounts for the elastic recovery of the concrete as the strands lose stress. ${clock.steps.length - 1} more steps follow; in each, every change of stress so far creeps on from its own age, and a hardened topping shares the compression.`,
    },
    {
      symbol: "f_se", label: "effective prestress at the end", expression: "f_pj - ES - CR - SH - RE",
      values: {
        f_pj: fpj, ES: given(last.lostKsi.elastic, "ksi", "elastic shortening less later gains"), CR: given(last.lostKsi.creep, "ksi", "creep"),
        SH: given(last.lostKsi.shrinkage, "ksi", "shrinkage"), RE: given(last.lostKsi.relaxation, "ksi", "relaxation"),
      },
      result: last.stressKsi, unit: "ksi", source: "sum over all steps",
    },
  ];
  return {title: "Losses of prestress by time steps", steps};
}

function pick<T, K extends keyof T>(of: T, ...keys: K[]): Pick<T, K> {
  return Object.fromEntries(keys.map((key) => [key, of[key]])) as Pick<T, K>;
}
