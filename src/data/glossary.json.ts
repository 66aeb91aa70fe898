import {symbolTex} from "../components/symbols.js";
import {mathMarkup} from "../components/worked.js";
import {readRawTables} from "../headless/readCatalog.js";

// Symbols are set when the site is built, so that no page waits for a typesetter.
const tables = readRawTables();
const forms = new Map(tables["glossary-forms"]?.map((row) => [row["term"], row]));
process.stdout.write(JSON.stringify(tables["glossary"]?.map((row) => {
  const {symbol, unit, drawing} = forms.get(row["term"]) ?? {};
  return {...row, ...(symbol ? {symbol: mathMarkup(symbolTex(symbol))} : {}), ...(unit ? {unit} : {}), ...(drawing ? {drawing} : {})};
})));
