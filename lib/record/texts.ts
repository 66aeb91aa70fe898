/** Said on every record, and on every page in short. */
export const CAUTIONS: readonly string[] = [
  "For learning and preliminary sizing only.",
  "Local codes govern, and may differ from the editions cited here.",
  "A licensed engineer and the producer design the real structure; the producer's own sections, strands and tables replace the generic ones used here.",
];

/** What the methods take for granted. */
export const ASSUMPTIONS: readonly string[] = [
  "Deck members are simple spans under uniform load, and beams under their stems where they stand; openings, line loads and other concentrated loads are not counted.",
  "The heaviest room of the plan may stand on any bay.",
  "Load combinations 1.4D and 1.2D + 1.6L (ASCE 7-16 2.3.1); wind, earthquake and snow are not counted.",
  "Strands are Grade 270 low-relaxation, pulled to 75 % of their strength; losses by the component method of Zia and others (1979).",
  "The topping is cast on unshored members and acts with them afterwards over their whole width.",
  "Strength by strain compatibility (ACI 318-19 22.2), and near the ends with the stress that the strands' bond allows there (25.4.8).",
  "Cambers by Martin's multipliers (1977): an estimate that real members miss by a quarter inch and more.",
  "Stirrups, bars for twist and the ledge's own steel are sized where they are needed most and not detailed; splitting steel of the ends, fire and vibration of the beams and the strength of connections are not part of these checks.",
  "Daylight under the CIE overcast sky, in an empty room with one straight band of windows; ducts by the air of the floor that they serve and its velocity alone.",
];
