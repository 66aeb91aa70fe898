/**
 * Words in lines that fit a width.
 *
 * @param font - as the style sheets write it: `400 14px "Source Sans 3", sans-serif`
 */
export function wrapped(words: string, widthPx: number, font: string): string[] {
  const paint = document.createElement("canvas").getContext("2d") as CanvasRenderingContext2D;
  paint.font = font;
  const lines: string[] = [];
  let line = "";
  for (const word of words.split(" ").filter(Boolean)) {
    const longer = line ? `${line} ${word}` : word;
    if (line && paint.measureText(longer).width > widthPx) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return line ? [...lines, line] : lines;
}
