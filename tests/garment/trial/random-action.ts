import { type FieldSpec, maybeLength } from '../../../src/calculation/field-spec.ts';
import type { Action } from '../../../src/garment/actions/act.ts';
import { waysOutOf } from '../../../src/garment/actions/decide.ts';
import { moved } from '../../../src/garment/actions/rank.ts';
import type { State } from '../../../src/garment/actions/state.ts';
import type { FieldPlace } from '../../../src/garment/actions/typing.ts';
import type { Fact, Quantity, Work } from '../../../src/garment/record/record.ts';
import { numberOf } from '../../../src/garment/record/sound.ts';
import { backOne } from './back-one.ts';
import type { Dice } from './dice.ts';
import { givesOf, randomOption, randomParts, randomWork, takeable } from './random-work.ts';

export type Weights = readonly (readonly [what: string, weight: number])[];

/** Everything a maker does, about as often as would show most. */
const ALL: Weights = [
  ['make', 8],
  ['up to', 1],
  ['measure', 3],
  ['again', 2],
  ['unmake', 2],
  ['back one', 2],
  ['undo', 4],
  ['type', 6],
  ['settle', 3],
  ['link', 4],
  ['unlink', 1],
  ['choose', 3],
  ['take off', 2],
  ['put back', 3],
  ['decide', 6],
  ['add', 1],
  ['rank', 1],
  ['side', 1],
  ['remove', 1],
  ['before', 2],
  ['whole before', 1],
  ['pass', 2],
  ['together', 1],
  ['move', 1],
  ['note', 1],
];

export function randomAction(d: Dice, state: State, weights = ALL): Action {
  let k = d.int(
    1,
    weights.reduce((sum, [, weight]) => sum + weight, 0),
  );
  const [what] = weights.find(([, weight]) => {
    k -= weight;
    return k <= 0;
  }) ?? ['settle'];
  const now = d.int(1, 1e9);
  const id = `n${d.int(1, 1e9)}`;
  const { record, answer } = state;
  const facts = Object.keys(record.facts);
  const tape = d.of([8000, 4000, 12_700]);
  switch (what) {
    case 'make':
      return randomMaking(d, state, { now, id, tape });
    case 'up to':
      return { do: 'make', home: openHome(d, state), tape, now, id, upTo: d.int(1, 20) };
    case 'measure': {
      if (facts.length === 0) return measureAgain(d, state, { now, id, tape });
      const fact = d.of(facts);
      const made = record.facts[fact] as Fact;
      const measured = (numberOf(made) ?? 0) + d.int(-60_000, 60_000);
      return { do: 'measure', fact, measured, now };
    }
    case 'again':
      return measureAgain(d, state, { now, id, tape });
    case 'before':
      return { do: 'make before', homes: [openHome(d, state)], id, now };
    case 'whole before': {
      const work = `${workIn(d, state)}|`;
      const open = answer.steps.filter(({ home, made }) => home.startsWith(work) && made === 0);
      return { do: 'make before', homes: open.map(({ home }) => home), id, now };
    }
    case 'pass':
      return { do: 'pass', home: openHome(d, state), over: d.chance(0.7), now };
    case 'together': {
      const home = openHome(d, state);
      const [work, , key] = home.split('|');
      const other = `${work}|${d.of(['left', 'right', ''])}|${key}`;
      return { do: 'make', home, also: [other], tape, now, id };
    }
    case 'move': {
      const work = workIn(d, state);
      const to = moved(state, work, d.of([-1, 1]));
      return to ? { do: 'rank', ...to, now } : { do: 'settle', now };
    }
    case 'note': {
      const home = d.of([openHome(d, state), `${workIn(d, state)}||`]);
      const note = d.chance(0.7) ? { text: `n${d.int(1, 9)}` } : undefined;
      return { do: 'note', home, note, now };
    }
    case 'unmake':
      return { do: 'unmake', fact: facts.length > 0 ? d.of(facts) : 'none', now };
    case 'back one':
      return backOne(state, now);
    case 'undo':
      return {
        ...{ do: 'undo', change: d.of([...state.log.slice(-12), { id: 0 }]).id },
        ...{ sure: d.chance(0.5), now },
      };
    case 'take off':
      return { do: 'take off', work: workIn(d, state), leave: d.of(['wait', 'number']), now };
    case 'put back':
      return { do: 'put back', work: workIn(d, state), now };
    case 'decide': {
      const home = d.of([...answer.conflicts.map((one) => one.home), 'none||none']);
      const way = d.of([...waysOutOf(state, home).map((one) => one.way), 'noted']);
      return { do: 'decide', home, way, now };
    }
    case 'add':
      return { do: 'add', to: 'works', id, it: randomWork(d, takeable(record), 1000), now };
    case 'rank':
      return { do: 'rank', of: 'works', id: workIn(d, state), rank: d.int(1, 40) + d.next(), now };
    case 'type':
    case 'link':
    case 'choose':
    case 'side':
      return randomField(d, state, what, now);
    case 'remove':
      return { do: 'remove', quantity: d.of([...Object.keys(record.quantities), 'none']), now };
    case 'unlink':
      return { do: 'unlink', place: randomField(d, state, 'link', now).place, now };
    default:
      return { do: 'settle', now };
  }
}

type Press = { now: number; id: string; tape: number };

function workIn(d: Dice, { record }: State): string {
  return d.of(Object.keys(record.works));
}

function openHome(d: Dice, { answer }: State): string {
  const open = answer.steps.filter(({ made, of }) => made !== of);
  return d.of([...open.map(({ home }) => home), 'none||none']);
}

function randomMaking(d: Dice, state: State, press: Press): Action {
  const home = openHome(d, state);
  const result = state.answer.values.get(home);
  const value = result?.ok ? result.value : undefined;
  const asked = typeof value === 'object' ? value.marks.length : 0;
  const rank = asked > 0 && d.chance(0.3) ? { rank: d.int(0, asked - 1) } : {};
  const off = d.int(-40_000, 40_000);
  const measured =
    typeof value === 'number' && d.chance(0.3) ? { measured: Math.round(value) + off } : {};
  return { do: 'make', home, ...press, ...rank, ...measured };
}

function measureAgain(d: Dice, { record }: State, press: Press): Action {
  const quantity =
    Object.keys(record.quantities).length > 0 ? d.of(Object.keys(record.quantities)) : 'none';
  const kind = (record.quantities[quantity] as Quantity | undefined)?.kind;
  const measured = kind === 'count' ? d.int(2, 12) : 8000 * d.int(150, 700);
  return { do: 'measure', quantity, measured, ...press };
}

function randomField(d: Dice, state: State, what: string, now: number) {
  const work = workIn(d, state);
  const it = state.record.works[work] as Work;
  const gives = givesOf(it);
  const specs = Object.entries(gives?.fields.specs ?? {});
  const fitting = specs.filter(([, { kind }]) => (kind === 'choice') === (what === 'choose'));
  // A work this build doesn't know is typed into all the same.
  const unknown: [string, FieldSpec<unknown>][] = [['odd', maybeLength('none')]];
  const [field, spec] = d.of([fitting, specs, unknown].find((all) => all.length > 0) ?? unknown);
  const place: FieldPlace = { work, field, ...(what === 'side' && { side: 'left' }) };
  const parts =
    spec.kind === 'choice' && gives
      ? randomOption(d, spec, it.fields, gives)
      : randomParts(d, spec, takeable(state.record), what === 'link' ? 1 : 0);
  const does = what === 'type' ? 'type' : what === 'link' ? 'link' : 'choose';
  return { do: does, place, parts, now } as const;
}
