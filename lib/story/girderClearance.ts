import type {StoryStack} from "./stack.js";

/** Height from the finished floor to the underside of an interior girder, in; 0 or less where it leaves none. */
export function clearUnderGirderIn(story: Pick<StoryStack, "clearUnderDeckIn">, girder: {readonly belowDeckIn: number}): number {
  return story.clearUnderDeckIn - girder.belowDeckIn;
}
