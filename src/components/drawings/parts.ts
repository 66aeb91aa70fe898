/** Lights all that carries a name within an element, and nothing else there; the empty name lights nothing. */
export function lightPart(root: Element, name: string): void {
  for (const element of root.querySelectorAll(".is-lit")) element.classList.remove("is-lit");
  if (name === "") return;
  for (const element of root.querySelectorAll(`[data-part="${CSS.escape(name)}"]`)) element.classList.add("is-lit");
}

/**
 * Lights the same thing everywhere: while the pointer is over, or the focus in, anything that carries `data-part`,
 * everything that carries the same name gets the class `is-lit`.
 *
 * Works for what is added later. Returns a function that takes the listening away again.
 *
 * @param within - what is lit, where it is less than all that is listened to
 */
export function lightParts(root: HTMLElement, within: () => Iterable<Element> = () => [root]): () => void {
  let lit = "";
  const light = (name: string) => {
    if (name === lit) return;
    lit = name;
    for (const part of within()) lightPart(part, name);
  };
  const enter = (event: Event) => {
    const element = event.target instanceof Element ? event.target.closest("[data-part]") : null;
    light(element?.getAttribute("data-part") ?? "");
  };
  const leave = () => light("");
  root.addEventListener("pointerover", enter);
  root.addEventListener("pointerleave", leave);
  root.addEventListener("focusin", enter);
  root.addEventListener("focusout", leave);
  return () => {
    root.removeEventListener("pointerover", enter);
    root.removeEventListener("pointerleave", leave);
    root.removeEventListener("focusin", enter);
    root.removeEventListener("focusout", leave);
  };
}

/** The name under which a limit lights: in charts, lists and worked steps. */
export const limitPart = (name: string): string => `limit ${name}`;

/** A figure with its parts lit together, as {@link lightParts} does it. */
export function lit<Figure extends HTMLElement>(figure: Figure): Figure {
  lightParts(figure);
  return figure;
}
