/** Most letters of a pinned design's name, of the note on it, and of where it comes from. */
export const PIN_LETTERS = {name: 80, note: 2000, from: 80} as const;
