import { sharesOf } from '../../../src/tape/digits/digit-logs.ts';
import {
  freshActivity,
  type Layers,
  NO_DIGIT,
  networkOf,
} from '../../../src/tape/digits/network.ts';
import { randomFrom } from '../../tapes/random.ts';
import { drawnCell, type LabelledCell, type Source } from './cells.ts';

/** How cells came out: of digits and of rubbish, right at all, answered where sure, wrong there. */
export interface Figures {
  readonly cells: number;
  readonly right: number;
  readonly answered: number;
  readonly wrong: number;
}

/** Cells of one seed. */
export function cellsOf(source: Source, count: number, seed: number): LabelledCell[] {
  const random = randomFrom(seed);
  return Array.from({ length: count }, () => drawnCell(source, random));
}

/** The best class of each cell with its share, and which it is. */
export function answersOf(layers: Layers, cells: readonly LabelledCell[]) {
  const activity = freshActivity();
  const run = networkOf(layers, activity);
  return cells.map(({ cell, label }) => {
    run(cell);
    const shares = sharesOf(activity.scores);
    const best = shares.indexOf(Math.max(...shares));
    return { label, best, share: shares[best] as number };
  });
}

export type Answer = ReturnType<typeof answersOf>[number];

export function figuresOf(answers: readonly Answer[], sure: number): Figures {
  const answered = answers.filter(({ share }) => share >= sure);
  const wrong = answered.filter(({ best, label }) => best !== label).length;
  const right = answers.filter(({ best, label }) => best === label).length;
  return { cells: answers.length, right, answered: answered.length, wrong };
}

/** The greatest chance of an error that so many wrong of so many leave, 95 times of 100 (Clopper and Pearson, 1934, for 0; else normal). */
function upperLimit({ answered, wrong }: Figures): number {
  if (wrong === 0) return 1 - 0.05 ** (1 / Math.max(1, answered));
  const share = wrong / answered;
  return share + 1.645 * Math.sqrt((share * (1 - share)) / answered) + 1.5 / answered;
}

export function said(name: string, figures: Figures): string {
  const { cells, right, answered, wrong } = figures;
  const of = (count: number) => `${((100 * count) / cells).toFixed(2)} %`;
  return `${name}: ${cells} cells, right ${of(right)}, answered ${of(answered)}, wrong ${wrong} of ${answered} (95 % limit ${(100 * upperLimit(figures)).toFixed(3)} %)`;
}

export const isDigit = ({ label }: Answer) => label !== NO_DIGIT;
