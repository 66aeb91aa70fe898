/** Controls of the open design, made from its table of fields. Each is made once per page and follows the store. */
export {choiceControl, type Choice, type ChoiceOptions} from "./controls/choice.js";
export {guessControl, type GuessOptions} from "./controls/guess.js";
export {numberControl, type NumberOptions} from "./controls/number.js";
export {onlyWhile, pagePart, whileUsed} from "./controls/onlyWhile.js";
export {button, switchControl, textControl, type ButtonOptions, type TextOptions} from "./controls/text.js";
