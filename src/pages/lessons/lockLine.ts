import {button} from "../../components/controls.js";
import {element} from "../../components/dom.js";
import {followed, keepFollowed, lockedBy, unlockLink} from "../../components/followed.js";
import {openGuesses} from "../../components/veil/open.js";

/** Says that answers are locked, by what, and opens them; nothing where they are open. */
export function lockLine(): HTMLElement {
  const node = element("div", {"aria-live": "polite"});
  const show = () => {
    const by = lockedBy();
    if (!by) {
      node.replaceChildren();
      return;
    }
    node.replaceChildren(element("p", {class: "note"}, `Answers are locked until you have guessed: ${by === "path" ? "the path that you follow was begun so" : "the link that you came by asks for it, in this tab"}. `, button("Open the answers", () => {
      const path = followed();
      if (path) keepFollowed({...path, locked: false});
      unlockLink();
      openGuesses.unlock();
      show();
    }, {quiet: true})));
  };
  show();
  return node;
}
