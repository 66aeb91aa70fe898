/**
 * Boxes whose text is not yet the value: it is being typed, or was refused. Each is taken when the reader leaves the box;
 * a page that goes away asks for it here, as its boxes are not left then.
 */
const open = new Map<Element, () => string | undefined>();

/** Remembers a box until its text is taken or given up; `take` returns the reason where the text is refused. */
export function begunTyping(box: Element, take: () => string | undefined): void {
  open.set(box, take);
}

/** The box shows its value again. */
export function endedTyping(box: Element): void {
  open.delete(box);
}

/** Whether the box holds what is not its value. */
export function isTyped(box: Element): boolean {
  return open.has(box);
}

/** Takes all that is typed and not yet taken; returns the reasons where something is refused. */
export function takeTyped(): string[] {
  return [...open].flatMap(([box, take]) => {
    if (box.isConnected) return take() ?? [];
    open.delete(box);
    return [];
  });
}
