import type {Catalog} from "../../lib/catalog.js";
import {InputError} from "../../lib/errors.js";
import type {Recipe} from "../../lib/practice/recipe.js";
import {button} from "../../components/controls.js";
import {element} from "../../components/dom.js";
import {freePractice} from "./freePractice.js";

type Pages = readonly {readonly name: string; readonly title: string}[];

/**
 * What is practiced: the set that the page's address holds, or exercises by topic. The kinds of exercise come once the
 * page stands, as they are many.
 */
export async function practicePanel(catalog: Catalog, pages: Pages): Promise<HTMLElement> {
  const [kinds, {setPractice}, {fragmentOf, holdsSet, setIn}, sets] = await Promise.all([
    import("../../lib/practice/kinds.js"), import("./setPractice.js"), import("../../components/practice/setLink.js"), import("./keptSets.js"),
  ]);
  const node = element("div", {class: "practice"});
  const problem = element("p", {class: "control-message", role: "alert", hidden: true});
  const tell = (words: string) => {
    problem.textContent = words;
    problem.hidden = words === "";
  };
  const openSet = (recipe: Recipe, student?: string) => node.replaceChildren(problem, setPractice(recipe, catalog, leave, student));
  const leave = () => {
    history.replaceState(history.state, "", location.pathname + location.search);
    void openFragment();
  };
  const openFile = async (file: File) => {
    try {
      const text = await file.text();
      // Its checksum is looked at first: a file that was changed is not gone on with.
      const [{readAnswerFile}, {readRecipe}] = await Promise.all([import("../../lib/practice/answerFile.js"), import("../../lib/practice/recipe.js")]);
      const begun = text.includes("\"plank-and-tee-answers\"") ? sets.begunFrom(readAnswerFile(text), catalog) : undefined;
      const recipe = begun?.recipe ?? readRecipe(text);
      if (begun) sets.keepBegun(begun);
      tell("");
      history.replaceState(history.state, "", await fragmentOf(recipe));
      openSet(recipe, begun?.student);
    } catch (refused) {
      if (!(refused instanceof InputError)) throw refused;
      tell(`${file.name} was not opened. ${refused.message}`);
    }
  };
  const others = (): HTMLElement => {
    const input = element("input", {type: "file", accept: ".json,application/json", hidden: true, "aria-label": "A set, or answers that you saved"});
    input.addEventListener("change", () => {
      const [file] = input.files ?? [];
      if (file) void openFile(file).then(() => (input.value = ""));
    });
    const begun = sets.begunSets();
    return element("section", {class: "practice-others"},
      element("h2", {}, "A set from your teacher"),
      element("p", {}, "A link to a set opens it here. A set, or answers that you saved, can be opened as a file too."),
      element("div", {class: "row"}, button("Open a set or saved answers", () => input.click()), input),
      ...begun.map((each) => {
        const {answered, of} = sets.progressOf(each.states);
        const row = element("div", {class: "row begun-set"}, element("span", {}, `\u201c${each.recipe.title}\u201d, ${each.student}: ${answered} of ${of} answered.`),
          button("Go on", () => void fragmentOf(each.recipe).then((fragment) => {
            history.replaceState(history.state, "", fragment);
            openSet(each.recipe, each.student);
          }), {name: `Go on with ${each.recipe.title}, ${each.student}`}),
          button("Forget", () => {
            sets.forgetBegun(each);
            row.remove();
          }, {quiet: true, name: `Forget the answers to ${each.recipe.title} by ${each.student}`}));
        return row;
      }));
  };
  const openFragment = async () => {
    tell("");
    const {hash} = location;
    try {
      if (holdsSet(hash)) return openSet(await setIn(hash));
    } catch (refused) {
      if (!(refused instanceof InputError)) throw refused;
      tell(`The set was not opened. ${refused.message} Ask for the link anew, or practice without a set.`);
    }
    return node.replaceChildren(problem, freePractice(kinds, catalog, pages, hash), others());
  };
  await openFragment();
  window.addEventListener("hashchange", () => void openFragment());
  return node;
}
