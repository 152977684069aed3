import { garmentHomeWords as words } from '#words/garment-home-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Kind } from '../../calculation/output.ts';
import { onTape } from '../../calculation/tape-text.ts';
import { readHome } from '../../garment/record/home.ts';
import type { GarmentStep } from '../../garment/work-out/told.ts';
import type { Answer } from '../../garment/work-out/work-out.ts';
import { exactLength } from '../../lengths/length.ts';
import { workName } from './names.ts';
import { datumSaid } from './step-datum.ts';

/** A number as the tape in hand shows it: a length, or a count. */
export function numberOf(kind: Kind | undefined, value: number, bench: Bench): string {
  return kind === 'length' || kind === 'run'
    ? onTape(exactLength(Math.round(value)), bench)
    : String(Math.round(value));
}

/** What a work is called, with its side, by the home of one of its steps. */
export function workOf(answer: Answer, home: string): string {
  const { id, side } = readHome(home);
  return workName({ answer }, id, side);
}

/** A step in words: whose, what is done, and from where. */
export function stepWords(answer: Answer, { home, step }: GarmentStep): string {
  return words.step(
    workOf(answer, home),
    step.do,
    datumSaid(step.datum, answer.nodes.get(home)?.kind),
  );
}
