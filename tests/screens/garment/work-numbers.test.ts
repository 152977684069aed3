import { expect, test } from 'vitest';
import { demoWords } from '#words/garment/demo-words.ts';
import { act } from '../../../src/garment/actions/act.ts';
import { demoGarment } from '../../../src/garment/actions/demo.ts';
import { WAISTCOAT } from '../../../src/garment/actions/demo-waistcoat.ts';
import { begin, type State } from '../../../src/garment/actions/state.ts';
import { openWork } from '../../../src/screens/garment/works/open-work.ts';
import { answerOf } from '../../../src/screens/garment/works/work-numbers.ts';
import { benchOf } from '../../controls/helpers.ts';
import { alike } from '../../garment/trial/compare.ts';
import { typed } from '../../garment/trial/garments.ts';
import { KNOWN } from '../../garment/trial/known.ts';

const bench = benchOf();
const place = { work: 'hooks', field: 'top' };

function typing(state: State, text: string): State {
  return act(state, { do: 'type', place, parts: typed(text), now: 1 }).state;
}

function answered(state: State) {
  const open = openWork(state, 'hooks', '', bench);
  if (!open) throw new Error('there is no such work');
  return answerOf(state, open);
}

test('a key works out again only what reads the field that is typed into, and comes to the same', () => {
  const settled = begin(demoGarment(WAISTCOAT, demoWords.waistcoat, 'demo', 1, KNOWN), KNOWN);
  const first = answered(typing(settled, '1'));
  const next = typing(settled, '1.5');
  const second = answered(next);
  expect(second.evaluated).toBeLessThan(first.evaluated);
  // Of a garment in which nothing was typed before it.
  const fresh = { ...next, answer: { ...next.answer } };
  expect(alike(second, answered(fresh))).toBe(true);
});
