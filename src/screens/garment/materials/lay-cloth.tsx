import { useState } from 'preact/hooks';
import { layClothWords as words } from '#words/garment/garment-lay-cloth-words.ts';
import { garmentMaterialWords } from '#words/garment/garment-material-words.ts';
import { adopt } from '../../../controls/adopt.ts';
import { NotDone } from '../../../controls/not-done.tsx';
import type { LaySaying } from '../../../garment/actions/cloth-lay.ts';
import type { MaterialSaying } from '../../../garment/actions/material.ts';
import type { MaterialNow } from '../../../garment/materials/materials.ts';
import type { ClothLay, Flaw } from '../../../garment/record/cloth-lay.ts';
import { UNITS_PER } from '../../../lengths/unit.ts';
import css from '../measures/measures.css?inline';
import { Deed } from '../parts/deed.tsx';
import { MeasureEntry } from '../parts/measure-entry.tsx';
import type { Telling } from '../said/told-words.ts';
import { valueText } from '../said/value-text.ts';
import workCss from '../works/garment-work.css?inline';
import { FlawEntry, LayFlaws } from './lay-flaws.tsx';
import { type PartKey, partsOf } from './material-parts.ts';
import materialsCss from './materials.css?inline';
import { materialName } from './materials-said.ts';

adopt(workCss);
adopt(css);
adopt(materialsCss);

interface Props {
  one: MaterialNow;
  lay: ClothLay;
  telling: Telling;
  /** Why the last thing wasn't done, in words. */
  said: string | undefined;
  /** Where the disk did not take it: tries again now. */
  onAgain: (() => void) | undefined;
  onMaterial: (saying: MaterialSaying) => void;
  onLay: (saying: LaySaying) => void;
  /** Leads to the shapes of the pieces. */
  onShapes: () => void;
  onBack: () => void;
}

/** What matters of a cloth when pieces are laid on it. */
const KEYS: readonly PartKey[] = ['width', 'shrinksAcross', 'shrinksAlong', 'unit', 'repeat'];

/** What can be said of a cloth that pieces are laid on. */
export function LayCloth(props: Props) {
  const { one, lay, telling, onMaterial, onLay, onBack } = props;
  const [typing, setTyping] = useState<Typed>();
  const { bench } = telling;
  const { id, said } = one;
  const parts = partsOf(one, bench).filter(({ key }) => KEYS.includes(key));
  const name = materialName(telling, one);
  const { flaws = [] } = lay;
  return (
    <div class="bench garment-work measures materials" data-hand={bench.hand}>
      <NotDone said={props.said} onAgain={props.onAgain} />
      <div class="reading one">
        <h1>{name}</h1>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key */}
        <section class="scroll" tabIndex={0} aria-label={name}>
          {typing === undefined && (
            <div class="deeds">
              <Deed words={words.shapes} hint={words.shapesHint} onPress={props.onShapes} />
              {parts.map(({ key, hint, text }) => (
                <Deed
                  key={key}
                  words={garmentMaterialWords.valued(
                    garmentMaterialWords.parts[key],
                    text ?? garmentMaterialWords.notSaid,
                  )}
                  {...(text === undefined && { hint })}
                  onPress={() => setTyping(key)}
                />
              ))}
              <Deed
                words={garmentMaterialWords.folded}
                hint={garmentMaterialWords.pairs}
                on={said.folded === true}
                onPress={() => onMaterial({ id, set: { folded: said.folded ? undefined : true } })}
              />
              <Deed
                words={words.nap}
                hint={words.napHint}
                on={lay.nap === true}
                onPress={() => onLay({ id, set: { nap: lay.nap ? undefined : true } })}
              />
              {(['repeatAcross', 'gap'] as const).map((key) => {
                const value = lay[key];
                const { notSaid, valued } = garmentMaterialWords;
                const text = value === undefined ? notSaid : valueText('length', value, bench);
                return (
                  <Deed
                    key={key}
                    words={valued(words[key], text)}
                    {...(value === undefined && { hint: words.hints[key] })}
                    onPress={() => setTyping(key)}
                  />
                );
              })}
              <LayFlaws
                {...{ flaws, bench }}
                onAdd={() => setTyping('flaw')}
                onLeft={(left) => onLay({ id, set: { flaws: left.length > 0 ? left : undefined } })}
              />
              <Deed words={words.done} onPress={onBack} />
            </div>
          )}
        </section>
      </div>
      {typing && <Entry {...props} typing={typing} onLeave={() => setTyping(undefined)} />}
    </div>
  );
}

const MOST_GAP = UNITS_PER.m;

type Typed = PartKey | 'gap' | 'repeatAcross' | 'flaw';
type EntryProps = Props & { typing: Typed; onLeave: () => void };

function Entry({ one, lay, telling, typing, onMaterial, onLay, onLeave }: EntryProps) {
  const { bench } = telling;
  const { id } = one;
  const then = (deed: () => void) => () => {
    deed();
    onLeave();
  };
  const clear = (deed: () => void) => (
    <button type="button" onClick={then(deed)}>
      {garmentMaterialWords.clear}
    </button>
  );
  const given = { bench, deed: garmentMaterialWords.keep, onLeave };
  if (typing === 'flaw') {
    const keep = (flaw: Flaw) => onLay({ id, set: { flaws: [...(lay.flaws ?? []), flaw] } });
    return (
      <FlawEntry
        {...{ bench, width: one.said.width, onLeave }}
        onKeep={(flaw) => then(() => keep(flaw))()}
      />
    );
  }
  if (typing === 'gap' || typing === 'repeatAcross') {
    const good = (read: number) => Math.round(read) > 0 && read <= MOST_GAP;
    return (
      <MeasureEntry
        {...given}
        label={words[typing]}
        kind="length"
        refuses={(read) => (good(read) ? undefined : words.noGap)}
        onKeep={(read) => then(() => onLay({ id, set: { [typing]: Math.round(read) } }))()}
      >
        {lay[typing] !== undefined && clear(() => onLay({ id, set: { [typing]: undefined } }))}
      </MeasureEntry>
    );
  }
  const part = partsOf(one, bench).find(({ key }) => key === typing);
  if (!part) return null;
  return (
    <MeasureEntry
      {...given}
      label={garmentMaterialWords.partOf(
        materialName(telling, one),
        garmentMaterialWords.parts[part.key],
      )}
      kind={part.kind}
      refuses={part.refuses}
      onKeep={(read) => then(() => onMaterial({ id, set: part.kept(read) }))()}
    >
      {part.text !== undefined && clear(() => onMaterial({ id, set: { [part.key]: undefined } }))}
    </MeasureEntry>
  );
}
