import { pieceIn } from '../record/piece-said.ts';
import { isObject } from '../record/sound-values.ts';

/** What this version of the app knows of each part of a record. A link holds nothing else. */
const KEYS = {
  quantities: ['name', 'kind', 'rank', 'parts', 'plusMinus', 'final', 'body', 'measure'],
  works: [
    'name',
    'calculation',
    'rank',
    'moved',
    'movedSides',
    'fields',
    'sides',
    'own',
    'off',
    'final',
    'older',
  ],
  facts: ['home', 'shown', 'plan', 'tape', 'rule', 'read', 'when', 'measured', 'mark', 'before'],
  begun: ['count', 'points', 'by'],
  decisions: ['way', 'facts', 'asked', 'tolerance', 'allow'],
  notes: ['text'],
  materials: [
    ...['name', 'kind', 'rank', 'width', 'folded', 'repeat', 'unit', 'there', 'price', 'more'],
    ...['spare', 'shrinksAlong', 'shrinksAcross', 'serves', 'long'],
  ],
  // A lay that was found is long, and is found again; flaws are of the one cloth it was found on.
  lays: ['nap', 'gap', 'repeatAcross', 'pieces'],
} as const;

type Part = keyof typeof KEYS;

/** A map of a record with what is known of each thing in it; of fields, of each part. */
export function knownOnly(part: Part, kept: unknown): Readonly<Record<string, unknown>> {
  const keys: readonly string[] = KEYS[part];
  return mapped(kept, (one) => {
    if (!isObject(one)) return undefined;
    const known = picked(one, keys);
    if (part === 'lays') return layOf(known);
    if (part === 'quantities') return { ...known, parts: partsOf(one.parts) };
    if (part !== 'works') return known;
    const own = one.own === undefined ? {} : { own: mapped(one.own, fieldsOf) };
    const moved = one.moved === undefined ? {} : { moved: movedOf(one.moved) };
    const apart =
      one.movedSides === undefined ? {} : { movedSides: mapped(one.movedSides, movedOf) };
    return { ...known, fields: fieldsOf(one.fields), ...own, ...moved, ...apart };
  });
}

/** What can't be read of a piece is not handed on. */
function layOf({ pieces, ...said }: Readonly<Record<string, unknown>>) {
  return pieces === undefined ? said : { ...said, pieces: mapped(pieces, pieceOf) };
}

const FORM_KEYS = ['kind', 'long', 'top', 'bottom', 'slant', 'points', 'bows'];

function pieceOf(read: unknown) {
  const { outline, ...said } = pieceIn(read);
  if (!outline) return said;
  const { adds } = outline;
  const form = picked({ ...outline.form }, FORM_KEYS);
  return { ...said, outline: { form, ...(adds !== undefined && { adds }) } };
}

const movedOf = (moved: unknown) =>
  mapped(moved, (at) => (isObject(at) ? picked(at, ['stage', 'rank']) : undefined));

const PART_KEYS = ['text', 'unit', 'mark', 'was', 'link', 'put', 'kind', 'plusMinus'];

function fieldsOf(fields: unknown) {
  return mapped(fields, partsOf);
}

function partsOf(parts: unknown): unknown {
  if (!Array.isArray(parts)) return undefined;
  return parts.map((part) => (isObject(part) ? picked(part, PART_KEYS) : null));
}

function picked(one: Readonly<Record<string, unknown>>, keys: readonly string[]) {
  return Object.fromEntries(
    keys.flatMap((key) => (Object.hasOwn(one, key) ? [[key, one[key]]] : [])),
  );
}

function mapped(kept: unknown, as: (one: unknown) => unknown): Record<string, unknown> {
  if (!isObject(kept)) return {};
  return Object.fromEntries(
    Object.entries(kept).flatMap(([id, one]) => {
      const now = as(one);
      return now === undefined ? [] : [[id, now]];
    }),
  );
}
