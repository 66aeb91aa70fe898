import {decisionsOf} from "../../lib/classroom/classRow.js";
import {kinshipWords} from "../../lib/classroom/kinship.js";
import type {Comment, ReasonName} from "../../lib/design/design.js";
import {fieldOf} from "../../lib/design/fields.js";
import {reasonState} from "../../lib/design/reasons.js";
import {changesSentence, reasonTitle} from "../../lib/record/reasonWords.js";
import {button} from "../../components/controls.js";
import {element, uniqueId} from "../../components/dom.js";
import {keep, recall} from "../../components/store/kept.js";
import {rowOf, type Student} from "./classData.js";

/** One design of the class, read decision by decision, with what its reader says of it. */
export interface StudentReader {
  readonly node: HTMLElement;
  /** Shows a design, or that there is none to be read. */
  show(student: Student | undefined): void;
  focus(): void;
}

export interface ReaderActions {
  comment(fileName: string, comments: readonly Comment[]): void;
  save(fileName: string): void;
  open(fileName: string): void;
  remove(fileName: string): void;
  close(): void;
}

const TOPICS = fieldOf("comments.*.on").choices;
const FIELD = {words: fieldOf("comments.*.words"), by: fieldOf("comments.*.by")};
/** Under which the name of the one who comments is kept, for the next design. */
const BY_KEY = "class/by";

export function studentReader(actions: ReaderActions): StudentReader {
  const [onId, wordsId, byId] = [uniqueId("on"), uniqueId("words"), uniqueId("by")];
  const heading = element("h3", {tabindex: -1});
  const facts = element("p", {class: "class-facts"});
  const reasons = element("ul", {class: "class-reasons"});
  const on = element("select", {id: onId}, ...Object.entries(TOPICS).map(([value, words]) => element("option", {value}, words)));
  const words = element("textarea", {id: wordsId, rows: 3, maxlength: FIELD.words.maxLength});
  const by = element("input", {id: byId, type: "text", maxlength: FIELD.by.maxLength, autocomplete: "off"});
  const kept = recall(BY_KEY);
  by.value = typeof kept === "string" ? kept : "";
  by.addEventListener("change", () => keep(BY_KEY, by.value));
  const said = element("p", {role: "status", class: "class-said"});
  let student: Student | undefined;
  const add = button("Add the comment", () => {
    const text = words.value.trim();
    if (!student || !text) {
      said.textContent = "Write the comment first.";
      words.focus();
      return;
    }
    actions.comment(student.fileName, [...student.design.comments, {words: text, on: on.value as Comment["on"], by: by.value.trim()}]);
    words.value = "";
    said.textContent = `Written into the copy of ${student.fileName} that this page holds. Save it and hand it back: the student sees it on the record.`;
  });
  const acts = element("div", {class: "row"},
    button("Save this file", () => student && actions.save(student.fileName)), button("Open it as the open design", () => student && actions.open(student.fileName), {quiet: true}),
    button("Take it off the list", () => student && actions.remove(student.fileName), {quiet: true}), button("Close", actions.close, {quiet: true}));
  const node = element("section", {class: "class-reader", hidden: true, "aria-label": "One design of the class"}, heading, facts, reasons,
    element("div", {class: "class-form"},
      element("div", {class: "control text compact"}, element("label", {for: onId, class: "control-label"}, "About"), on),
      element("div", {class: "control text compact"}, element("label", {for: byId, class: "control-label"}, "Your name, as the student sees it"), by),
      element("div", {class: "control text compact class-words"}, element("label", {for: wordsId, class: "control-label"}, "Comment"), words)),
    element("div", {class: "row"}, add), said, acts);

  const about = (topic: Comment["on"]) => {
    on.value = topic;
    words.focus();
  };
  const commentLines = ({fileName, design}: Student, topic: Comment["on"]) => design.comments.filter((comment) => comment.on === topic).map((comment) =>
    element("p", {class: "record-comment"}, element("strong", {}, comment.by ? `${comment.by}: ` : "Comment: "), comment.words, " ",
      button("Take back", () => actions.comment(fileName, design.comments.filter((one) => one !== comment)), {quiet: true, name: `Take back the comment: ${comment.words.slice(0, 60)}`})));
  const item = (of: Student, topic: Comment["on"], text: (Node | string)[]) => element("li", {}, element("strong", {}, `${TOPICS[topic].charAt(0).toUpperCase()}${TOPICS[topic].slice(1)}. `), ...text, " ",
    button("Comment", () => about(topic), {quiet: true, name: `Comment on ${TOPICS[topic]}`}), ...commentLines(of, topic));

  return {
    node,
    focus: () => heading.focus(),
    show(next) {
      if (next?.fileName !== student?.fileName) {
        words.value = "";
        on.value = "whole";
        said.textContent = "";
      }
      student = next;
      node.hidden = !next;
      if (!next) return;
      const {design, who, fileName, kin} = next;
      const row = rowOf(next);
      heading.textContent = who === fileName ? fileName : `${who}, ${fileName}`;
      facts.textContent = [`\u201c${design.name}\u201d`, row?.deck, kin && kinshipWords(kin).replace(/\.$/, "")].filter(Boolean).join(". ").concat(".",
        row ? row.fails.length > 0 ? ` Fails: ${row.fails.join("; ")}.` : " No check fails." : "");
      const decisions = decisionsOf(design);
      const others = design.comments.map((comment) => comment.on).filter((topic) => topic !== "whole" && !decisions.includes(topic));
      reasons.replaceChildren(
        item(next, "whole", [design.brief || "No brief is written."]),
        ...decisions.map((name) => item(next, name, reasonNodes(next, name))),
        ...[...new Set(others)].map((topic) => item(next, topic, ["The design has no such decision of its own."])));
    },
  };
}

function reasonNodes({design}: Student, name: ReasonName): string[] {
  const state = reasonState(design, name);
  return state.text ? [state.by === "reader" && state.standing === "stands" ? "" : `${reasonTitle(state)} `, state.text, ` ${changesSentence(state)}`] : ["No reason is given."];
}
