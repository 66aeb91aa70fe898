import type {Design} from "./design.js";

/** The value at a dotted path such as `bay.spanFt` or `loads.rooms.0.name`; undefined where there is none. */
export function valueAt(design: Design, path: string): unknown {
  return path.split(".").reduce<unknown>((node, key) => (node as Record<string, unknown> | undefined)?.[key], design);
}
