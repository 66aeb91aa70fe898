/** Words in lines of at most so many letters. */
export function wrappedLetters(words: string, most: number): string[] {
  const lines: string[] = [];
  for (const word of words.split(" ").filter(Boolean)) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= most) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
