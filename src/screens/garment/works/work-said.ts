import type { Bench } from '../../../calculation/bench.ts';
import type { State } from '../../../garment/actions/state.ts';
import { readHome } from '../../../garment/record/home.ts';
import type { Trouble } from '../../../garment/work-out/result.ts';
import { conflictSaid, type Telling, troubleWords, workTroubleSaid } from '../said/told-words.ts';
import type { OpenField, OpenWork } from './open-work.ts';
import type { Gives } from './work-numbers.ts';

/** Why an open work lacks a number. */
export interface Lacks {
  said: string;
  /** Only something still to be given: no mistake. */
  soft: boolean;
  field?: string;
}

/** What keeps a work, or the first of its numbers that isn't there, from being worked out. */
export function lacksOf(telling: Telling, id: string, gives: readonly Gives[]): Lacks | undefined {
  const whole = telling.answer.troubles.find(({ work }) => work === id);
  if (whole) return { said: workTroubleSaid(telling, whole), soft: whole.why === 'awaited' };
  for (const { home, result } of gives) {
    if (result.ok || result.trouble.kind === 'absent') continue;
    const { trouble } = result;
    const said = troubleWords(telling, home, trouble);
    return { said, soft: isSoft(trouble), ...('field' in trouble && { field: trouble.field }) };
  }
  return undefined;
}

function isSoft(trouble: Trouble): boolean {
  if (trouble.kind === 'not given') return true;
  const { fault } = trouble as Partial<Extract<Trouble, { kind: 'reading' }>>;
  return fault !== undefined && fault.kind === 'unfinished';
}

/** What of a side of a work is made otherwise than asked. */
export function conflictsOf(
  telling: Telling,
  { id, side }: OpenWork,
): { home: string; said: string }[] {
  return telling.answer.conflicts
    .filter(({ home }) => isOf(home, id, side))
    .map((conflict) => ({ home: conflict.home, said: conflictSaid(telling, conflict) }));
}

/** How much of a side of a work is made: the marks of its one row, or its steps. */
export function madeOf({ answer }: State, id: string, side: string): MadeOf {
  const steps = answer.steps.filter(({ home }) => isOf(home, id, side));
  const before = steps.filter(({ home }) => answer.sound.before.has(home));
  const [only] = steps;
  if (steps.length === 1 && only?.of !== undefined) {
    return { made: only.made, of: only.of, before: before.length > 0 ? only.made : 0 };
  }
  const made = steps.filter((step) => step.made === step.of).length;
  return { made, of: steps.length, before: before.length };
}

interface MadeOf {
  made: number;
  of: number;
  /** Of what is made, what was so before the app knew. */
  before: number;
}

function isOf(home: string, id: string, side: string): boolean {
  const read = readHome(home);
  return read.id === id && read.side === side;
}

/** The number in a field, as far as it can be read; a length in 1/8000 mm. */
export function typedNumber(
  { seen, draft }: OpenWork,
  one: OpenField | undefined,
  bench: Bench,
): number | undefined {
  if (!one || !draft || typeof seen.gives !== 'object') return undefined;
  const { fields } = seen.gives;
  const { key } = one.field;
  const read = fields.readOne(key, draft[key] ?? '', fields.asks(draft), bench);
  return read.ok && typeof read.value === 'number' ? read.value : undefined;
}
