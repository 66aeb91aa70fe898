import type {RenderFunction} from "@observablehq/plot";

/** Options of a mark that lights with a part of the drawings, as `part` does in prose: the whole mark. */
export function lights(name: string): {render: RenderFunction} {
  return {render: (index, scales, values, dimensions, context, next) => {
    const node = next?.(index, scales, values, dimensions, context) ?? null;
    node?.setAttribute("data-part", name);
    return node;
  }};
}

/** The same for a mark of which each piece is another part; undefined for pieces that belong to none. */
export function lightsEach<T>(data: readonly T[], nameOf: (one: T) => string | undefined): {render: RenderFunction} {
  return {render: (index, scales, values, dimensions, context, next) => {
    const node = next?.(index, scales, values, dimensions, context) ?? null;
    [...(node?.children ?? [])].forEach((child, i) => {
      const one = data[index[i] ?? -1];
      const name = one === undefined ? undefined : nameOf(one);
      if (name !== undefined) child.setAttribute("data-part", name);
    });
    return node;
  }};
}
