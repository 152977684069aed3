import { readWords } from '#words/common/read-words.ts';
import {
  conflictWords,
  goneWords,
  namelessWords,
  unsoundWords,
  noNumberWords as words,
  workTroubleWords,
} from '#words/garment/garment-trouble-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { faultWords, problemSaid } from '../../../controls/fault-words.ts';
import { readHome } from '../../../garment/record/home.ts';
import { MOST_LINKS, MOST_ROW } from '../../../garment/record/limits.ts';
import type { Garment } from '../../../garment/record/record.ts';
import type { Unsound } from '../../../garment/record/sound.ts';
import { isObject } from '../../../garment/record/sound-values.ts';
import type { Trouble } from '../../../garment/work-out/result.ts';
import type { Conflict, WorkTrouble } from '../../../garment/work-out/told.ts';
import type { ReadFault } from '../../../lengths/read-fault.ts';
import { asSentence, fieldName, type Named, numberName, workName } from './names.ts';
import { pathWords } from './path-words.ts';
import { takenIn } from './taken-in.ts';
import { handText } from './value-text.ts';

export interface Telling extends Named {
  bench: Bench;
}

/**
 * Why a number has no value: where, what, and what to do, as one or two sentences.
 * @param key of the number; its fields are those the trouble names
 */
export function troubleWords(telling: Telling, key: string, trouble: Trouble): string {
  return asSentence(troubleIn(telling, key, trouble));
}

function troubleIn(telling: Telling, key: string, trouble: Trouble): string {
  const { id, side } = placeOf(telling, key);
  const field = (of: string) => fieldName(telling, id, side, of);
  switch (trouble.kind) {
    case 'not given':
      return words.notGiven(field(trouble.field));
    case 'damaged':
      return words.damaged(field(trouble.field));
    case 'reading':
      return readingWords(telling, { id, side }, trouble);
    case 'kinds':
      return words.kinds(
        field(trouble.field),
        takenIn(telling, { id, side, field: trouble.field }, trouble.part),
      );
    case 'too many links':
      return words.tooManyLinks(field(trouble.field), MOST_LINKS);
    case 'absent':
      return words.absent(numberName(telling, key), field(trouble.field));
    case 'unread':
      return trouble.faults.map((one) => faultWords(one, field, telling.bench)).join(' ');
    case 'impossible':
      return trouble.problems.map((one) => problemSaid(one, field, telling.bench)).join(' ');
    case 'too large':
      return words.tooLarge(numberName(telling, key));
    case 'too many marks':
      return words.tooManyMarks(numberName(telling, key), MOST_ROW);
    case 'sides differ': {
      const { field: of, part } = trouble;
      return words.sidesDiffer(field(of), takenIn(telling, { id, side, field: of }, part));
    }
    case 'waits':
      return waitsWords(telling, key, trouble);
    case 'circle':
      return words.circle(pathWords(telling, trouble.path));
    case 'undecided':
      return words.undecided(numberName(telling, key));
    case 'broken':
      return words.broken(numberName(telling, key));
    default:
      return unworded(trouble);
  }
}

type Waits = Extract<Trouble, { kind: 'waits' }>;

/** What it waits for, and what keeps that one waiting. */
function waitsWords(telling: Telling, key: string, trouble: Waits): string {
  const { id, side } = placeOf(telling, key);
  const what = numberName(telling, trouble.for);
  const own = numberName(telling, key);
  const where = trouble.field === '' ? own : fieldName(telling, id, side, trouble.field);
  const { gone } = trouble;
  if (gone?.why === 'absent') {
    const of = readHome(trouble.for);
    return goneWords.absent(where, what, fieldName(telling, of.id, of.side, gone.by));
  }
  if (gone) return goneWords[gone.why](where, what);
  const first = rootWords(telling, key, trouble.root);
  // What is asked of a row keeps the row itself waiting: that it waits for itself says nothing.
  if (what === own && first) return first;
  const waits = words.waits(where, what === where ? namelessWords.output : what);
  return first ? `${waits} ${words.first(first)}` : waits;
}

function rootWords(telling: Telling, key: string, root: string): string | undefined {
  const cause = telling.answer.values.get(root);
  if (cause?.ok !== false || root === key) return undefined;
  const { trouble } = cause;
  if (trouble.kind === 'waits' && !trouble.gone) return undefined;
  return troubleWords({ ...telling, here: undefined }, root, trouble);
}

function placeOf({ answer }: Telling, key: string): { id: string; side: string } {
  return answer.nodes.get(key) ?? readHome(key);
}

type Reading = Extract<Trouble, { kind: 'reading' }>;

/** What was taken from elsewhere stands in the piece by its name. */
function readingWords(
  telling: Telling,
  { id, side }: { id: string; side: string },
  { field, fault }: Reading,
): string {
  const place = { id, side, field };
  const text = [...fault.text].map((one) => takenIn(telling, place, one)).join('');
  const named = text !== fault.text;
  const said: ReadFault = named ? { ...fault, text, at: 0 } : fault;
  return readWords(fieldName(telling, id, side, field), said, telling.bench.decimalMark);
}

/** What keeps a whole work from being worked out here. */
export function workTroubleSaid(named: Named, { work, why }: WorkTrouble): string {
  return asSentence(workTroubleWords[why](workName(named, work)));
}

/** What of a record can't be worked with. @param record as it is kept, for the names in it */
export function unsoundSaid(named: Named, record: Garment, unsound: Unsound): string {
  return asSentence(unsoundIn(named, record, unsound));
}

function unsoundIn(named: Named, record: Garment, { part, id }: Unsound): string {
  switch (part) {
    case 'quantity':
      return unsoundWords.quantity(nameIn(record.quantities[id]) ?? namelessWords.quantity);
    case 'work':
      return unsoundWords.work(nameIn(record.works[id]) ?? namelessWords.work);
    case 'fact': {
      const fact = record.facts[id];
      const home = isObject(fact) && typeof fact.home === 'string' ? fact.home : '';
      return unsoundWords.fact(numberName(named, home));
    }
    case 'begun':
    case 'decision':
      return unsoundWords[part](numberName(named, id));
    default:
      return unworded(part);
  }
}

function nameIn(kept: unknown): string | undefined {
  const name = isObject(kept) && typeof kept.name === 'string' ? kept.name.trim() : '';
  return name === '' ? undefined : name;
}

/** What is made otherwise than asked, and whether only a rule of the app changed. */
export function conflictSaid(telling: Telling, conflict: Conflict): string {
  const { home, facts, over, rule } = conflict;
  const name = numberName(telling, home);
  const row = telling.answer.values.get(home);
  const what =
    over === undefined
      ? conflictWords.row(name, facts.length, row?.ok === true && row.state === 'made')
      : conflictWords[over > 0 ? 'over' : 'lacks'](name, offText(telling, home, over));
  const said = asSentence(what);
  if (!rule) return said;
  return `${said} ${rule === 'only' ? conflictWords.ruleOnly : conflictWords.ruleChanged}`;
}

/** By how much a single number is off what is asked as that is shown, without its sign. */
export function offText({ answer, bench }: Telling, home: string, over: number): string {
  const { kind = 'length', output } = answer.nodes.get(home) ?? {};
  const bound = output?.step?.bound;
  const other = bound === 'least' ? 'most' : 'least';
  const step = bound && { bound: over > 0 ? other : bound };
  return handText(kind, Math.abs(over), bench, step);
}

/** Fails to compile while a kind of trouble has no words. */
function unworded(trouble: never): never {
  throw new Error(`no words for ${JSON.stringify(trouble)}`);
}
