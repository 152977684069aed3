import { layFoundWords as words } from '#words/garment/garment-lay-found-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { onTape } from '../../calculation/tape-text.ts';
import { adopt } from '../../controls/adopt.ts';
import { Rich } from '../../controls/rich.tsx';
import { upToGraduation } from '../../lengths/graduation.ts';
import { exactLength, mm } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import css from './lay-found.css?inline';

adopt(css);

/** What a lay comes to, as the tape shows it. */
export interface LaySums {
  /** The length to buy, and the same as a shop measures it; what it takes where that can't be reckoned. */
  most: string;
  sold: string | undefined;
  /** What it takes, where what to buy stands above it. */
  takes: string | undefined;
  /** What is to be bought beside the lay, in words. */
  beside: readonly string[];
  /** How many per cent of the cloth. */
  used: string;
}

/** A lay that was found: so long, in mm, so many seconds after the search began. */
export interface Fall {
  seconds: number;
  length: number;
}

export interface FoundProps {
  bench: Bench;
  /** Undefined while a piece lies where it may not: no length is told then. */
  sums: LaySums | undefined;
  fell: readonly Fall[];
}

/** The length to buy, as large as a number at the bench is, and how it fell. */
export function LayFound({ bench, sums, fell }: FoundProps) {
  return (
    <>
      {sums && <Headline sums={sums} />}
      {fell.length > 0 && <Fell bench={bench} fell={fell} />}
    </>
  );
}

function Headline({ sums }: { sums: LaySums }) {
  const { most, sold, takes, beside, used } = sums;
  const rest = [...(takes === undefined ? [] : [words.takesOf(takes)]), words.used(used)];
  return (
    <>
      <p class="to-buy">
        {takes === undefined ? words.takes : words.buy}{' '}
        <strong>
          <Rich text={most} />
        </strong>
        {sold !== undefined && <Rich text={` ${words.sold(sold)}`} />}
      </p>
      <p>
        <Rich text={words.rest(rest)} />
      </p>
      {beside.map((one) => (
        <p key={one}>
          <Rich text={one} />
        </p>
      ))}
    </>
  );
}

/** Lengths as the tape shows them: the first, and the last few. */
function fellSaid(fell: readonly Fall[], bench: Bench): string[] {
  const all = fell.map((one) => inWords(one, bench));
  const other = all.filter((text, i) => text !== all[i - 1]);
  return other.length > 4 ? [other[0] ?? '', ...other.slice(-3)] : other;
}

const inWords = ({ length }: Fall, bench: Bench) =>
  onTape(exactLength(mm(length)), bench, upToGraduation);

/** How large the drawing is in its own units; it is stretched to the room it has. The last level is seen. */
const [WIDE, HIGH, LAST] = [100, 20, 90];

/** A step down at each lay that was found, from when the search began. */
export function stepsOf(fell: readonly Fall[]): string {
  const lengths = fell.map(({ length }) => length);
  const [most, least] = [Math.max(...lengths), Math.min(...lengths)];
  const last = fell.at(-1)?.seconds ?? 0;
  const x = ({ seconds }: Fall) => round((LAST * seconds) / (last || 1));
  const y = ({ length }: Fall) => round((HIGH * (most - length)) / (most - least || 1));
  const [first] = fell;
  const down = fell.slice(1).map((one) => `H${x(one)}V${y(one)}`);
  return first ? `M0 ${y(first)}${down.join('')}H${WIDE}` : '';
}

const round = (of: number) => Math.round(of * 100) / 100;

function Fell({ bench, fell }: { bench: Bench; fell: readonly Fall[] }) {
  const [first, last] = [fell[0], fell.at(-1)];
  const falls = first && last && first.length > last.length;
  const took = last?.seconds ?? 0;
  const seconds = shownNumber(took, took < 10 ? 1 : 0, bench.decimalMark);
  // What is told aloud is the length to buy, not each step on the way to it.
  return (
    <div aria-live="off">
      {falls && (
        <svg
          class="lay-fell"
          role="img"
          aria-label={words.chart(inWords(first, bench), inWords(last, bench), seconds)}
          viewBox={`0 -1 ${WIDE} ${HIGH + 2}`}
          preserveAspectRatio="none"
        >
          <path d={stepsOf(fell)} />
        </svg>
      )}
      <p class="soft fell">
        <span>
          <Rich text={words.fell(fellSaid(fell, bench))} />
        </span>
        {falls && <span aria-hidden="true">{words.seconds(seconds)}</span>}
      </p>
    </div>
  );
}
