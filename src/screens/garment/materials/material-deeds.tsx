import { garmentMaterialWords as words } from '#words/garment/garment-material-words.ts';
import { garmentMaterialsWords } from '#words/garment/garment-materials-words.ts';
import type { MaterialSaying } from '../../../garment/actions/material.ts';
import type { MaterialNow } from '../../../garment/materials/materials.ts';
import type { Need } from '../../../garment/materials/need.ts';
import { biasOf, longOf } from '../../../garment/materials/net.ts';
import { Deed } from '../parts/deed.tsx';
import type { Telling } from '../said/told-words.ts';
import { type PartKey, partsOf } from './material-parts.ts';
import { foldChoice, needSaid } from './material-sentences.ts';
import { materialName } from './materials-said.ts';
import { amountText } from './materials-text.ts';

/** What is being said of a material just now: its name, a number of it, or how long an edge is. */
export type MaterialDeed = { name: true } | { part: PartKey } | { need: string; label: string };

interface Props {
  one: MaterialNow;
  telling: Telling;
  /** The cloths there are, from which bias strips can be cut. */
  cloths: readonly MaterialNow[];
  onSay: (saying: MaterialSaying) => void;
  onDeed: (deed: MaterialDeed) => void;
  /** To the lay of its pieces. */
  onLay: (id: string) => void;
  onBack: () => void;
}

const { kinds } = garmentMaterialsWords;

/** The cloth of a garment, under the id it has once a piece is cut from it. */
const CLOTH = 'cloth';

/** All that can be said of a material, under the thumb, and the way back always in sight. */
export function MaterialDeeds(props: Props) {
  const { one, telling, onSay, onDeed, onLay, onBack } = props;
  const { id, said, form, needs, own } = one;
  const fold = foldChoice(telling, one);
  const folded = said.folded ? undefined : (true as const);
  const forget = () => {
    onSay({ id, forget: true });
    if (own) onBack();
  };
  return (
    <div class="beneath">
      <div class="deeds">
        <CutFrom {...props} />
        {one.lay && <Deed words={words.lay} hint={words.layHint} onPress={() => onLay(id)} />}
        {needs
          .filter(isFirstOf)
          .map((need) => need.by === 'edge' && <Edge {...props} need={need} />)}
        {partsOf(one, telling.bench).map(({ key, hint, text }) => (
          <Deed
            key={key}
            words={words.valued(words.parts[key], text ?? words.notSaid)}
            {...(text === undefined && { hint })}
            onPress={() => onDeed({ part: key })}
          />
        ))}
        {form === 'laid' && (
          <Deed
            words={words.folded}
            hint={fold ?? words.pairs}
            on={said.folded === true}
            onPress={() => onSay({ id, set: { folded } })}
          />
        )}
        <For {...props} />
        <Deed words={words.rename} onPress={() => onDeed({ name: true })} />
        {(own || Object.keys(said).length > 0) && (
          <Deed words={own ? words.remove : words.forget} onPress={forget} />
        )}
      </div>
      <nav class="actions" aria-label={materialName(telling, one)}>
        <button type="button" onClick={onBack}>
          {words.done}
        </button>
      </nav>
    </div>
  );
}

/** Of the sides of a work the first stands for all: they are said together. */
function isFirstOf({ key }: Need, place: number, all: readonly Need[]): boolean {
  return all.findIndex((need) => need.key === key) === place;
}

function Edge({ one, telling, need, onDeed }: Props & { need: Need }) {
  const label = words.lengthOf(needSaid(telling, need));
  const long = longOf(need, one.said);
  const text = long === undefined ? words.notSaid : amountText('length', long, telling.bench);
  return (
    <Deed words={words.valued(label, text)} onPress={() => onDeed({ need: need.key, label })} />
  );
}

/** Bias strips that are bought by length, cut from a cloth of the garment instead: one press. */
function CutFrom({ one, cloths, telling, onSay }: Props) {
  const { kind, form, needs, said } = one;
  if (kind !== 'bias' || form !== 'length' || needs.length === 0) return null;
  const takeFrom = (id: string) => {
    for (const need of needs.filter(isFirstOf)) {
      const length = longOf(need, said);
      if (length !== undefined) onSay({ id, need: need.key, long: length });
      onSay({ id, need: need.key, serves: true });
    }
  };
  if (cloths.length === 0) {
    const bring = () => {
      onSay({ id: CLOTH, set: { kind: CLOTH } });
      takeFrom(CLOTH);
    };
    return <Deed words={words.cutFrom(kinds.cloth)} hint={words.clothBrought} onPress={bring} />;
  }
  return cloths.map((cloth) => {
    const { long } = biasOf(cloth, needs);
    const hint =
      long > 0 ? words.biasTakes(amountText('laid', long, telling.bench)) : words.biasNoWidth;
    const name = materialName(telling, cloth);
    const press = () => takeFrom(cloth.id);
    return <Deed key={cloth.id} words={words.cutFrom(name)} hint={hint} onPress={press} />;
  });
}

/** What of all that the works take is taken of it. */
function For({ one, telling, onSay }: Props) {
  const { id, could, needs } = one;
  if (could.length === 0) return null;
  return (
    <fieldset class="for">
      <legend>{words.for}</legend>
      {could.filter(isFirstOf).map((need) => {
        const takes = needs.some(({ key }) => key === need.key);
        const press = () => onSay({ id, need: need.key, serves: !takes });
        return <Deed key={need.key} words={needSaid(telling, need)} on={takes} onPress={press} />;
      })}
    </fieldset>
  );
}
