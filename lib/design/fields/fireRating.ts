import {choice} from "../entries.js";

/** A fire rating in hours, of the floors or of the roof. */
export const fireRating = (label: string, help: string) => choice(label, {
  "0": "none required", "1": "1 hour", "1.5": "1 1/2 hours", "2": "2 hours", "3": "3 hours", "4": "4 hours",
}, help);
