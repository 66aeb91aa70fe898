/** A word of the trade with all the shapes in which prose has it: what a page needs to find it. */
export interface TermForms {
  readonly term: string;
  /** In lower case; the first is the most usual. */
  readonly forms: readonly string[];
  /** The only page on which these words surely mean the term; undefined where they mean it everywhere. */
  readonly page?: string;
}

/** What a row of `data/glossary-forms.csv` adds to a term of `data/glossary.csv`. */
export interface FormsRow {
  readonly term: string;
  /** Other forms, with `;` between them; a term without a row has its regular plural. */
  readonly forms: string;
  /** Where the term is marked: empty is everywhere, `page` on its own page only, `forms` by its other forms only, `never`. */
  readonly marked: string;
  /** As the worked steps spell it: `f_se`; empty for none. */
  readonly symbol: string;
  readonly unit: string;
  /** A name of `words/pictures.ts`, or empty. */
  readonly drawing: string;
}

const MARKED = ["", "page", "forms", "never"];

/** The forms of all terms that prose marks. Throws where a row of forms belongs to no term, or says something else of where it is marked. */
export function termForms(terms: readonly {readonly term: string; readonly page: string}[], rows: readonly FormsRow[]): TermForms[] {
  const byTerm = new Map(rows.map((row) => [row.term, row]));
  for (const {term, marked} of rows) {
    if (!terms.some((each) => each.term === term)) throw new Error(`glossary-forms.csv: "${term}" is no term of the glossary`);
    if (!MARKED.includes(marked)) throw new Error(`glossary-forms.csv: "${term}" is marked "${marked}"; it may be ${MARKED.map((word) => word || "empty").join(", ")}`);
  }
  return terms.flatMap(({term, page}): TermForms[] => {
    const row = byTerm.get(term);
    if (row?.marked === "never") return [];
    const others = row ? row.forms.split(";").map((form) => form.trim()).filter(Boolean) : [`${term}s`];
    const own = row?.marked === "forms" || /[(,]/.test(term) ? [] : [term];
    const forms = [...new Set([...own, ...others].map((form) => form.toLowerCase()))];
    return [row?.marked === "page" ? {term, forms, page} : {term, forms}];
  });
}
