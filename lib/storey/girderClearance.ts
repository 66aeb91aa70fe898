import type {StoreyStack} from "./stack.js";

/** Height from the finished floor to the underside of an interior girder, in; 0 or less where it leaves none. */
export function clearUnderGirderIn(storey: Pick<StoreyStack, "clearUnderDeckIn">, girder: {readonly belowDeckIn: number}): number {
  return storey.clearUnderDeckIn - girder.belowDeckIn;
}
