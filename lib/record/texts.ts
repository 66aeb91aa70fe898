/** Said on every record, and on every page in short. */
export const CAUTIONS: readonly string[] = [
  "For learning and preliminary sizing only.",
  "Local codes govern, and may differ from the editions cited here.",
  "A licensed engineer and the producer design the real structure; the producer's own sections, strands and tables replace the generic ones used here.",
];

/** What the methods assume. */
export const ASSUMPTIONS: readonly string[] = [
  "Deck members are simple spans under uniform load, and beams under their stems where they stand; openings, line loads and other concentrated loads are not included.",
  "The heaviest room of the plan may be in any bay.",
  "Load combinations 1.4D and 1.2D + 1.6L on floors, with roof live load, snow or rain on the roof (ASCE 7-16 2.3.1); wind and earthquake are not included.",
  "Strands are Grade 270 low-relaxation, jacked to 75 % of their strength; losses by the component method of Zia and others (1979).",
  "The topping is cast on unshored members and then acts compositely with them over their full width.",
  "Strength by strain compatibility (ACI 318-19 22.2), near the ends with the strand stress that bond can develop there (25.4.8).",
  "Cambers by Martin's multipliers (1977): an estimate that real members miss by a quarter inch or more.",
  "Stirrups, torsion bars and ledge steel are sized where they are needed most and not detailed; splitting steel at the ends, fire and vibration of the beams and the strength of connections are not checked.",
  "Daylight under the CIE overcast sky, in an empty room with one straight band of windows; ducts checked by the air of the floor that they serve, its velocity and the friction of straight runs, without fittings.",
];
