import { ventAnswerWords as words } from '#words/calculations/vent-answer-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Line, Working } from '../../calculation/calculation.ts';
import { linesSaid, onlySaid } from '../../calculation/only-said.ts';
import { numberSaid, saidAtMost } from '../../calculation/tape-said.ts';
import { byTape, exactly, numberOnTape } from '../../calculation/tape-text.ts';
import { upToGraduation } from '../../lengths/graduation.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import type { VentAsked } from './fields.ts';
import type { Worked } from './worked.ts';

/** Room at the hip as an answer: what is lacking there before the vent. */
export function ventAnswer(read: VentAsked, found: Worked, bench: Bench): Answer {
  return {
    headline: headline(found, bench),
    sentence: sentence(read, found, bench),
    lines: lines(read, found, bench),
    offers: [],
    warnings: warnings(read, found, bench),
    cautions: [words.tryOn],
    runs: [],
    workings: workings(read, found, bench),
  };
}

const size = (x: ExactLength) => exactLength(Math.abs(x));

function headline({ room, vent }: Worked, bench: Bench): Answer['headline'] {
  if (!vent) return { number: numberSaid(size(room.lacks), bench), after: words.lacking };
  if (vent.by === 'closed') return { number: numberSaid(room.ease, bench), after: words.noVent };
  return { number: numberOnTape(vent.vent, bench, upToGraduation), after: words.atLeast };
}

function sentence({ top }: VentAsked, { vent }: Worked, bench: Bench): string {
  if (!vent) return top === undefined ? words.above : words.letOut;
  return vent.by === 'closed' ? words.wide : words.begins(saidAtMost(vent.begins, bench));
}

function lines(read: VentAsked, { room, vent }: Worked, bench: Bench): Line[] {
  const show = (x: ExactLength) => byTape(size(x), bench);
  const { ease, lacks, needs } = room;
  const { stride, hem } = read;
  const step = stride === undefined ? 0 : stride - hem;
  const found: [string, string | false | undefined][] = [
    [words.beginsLine, vent && vent.by !== 'closed' && saidAtMost(vent.begins, bench)],
    [words.needsLine, show(needs)],
    [words.easeLine, ease < 0 ? words.lessThanBody(show(ease)) : show(ease)],
    [
      words.lacksLine,
      lacks !== 0 && (lacks > 0 ? words.lacks(show(lacks)) : words.over(show(lacks))),
    ],
    [words.stepLine, step > 0 && words.step(show(exactLength(step)))],
  ];
  return linesSaid(found);
}

function warnings({ down }: VentAsked, { room, vent }: Worked, bench: Bench): string[] {
  const show = (x: ExactLength) => byTape(size(x), bench);
  const said: (string | false | undefined)[] = [
    room.ease < 0 && words.tooSmall(show(room.ease)),
    vent && room.lacks > 0 && words.lacksWarning(show(room.lacks)),
    vent && vent.begins < down && words.rounder,
    vent?.by === 'edges' && words.edgesRule,
  ];
  return onlySaid(said);
}

function workings({ hip, ease, long }: VentAsked, { room, vent }: Worked, bench: Bench): Working[] {
  const show = (x: ExactLength) => exactly(x, bench);
  const needs = words.needsFormula(show(hip), show(ease), show(room.needs));
  return [
    { formula: needs, source: words.practice },
    ...(vent && vent.by !== 'closed'
      ? [
          {
            formula: words.ventFormula(show(long), show(vent.begins), show(vent.vent)),
            source: words.derived,
          },
        ]
      : []),
  ];
}
