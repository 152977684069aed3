import type { Output } from '../../calculation/output.ts';
import { exactLength, LONGEST, length } from '../../lengths/length.ts';
import type { Mark, Run } from '../../sewing/run.ts';
import type { Points } from '../record/record.ts';
import type { KnownFact } from '../record/sound.ts';
import { numberOf } from '../record/sound.ts';
import { placesOf, pointsOf } from '../rows/points.ts';
import { type MadeMark, placesIn, type Row, runAt } from '../rows/row.ts';
import { type RowAsked, rowNow } from '../rows/row-now.ts';
import { rowBy } from '../rows/ways.ts';
import { plusMinusAt } from './doubt.ts';
import { absence } from './evaluate.ts';
import type { RowNode } from './node.ts';
import { type Ends, type Here, nothing, type Pair, type Result } from './result.ts';
import { same } from './same.ts';

/** A row as it stands: its made marks where they are, the rest as decided. What is asked may be missing. */
export function evaluateRow(node: RowNode, asked: Result | undefined): Result {
  const gone = absence(asked);
  if (gone) return nothing(gone);
  if (!asked?.ok || typeof asked.value !== 'object') return withoutAsked(node, asked);
  const given = rowAsked(node, asked);
  const now = rowNow(given);
  const row = { conflict: now.conflict, fewer: now.fewer };
  if (!now.row) return { ...nothing({ kind: 'undecided' }), row };
  const isWhole = now.row.made.every((id) => id !== undefined);
  const undecided = now.undecided || (asked.undecided === true && !isWhole);
  return {
    ok: true,
    value: now.row.run,
    ends: endsOf(given, asked, now.row),
    state: isWhole ? 'made' : 'partly made',
    made: now.row.made,
    ...(undecided && { undecided: true }),
    row,
  };
}

/**
 * What stands while nothing can be asked: the row as it was begun. Made marks are where they are
 * whatever becomes of what was asked; a row under way goes on so, and is undecided.
 */
function withoutAsked(node: RowNode, asked: Result | undefined): Result {
  const row = { conflict: [], fewer: false };
  const made = madeMarks(node.facts);
  const whole = made.every(({ of }) => of === made.length);
  const points = whole ? pointsOf(made.map(({ at }) => at)) : node.begun;
  if (!points) {
    const from = node.sources[0] ?? node.key;
    const root = asked?.ok === false && asked.trouble.kind === 'waits' ? asked.trouble.root : from;
    return { ...nothing({ kind: 'waits', field: '', for: from, root }), row };
  }
  const begun = runOf(points, node.output);
  // How long it is isn't known: what goes on behind where it was begun is not off its end.
  const way = { asked: { ...begun, length: LONGEST }, made, begun: points };
  const now = rowBy('as-begun', way) ?? rowBy('asked', way);
  if (!now) return { ...nothing({ kind: 'undecided' }), row };
  const { run: value } = runAt(begun, placesIn(now.run), now.made);
  const state = whole ? 'made' : 'partly made';
  const undecided = !whole && { undecided: true as const };
  return { ok: true, value, ends: {}, state, made: now.made, ...undecided, row };
}

function runOf(points: Points, { step }: Output): Run {
  const places = placesOf(points);
  // Where the tape was held is for the step to say: the marks are as they were.
  const datum = step?.datum === 'top-edge' ? step.datum : 'zero';
  const marks = places.map((at, i): Mark => {
    return { at: exactLength(at), label: String(i + 1), kind: 'measure' };
  });
  return { datum, length: length(Math.max(0, Math.ceil(places.at(-1) ?? 0))), marks };
}

/** A row with all that its ways out are taken from. */
export function rowAsked(node: RowNode, asked: Here): RowAsked {
  return {
    asked: asked.value as Run,
    made: madeMarks(node.facts),
    begun: node.begun,
    decision: node.decision,
    doubt: (rank) => plusMinusAt(asked, rank),
    askFor: (count) => runFor(node.output, asked, count),
  };
}

function runFor(output: Output, { given }: Here, count: number | undefined): Run | undefined {
  if (!given) return undefined;
  try {
    const outcome = output.of({ ...given, count });
    return outcome.ok && typeof outcome.value === 'object' ? outcome.value : undefined;
  } catch {
    // Said where the row itself is worked out.
    return undefined;
  }
}

function madeMarks(facts: readonly KnownFact[]): MadeMark[] {
  return facts.flatMap(({ id, fact }) => {
    const { mark, plan, tape } = fact;
    return mark ? [{ id, at: numberOf(fact), plan, ...mark, slack: tape / 2 }] : [];
  });
}

/** The row at both ends of each reading, were the decision then what it is now. */
function endsOf(given: RowAsked, { ends }: Here, now: Row): Ends {
  const at = (end: Pair[number]): Run | null => {
    if (end === null || typeof end !== 'object') return null;
    const decision = given.decision && {
      ...given.decision,
      asked: pointsOf(placesIn(end)),
    };
    const doubt = () => Number.POSITIVE_INFINITY;
    return rowNow({ ...given, asked: end, decision, doubt }).row?.run ?? null;
  };
  const moved = Object.entries(ends).flatMap(([reading, [low, high]]): [string, Pair][] => {
    const pair = [at(low), at(high)] as const;
    return pair.every((end) => end !== null && same(end.marks, now.run.marks))
      ? []
      : [[reading, pair]];
  });
  return Object.fromEntries(moved);
}
