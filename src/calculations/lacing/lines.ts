import { lacingWords as words } from '#words/calculations/lacing-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Line } from '../../calculation/calculation.ts';
import { byTape, onTape } from '../../calculation/tape-text.ts';
import { upToGraduation } from '../../lengths/graduation.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import type { Laced } from '../../sewing/lacing/lacing.ts';
import type { LacingInput } from '../../sewing/lacing/lacing-input.ts';
import { PUBLISHED } from '../../sewing/lacing/lacing-kinds.ts';

/** The further numbers of one row. */
export function rowLines({ kind }: LacingInput, laced: Laced, bench: Bench): Line[] {
  const { perPitch, factor, geometry, by, edge, middle, ends } = laced;
  return [
    { label: words.perPitch, value: byTape(perPitch, bench) },
    {
      label: words.geometry,
      value: words.timesIs(timesText(factor, bench), byTape(geometry, bench)),
    },
    ...publishedLines(kind, laced, bench),
    ...(by === 'alone' ? [] : [{ label: words.cutBy, value: words.by[by] }]),
    { label: words.edge, value: byTape(edge, bench) },
    ...(middle
      ? [
          {
            label: words.half,
            value: words.halves(middle.halves.map((half) => onTape(half, bench, upToGraduation))),
          },
          { label: words.begins(slants(kind)), value: words.place(middle.at) },
        ]
      : []),
    ...(ends ? [{ label: words.ends, value: endsText(kind, ends) }] : []),
  ];
}

function publishedLines(kind: LacingInput['kind'], { published }: Laced, bench: Bench): Line[] {
  if (!published) return [];
  const times = publishedTimes(kind, bench);
  const [least, most] = published.map((x) => byTape(x, bench));
  return [{ label: words.published, value: words.timesIs(times, words.range(least, most)) }];
}

/** What is published for a kind of lacing, times the edge. */
export function publishedTimes(kind: LacingInput['kind'], bench: Bench): string {
  const [least, most] = PUBLISHED[kind]?.value.map((times) => timesText(times, bench)) ?? [];
  return words.range(least, most);
}

/** Lacing with a slant that changes sides where its halves begin. */
export function slants(kind: LacingInput['kind']): boolean {
  return kind === 'edge' || kind === 'outside';
}

function endsText(kind: LacingInput['kind'], ends: NonNullable<Laced['ends']>): string {
  const said = words.facesOf(ends);
  return kind === 'running' && ends[0] !== ends[1] ? `${said}; ${words.evenNeeded}` : said;
}

/** A factor to two places. */
export function timesText(times: number, { decimalMark }: Bench): string {
  return shownNumber(times, 2, decimalMark);
}
