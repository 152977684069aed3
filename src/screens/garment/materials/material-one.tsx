import { useState } from 'preact/hooks';
import { garmentMaterialWords as words } from '#words/garment/garment-material-words.ts';
import { Rich } from '../../../controls/rich.tsx';
import type { MaterialSaying } from '../../../garment/actions/material.ts';
import type { MaterialNow } from '../../../garment/materials/materials.ts';
import { LONGEST } from '../../../lengths/length.ts';
import { MeasureEntry } from '../parts/measure-entry.tsx';
import { NameEntry } from '../parts/name-entry.tsx';
import type { Telling } from '../said/told-words.ts';
import { type MaterialDeed, MaterialDeeds } from './material-deeds.tsx';
import { partsOf } from './material-parts.ts';
import { materialSentences } from './material-sentences.ts';
import { materialAmount, materialName } from './materials-said.ts';

export interface MaterialProps {
  one: MaterialNow;
  telling: Telling;
  /** The cloths there are. */
  cloths: readonly MaterialNow[];
  onSay: (saying: MaterialSaying) => void;
  onLay: (id: string) => void;
  onBack: () => void;
}

/** One thing to have at hand: how much and why, and all that can be said of it. */
export function MaterialOne(props: MaterialProps) {
  const { one, telling, onSay } = props;
  const [deed, setDeed] = useState<MaterialDeed>();
  const look = () => setDeed(undefined);
  return (
    <>
      <div class="reading one">
        <h1>{materialName(telling, one)}</h1>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key */}
        <section class="scroll" tabIndex={0} aria-label={materialName(telling, one)}>
          <p class="measure">
            <Rich text={materialAmount(telling, one)} />
          </p>
          {deed === undefined &&
            materialSentences(telling, one).map((sentence) => (
              <p class="said" key={sentence}>
                <Rich text={sentence} />
              </p>
            ))}
        </section>
      </div>
      {deed === undefined && <MaterialDeeds {...props} onDeed={setDeed} />}
      {deed && 'name' in deed && (
        <NameEntry
          first={one.said.name ?? ''}
          deed={words.rename}
          hint={words.nameHint}
          kinds={[]}
          onName={(name) => {
            onSay({ id: one.id, set: { name } });
            look();
          }}
          onLeave={look}
        />
      )}
      {deed && !('name' in deed) && <Entry {...props} deed={deed} onLeave={look} />}
    </>
  );
}

interface EntryProps extends MaterialProps {
  deed: Exclude<MaterialDeed, { name: true }>;
  onLeave: () => void;
}

/** Types one number of it, or says nothing of it any more. */
function Entry({ one, telling, deed, onSay, onLeave }: EntryProps) {
  const { bench } = telling;
  const { id } = one;
  const name = materialName(telling, one);
  const say = (saying: MaterialSaying) => {
    onSay(saying);
    onLeave();
  };
  const clear = (saying: MaterialSaying) => (
    <button type="button" onClick={() => say(saying)}>
      {words.clear}
    </button>
  );
  const given = { bench, deed: words.keep, onLeave };
  if ('need' in deed) {
    const { need, label } = deed;
    const good = (read: number) => Math.round(read) > 0 && read <= LONGEST;
    return (
      <MeasureEntry
        {...given}
        label={label}
        kind="length"
        refuses={(read) => (good(read) ? undefined : words.noAmount)}
        onKeep={(read) => say({ id, need, long: Math.round(read) })}
      >
        {one.said.long?.[need] !== undefined && clear({ id, need, long: undefined })}
      </MeasureEntry>
    );
  }
  const part = partsOf(one, bench).find(({ key }) => key === deed.part);
  if (!part) return null;
  return (
    <MeasureEntry
      {...given}
      label={words.partOf(name, words.parts[part.key])}
      kind={part.kind}
      refuses={part.refuses}
      onKeep={(read) => say({ id, set: part.kept(read) })}
    >
      {part.text !== undefined && clear({ id, set: { [part.key]: undefined } })}
    </MeasureEntry>
  );
}
