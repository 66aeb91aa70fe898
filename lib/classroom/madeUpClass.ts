import type {Design} from "../design/design.js";
import {withValues} from "../design/edit.js";
import type {ClassFile} from "./classFiles.js";

/** What a student of the made-up class changed in a starter, by its place in the list of starters. */
interface Student {
  readonly name: string;
  readonly starter: number;
  readonly changes: Readonly<Record<string, unknown>>;
}

const STUDENTS: readonly Student[] = [
  {name: "Abeni", starter: 0, changes: {"bay.spanFt": 44, "reasons.deck": "Four feet more of span clear the reading tables of columns, and the tee still carries its stacks."}},
  {name: "Bruno", starter: 0, changes: {"bay.beamSpanFt": 24, "reasons.frame": "Columns closer together let the spandrel stay shallow."}},
  {name: "Celia", starter: 0, changes: {"bay.spanFt": 52, "bay.beamSpanFt": 36}},
  {name: "Davor", starter: 0, changes: {"edgeBeam.upstandIn": 12, "story.floorToFloorFt": 15, "reasons.light": "A lower sill lets the sky in further, and the taller story keeps the ceiling."}},
  {name: "Edda", starter: 0, changes: {"deck.toppingIn": 3, "topping.followShare": 0.5}},
  {name: "Femi", starter: 0, changes: {}},
  {name: "Greta", starter: 1, changes: {"bay.beamSpanFt": 32, "reasons.frame": "Two classrooms between columns, with no column in a doorway."}},
  {name: "Hyun", starter: 1, changes: {"story.floorToFloorFt": 13, "edgeBeam.upstandIn": 24}},
  {name: "Iolo", starter: 1, changes: {"bay.spanFt": 34, "criteria.fireHours": "2"}},
  {name: "Jun", starter: 1, changes: {"story.floorToFloorFt": 13, "edgeBeam.upstandIn": 24}},
  {name: "Kerem", starter: 0, changes: {"bay.spanFt": 44, "deck.toppingIn": 2.5, "reasons.deck": "It carries the load.", "reasons.topping": "Half an inch more for the camber."}},
];

/**
 * The files of a class that never was, to try the page of a class by: designs that begin from starters, one unchanged, two
 * alike, some that fail, and three files that are no design of this kit.
 *
 * @param starters - two at least
 */
export function madeUpClass(starters: readonly Design[]): ClassFile[] {
  const designs = STUDENTS.map(({name, starter, changes}): ClassFile => {
    const design = withValues(starters[starter] as Design, {...changes, author: name, firm: "Studio Two"});
    return {fileName: `${name.toLowerCase()}.json`, text: JSON.stringify(design)};
  });
  const [first = ""] = designs.map(({text}) => text);
  return [
    ...designs,
    {fileName: "lior.json", text: first.slice(0, 2000)},
    {fileName: "mina.json", text: first.replace(/"version":\d+/, '"version":99')},
    {fileName: "notes.txt", text: "Tees at 60 ft? Ask about the ducts."},
  ];
}
