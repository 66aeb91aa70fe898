/** A text as a string of CSS, in quotes; whatever would end it early is escaped by its code. */
export function cssString(text: string): string {
  return `"${text.replace(/["\\\p{Cc}]/gu, (sign) => `\\${sign.codePointAt(0)?.toString(16)} `)}"`;
}
