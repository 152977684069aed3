import { pieceWords as words } from '#words/calculations/piece-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { pieceAnswer } from './answer.ts';
import { pieceFields } from './fields.ts';
import { pieceOf } from './read.ts';

/** A piece of a garment: from its finished size to what is cut, or from what was cut to what it gives. */
export const piece: Calculation = {
  id: 'piece',
  title: words.title,
  ...pieceFields.asked,
  work(draft, bench) {
    const read = pieceFields.read(draft, bench);
    if (!read.ok) return read;
    const found = pieceOf(read.value);
    if (!found.ok) return refusedFor(found.problems);
    return { ok: true, answer: pieceAnswer(found.value, draft, bench) };
  },
};
