import type {Comment} from "../../lib/design/design.js";
import {button} from "../../components/controls.js";
import {element} from "../../components/dom.js";
import type {DesignStore} from "../../components/store.js";

/** What others said of a decision, each with whose words they are; the reader takes one off once it is dealt with, and undo brings it back. */
export function recordComments(store: DesignStore, comments: readonly Comment[], heading?: string): HTMLElement[] {
  if (comments.length === 0) return [];
  const takeOff = (comment: Comment) => store.set("comments", store.get().comments.filter((one) => one !== comment));
  return [
    ...(heading ? [element("h3", {}, heading)] : []),
    ...comments.map((comment) => element("p", {class: "record-comment"},
      element("strong", {}, comment.by.trim() ? `Comment by ${comment.by.trim()}. ` : "Comment. "), comment.words.trim(), " ",
      button("Take it off", () => takeOff(comment), {quiet: true, name: `Take off the comment: ${comment.words.trim().slice(0, 60)}`}))),
  ];
}
