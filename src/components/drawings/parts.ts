/**
 * Lights the same thing everywhere in an article: while the pointer is over, or the focus in, anything that carries
 * `data-part`, everything that carries the same name gets the class `is-lit`.
 *
 * Works for what is added to the article later. Returns a function that takes the listening away again.
 */
export function lightParts(root: HTMLElement): () => void {
  let lit = "";
  const light = (name: string) => {
    if (name === lit) return;
    for (const element of root.querySelectorAll(".is-lit")) element.classList.remove("is-lit");
    lit = name;
    if (name === "") return;
    for (const element of root.querySelectorAll(`[data-part="${CSS.escape(name)}"]`)) element.classList.add("is-lit");
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

/** A figure with its parts lit together, as {@link lightParts} does it. */
export function lit<Figure extends HTMLElement>(figure: Figure): Figure {
  lightParts(figure);
  return figure;
}
