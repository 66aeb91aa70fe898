import {requireNumber} from "../check.js";
import {atLeast, atMost, type Check} from "../checks.js";
import {concrete, stressBlockFactor, type Concrete} from "../materials/concrete.js";
import {IN2_PER_FT2} from "../units.js";
import {columnTies, leastClearIn, placeBars, type ColumnBars, type ColumnBarsInput, type ColumnTies} from "./columnBars.js";

/** A tied precast column of normalweight concrete with Grade 60 bars. */
export interface ColumnSectionInput extends ColumnBarsInput {
  /** Specified strength f'c, psi. */
  readonly strengthPsi: number;
}

/** A rectangular tied column, ready for computing its interaction of axial load and moment. */
export interface ColumnSection extends ColumnSectionInput {
  readonly concrete: Concrete;
  readonly grossIn2: number;
  /** Area of all bars, in2, and its share of the gross area. */
  readonly steelIn2: number;
  readonly steelRatio: number;
  /** Second moment of the gross section in the direction of bending, in4. */
  readonly inertiaIn4: number;
  readonly selfWeightPlf: number;
  readonly bars: ColumnBars;
  readonly ties: ColumnTies;
  /** Stress of the equivalent block, ksi: 0.85 f'c; and its depth over that of the neutral axis (ACI 318-19 22.2.2.4). */
  readonly blockStressKsi: number;
  readonly blockFactor: number;
  readonly checks: readonly Check[];
}

/** Minimum and maximum ratio of bars in a column (ACI 318-19 10.6.1.1). */
export const STEEL_RATIO = {least: 0.01, most: 0.08} as const;

/**
 * A square or rectangular tied column, bent so that one `widthIn` side is in compression.
 *
 * Steel below 1 % or above 8 %, and bars closer than the code allows, are failed checks.
 *
 * @throws InputError for sides outside 8 to 60 in, f'c outside 3,000 to 12,000 psi, cover outside 0.75 to 4 in, and
 * bars that are too few, odd in number, or touch
 */
export function columnSection(input: ColumnSectionInput): ColumnSection {
  const widthIn = requireNumber(input.widthIn, {path: "widthIn", label: "column width", unit: "in", min: 8, max: 60});
  const depthIn = requireNumber(input.depthIn, {path: "depthIn", label: "column depth", unit: "in", min: 8, max: 60});
  requireNumber(input.strengthPsi, {path: "strengthPsi", label: "concrete strength", unit: "psi", min: 3000, max: 12000});
  requireNumber(input.coverIn, {path: "coverIn", label: "cover to ties", unit: "in", min: 0.75, max: 4});
  const {bar, count} = input;
  const bars = placeBars(input);
  const material = concrete("normalweight", input.strengthPsi);
  const grossIn2 = widthIn * depthIn;
  const steelIn2 = count * bar.areaIn2;
  const steelRatio = steelIn2 / grossIn2;
  return {
    ...input, concrete: material, grossIn2, steelIn2, steelRatio,
    inertiaIn4: (widthIn * depthIn ** 3) / 12,
    selfWeightPlf: (grossIn2 / IN2_PER_FT2) * material.unitWeightPcf,
    bars, ties: columnTies(input, bars),
    blockStressKsi: (0.85 * material.strengthPsi) / 1000, blockFactor: stressBlockFactor(material.strengthPsi),
    checks: sectionChecks(steelRatio, bars.clearIn, leastClearIn(bar)),
  };
}

function sectionChecks(steelRatio: number, clearIn: number, leastIn: number): Check[] {
  return [
    atLeast({
      id: "column least steel", label: "Minimum steel in the column", unit: "%", clause: "ACI 318-19 10.6.1.1", meetingIsEnough: true,
      holds: "The bars can take over what creep sheds from the concrete.",
      fails: "There are too few bars, and creep would overload them: use more steel.",
    }, 100 * steelRatio, 100 * STEEL_RATIO.least),
    atMost({
      id: "column most steel", label: "Maximum steel in the column", unit: "%", clause: "ACI 318-19 10.6.1.1",
      holds: "Concrete can be placed between the bars.",
      fails: "There is too much steel to cast the column well: make it larger.",
    }, 100 * steelRatio, 100 * STEEL_RATIO.most),
    atLeast({
      id: "column bar spacing", label: "Clear distance between bars", unit: "in", clause: "ACI 318-19 25.2.3", meetingIsEnough: true,
      holds: "Aggregate passes between the bars.",
      fails: "The bars do not fit: use fewer, thicker ones, or make the column larger.",
    }, clearIn, leastIn),
  ];
}
