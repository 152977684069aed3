import { linkOf } from '../record/parts.ts';
import type { Link, LinkPart, Part, PutPart, TextPart } from '../record/record.ts';
import { isObject } from '../record/sound-values.ts';
import { plusMinus } from '../work-out/doubt.ts';
import { oneOf } from '../work-out/field-value.ts';
import { sourceOf } from '../work-out/links.ts';
import type { Here } from '../work-out/result.ts';
import { type Edit, edit, type Slot } from './slots.ts';
import type { State } from './state.ts';

/** A part of a field that takes something, or did, on its side, turned into another one. */
type Turned = (part: Part, side: string) => Part;

/** Today's number in a link's place; where there is none, nothing, which waits to be typed. */
export function todays({ answer }: State, part: LinkPart, side: string): PutPart | TextPart {
  const was = part.link;
  const none: TextPart = { text: '', unit: 'cm', was };
  const source = sourceOf(part, side, { quantities: answer.sound.quantities, works: answer.works });
  if ('gone' in source) return none;
  const results = source.keys.map((key) => answer.values.get(key));
  const here = results.filter((one): one is Here => one?.ok === true);
  const values = here.map((one) => one.value);
  const value = here.length === results.length ? oneOf(source, values, values) : undefined;
  if (value === undefined) return none;
  const sure = here.reduce((most, one) => Math.max(most, plusMinus(one)), 0);
  return { put: value, kind: source.kind, ...(sure > 0 && { plusMinus: sure }), was };
}

/** Whether a link takes something of a work. */
export function isOf(link: Link, work: string): boolean {
  return 'work' in link && link.work === work;
}

/** Every field of the garment with its parts turned, as edits. */
export function turnParts({ record }: State, turned: Turned): Edit[] {
  const slots: [Slot, string][] = [];
  for (const id of Object.keys(record.quantities)) slots.push([['quantities', id, 'parts'], '']);
  for (const [id, work] of Object.entries(record.works)) {
    if (!isObject(work)) continue;
    for (const key of keysOf(work.fields)) slots.push([['works', id, 'fields', key], '']);
    for (const side of keysOf(work.own)) {
      const own = (work.own as Readonly<Record<string, unknown>>)[side];
      for (const key of keysOf(own)) slots.push([['works', id, 'own', side, key], side]);
    }
  }
  return slots.flatMap(([slot, side]) => turnedAt(record, slot, side, turned));
}

/** The fields that take something, of works that are taken off, too: those may come back. */
export function takersIn(state: State, takes: (link: Link) => boolean): Slot[] {
  const touched: Turned = (part) => ('link' in part && takes(part.link) ? { ...part } : part);
  return turnParts(state, touched).map(({ slot }) => slot);
}

/** The parts at one place turned. */
export function turnedAt(
  record: State['record'],
  slot: Slot,
  side: string,
  turned: Turned,
): Edit[] {
  const { before } = edit(record, slot, undefined);
  if (!Array.isArray(before)) return [];
  const after = before.map((part: unknown) => (linkOf(part) ? turned(part as Part, side) : part));
  return after.some((part, i) => part !== before[i]) ? [edit(record, slot, after)] : [];
}

function keysOf(map: unknown): string[] {
  return isObject(map) ? Object.keys(map) : [];
}
