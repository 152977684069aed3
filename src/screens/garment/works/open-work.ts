import type { Bench } from '../../../calculation/bench.ts';
import type { Draft, Field } from '../../../calculation/calculation.ts';
import { asTyped } from '../../../calculation/draft-text.ts';
import { todays } from '../../../garment/actions/put.ts';
import type { State } from '../../../garment/actions/state.ts';
import { type FieldPlace, pendingOf } from '../../../garment/actions/typing.ts';
import type { LinkPart, Part, PutPart, Work } from '../../../garment/record/record.ts';
import { type FieldText, fieldText, isLengthKind } from '../../../garment/work-out/field-text.ts';
import type { SeenWork } from '../../../garment/work-out/seen-work.ts';
import { exactLength } from '../../../lengths/length.ts';
import { placeOfLetter } from '../../../lengths/taken.ts';

/** A field of a work, or of a quantity, that is open, as it stands on the bench in hand. */
export interface OpenField<Place extends FieldPlace = Extract<FieldPlace, { work: string }>> {
  field: Field;
  place: Place;
  /** As typed, with a letter for each thing taken; bare lengths are in the unit of the bench. */
  text: string;
  taken: FieldText['taken'];
  /** This side has it for itself. */
  own: boolean;
}

/** One side of a work, with what is being typed. */
export interface OpenWork {
  id: string;
  side: string;
  work: Work;
  seen: SeenWork;
  fields: readonly OpenField[];
  /** What stands in the fields with numbers of now where something is taken; undefined while one of those waits. */
  draft: Draft | undefined;
}

/** Opens a side of a work; undefined where nothing of its fields is known here. */
export function openWork(
  state: State,
  id: string,
  side: string,
  bench: Bench,
): OpenWork | undefined {
  const seen = state.answer.works.get(id);
  if (typeof seen?.gives !== 'object') return undefined;
  const { work } = seen;
  const { specs, asked } = seen.gives.fields;
  const standing = new Map(
    Object.entries(specs).map(([key, { kind }]) => {
      const at = placeOf(work, { id, side }, key);
      return [
        key,
        { ...at, ...textAt(partsAt(state, at.place, work), kind, bench, isLengthIn(state, side)) },
      ] as const;
    }),
  );
  const texts = Object.fromEntries([...standing].map(([key, { text }]) => [key, text]));
  const fields = asked.fields(texts).flatMap((field): OpenField[] => {
    const one = standing.get(field.key);
    return one ? [{ field, ...one }] : [];
  });
  const plain = fields.map(({ field, text, taken }) => {
    const value = withValues(text, taken, (part) => writtenOut(state, part, side, bench));
    return [field.key, value] as const;
  });
  const waits = plain.some(([, text]) => text === undefined);
  const draft = waits ? undefined : { ...texts, ...(Object.fromEntries(plain) as Draft) };
  return { id, side, work, seen, fields, draft };
}

function placeOf(work: Work, { id, side }: { id: string; side: string }, field: string) {
  const own = work.own?.[side]?.[field] !== undefined;
  return { own, place: { work: id, field, ...(own && { side }) } };
}

/** What stands at a place, or is being typed there. */
function partsAt(state: State, place: Extract<FieldPlace, { work: string }>, work: Work): unknown {
  const pending = pendingOf(state.record);
  if (pending && isSame(pending.place, place)) return pending.parts;
  const { field, side } = place;
  return side === undefined ? work.fields[field] : work.own?.[side]?.[field];
}

export function isSame(one: FieldPlace, other: FieldPlace): boolean {
  if ('quantity' in one || 'quantity' in other)
    return JSON.stringify(one) === JSON.stringify(other);
  return one.work === other.work && one.field === other.field && one.side === other.side;
}

/** Whether what is taken is a length; undefined while it waits. */
export function isLengthIn(state: State, side: string) {
  return (part: LinkPart | PutPart): boolean | undefined => {
    const now = 'link' in part ? todays(state, part, side) : part;
    return 'put' in now ? isLengthKind(now.kind) : undefined;
  };
}

/** Parts as one text; lengths typed in another unit have it written. */
export function textAt(
  parts: unknown,
  kind: Field['kind'],
  { unit }: Bench,
  takesLength: ReturnType<typeof isLengthIn>,
) {
  const isLength = kind === 'length' || kind === 'lengths';
  const first = { text: '', unit };
  const read = fieldText(isLength && Array.isArray(parts) ? [first, ...parts] : parts, takesLength);
  return { text: read.text, taken: read.taken };
}

/** A text with what is taken written out; undefined where there is none of it now. */
function withValues(
  text: string,
  taken: OpenField['taken'],
  valueAt: (part: LinkPart | PutPart) => string | undefined,
): string | undefined {
  const pieces = [...text].map((letter) => {
    const part = taken[placeOfLetter(letter)];
    return part ? valueAt(part) : letter;
  });
  return pieces.includes(undefined) ? undefined : pieces.join('');
}

function writtenOut(
  state: State,
  part: LinkPart | PutPart,
  side: string,
  bench: Bench,
): string | undefined {
  const now: Part = 'link' in part ? todays(state, part, side) : part;
  if (!('put' in now)) return undefined;
  if (typeof now.put === 'object') {
    return now.put.marks.map(({ at }) => asTyped(at, bench)).join('; ');
  }
  const said = now.kind === 'length' ? asTyped(exactLength(now.put), bench) : String(now.put);
  return now.put < 0 ? `(${said})` : said;
}
