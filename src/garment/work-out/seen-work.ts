import type { Fault } from '../../calculation/calculation.ts';
import type { Ask } from '../../calculation/field-spec.ts';
import type { Outputs } from '../../calculation/output.ts';
import type { FieldRead } from '../../calculation/schema.ts';
import type { Fields, Work } from '../record/record.ts';
import type { Seen } from '../record/sound.ts';
import { isObject } from '../record/sound-values.ts';
import { type FieldText, fieldText } from './field-text.ts';

/** What a calculation gives, or why that isn't known: on its way, not to be had just now. */
export type Known = ReadonlyMap<string, Outputs | 'awaited' | 'missing'>;

/** One side of a work: its texts, and what they choose. */
export interface SeenSide {
  side: string;
  draft: Readonly<Record<string, string>>;
  ask: Ask;
  texts: ReadonlyMap<string, FieldText>;
  /** What was read of fields that take nothing. */
  read: Map<string, FieldRead>;
  /** By what outputs are taken away, as far as it was asked: each asks it of all that it takes. */
  absent: Map<string, string | undefined>;
}

/** A work with its calculation, as far as that is known here. */
export interface SeenWork {
  work: Work;
  gives: Outputs | 'awaited' | 'missing' | undefined;
  /** Undefined where nothing of it can be worked out. */
  outputs: Outputs | undefined;
  /** Why not. */
  state: 'here' | 'newer' | 'awaited' | 'missing';
  /** What this build doesn't know of it. */
  unknown: readonly Fault[];
  /** At least one. */
  sides: readonly SeenSide[];
  /** What its fields link to, by id. */
  linked: readonly string[];
}

/** Looks at a work: the same object as before for the same work and calculation. */
export function seenWork(work: Work, known: Known, seen: Seen): SeenWork {
  const gives = known.get(work.calculation);
  const before = seen.get(work) as SeenWork | undefined;
  if (before && before.gives === gives) return before;
  const now = look(work, gives);
  seen.set(work, now);
  return now;
}

function look(work: Work, gives: SeenWork['gives']): SeenWork {
  const names = work.sides ?? [''];
  if (typeof gives !== 'object') {
    const sides = names.map((side) => blankSide(side));
    const state = gives ?? 'newer';
    return { work, gives, outputs: undefined, state, unknown: [], sides, linked: [] };
  }
  const sides = names.map((side) => sideOf(side, work, gives));
  const unknown = sides.flatMap(({ draft }) => gives.fields.unknown(draft));
  const linked = sides.flatMap(({ texts }) =>
    [...texts.values()].flatMap(({ taken }) =>
      taken.flatMap((part) =>
        'link' in part ? ('quantity' in part.link ? part.link.quantity : part.link.work) : [],
      ),
    ),
  );
  const here = unknown.length === 0;
  return {
    work,
    gives,
    outputs: here ? gives : undefined,
    state: here ? 'here' : 'newer',
    unknown,
    sides,
    linked: [...new Set(linked)],
  };
}

function blankSide(side: string): SeenSide {
  return { side, draft: {}, ask: () => '', texts: new Map(), read: new Map(), absent: new Map() };
}

function sideOf(side: string, work: Work, { fields }: Outputs): SeenSide {
  const own: unknown = work.own && Object.hasOwn(work.own, side) ? work.own[side] : undefined;
  const all: Fields = { ...work.fields, ...(isObject(own) && (own as Fields)) };
  const texts = new Map(Object.entries(all).map(([key, parts]) => [key, fieldText(parts)]));
  const draft = Object.fromEntries([...texts].map(([key, { text }]) => [key, text]));
  return { side, draft, ask: fields.asks(draft), texts, read: new Map(), absent: new Map() };
}

/** The field that takes an output, or all that it takes, away by what is chosen there on a side. */
export function absentBy(seen: SeenWork, side: SeenSide, key: string): string | undefined {
  const { absent } = side;
  if (!absent.has(key)) absent.set(key, absentIn(seen, side, key));
  return absent.get(key);
}

function absentIn(seen: SeenWork, side: SeenSide, key: string): string | undefined {
  const output = seen.outputs?.outputs.find((one) => one.key === key);
  const by = output?.absent(side.ask);
  if (by !== undefined || !output) return by;
  const taken = output.takes.map((one) => absentBy(seen, side, one));
  return taken.every((one) => one !== undefined) ? taken[0] : undefined;
}
