import { inMm } from '../as-made.ts';
import { readHome } from '../record/home.ts';
import type { Garment, Part } from '../record/record.ts';
import { numberOf, soundOf } from '../record/sound.ts';

/** A work or a quantity as it is written in a record, for looking at. */
export interface Written {
  id: string;
  name: string;
  /** Each field and what stands in it; undefined stands for a number from the garment. */
  typed: readonly (readonly [field: string, parts: readonly (string | undefined)[]])[];
  made: readonly string[];
}

/** What is written in a record, without any of it worked out: a file's may be wrong. */
export function writtenIn(garment: Garment): Written[] {
  const { quantities, works, facts } = soundOf(garment);
  const madeOf = (id: string) =>
    [...facts].flatMap(([home, all]) =>
      readHome(home).id === id ? all.map(({ fact }) => inMm(numberOf(fact))) : [],
    );
  const sums = [...quantities].map(([id, { name, parts }]): Written => {
    return { id, name, typed: [['', partsIn(parts)]], made: madeOf(id) };
  });
  const all = [...works].map(([id, { name, fields }]): Written => {
    const typed = Object.entries(fields).map(([key, parts]) => [key, partsIn(parts)] as const);
    return { id, name, typed, made: madeOf(id) };
  });
  return [...sums, ...all];
}

function partsIn(parts: unknown): (string | undefined)[] {
  return (Array.isArray(parts) ? (parts as Part[]) : []).map((part) => {
    const { text, put } = Object(part) as { text?: unknown; put?: unknown };
    if (typeof text === 'string') return text;
    return typeof put === 'number' ? inMm(put) : undefined;
  });
}
