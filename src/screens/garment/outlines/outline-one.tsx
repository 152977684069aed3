import { useState } from 'preact/hooks';
import { outlineWords as words } from '#words/garment/garment-outline-words.ts';
import { later } from '../../../controls/parts.tsx';
import { Rich } from '../../../controls/rich.tsx';
import type { PieceForm } from '../../../garment/record/piece-said.ts';
import { Deed } from '../parts/deed.tsx';
import { FormDeeds } from './form-deeds.tsx';
import { LyingDeeds } from './lying-deeds.tsx';
import { OutlineDrawing } from './outline-drawing.tsx';
import { type OutlineShown, rectangleForm, sizeOf } from './outline-shown.ts';
import { differsSaid, sizeText } from './outline-size.ts';
import type { OneProps, Typing } from './outlines-props.ts';

const FromFile = later(() => import('./outline-file.tsx').then((part) => part.OutlineFile));
const Entry = later(() => import('./outline-entry.tsx').then((part) => part.OutlineEntry));

/** One piece: its outline to look at, how it is given, and how it may lie. */
export function OutlineOne(props: OneProps) {
  const { one, bench, onSay, onBack, onRead } = props;
  const [typing, setTyping] = useState<Typing>();
  const [fromFile, setFromFile] = useState(false);
  const { name, need, fold, asked, said, problem } = one;
  const { outline } = said;
  const say = (set: Parameters<typeof onSay>[1]) => onSay(need, set);
  const shape = (form: PieceForm | undefined) => {
    // What is added to it stays as it is said.
    say({ outline: form && { ...outline, form } });
  };
  if (fromFile) {
    const take = (form: PieceForm) => {
      shape(form);
      setFromFile(false);
    };
    return (
      <FromFile
        {...{ bench, fold, name, onRead }}
        onTake={take}
        onBack={() => setFromFile(false)}
      />
    );
  }
  const size = sizeText(outline ? (sizeOf(one) ?? asked) : asked, fold, bench);
  const differs = outline && problem === undefined ? differsSaid(one, bench) : undefined;
  return (
    <>
      <div class="reading one">
        <h1>{name}</h1>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key */}
        <section class="scroll" tabIndex={0} aria-label={name}>
          {outline && <OutlineDrawing shown={one} size={size} />}
          <p class="said" role="status">
            <Rich text={problem ?? (outline && !one.drawn ? words.cutting : size)} />
          </p>
          {fold && <p class="said">{words.onFold}</p>}
          {differs !== undefined && (
            <p class="said">
              <Rich text={differs} />
            </p>
          )}
          {typing === undefined && (
            <div class="deeds">
              {outline ? (
                <FormDeeds {...{ one, bench, say, shape }} onType={setTyping} />
              ) : (
                <Ways {...{ one, shape }} onFile={() => setFromFile(true)} />
              )}
              <LyingDeeds {...{ one, bench, say }} nap={props.nap} onType={setTyping} />
              <Deed words={words.done} onPress={onBack} />
            </div>
          )}
        </section>
      </div>
      {typing && (
        <Entry
          {...{ one, bench, say, shape, typing }}
          onType={setTyping}
          onLeave={() => setTyping(undefined)}
        />
      )}
    </>
  );
}

interface WaysProps {
  one: OutlineShown;
  shape: (form: PieceForm) => void;
  onFile: () => void;
}

/** How an outline can be given. */
function Ways({ one, shape, onFile }: WaysProps) {
  return (
    <>
      <Deed words={words.four} hint={words.fourHint} onPress={() => shape(rectangleForm(one))} />
      <Deed
        words={words.points}
        hint={words.pointsHint}
        onPress={() => shape({ kind: 'points', points: [[0, 0]] })}
      />
      <Deed words={words.file} hint={words.fileHint} onPress={onFile} />
    </>
  );
}
