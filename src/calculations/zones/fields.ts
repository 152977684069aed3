import { zonesWords as words } from '#words/calculations/zones-words.ts';
import {
  choice,
  count,
  length,
  lengthOrNone,
  lengths,
  numbers,
} from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';
import type { GatherZonesInput } from '../../sewing/fullness/gather-zones.ts';

const by = choice(words.by);

/** What is asked of gathers in zones: what always matters first. */
export const zonesFields = schema(words.labels, {
  zones: lengths(words.needed, {
    start: { cm: '10; 20; 10', mm: '100; 200; 100', in: '4; 8; 4' },
  }),
  parts: count({ start: '4', usual: 'closures' }),
  ratios: numbers(words.needed, { start: '1; 2; 1' }),
  by,
  strip: length({
    start: { cm: '55', mm: '550', in: '22' },
    when: by.is('strip'),
    usual: 'stripLength',
  }),
  ends: lengthOrNone(words.none, {
    start: { cm: '1', mm: '10', in: '3/8' },
    usual: 'seamAllowance',
    givesWay: true,
  }),
});

/** What was read of the fields. */
export type ZonesAsked = InputOf<(typeof zonesFields)['specs']>;

export const ZONES_FIELDS = [
  'zones',
  'parts',
  'ratios',
  'by',
  'strip',
  'ends',
] as const satisfies readonly (keyof ZonesAsked)[];

/** The zones that are asked for. */
export function zonesInput({
  zones,
  parts,
  ratios,
  by,
  strip,
  ends,
}: ZonesAsked): GatherZonesInput {
  const there = by === 'strip' ? needed({ strip }).strip : undefined;
  return { zones, parts, ratios, ends, strip: there };
}
