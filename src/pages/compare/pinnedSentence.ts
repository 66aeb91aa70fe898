/** What is compared, in a sentence: the open design and how many pins. */
export function pinnedSentence({open, pinned}: {readonly open: string; readonly pinned: readonly string[]}): string {
  const quoted = (name: string) => `\u201c${name}\u201d`;
  const [first, second] = pinned;
  if (first === undefined) return `${quoted(open)} stands alone so far.`;
  if (second === undefined) return `Here ${quoted(open)} stands beside ${quoted(first)}.`;
  return pinned.length === 2 ? `Here ${quoted(open)} stands beside ${quoted(first)} and ${quoted(second)}.` : `Here ${quoted(open)} stands beside ${pinned.length} others.`;
}
