import { garmentMaterialWords as words } from '#words/garment/garment-material-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { onTape } from '../../../calculation/tape-text.ts';
import { BIAS_JOIN, BIAS_SHORTEST } from '../../../garment/materials/bias-cloth.ts';
import type { MaterialNow } from '../../../garment/materials/materials.ts';
import type { Need } from '../../../garment/materials/need.ts';
import { isBias, rowsOf, type Unsure } from '../../../garment/materials/net.ts';
import { withSpare } from '../../../garment/materials/to-buy.ts';
import { upToGraduation } from '../../../lengths/graduation.ts';
import { exactLength } from '../../../lengths/length.ts';
import { workName } from '../said/names.ts';
import { type Telling, troubleWords } from '../said/told-words.ts';
import { foundText, handText, valueText, widthText } from '../said/value-text.ts';
import { laySaid } from './lay-stale.ts';
import { worksNamed } from './materials-said.ts';
import { amountText, moneyText, shareText } from './materials-text.ts';

/** All there is to say of one material, sentence by sentence. */
export function materialSentences(telling: Telling, one: MaterialNow): string[] {
  const { bench } = telling;
  const { form, said, net, needs, unsure, lacks, stops, cents } = one;
  const amount = (of: number) => amountText(form, of, bench);
  const more = said.more ?? 0;
  return [
    ...(one.kind === 'cloth' && needs.length > 0 && needs.every(isBias) ? [words.onlyStrips] : []),
    ...(needs.length > 0 && net > more ? takesSaid(telling, one, net - more) : []),
    ...(more > 0 ? [words.besides(amount(more))] : []),
    ...reckonedSaid(telling, one),
    ...unsure.map((why) => unsureSaid(telling, why)),
    ...(said.there === undefined ? [] : [words.there(amount(said.there))]),
    ...(said.there !== undefined && lacks > 0 ? [words.lacksSaid(amount(lacks))] : []),
    ...(stops.length > 0 ? [words.stopsSaid(worksNamed(telling, stops))] : []),
    ...(cents === undefined ? [] : [words.costs(moneyText(cents, bench))]),
  ];
}

function takesSaid(telling: Telling, one: MaterialNow, takes: number): string[] {
  const { bench } = telling;
  const { form, said, bound, lay, bias } = one;
  if (form !== 'laid' || said.width === undefined)
    return [words.sum(amountText(form, takes, bench))];
  const strips = bias > 0 ? [biasSaid(one, bench)] : [];
  if (!lay) return strips;
  const long = amountText(form, takes - bias, bench);
  const width = widthText(said.width, bench);
  const how = said.folded ? words.foldedCloth(width) : words.openCloth(width);
  const repeat = said.repeat === undefined ? undefined : valueText('length', said.repeat, bench);
  if (!bound) {
    return [
      words.asLaid(long, how),
      ...(repeat === undefined ? [] : [words.asLaidInRepeats(repeat)]),
      ...strips,
    ];
  }
  const stale = lay?.stale ? [laySaid(telling, lay)] : [];
  const blind = said.folded === true && lay?.found !== undefined;
  const pattern = repeat === undefined ? [] : [words.inRepeats(repeat, blind)];
  // Rows know nothing of a shape that may be larger than what the garment cuts.
  const shaped = Object.values(lay.of?.pieces ?? {}).some(({ outline }) => outline);
  const bounds = shaped ? words.shapesAside : words.upperBound;
  return [...stale, words.laid(long, how), ...pattern, bounds, ...strips];
}

/** Strips cut across the grain, how, and how much of the cloth's length they take. */
function biasSaid({ bias }: MaterialNow, bench: Bench): string {
  const [join, shortest] = [BIAS_JOIN, BIAS_SHORTEST].map((of) => foundText('length', of, bench));
  return words.bias(amountText('laid', bias, bench), join ?? '', shortest ?? '');
}

/** With what is spare and what is lost in the wash; and up to what the shop sells. */
function reckonedSaid({ bench }: Telling, one: MaterialNow): string[] {
  const { form, said, have, buy, net, spools } = one;
  if (net === 0) return [];
  const { spare = 0, shrinksAlong = 0, unit } = said;
  const amount = (of: number) => amountText(form, of, bench);
  const by = [
    ...(spare > 0 ? [words.spareBy(shareText(spare, bench))] : []),
    ...(shrinksAlong > 0 ? [words.shrinksBy(shareText(shrinksAlong, bench))] : []),
  ];
  return [
    ...(by.length > 0 ? [words.reckoned(by, amount(have))] : []),
    ...(unit === undefined || spools ? [] : [words.sold(amount(unit), amount(buy))]),
    ...(unit !== undefined && spools
      ? [words.spools(spools.count, amount(unit), amount(buy))]
      : []),
    ...(spools && spools.fed > 1 ? [words.fedAtOnce(spools.fed)] : []),
  ];
}

function unsureSaid(telling: Telling, unsure: Unsure): string {
  switch (unsure.why) {
    case 'waits':
      return troubleWords(telling, unsure.at.home, unsure.at.trouble);
    case 'undecided':
      return words.undecided(needOf(telling, unsure.need));
    case 'no length':
      return words.noLength(needOf(telling, unsure.need));
    case 'too wide':
      return words.tooWide(
        needOf(telling, unsure.need),
        handText('length', unsure.by, telling.bench, { bound: 'least' }),
      );
    case 'no bias':
      return words.noBias(needOf(telling, unsure.need));
    case 'no width':
      return words.noWidth;
    case 'too much':
      return words.tooMuch;
  }
}

function needOf({ answer }: Telling, { work, side }: Need): string {
  return workName({ answer }, work, side);
}

/** What one side of a work takes, with its sizes. */
export function needSaid(telling: Telling, { size, by, ...need }: Need): string {
  const name = needOf(telling, need as Need);
  if (!size) return words.waits(name);
  const long = (of = 0) => onTape(exactLength(of), telling.bench, upToGraduation);
  if (by === 'count') return words.long(name, String(size.count));
  if (by === 'edge') return words.strip(name, long(size.across));
  if (by === 'length') {
    return size.count === 1
      ? words.long(name, long(size.along))
      : words.pieces(name, size.count, long(size.along));
  }
  const piece = words.piece(name, size.count, long(size.along), long(size.across));
  return size.fold ? words.onFold(piece) : piece;
}

/** How much cloth takes laid open and folded, for choosing; undefined where it isn't known. */
export function foldChoice({ bench }: Telling, one: MaterialNow): string | undefined {
  const both = [false, true].map((folded) => rowsOf(one, one.needs, folded));
  const [open, folded] = both.map((rows) =>
    rows === undefined ? undefined : amountText('laid', withSpare(rows, one.said), bench),
  );
  if (one.form !== 'laid' || open === undefined || folded === undefined) return undefined;
  return words.foldedHint(open, folded);
}
