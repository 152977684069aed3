import { garmentWorkWords as words } from '#words/garment/garment-work-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { Rich } from '../../../controls/rich.tsx';
import { isMadeBefore, type Touch } from './work-labels.ts';
import { type Gives, numberText } from './work-numbers.ts';

interface ListProps {
  gives: readonly Gives[];
  bench: Bench;
  /** Of a number that adds over several sides, that of all of them. */
  totalOf: (one: Gives) => number | undefined;
  onTouch: (touch: Touch) => void;
  onTakeOff: () => void;
  /** Gives it a name, or more sides. */
  onAs: () => void;
}

/** Every number a work gives, each to be named; and the way off the garment. */
export function GivesList({ gives, bench, totalOf, onTouch, onTakeOff, onAs }: ListProps) {
  const there = gives.filter(({ result }) => result.ok);
  return (
    <section class="gives" aria-label={words.gives}>
      <h2>{words.gives}</h2>
      {there.map((one) => {
        const { home, output, number = 0, result } = one;
        const total = totalOf(one);
        const isRow = result.ok && typeof result.value === 'object';
        const text = isRow
          ? words.marks((result.value as { marks: readonly unknown[] }).marks.length)
          : numberText(output, number, bench);
        return (
          <button type="button" key={home} onClick={() => onTouch({ gives: one })}>
            <span>
              {output.name}
              {isMadeBefore(one) && (
                <>
                  {' '}
                  <small>{words.isBefore}</small>
                </>
              )}
            </span>
            <b>
              {isMadeBefore(one) && '(✓) '}
              {result.ok && result.state === 'made' && '✓ '}
              <Rich text={text} />
            </b>
            {total !== undefined && (
              <small>
                <Rich text={words.inAll(numberText(output, total, bench))} />
              </small>
            )}
          </button>
        );
      })}
      <button type="button" onClick={onAs}>
        {words.nameAndOften}
      </button>
      <button type="button" onClick={onTakeOff}>
        {words.takeOff}
      </button>
    </section>
  );
}

interface RowProps {
  row: Gives;
  bench: Bench;
  onMade: (fact: string) => void;
}

/** How many marks of a row are named. */
const NAMED = 8;

/** A row: its marks as they are made, and those to come. */
export function Row({ row, bench, onMade }: RowProps) {
  const { result, output } = row;
  if (!result.ok || typeof result.value !== 'object') return null;
  const { value, made = [] } = result;
  const marks = value.marks.map(({ at }, rank) => ({ rank, at, fact: made[rank] }));
  // Only of those that are named: there may be hundreds.
  const textOf = ({ at }: { at: number }) => numberText(output, at, bench);
  const done = marks.filter(({ fact }) => fact !== undefined);
  const rest = marks.filter(({ fact }) => fact === undefined);
  if (isMadeBefore(row)) {
    // As one: no mark of it was ever measured.
    return (
      <section class="row" aria-label={output.name}>
        <p>
          {words.rowBefore}{' '}
          <button type="button" onClick={() => onMade(made[0] ?? '')}>
            (✓) {words.marks(marks.length)}
          </button>
        </p>
      </section>
    );
  }
  return (
    <section class="row" aria-label={output.name}>
      {done.length > 0 && (
        <p>
          {words.rowMade}{' '}
          {done.slice(-NAMED).map((mark) => (
            <button type="button" key={mark.rank} onClick={() => onMade(mark.fact ?? '')}>
              ✓ <Rich text={textOf(mark)} />
            </button>
          ))}{' '}
          {moreThan(NAMED, done)}
        </p>
      )}
      {rest.length > 0 && (
        <p>
          {words.rowToCome} <Rich text={rest.slice(0, NAMED).map(textOf).join(' · ')} />{' '}
          {moreThan(NAMED, rest)}
        </p>
      )}
    </section>
  );
}

function moreThan(most: number, all: readonly unknown[]): string {
  return all.length > most ? words.andMore(all.length - most) : '';
}
