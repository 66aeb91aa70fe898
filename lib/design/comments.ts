import {decimals} from "../units.js";
import type {Comment, Design, ReasonName} from "./design.js";

/** A design's comments on one of its decisions, or on the whole of it, in the order in which they were written; blank ones are none. */
export function commentsOn(design: Design, on: ReasonName | "whole"): Comment[] {
  return written(design).filter((comment) => comment.on === on);
}

/** That someone has commented a design, for the student who opens it: "2 comments by Ms. Oduya are in it." Nothing where no one has. */
export function commentsSentence(design: Design): string {
  const comments = written(design);
  if (comments.length === 0) return "";
  const names = [...new Set(comments.map(({by}) => by.trim()).filter(Boolean))];
  const whose = names.length > 0 ? ` by ${new Intl.ListFormat("en-US").format(names)}` : "";
  return `${comments.length === 1 ? "A comment" : `${decimals(comments.length)} comments`}${whose} ${comments.length === 1 ? "is" : "are"} in it: see the page \u201cWhy this floor?\u201d.`;
}

function written({comments}: Design): Comment[] {
  return comments.filter(({words}) => words.trim() !== "");
}
