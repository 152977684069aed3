import type { Garment, Parts, Quantity, Work } from '../../../src/garment/record/record.ts';
import { garmentOf, output, quantity, typed } from './garments.ts';

/**
 * Groups of hem, seam, piece, strip, closures and lace, linked as in a real garment: 19 links a
 * group, pieces taking their allowances from hems, closures and lace following from both.
 */
export function linkedGarment(works: number): Garment {
  const mm = (n: number) => typed(String(n), 'mm');
  const length = (rank: number, parts: Parts): Quantity => {
    return { name: `Number ${rank}`, kind: 'length', rank, parts };
  };
  const quantities = {
    front: length(1, mm(463)),
    round: { ...length(2, mm(624)), plusMinus: 16_000 },
    long: length(3, [quantity('front'), { text: ' + 12', unit: 'mm' }]),
    seam: length(4, mm(15)),
    end: length(5, mm(4)),
  };
  const all = Array.from({ length: works }, (_, i): [string, Work] => {
    const id = (k: number) => `w${i - (i % 6) + k}`;
    const [calculation, fields] = KINDS[i % 6]?.(id, mm) ?? ['toy-hem', {}];
    return [`w${i}`, { name: calculation, calculation, rank: i + 1, fields }];
  });
  return garmentOf({ quantities, works: Object.fromEntries(all) });
}

type Kind = (
  id: (k: number) => string,
  mm: (n: number) => Parts,
) => readonly [string, Record<string, Parts>];

const KINDS: readonly Kind[] = [
  (id, mm) => [
    'toy-hem',
    {
      depth: mm(20),
      turned: typed('twice'),
      turn: mm(7),
      round: [output(id(2), 'cut-width')],
      above: [output(id(2), 'finished-length')],
    },
  ],
  (_, mm) => ['toy-hem', { depth: [quantity('seam')], turned: typed('once'), turn: mm(3) }],
  (id) => [
    'toy-piece',
    {
      width: [quantity('front')],
      length: [quantity('long')],
      top: [output(id(1), 'allowance')],
      bottom: [output(id(0), 'allowance')],
      left: [output(id(1), 'allowance')],
      right: [output(id(1), 'allowance')],
    },
  ],
  (_, mm) => [
    'toy-strip',
    {
      length: [quantity('round'), { text: ' + 0', unit: 'mm' }],
      pitch: mm(8),
      end: [quantity('end')],
      fit: typed('fill'),
      rows: typed('one'),
    },
  ],
  (id, mm) => [
    'closures',
    {
      opening: [output(id(2), 'finished-length')],
      count: mm(7),
      top: [output(id(0), 'allowance')],
      bottom: [output(id(1), 'allowance')],
    },
  ],
  (id) => [
    'toy-lace',
    {
      holes: [output(id(3), 'count')],
      gap: [quantity('end')],
      tails: [output(id(0), 'allowance')],
    },
  ],
];
