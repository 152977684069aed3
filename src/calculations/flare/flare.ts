import { flareWords as words } from '#words/calculations/flare-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { flareAnswer } from './answer.ts';
import { flareFields } from './fields.ts';
import { flared } from './flared.ts';

/** Flare put into a hem, godets, and what a change of length does to it. */
export const flare: Calculation = {
  id: 'flare',
  title: words.title,
  ...flareFields.asked,
  work(draft, bench) {
    const read = flareFields.read(draft, bench);
    if (!read.ok) return read;
    const found = flared(read.value);
    if (!found.ok) return refusedFor(found.problems);
    return { ok: true, answer: flareAnswer(read.value, found.value, bench) };
  },
};
