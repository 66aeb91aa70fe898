/** A member with its topping: `10DT24+2`; hundredths of an inch at most are written, however finely a file gives it. */
export function toppedName(designation: string, toppingIn: number): string {
  return toppingIn > 0 ? `${designation}+${Number(toppingIn.toFixed(2))}` : designation;
}

/** A deck's name: member, topping and strands, `10DT24+2 108-S`. */
export function deckName(designation: string, toppingIn: number, pattern: string): string {
  return `${toppedName(designation, toppingIn)} ${pattern}`;
}
