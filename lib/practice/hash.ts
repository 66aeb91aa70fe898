/** A whole number below 2^32 made of a text's letters (FNV-1a, in the public domain). */
export function hashOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193) >>> 0;
  return mixed(hash);
}

/** Spreads what changes in a number's last digits over all of them (the finish of MurmurHash3, in the public domain). */
export function mixed(number: number): number {
  let z = number >>> 0;
  z = Math.imul(z ^ (z >>> 16), 0x85ebca6b);
  z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35);
  return (z ^ (z >>> 16)) >>> 0;
}

/**
 * Sixteen letters that change with any letter of a text: a checksum against a file that was cut, mixed up or changed by
 * hand. Whoever reads this function can make one that fits; it is no seal.
 */
export function sumOf(text: string): string {
  return [hashOf(text), hashOf(`${text.length}/${[...text].reverse().join("")}`)].map((half) => half.toString(16).padStart(8, "0")).join("");
}
