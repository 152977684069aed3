import { useRef, useState } from 'preact/hooks';
import { layWords as words } from '#words/garment/garment-lay-words.ts';
import { layNow } from '../../garment/materials/lay-now.ts';
import { type MaterialNow, materialsOf } from '../../garment/materials/materials.ts';
import { layIn } from '../../garment/record/cloth-lay.ts';
import { materialName } from '../../screens/garment/materials/materials-said.ts';
import { Fetched } from '../../screens/garments/fetched.tsx';
import { LayScreen } from '../../screens/lay/lay.tsx';
import type { DrawingProps } from '../../screens/lay/lay-drawing.tsx';
import type { FoundProps } from '../../screens/lay/lay-found.tsx';
import type { PlacesProps } from '../../screens/lay/lay-places.tsx';
import type { OthersFound } from '../lay/others.tsx';
import type { HandProps } from './hand-props.ts';
import type { ShapesProps } from './outlines-place.tsx';
import { useClothLay } from './use-cloth-lay.ts';

const loadDrawing = () =>
  import('../../screens/lay/lay-drawing.tsx').then((part) => part.LayDrawing);
const loadFound = () => import('../../screens/lay/lay-found.tsx').then((part) => part.LayFound);
const loadPlaces = () => import('../../screens/lay/lay-places.tsx').then((part) => part.LayPlaces);
const loadOthers = () => import('../lay/others.tsx').then((part) => part.OthersPlace);
const loadWarned = () => import('./lay-warned.tsx').then((part) => part.LayWarned);
const loadShapes = () => import('./outlines-place.tsx').then((part) => part.OutlinesPlace);
const loadPaper = () => import('./lay-sheet-place.tsx').then((part) => part.LaySheetPlace);
const loadCloth = () =>
  import('../../screens/garment/materials/lay-cloth.tsx').then((part) => part.LayCloth);

const PARTS = {
  Drawing: (give: DrawingProps) => <Fetched load={loadDrawing} give={give} />,
  Found: (give: FoundProps) => <Fetched load={loadFound} give={give} />,
  Places: (give: PlacesProps) => <Fetched load={loadPlaces} onLeave={give.onBack} give={give} />,
};

type Props = HandProps & {
  /** The cloth, by the id of its material; the first where it isn't one. */
  cloth: string | undefined;
  to: (draft: Readonly<Record<string, string>>) => void;
  onDone: () => void;
};

/** The pieces of the garment in hand on one of its cloths. */
export function LayPlace(props: Props) {
  const { state, bench, said, onAgain, cloth, onDone } = props;
  const all = materialsOf(state.record, state.answer).all.filter(({ lay }) => lay !== undefined);
  const one = all.find(({ id }) => id === cloth) ?? all[0];
  if (one) return <OnCloth key={one.id} {...props} one={one} all={all} />;
  return <NothingToLay {...{ bench, onAgain, onDone }} said={said ?? words.nothing} />;
}

const nothing = () => undefined;

/** The same screen, with nothing to press but the way back. */
function NothingToLay(
  props: Pick<HandProps, 'bench' | 'onAgain'> & { said: string; onDone: () => void },
) {
  return (
    <LayScreen
      {...props}
      {...{ cloths: [], cloth: '', warnings: null, lay: undefined }}
      {...{
        sums: undefined,
        looking: false,
        fell: [],
        canLook: false,
        ofCloth: undefined,
      }}
      {...{ onCloth: nothing, onStart: nothing, onStop: nothing, onPut: nothing }}
      {...{ onLetGo: nothing, ofOthers: () => null, ofPaper: () => null, ...PARTS }}
    />
  );
}

function OnCloth(props: Props & { one: MaterialNow; all: readonly MaterialNow[] }) {
  const { one, all, state, bench, hand, said, onAgain, to, onDone } = props;
  const telling = { answer: state.answer, bench };
  const kept = layIn(state.record, one.id);
  const now = one.lay ?? layNow(one, kept);
  const { standing, ...found } = useClothLay({ one, now, telling, act: hand.act });
  const others = useRef<OthersFound>(null);
  return (
    <LayScreen
      {...found}
      {...PARTS}
      {...{ bench, said, onAgain, onDone }}
      cloths={all.map((each) => [each.id, materialName(telling, each)] as const)}
      cloth={one.id}
      onCloth={(id) => to({ w: 'lay', m: id })}
      warnings={standing && <Fetched load={loadWarned} give={standing} />}
      ofPaper={(onBack) => {
        const { lay, sums } = found;
        const names = [state.record.name, materialName(telling, one)] as const;
        if (!lay || !sums) return null;
        return (
          <Fetched
            load={loadPaper}
            onLeave={onBack}
            give={{ ...{ bench, names, lay, sums, onBack } }}
          />
        );
      }}
      ofOthers={(onBack) => (
        <Fetched
          load={loadOthers}
          onLeave={onBack}
          give={{ ...{ bench, onBack, found: others, of: now.of }, width: one.said.width ?? 0 }}
        />
      )}
      ofCloth={(onBack) => (
        <OfCloth {...{ one, telling, said, onAgain, onBack, lay: kept, act: hand.act }} />
      )}
    />
  );
}

/** What is said of a cloth, or of the shapes that are laid on it. */
function OfCloth(props: ShapesProps) {
  const { act, ...given } = props;
  const [shapes, setShapes] = useState(false);
  const back = () => setShapes(false);
  if (shapes) {
    return <Fetched load={loadShapes} onLeave={back} give={{ ...props, onBack: back }} />;
  }
  return (
    <Fetched
      load={loadCloth}
      onLeave={given.onBack}
      give={{
        ...given,
        onShapes: () => setShapes(true),
        onMaterial: (saying) => act({ do: 'material', ...saying, now: Date.now() }),
        onLay: (saying) => act({ do: 'lay', ...saying, now: Date.now() }),
      }}
    />
  );
}
