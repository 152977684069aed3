import { garmentMaterialWords as words } from '#words/garment/garment-material-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import type { MaterialForm, MaterialKind } from '../../../calculation/material.ts';
import { isStrip } from '../../../garment/materials/served.ts';
import {
  type Material,
  MOST_CENTS,
  MOST_COUNT,
  MOST_SPARE,
  type Price,
  WHOLE,
} from '../../../garment/record/material.ts';
import { LONGEST } from '../../../lengths/length.ts';
import { UNITS_PER } from '../../../lengths/unit.ts';
import { valueText } from '../said/value-text.ts';
import { amountText, moneyText, shareText } from './materials-text.ts';

/** What is said of a material in a number. */
export type PartKey =
  | 'width'
  | 'repeat'
  | 'unit'
  | 'spare'
  | 'shrinksAlong'
  | 'shrinksAcross'
  | 'price'
  | 'there'
  | 'more';

/** One such number: how it is shown, typed and kept. */
export interface MaterialPart {
  key: PartKey;
  hint: string;
  kind: 'length' | 'count' | 'number';
  /** Undefined while nothing is said. */
  text: string | undefined;
  /** Why what was read can't be kept. */
  refuses: (read: number) => string | undefined;
  /** What is kept of what was read. */
  kept: (read: number) => Pick<Material, PartKey>;
}

const KEYS: Readonly<Record<MaterialForm, readonly PartKey[]>> = {
  laid: [
    'width',
    'repeat',
    'unit',
    'there',
    'price',
    'spare',
    'shrinksAlong',
    'shrinksAcross',
    'more',
  ],
  length: ['unit', 'there', 'price', 'spare', 'shrinksAlong', 'more'],
  count: ['unit', 'there', 'price', 'spare', 'more'],
};

type Of = { kind: MaterialKind; form: MaterialForm; said: Material };

/** What can be said of a material in numbers. */
export function partsOf(of: Of, bench: Bench): MaterialPart[] {
  // A strip is cut from something as wide as is said, or bought as such.
  const strip = isStrip(of.kind) && of.form === 'length';
  const keys: readonly PartKey[] = strip ? ['width', ...KEYS.length] : KEYS[of.form];
  return keys.map((key) => {
    if (key === 'price') return pricePart(of, bench);
    if (key === 'spare') return sharePart(key, of, MOST_SPARE, bench);
    if (key === 'shrinksAlong' || key === 'shrinksAcross') {
      return sharePart(key, of, WHOLE - 1, bench);
    }
    return amountPart(key, of, bench);
  });
}

function amountPart(
  key: 'width' | 'repeat' | 'unit' | 'there' | 'more',
  { kind, form, said }: Of,
  bench: Bench,
): MaterialPart {
  const counted = form === 'count';
  const least = key === 'there' ? 0 : 1;
  const most = counted ? MOST_COUNT : LONGEST;
  const value = said[key];
  // Nobody buys a width, or a repeat: it is said as it was typed.
  const text = (of: number) =>
    key === 'width' || key === 'repeat'
      ? valueText('length', of, bench)
      : amountText(form, of, bench);
  const good = (read: number) => Math.round(read) >= least && read <= most;
  const hint =
    key === 'width' && isStrip(kind)
      ? 'widthOfStrip'
      : key === 'unit' && kind === 'thread'
        ? 'unitOfThread'
        : key;
  return {
    key,
    hint: words.hints[hint],
    kind: counted ? 'count' : 'length',
    text: value === undefined ? undefined : text(value),
    refuses: (read) => (good(read) ? undefined : counted ? words.noCount : words.noAmount),
    kept: (read) => ({ [key]: Math.round(read) }),
  };
}

function sharePart(
  key: 'spare' | 'shrinksAlong' | 'shrinksAcross',
  { said }: Of,
  most: number,
  bench: Bench,
): MaterialPart {
  const value = said[key];
  // What is typed finer is taken up, so that it is never too little.
  const share = (read: number) => Math.ceil(read * 100 - 1e-6);
  return {
    key,
    hint: words.hints[key],
    kind: 'number',
    text: value === undefined ? undefined : words.share(shareText(value, bench)),
    refuses: (read) =>
      share(read) >= 0 && share(read) <= most ? undefined : words.noShare(shareText(most, bench)),
    kept: (read) => ({ [key]: share(read) + 0 }),
  };
}

function pricePart({ form, said }: Of, bench: Bench): MaterialPart {
  const per =
    form === 'count' ? (said.unit ?? 1) : bench.unit === 'in' ? UNITS_PER.yd : UNITS_PER.m;
  const { price } = said;
  const cents = (read: number) => Math.round(read * 100);
  const refuses = (read: number) => {
    if (cents(read) > MOST_CENTS) return words.noMoneySoHigh(moneyText(MOST_CENTS, bench));
    const isWhole = Math.abs(read * 100 - cents(read)) < 1e-6;
    return isWhole && cents(read) >= 0 ? undefined : words.noMoney;
  };
  return {
    key: 'price',
    hint: words.hints.price[perOf(form, per)],
    kind: 'number',
    text: price && priceText(form, price, bench),
    refuses,
    kept: (read) => ({ price: { cents: cents(read), per } }),
  };
}

function priceText(form: MaterialForm, { cents, per }: Price, bench: Bench): string {
  return words.per[perOf(form, per)](moneyText(cents, bench), per);
}

/** What a price is of. */
function perOf(form: MaterialForm, per: number): keyof typeof words.per {
  if (form === 'count') return per === 1 ? 'one' : 'pack';
  return per === UNITS_PER.yd ? 'yd' : 'm';
}
