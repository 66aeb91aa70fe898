import {asRead} from "../reader/system.js";

/** Width of a text, px, from its count of characters: no text is measured before it stands in a page, in its reader's units. */
export function textWidth(text: string, sizePx: number): number {
  let ems = 0;
  for (const letter of asRead(text)) ems += " .,'\"|il-".includes(letter) ? 0.29 : /[A-ZMmw%]/.test(letter) ? 0.64 : 0.51;
  return ems * sizePx;
}

/** A text broken at spaces into lines of at most a width, and within a word that is longer than a line. */
export function wrap(content: string, sizePx: number, mostPx: number): string[] {
  const lines: string[] = [];
  for (const word of asRead(content).split(" ").flatMap((word) => pieces(word, sizePx, mostPx))) {
    const last = lines.at(-1);
    if (last !== undefined && textWidth(`${last} ${word}`, sizePx) <= mostPx) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** A word as it is, or where it is longer than a line in pieces that are not. */
function pieces(word: string, sizePx: number, mostPx: number): string[] {
  if (textWidth(word, sizePx) <= mostPx) return [word];
  const found: string[] = [];
  for (const letter of word) {
    const last = found.at(-1);
    if (last !== undefined && textWidth(last + letter, sizePx) <= mostPx) found[found.length - 1] = last + letter;
    else found.push(letter);
  }
  return found;
}

/**
 * Centers of things in a row, as near as can be to where they want to be, in the same order, without overlap.
 *
 * Things that would touch share the shift that serves them all best (least squares); the row then keeps to its bounds,
 * starting at the lower one if it is too long for them.
 *
 * @param wanted - wanted centers, rising
 * @param sizes - lengths along the row
 * @param gap - least room between neighbors
 */
export function spread(wanted: readonly number[], sizes: readonly number[], low: number, high: number, gap = 4): number[] {
  // Each center's distance from the first when all touch; what is left over must not fall along the row.
  const offsets: number[] = [];
  sizes.forEach((size, i) => offsets.push(i === 0 ? 0 : (offsets[i - 1] as number) + (sizes[i - 1] as number) / 2 + gap + size / 2));
  const blocks: {sum: number; count: number}[] = [];
  wanted.forEach((center, i) => {
    blocks.push({sum: center - (offsets[i] as number), count: 1});
    for (let last = blocks.length - 1; last > 0 && mean(blocks[last - 1]) > mean(blocks[last]); last--) {
      const {sum, count} = blocks.pop() as {sum: number; count: number};
      const before = blocks[last - 1] as {sum: number; count: number};
      before.sum += sum;
      before.count += count;
    }
  });
  const least = low + (sizes[0] ?? 0) / 2;
  const most = Math.max(least, high - (sizes.at(-1) ?? 0) / 2 - (offsets.at(-1) ?? 0));
  return blocks
    .flatMap((block) => Array<number>(block.count).fill(mean(block)))
    .map((rest, i) => Math.min(most, Math.max(least, rest)) + (offsets[i] as number));
}

function mean(block: {sum: number; count: number} | undefined): number {
  return block ? block.sum / block.count : 0;
}

/** One dimension of a string: the gap between two ticks and the length of its text along the string. */
export interface Gap {
  readonly from: number;
  readonly to: number;
  readonly size: number;
}

/** Where a dimension's text stands. */
export interface PlacedText {
  readonly center: number;
  /** 0 next to the line, 1 one row further out. */
  readonly level: 0 | 1;
  /** Whether a thin line has to lead from the text to its gap. */
  readonly led: boolean;
}

/**
 * Places the texts of a dimension string so that none overlaps another.
 *
 * A text stands at the middle of its gap where it can; texts of narrow gaps move apart, and where one row is too short
 * for that every second one of the narrow ones goes to a second row, if there may be two.
 */
export function placeTexts(gaps: readonly Gap[], low: number, high: number, space = 6, rows: 1 | 2 = 2): PlacedText[] {
  const order = gaps.map((_, i) => i).sort((a, b) => middle(gaps[a]) - middle(gaps[b]));
  const single = onRow(gaps, order, low, high, space);
  const ahead = (i: number) => Math.abs((single.get(i) as number) - middle(gaps[i]));
  const far = order.some((i) => ahead(i) > (gaps[i] as Gap).size * 0.75 && ahead(i) > Math.abs((gaps[i] as Gap).to - (gaps[i] as Gap).from));
  if (!far || rows === 1) return gaps.map((gap, i) => placed(gap, single.get(i) as number, 0));
  const narrow = order.filter((i) => Math.abs((gaps[i] as Gap).to - (gaps[i] as Gap).from) < (gaps[i] as Gap).size + space);
  const outer = narrow.filter((_, rank) => rank % 2 === 0);
  const inner = order.filter((i) => !outer.includes(i));
  const [near, beyond] = [onRow(gaps, inner, low, high, space), onRow(gaps, outer, low, high, space)];
  return gaps.map((gap, i) => (outer.includes(i) ? placed(gap, beyond.get(i) as number, 1) : placed(gap, near.get(i) as number, 0)));
}

function onRow(gaps: readonly Gap[], order: readonly number[], low: number, high: number, space: number): Map<number, number> {
  const centers = spread(order.map((i) => middle(gaps[i])), order.map((i) => (gaps[i] as Gap).size), low, high, space);
  return new Map(order.map((i, rank) => [i, centers[rank] as number]));
}

function placed(gap: Gap, center: number, level: 0 | 1): PlacedText {
  const inside = center >= Math.min(gap.from, gap.to) - 1 && center <= Math.max(gap.from, gap.to) + 1;
  return {center, level, led: level === 1 || !inside};
}

function middle(gap: Gap | undefined): number {
  return gap ? (gap.from + gap.to) / 2 : 0;
}
