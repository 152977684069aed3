import type { Unit } from './unit.ts';

/** A piece of typed text: a number, a sign, a unit, or something unknown. */
export interface Token {
  readonly kind: TokenKind;
  readonly text: string;
  /** Where it begins in the typed text, from 0. */
  readonly at: number;
  /** White space comes before it. */
  readonly spaced: boolean;
  readonly unit?: Unit | undefined;
}

export type TokenKind =
  | 'number'
  | 'vulgar'
  | 'slash'
  | 'plus'
  | 'minus'
  | 'times'
  | 'divide'
  | 'open'
  | 'close'
  | 'unit'
  | 'unknown'
  | 'end';

/**
 * Each group is named after its kind. `x` multiplies even against a unit
 * (`5ftx2`), so words are made of the other letters. Phones turn straight
 * quotes into curled ones, so both are primes. U+2010 and U+2011 are hyphens. How
 * sure a number is, the `± 0.2` of `46.3 ± 0.2 mm`, is no part of the length and passed over;
 * without a unit after it, it is unknown.
 */
const PIECES =
  /(?<doubt>(?<=\d ?)± ?[\d.,]+(?= ?[a-z]))|(?<number>[\d.,]+)|(?<vulgar>[¼-¾⅐-⅞↉])|(?<slash>[/⁄∕])|(?<plus>\+)|(?<minus>[-\u2010\u2011–−])|(?<times>[×*·xX])|(?<divide>÷)|(?<open>\()|(?<close>\))|(?<unit>[A-WYZa-wyz]+|['’‘′]{1,2}|["”“″])|(?<unknown>\S)/gu;

/** Every way to write a unit, once in lower case and with primes straightened. */
const NAMES: Readonly<Record<Unit, string>> = {
  mm: 'mm',
  cm: 'cm',
  m: 'm',
  in: `in inch inches " ''`,
  ft: "ft '",
  yd: 'yd yard yards',
  line: 'line lines',
};

/**
 * Cuts text into its pieces, ending with an `end` piece. Loses nothing but white space.
 */
export function tokens(typed: string): Token[] {
  const found: Token[] = [];
  let end = 0;
  for (const match of typed.matchAll(PIECES)) {
    const [text] = match;
    const groups = match.groups ?? {};
    if (groups.doubt) continue;
    let kind = Object.keys(groups).find((name) => groups[name]) as TokenKind;
    const unit = kind === 'unit' ? unitNamed(text) : undefined;
    if (kind === 'unit' && !unit) kind = 'unknown';
    found.push({ kind, text, at: match.index, spaced: match.index > end, unit });
    end = match.index + text.length;
  }
  found.push({ kind: 'end', text: '', at: typed.length, spaced: typed.length > end });
  return found;
}

/**
 * Capitals are harmless in every unit but one: button lines are `L`, never `l`,
 * because `24l` can't be told from 241.
 */
function unitNamed(text: string): Unit | undefined {
  if (text === 'L') return 'line';
  const name = text.toLowerCase().replace(/[’‘′]/g, "'").replace(/[”“″]/g, '"');
  return (Object.keys(NAMES) as Unit[]).find((unit) => NAMES[unit].split(' ').includes(name));
}
