/**
 * What is drawn beside an answer: of every address that an earlier build wrote, and as every
 * calculation starts. The snapshot was written when figures were still part of the answer (796f48a);
 * a drawing that is meant to change is taken anew with `-u`, and the change looked at.
 */
import { expect, test } from 'vitest';
import { openingDraft } from '../../src/app/start/last.ts';
import { readRoute, writeRoute } from '../../src/app/start/route.ts';
import { drawnAnswer } from '../../src/calculation/as-made.ts';
import type { Answer } from '../../src/calculation/calculation.ts';
import { CALCULATIONS } from '../../src/calculations/list.ts';
import { benchOf } from '../controls/helpers.ts';
import { fixture, fixtures } from '../fixtures/fixture.ts';

interface Written {
  unit: 'cm' | 'in';
  address: string;
}

const starts = Object.keys(CALCULATIONS).map(
  (screen): Written => ({ unit: 'cm', address: writeRoute({ screen, mode: '', draft: {} }) }),
);
const written = fixtures('addresses-').flatMap(
  (name) => fixture<{ addresses: readonly Written[] }>(name).addresses,
);

/** A text in a few letters: another one where anything in it is another. */
function inShort(text: string): string {
  let sum = 0x811c9dc5;
  for (const letter of text) sum = Math.imul(sum ^ letter.charCodeAt(0), 0x01000193);
  return (sum >>> 0).toString(36);
}

/** Names of drawings with what is on them, to a thousandth of a millimetre. */
function drawnBeside({ figures = [] }: Answer): string[] {
  const rounded = (_: string, value: unknown) =>
    typeof value === 'number' ? Math.round(value * 1000) / 1000 + 0 : value;
  return figures.map(({ name, draw }) => {
    const figure = draw();
    return `${name}: ${figure.length} shapes, ${inShort(JSON.stringify(figure, rounded))}`;
  });
}

/** What an address shows drawn: as planned, and with its second mark made 3 mm from the datum. */
async function drawnAt({ address, unit }: Written): Promise<string[]> {
  const { screen, draft } = readRoute(address);
  const calculation = await CALCULATIONS[screen]?.();
  if (!calculation) throw new Error(`no such calculation: ${screen}`);
  const bench = benchOf({ unit });
  const { draft: fields } = openingDraft(calculation, draft, undefined, bench);
  const work = calculation.work(fields, bench);
  if (!work.ok) throw new Error(`${address}: ${work.faults.map(({ field }) => field)}`);
  const planned = drawnBeside(work.answer);
  const label = work.answer.runs[0]?.run.marks[1]?.label;
  const made = drawnBeside(drawnAnswer(work.answer, { made: `${label}=3 mm` }, bench));
  return planned.length === 0 ? [] : [`${unit} ${address}`, ...planned, 'made:', ...made, ''];
}

test('what is drawn is what was drawn before', async () => {
  const all = await Promise.all([...starts, ...written].map(drawnAt));
  await expect(all.flat().join('\n')).toMatchFileSnapshot('../fixtures/drawn-796f48a.txt');
});
