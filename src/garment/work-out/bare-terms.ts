const LETTER = /[\ue000-\uf8ff]/u;

/**
 * What parts the terms of a sum or of a list, but behind × and ÷. A hyphen does where it takes away, and
 * not where it joins a fraction to its whole.
 */
const PARTING =
  /(?:[+−–;]|,(?=\s)|-(?:(?<=\s-)(?=\s)|(?<=[)\ue000-\uf8ff]\s*-)|(?=\s*[(\ue000-\uf8ff])|(?<=\d-)(?=\d+(?![\d/⁄]))))(?<![×*·xX÷]\s*.)/gsu;

/** How deep in brackets is looked, so that a hostile text stays cheap: none that can be read goes deeper. */
const MOST_DEEP = 100;

/** Where a piece of a text begins, and where it ends. */
export type Span = readonly [from: number, to: number];

/** Whether a letter stands for a length; undefined where that isn't known. */
export type IsLength = (letter: string) => boolean | undefined;

/** A bare number outside of brackets that nothing is divided by. */
const FACTOR =
  /(?<![÷\d.,/⁄]\s*)(?<![\w.,])(?:\d+[ -]\d+[/⁄]\d+|[\d.,]*\d(?:[/⁄]\d+)?)(?!\s*[\w./⁄"″”'′’])/u;

/**
 * The terms of a text with letters that are lengths by themselves: nothing taken is in them. Of a term
 * with something taken the rest are factors; but in the one bracket that holds all that is taken stands
 * a sum of lengths again. Of a text whose brackets don't close, none.
 *
 * Where it is known which are lengths, what is a count is a factor as a typed number is: the sum of lengths
 * is then in the one bracket that holds all lengths, and times counts alone the first bare number is a length.
 */
export function bareTerms(text: string, isLength: IsLength = () => undefined): Span[] {
  const signs = new Set([...text.matchAll(PARTING)].map(({ index }) => index));
  const bare: Bare = { text, signs, isLength };
  return isClosed(text) ? bareIn(bare, [0, text.length]) : [];
}

interface Bare {
  text: string;
  signs: ReadonlySet<number>;
  isLength: IsLength;
}

function bareIn(bare: Bare, [from, to]: Span): Span[] {
  const { text, signs } = bare;
  return termsIn(text, [from, to], signs).flatMap((term) => {
    if (!hasLetter(text, term)) return [trimmed(text, term)];
    if (isOfCounts(bare, term)) return factorIn(text, term);
    const holds = ([start, end]: Span) => mayBeLength(bare, text.slice(start, end));
    const groups = groupsIn(text, term).filter(holds);
    const [only = term] = groups;
    const outside = holds([term[0], only[0]]) || holds([only[1], term[1]]);
    return groups.length === 1 && !outside ? bareIn(bare, only) : [];
  });
}

/** Something taken that is a length, or may be one. */
function mayBeLength({ isLength }: Bare, text: string): boolean {
  return [...text].some((one) => LETTER.test(one) && isLength(one) !== false);
}

function isOfCounts(bare: Bare, [from, to]: Span): boolean {
  return !mayBeLength(bare, bare.text.slice(from, to));
}

/** The number that is a length in a product of counts: one of several, whichever has the unit. */
function factorIn(text: string, term: Span): Span[] {
  const [from, to] = term;
  const flat = groupsIn(text, term).reduce(
    (so, [start, end]) =>
      so.slice(0, start - from) + ' '.repeat(end - start) + so.slice(end - from),
    text.slice(from, to),
  );
  const found = FACTOR.exec(flat);
  return found ? [[from + found.index, from + found.index + found[0].length]] : [];
}

/** What lies between the signs outside of brackets. */
function termsIn(text: string, [from, to]: Span, signs: ReadonlySet<number>): Span[] {
  const terms: Span[] = [];
  let start = from;
  let depth = 0;
  for (let i = from; i < to; i++) {
    depth += turnAt(text, i);
    if (depth !== 0 || !signs.has(i)) continue;
    terms.push([start, i]);
    start = i + 1;
  }
  return [...terms, [start, to]];
}

/** The insides of the outermost brackets. */
function groupsIn(text: string, [from, to]: Span): Span[] {
  const groups: Span[] = [];
  let start = from;
  let depth = 0;
  for (let i = from; i < to; i++) {
    const turn = turnAt(text, i);
    if (depth === 0) start = i + 1;
    depth += turn;
    if (turn < 0 && depth === 0) groups.push([start, i]);
  }
  return groups;
}

function isClosed(text: string): boolean {
  let depth = 0;
  for (let i = 0; i < text.length && depth >= 0 && depth <= MOST_DEEP; i++) {
    depth += turnAt(text, i);
  }
  return depth === 0;
}

function turnAt(text: string, i: number): number {
  if (text[i] === '(') return 1;
  return text[i] === ')' ? -1 : 0;
}

function hasLetter(text: string, [from, to]: Span): boolean {
  return LETTER.test(text.slice(from, to));
}

function trimmed(text: string, [from, to]: Span): Span {
  const its = text.slice(from, to);
  return [from + its.length - its.trimStart().length, to - its.length + its.trimEnd().length];
}
