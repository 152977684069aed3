import { garmentAddWords as words } from '#words/garment/garment-add-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { adopt } from '../../../controls/adopt.ts';
import { FindList } from '../../../controls/find-list.tsx';
import { NotDone } from '../../../controls/not-done.tsx';
import css from './add.css?inline';

adopt(css);

interface Props {
  name: string;
  bench: Bench;
  /** Why nothing was added. */
  said: string | undefined;
  /** Where the disk did not take it: tries again now. */
  onAgain?: (() => void) | undefined;
  /** Whether a garment can hold a work of this calculation. */
  offers: (calculation: string) => boolean;
  onAdd: (calculation: string, name: string) => void;
  onMeasure: () => void;
  /** To what is to be at hand. */
  onMaterials: () => void;
  /** To the lay of the pieces. */
  onLay: () => void;
  /** Works that were taken off. */
  off: readonly { id: string; name: string }[];
  onPutBack: (work: string) => void;
  /** To the calculations, each by itself. */
  onAll: () => void;
  onLeave: () => void;
}

/** What can be added to a garment: a work, or a number of its own. */
export function AddScreen(props: Props) {
  return (
    <div class="adding" data-hand={props.bench.hand}>
      <main>
        <h1>{words.title(props.name)}</h1>
        <p>{words.about}</p>
        <NotDone said={props.said} onAgain={props.onAgain} />
      </main>
      <FindList offers={props.offers} onChoose={props.onAdd} />
      <div class="beside">
        {props.off.map(({ id, name }) => (
          <button type="button" key={id} onClick={() => props.onPutBack(id)}>
            {words.putBack(name)}
          </button>
        ))}
        <button type="button" onClick={props.onMeasure}>
          {words.measure}
        </button>
        <button type="button" onClick={props.onMaterials}>
          {words.materials}
        </button>
        <button type="button" onClick={props.onLay}>
          {words.lay}
        </button>
        <button type="button" onClick={props.onAll}>
          {words.all}
        </button>
        <button type="button" onClick={props.onLeave}>
          {words.back}
        </button>
      </div>
    </div>
  );
}
