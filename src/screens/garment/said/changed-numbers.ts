import type { Bench } from '../../../calculation/bench.ts';
import { homeOf, readHome } from '../../../garment/record/home.ts';
import { NOTHING } from '../../../garment/rows/points.ts';
import { askedKey, type Node } from '../../../garment/work-out/node.ts';
import type { Result } from '../../../garment/work-out/result.ts';
import type { Answer } from '../../../garment/work-out/work-out.ts';
import type { Run } from '../../../sewing/run.ts';
import { foundText, spaceText } from './value-text.ts';

/** A number elsewhere in the garment that what is typed changes. */
export interface Changed {
  key: string;
  before: string;
  after: string;
}

/** What a number says where there is none. */
const NONE = '–';

/**
 * The numbers of other works, and sums of the garment, that are others once what is typed settles: what is made
 * by a step first, in the order of the work.
 */
export function changedNumbers(
  before: Answer,
  after: Answer,
  own: string,
  bench: Bench,
): Changed[] {
  const found = [...after.nodes.values()].flatMap((node): (Changed & { step: boolean })[] => {
    if (node.id === own || (node.form === 'plan' && node.asked)) return [];
    const [was, is] = [before.values.get(node.key), after.values.get(node.key)];
    if (was === is) return [];
    const [one, other] = saidApart([was, is], node, bench);
    if (one === other) return [];
    return [{ key: node.key, before: one, after: other, step: node.output?.step !== undefined }];
  });
  const once = found.flatMap((one) => onceForAll(one, found));
  return [...once.filter(({ step }) => step), ...once.filter(({ step }) => !step)];
}

/** What is made of a number, or a row, and what is asked of it. */
export function madeAndAsked({ nodes, values }: Answer, home: string, bench: Bench) {
  const { kind = 'length', output } = nodes.get(home) ?? {};
  const results = [values.get(home), values.get(askedKey(home))];
  return saidApart(results, { kind, ...(output && { output }) }, bench);
}

/** What is the same of every side is said once, without one. */
function onceForAll<One extends Changed>(one: One, all: readonly One[]): One[] {
  const { id, key } = readHome(one.key);
  const alike = all.filter((other) => {
    const its = readHome(other.key);
    return its.id === id && its.key === key;
  });
  const [first] = alike;
  const same = alike.every(({ before, after }) => before === one.before && after === one.after);
  if (!same || alike.length < 2) return [one];
  return first === one ? [{ ...one, key: homeOf(id, '', key) }] : [];
}

function saidApart(
  results: readonly (Result | undefined)[],
  { kind, output }: Pick<Node, 'kind' | 'output'>,
  bench: Bench,
): [string, string] {
  const [one, other] = results.map((result) => (result?.ok ? result.value : undefined));
  if (typeof one === 'object' && typeof other === 'object') return runsApart(one, other, bench);
  const text = (value: typeof one) => {
    if (value === undefined) return NONE;
    if (typeof value === 'object') return String(value.marks.length);
    return foundText(kind, value, bench, output);
  };
  return [text(one), text(other)];
}

/** Two rows: by how many they have, else by their first space, else by where the first other mark lies. */
function runsApart(one: Run, other: Run, bench: Bench): [string, string] {
  if (one.marks.length !== other.marks.length) {
    return [`${one.marks.length} ×`, `${other.marks.length} ×`];
  }
  const [was, is] = [spaceOf(one), spaceOf(other)];
  if (Math.abs(was - is) >= NOTHING) return [spaceText(was, bench), spaceText(is, bench)];
  const at = one.marks.findIndex(
    (mark, i) => Math.abs(mark.at - (other.marks[i]?.at ?? 0)) >= NOTHING,
  );
  const place = ({ marks }: Run) => foundText('run', marks[Math.max(0, at)]?.at ?? 0, bench);
  return [place(one), place(other)];
}

function spaceOf({ marks }: Run): number {
  return (marks[1]?.at ?? 0) - (marks[0]?.at ?? 0);
}
