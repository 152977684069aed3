import { useMemo } from 'preact/hooks';
import { garmentWorkWords as words } from '#words/garment/garment-work-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { Rich } from '../../../controls/rich.tsx';
import type { State } from '../../../garment/actions/state.ts';
import { previewOf } from '../../../garment/actions/typing.ts';
import { changedNumbers, madeAndAsked } from '../said/changed-numbers.ts';
import { numberName } from '../said/names.ts';

/** How many are named; of the rest it is said how many. */
const NAMED = 2;

interface Props {
  state: State;
  /** The work that is typed into: it answers for itself. */
  work: string;
  bench: Bench;
}

/** A number without its unit, where the one after it has the same. */
function bare(before: string, after: string): string {
  const unit = / [a-z]+$/.exec(after)?.[0];
  return unit !== undefined && before.endsWith(unit) ? before.slice(0, -unit.length) : before;
}

/** What becomes of other numbers of the garment once what is typed settles. */
export function BeforeAfter({ state, work, bench }: Props) {
  const { answer } = state;
  const preview = useMemo(() => previewOf(state), [state]);
  const changed = useMemo(
    () => changedNumbers(answer, preview, work, bench),
    [answer, preview, work, bench],
  );
  const known = new Set(answer.conflicts.map(({ home }) => home));
  const differ = preview.conflicts.filter(({ home }) => !known.has(home));
  if (changed.length === 0 && differ.length === 0) return null;
  const named = changed.slice(0, Math.max(0, NAMED - differ.length));
  const left = changed.length - named.length;
  return (
    <section class="before-after" aria-label={words.whenSettled}>
      <h2>{words.whenSettled}</h2>
      {/* First: what comes last may lie under the edge of a small phone. */}
      {differ.length > 0 && <p class="would">{words.conflicts(differ.length)}</p>}
      <dl>
        {differ.slice(0, NAMED).map(({ home }) => {
          const [made, asked] = madeAndAsked(preview, home, bench);
          return (
            <div key={home}>
              <dt>{numberName({ answer }, home)}</dt>
              <dd>
                <Rich text={words.madeAndAsked(bare(made, asked), asked)} />
              </dd>
            </div>
          );
        })}
        {named.map(({ key, before, after }) => (
          <div key={key}>
            <dt>{numberName({ answer }, key)}</dt>
            <dd>
              <Rich text={words.changed(bare(before, after), after)} />
            </dd>
          </div>
        ))}
      </dl>
      {left > 0 && <p>{words.andMore(left)}</p>}
    </section>
  );
}
