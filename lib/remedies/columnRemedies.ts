import {outside, remedy, type Remedies} from "./remedy.js";
import {either, less, more, together, toldNumber} from "./way.js";

const lessFloor = remedy(/less floor on each (column|beam)/, either(less("bay.beamSpanFt"), less("bay.floors"), together(less("bay.beamSpanFt"), less("bay.spanFt"), less("bay.floors"))));
const columnConcrete = remedy(/stronger concrete( in the columns)?/, more("column.strengthPsi"));

/** Remedies of columns, corbels and footings. */
export const COLUMN_REMEDIES: Remedies = {
  "column strength": [columnConcrete, lessFloor],
  "beam ends": [remedy(/set the column side that their ends are cut for to (\d+) in/, toldNumber("column.sideIn"))],
  "corbel shear": [columnConcrete, lessFloor],
  "corbel bearing": [
    columnConcrete, remedy(/a seat farther off the column's face/, more("column.seatIn")),
    remedy(/a wider beam/, together(more("girder.webWidthIn"), more("edgeBeam.webWidthIn"))),
  ],
  "footing one-way shear": [remedy(/stronger concrete in it/, more("ground.footingStrengthPsi")), lessFloor],
  "footing punching": [remedy(/stronger concrete in it/, more("ground.footingStrengthPsi")), lessFloor],
  "column bearing": [
    remedy(/footing's concrete be stronger/, more("ground.footingStrengthPsi")),
    outside(/bars across the joint must take the rest/, "the dowels of a column's foot are detailed later"),
  ],
};
