import type {CarbonFactor} from "../../lib/materials/carbon.js";

const common = {stage: "A1-A3", source: "a test", date: "2020", confidence: "worked out"} as const;

function concrete(place: "precast" | "cast on site", kind: "normalweight" | "sand-lightweight", kgPerFt3: number): CarbonFactor[] {
  return [3000, 6000].map((strengthPsi) => ({...common, id: `${place} ${kind} ${strengthPsi}`, material: "concrete", concrete: {place, kind, strengthPsi}, unit: "yd3", kgPerUnit: 27 * kgPerFt3}));
}

/** Round factors: 10 kg a cubic foot in the plant, 20 of lightweight, 6 on site; 2 a pound of strand, 1 of bars, 0.01 of plant work. */
export const ROUND: readonly CarbonFactor[] = [
  ...concrete("precast", "normalweight", 10), ...concrete("precast", "sand-lightweight", 20), ...concrete("cast on site", "normalweight", 6),
  {...common, id: "strand", material: "strand", concrete: undefined, unit: "lb", kgPerUnit: 2},
  {...common, id: "bars", material: "reinforcing bars", concrete: undefined, unit: "lb", kgPerUnit: 1},
  {...common, id: "plant", material: "plant work", concrete: undefined, unit: "lb", kgPerUnit: 0.01},
];
