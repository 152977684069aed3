import type { FieldSpec } from '../../../src/calculation/field-spec.ts';
import type { Kind, Outputs } from '../../../src/calculation/output.ts';
import type {
  Fields,
  Garment,
  Link,
  Part,
  Parts,
  Quantity,
  Work,
} from '../../../src/garment/record/record.ts';
import type { Dice } from './dice.ts';
import { typed } from './garments.ts';
import { KNOWN } from './known.ts';

/** Everything in a record that a link may take. */
export type Takeable = readonly [Link, Kind];

export const GIVES = [...KNOWN.values()].filter((one): one is Outputs => typeof one === 'object');

export function givesOf(work: unknown): Outputs | undefined {
  const gives = KNOWN.get((work as Work).calculation);
  return typeof gives === 'object' ? gives : undefined;
}

export function takeable({ quantities, works }: Pick<Garment, 'quantities' | 'works'>): Takeable[] {
  return [
    ...Object.entries(quantities).map(
      ([id, one]): Takeable => [{ quantity: id }, (one as Quantity).kind],
    ),
    ...Object.entries(works).flatMap(([id, one]) =>
      (givesOf(one)?.outputs ?? []).map(
        ({ key, kind }): Takeable => [{ work: id, output: key }, kind],
      ),
    ),
  ];
}

/** What is typed near what a field starts with, in millimetres. */
function near(d: Dice, { start, kind }: FieldSpec<unknown>): string {
  const from = typeof start === 'object' ? start.mm : (start ?? '');
  const [, number] = /^([\d.]+)$/.exec(from) ?? [];
  if (kind === 'count')
    return String(number ? Math.max(1, Number(number) + d.int(-3, 3)) : d.int(1, 12));
  if (kind === 'number') return number ?? String(d.int(1, 3));
  const size = number ? Number(number) * (0.6 + d.next()) : d.int(3, 60);
  return d.chance(0.2) ? size.toFixed(1) : String(Math.max(1, Math.round(size)));
}

const WANTED: Readonly<Record<string, Kind>> = {
  length: 'length',
  count: 'count',
  number: 'number',
  run: 'run',
};

/** How often a row follows another where it may. */
const FOLLOWS = 0.4;

/** What may stand in a field: a link, a sum with one or two, or a typed number. */
export function randomParts(
  d: Dice,
  spec: FieldSpec<unknown>,
  from: readonly Takeable[],
  links: number,
): Parts {
  const kind = spec.takesRun ? 'run' : WANTED[spec.kind];
  if (!kind) return typed(spec.kind === 'choice' ? '' : '', 'mm');
  const fits = from.filter(([, its]) => its === kind);
  const link = (): Part => {
    const [one] = d.of(fits);
    return { link: 'work' in one && d.chance(0.05) ? { ...one, of: 'total' } : one };
  };
  if (spec.hint !== undefined && d.chance(0.4)) return typed('', 'mm');
  if (kind === 'run') return fits.length > 0 ? [link()] : typed('', 'mm');
  // A row follows another now and then, and else is spaced by itself.
  if (spec.takesRun && !d.chance(FOLLOWS)) return typed('', 'mm');
  if (fits.length === 0 || !d.chance(links)) return typed(near(d, spec), 'mm');
  const roll = d.next();
  if (roll < 0.6) return [link()];
  if (roll < 0.75) return [link(), { text: ' − ', unit: 'mm' }, link()];
  if (roll < 0.85) return [{ text: '2 × ', unit: 'cm' }, link()];
  return [link(), { text: ` + ${d.int(1, 9)}`, unit: 'mm' }];
}

export function randomOption(
  d: Dice,
  spec: FieldSpec<unknown>,
  fields: Fields,
  gives: Outputs,
): Parts {
  const draft = Object.fromEntries(
    Object.entries(fields).map(([key, [part]]) => [key, part && 'text' in part ? part.text : '']),
  );
  const offered = Object.keys(spec.choices?.(gives.fields.asks(draft)) ?? {});
  return typed(d.of(offered.length > 0 ? offered : ['']), 'mm');
}

export function randomWork(
  d: Dice,
  from: readonly Takeable[],
  rank: number,
  gives: Outputs = d.of(GIVES),
  links = 0.5,
): Work {
  const fields: Record<string, Parts> = {};
  for (const [key, spec] of Object.entries(gives.fields.specs)) {
    if (spec.kind !== 'choice') fields[key] = randomParts(d, spec, from, links);
  }
  for (const [key, spec] of Object.entries(gives.fields.specs)) {
    // As it starts often enough, so that much of it gives an answer.
    if (spec.kind === 'choice' && d.chance(0.5)) fields[key] = randomOption(d, spec, fields, gives);
  }
  return { name: gives.id, calculation: gives.id, rank, fields };
}
