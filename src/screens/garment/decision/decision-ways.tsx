import { decisionWords as words } from '#words/garment/garment-decision-words.ts';
import { Rich } from '../../../controls/rich.tsx';
import { waysOutOf } from '../../../garment/actions/decide.ts';
import type { State } from '../../../garment/actions/state.ts';
import { placesOf } from '../../../garment/rows/points.ts';
import { type Spaces, spacesIn } from '../../../garment/rows/price.ts';
import { placesIn } from '../../../garment/rows/row.ts';
import { askedKey } from '../../../garment/work-out/node.ts';
import type { Conflict } from '../../../garment/work-out/told.ts';
import { offText } from '../said/told-words.ts';
import type { DecisionProps } from './decision-props.ts';
import { type WaySaid, waySaid } from './way-words.ts';

type Props = Pick<DecisionProps, 'state' | 'home' | 'bench' | 'onAct' | 'onDone'> & {
  conflict: Conflict | undefined;
  /** How far off the maker lets what is made be: kept with the way. */
  allow: number | undefined;
};

/** Every way out as a key with what it comes to; one press takes it. */
export function DecisionWays(props: Props) {
  const { state, home, bench, conflict, allow, onAct, onDone } = props;
  const before = beforeOf(state, home);
  const asked = askedCount(state, home);
  const over = conflict?.over;
  const noted = (said: WaySaid): WaySaid =>
    over === undefined
      ? said
      : { ...said, price: offBy(over, offText({ answer: state.answer, bench }, home, over)) };
  return (
    <>
      {waysOutOf(state, home).map((one) => {
        const { title, price } = noted(waySaid(one, asked, before, bench));
        const take = () => {
          const allowing = allow === undefined ? {} : { allow };
          onAct({ do: 'decide', home, way: one.way, ...allowing, now: Date.now() });
          onDone();
        };
        return (
          <button type="button" class="way" key={one.way} onClick={take}>
            {title}
            <small>
              <Rich text={price} />
            </small>
          </button>
        );
      })}
    </>
  );
}

function offBy(over: number, by: string): string {
  return over > 0 ? words.over(by) : words.lacks(by);
}

/** How far apart the marks were when the row was begun; where that isn't kept, are asked now. */
function beforeOf({ answer }: State, home: string): Spaces | undefined {
  const node = answer.nodes.get(home);
  if (node?.form === 'row' && node.begun) return spacesIn(placesOf(node.begun));
  const asked = answer.values.get(askedKey(home));
  return asked?.ok && typeof asked.value === 'object' ? spacesIn(placesIn(asked.value)) : undefined;
}

function askedCount({ answer }: State, home: string): number {
  const asked = answer.values.get(askedKey(home));
  return asked?.ok && typeof asked.value === 'object' ? asked.value.marks.length : 0;
}
