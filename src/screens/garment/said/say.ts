import { garmentHomeWords as words } from '#words/garment/garment-home-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import type { Kind, Step } from '../../../calculation/output.ts';
import { roundingOf } from '../../../calculation/step-rounding.ts';
import { onTape } from '../../../calculation/tape-text.ts';
import { readHome } from '../../../garment/record/home.ts';
import type { GarmentStep } from '../../../garment/work-out/told.ts';
import type { Answer } from '../../../garment/work-out/work-out.ts';
import { exactLength } from '../../../lengths/length.ts';
import { workName } from './names.ts';
import { datumSaid } from './step-datum.ts';
import { foundText } from './value-text.ts';

/** A number as the tape in hand shows it: a length, as its step rounds it, or a count. */
export function numberOf(
  kind: Kind | undefined,
  value: number,
  bench: Bench,
  step?: Pick<Step, 'bound'>,
): string {
  return kind === 'length' || kind === 'run'
    ? onTape(exactLength(Math.round(value)), bench, roundingOf(step))
    : String(Math.round(value));
}

/** A number of a garment: as the hand takes it where a step makes it, else as its page says it. */
export function numberAt({ nodes }: Answer, key: string, value: number, bench: Bench): string {
  const { output, kind = 'length' } = nodes.get(key) ?? {};
  return output?.step
    ? numberOf(kind, value, bench, output.step)
    : foundText(kind, value, bench, output);
}

/** What a work is called, with its side, by the home of one of its steps. */
export function workOf(answer: Answer, home: string): string {
  const { id, side } = readHome(home);
  return workName({ answer }, id, side);
}

/**
 * A step in words: whose, what is done, and from where.
 * @param also the same step on other sides, made with the same press
 */
export function stepWords(
  answer: Answer,
  { home, step }: GarmentStep,
  also: readonly GarmentStep[] = [],
): string {
  const { id, side } = readHome(home);
  const sides = [side, ...also.map((other) => readHome(other.home).side)];
  return words.step(
    workName({ answer }, id, words.sides(sides)),
    step.do,
    datumSaid(step.datum, answer.nodes.get(home)?.kind),
  );
}
