/** A kind of vehicle by its outside, in: no particular model, but typical of its kind. */
export interface Vehicle {
  readonly name: string;
  readonly lengthIn: number;
  readonly widthIn: number;
  readonly heightIn: number;
}

/** Vehicles from low to high (common practice: rounded sizes, from memory); an accessible van's height is what the ADA 2010 Standards keep clear for it. */
export const VEHICLES: readonly Vehicle[] = [
  {name: "small car", lengthIn: 165, widthIn: 70, heightIn: 59},
  {name: "sedan", lengthIn: 192, widthIn: 73, heightIn: 58},
  {name: "sport utility", lengthIn: 198, widthIn: 79, heightIn: 71},
  {name: "full-size pickup", lengthIn: 231, widthIn: 80, heightIn: 78},
  {name: "car with a roof box", lengthIn: 192, widthIn: 73, heightIn: 80},
  {name: "accessible van, raised roof", lengthIn: 221, widthIn: 80, heightIn: 94},
  {name: "delivery van", lengthIn: 235, widthIn: 82, heightIn: 110},
].sort((a, b) => a.heightIn - b.heightIn);

/** Air over the highest point of a vehicle, in, for its springs and the floor's unevenness (common practice). */
export const OVER_VEHICLE_IN = 2;

/** Vehicles that pass under a height. */
export function vehiclesUnder(clearIn: number): Vehicle[] {
  // Stryker disable next-line EqualityOperator: the two part in the ninth digit
  return VEHICLES.filter(({heightIn}) => heightIn + OVER_VEHICLE_IN <= clearIn + 1e-9);
}
