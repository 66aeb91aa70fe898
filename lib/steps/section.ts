import type {Member} from "../member/member.js";
import {elasticModulusKsi} from "../materials/concrete.js";
import type {Topping} from "../sections/composite.js";
import {given, type Step, type Working} from "../step.js";

/** The section's moduli from area, centroid and second moment, and the composite section from its parts. */
export function sectionWorking(member: Member): Working {
  const {section} = member;
  const steps: Step[] = [
    {
      symbol: "S_b", label: "section modulus at the soffit", expression: "I / y_b",
      values: {I: given(section.inertiaIn4, "in4", "second moment of area"), y_b: given(section.ybIn, "in", "centroid above the soffit")},
      result: section.sbIn3, unit: "in3", source: "definition",
      note: "Area, centroid and second moment come from integrals along the outline's edges.",
    },
    {
      symbol: "w_o", label: "own weight", expression: "A * w_c / 144",
      values: {A: given(section.areaIn2, "in2", "area"), w_c: given(member.concrete.unitWeightPcf, "pcf", "unit weight")},
      result: member.selfWeightPlf, unit: "plf", source: "definition",
    },
  ];
  return {title: `The section of ${member.shape.designation}`, steps: [...steps, ...compositeSteps(member)]};
}

function compositeSteps(member: Member): Step[] {
  const {section, composite} = member;
  if (!composite) return [];
  const topping = member.topping as Topping;
  const values = {
    A: given(section.areaIn2, "in2", "area of the member"), y_b: given(section.ybIn, "in", "its centroid"),
    n: given(composite.modularRatio, "", "modular ratio"), b: given(topping.widthIn, "in", "width of the topping"),
    t: given(topping.thicknessIn, "in", "thickness of the topping"), h: given(section.depthIn, "in", "depth of the member"),
  };
  return [
    {
      symbol: "n", label: "modular ratio", expression: "E_ct / E_c",
      values: {
        E_ct: given(elasticModulusKsi(topping.concrete.unitWeightPcf, topping.concrete.strengthPsi), "ksi", "modulus of the topping"),
        E_c: given(member.modulusKsi, "ksi", "modulus of the member"),
      },
      result: composite.modularRatio, unit: "", source: "ACI 318-19 19.2.2.1",
    },
    {
      symbol: "y_bc", label: "composite centroid above the soffit", expression: "(A * y_b + n * b * t * (h + t / 2)) / (A + n * b * t)",
      values, result: composite.ybIn, unit: "in", source: "elastic theory",
    },
    {
      symbol: "I_c", label: "composite second moment of area",
      expression: "I + A * (y_bc - y_b)^2 + n * b * t^3 / 12 + n * b * t * (h + t / 2 - y_bc)^2",
      values: {...values, I: given(section.inertiaIn4, "in4", "second moment of the member"), y_bc: given(composite.ybIn, "in", "composite centroid")},
      result: composite.inertiaIn4, unit: "in4", source: "elastic theory",
    },
  ];
}
