import { MATERIALS, type MaterialKind } from '../../calculation/material.ts';
import { LONGEST } from '../../lengths/length.ts';
import { LONGEST_NAME } from '../garment.ts';
import type { Garment, Kept } from './record.ts';
import { isObject } from './sound-values.ts';

/**
 * What the maker says of a material; all of it may be missing. Lengths are whole 1/8000 mm, shares
 * hundredths of a per cent, money the hundredth part of it: whole numbers all.
 */
export interface Material {
  name?: string;
  /** Of one that the maker added: what works take by themselves has its kind by its id. */
  kind?: MaterialKind;
  rank?: number;
  /** How wide it is, less its selvedges. */
  width?: number;
  /** Pieces are cut through two layers, with the cloth folded along its length. */
  folded?: true;
  /** How long its pattern is until it comes again, along it: pieces are to begin alike in it. */
  repeat?: number;
  /** It is sold by so much, as so long or so many. */
  unit?: number;
  /** How much more is wanted than the works take. */
  spare?: number;
  /** What it loses when it is washed, before it is cut. */
  shrinksAlong?: number;
  shrinksAcross?: number;
  price?: Price;
  /** How much of it is there, with what is used already. */
  there?: number;
  /** Wanted besides what the works take: so long, or so many. */
  more?: number;
  /** By need (`Need.key`), whether it is taken of this; where it isn't said, as it comes. */
  serves?: Readonly<Record<string, boolean>>;
  /** By need, how long a strip is whose work doesn't know it. */
  long?: Readonly<Record<string, number>>;
}

/** What so much of it costs, in hundredths. */
export interface Price {
  cents: number;
  /** So long, or so many. */
  per: number;
}

/** The whole of it, in hundredths of a per cent. */
export const WHOLE = 10_000;
/** As much again, ten times. */
export const MOST_SPARE = 10 * WHOLE;
/** The most of it there can be: a million. */
export const MOST_COUNT = 1_000_000;
/** Ten million, in hundredths. */
export const MOST_CENTS = 1_000_000_000;

const upTo = (most: number, least: number) => (read: unknown) =>
  Number.isInteger(read) && (read as number) >= least && (read as number) <= most;
const amount = upTo(LONGEST, 1);
const share = upTo(WHOLE - 1, 0);

const CHECKS: Readonly<Record<keyof Material, (read: unknown) => boolean>> = {
  name: (read) => typeof read === 'string' && read.length <= LONGEST_NAME,
  kind: (read) => typeof read === 'string' && Object.hasOwn(MATERIALS, read),
  rank: Number.isFinite,
  width: amount,
  folded: (read) => read === true,
  repeat: amount,
  unit: amount,
  spare: upTo(MOST_SPARE, 0),
  shrinksAlong: share,
  shrinksAcross: share,
  price: (read) => isObject(read) && upTo(MOST_CENTS, 0)(read.cents) && amount(read.per),
  there: upTo(LONGEST, 0),
  more: amount,
  serves: (read) => isObject(read) && Object.values(read).every((is) => typeof is === 'boolean'),
  long: (read) => isObject(read) && Object.values(read).every(amount),
};

/** What is said of the materials of a garment, by id, and what of it can't be worked with. */
export function materialsIn({ materials = {} }: Garment): {
  said: ReadonlyMap<string, Material>;
  unsound: readonly string[];
} {
  const all = Object.entries(materials);
  const sound = all.filter((one): one is [string, Material] => isMaterial(one[1]));
  const said = new Map(sound);
  return { said, unsound: all.flatMap(([id]) => (said.has(id) ? [] : [id])) };
}

function isMaterial(read: unknown): boolean {
  if (!isObject(read)) return false;
  return Object.entries(CHECKS).every(([key, is]) => read[key] === undefined || is(read[key]));
}

/** What is said of materials without some of it, such as what is there: what can't be read stays. */
export function materialsWithout(materials: Kept, ...left: readonly (keyof Material)[]): Kept {
  const out: ReadonlySet<string> = new Set(left);
  const all = Object.entries(materials).map(([id, one]): [string, unknown] => {
    const parts = isObject(one) ? Object.entries(one) : undefined;
    return [id, parts ? Object.fromEntries(parts.filter(([key]) => !out.has(key))) : one];
  });
  return Object.fromEntries(all);
}
