import { useState } from 'preact/hooks';
import { outlineWords as words } from '#words/garment/garment-outline-words.ts';
import { adopt } from '../../../controls/adopt.ts';
import { NotDone } from '../../../controls/not-done.tsx';
import { later } from '../../../controls/parts.tsx';
import css from '../measures/measures.css?inline';
import { Deed } from '../parts/deed.tsx';
import workCss from '../works/garment-work.css?inline';
import { shapeSaid } from './outline-size.ts';
import outlinesCss from './outlines.css?inline';
import type { OutlinesProps } from './outlines-props.ts';

adopt(workCss);
adopt(css);
adopt(outlinesCss);

const One = later(() => import('./outline-one.tsx').then((part) => part.OutlineOne));

/** The shapes of all pieces that are laid on a cloth. */
export function Outlines(props: OutlinesProps) {
  const { bench, name, pieces, said, onAgain, onBack } = props;
  const [open, setOpen] = useState<string>();
  const one = pieces.find(({ need }) => need === open);
  return (
    <div class="bench garment-work measures outlines" data-hand={bench.hand}>
      <NotDone said={said} onAgain={onAgain} />
      {one ? (
        <One {...props} key={one.need} one={one} onBack={() => setOpen(undefined)} />
      ) : (
        <div class="reading one">
          <h1>{words.title}</h1>
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key */}
          <section class="scroll" tabIndex={0} aria-label={name}>
            <p class="said">{pieces.length > 0 ? words.about : words.none}</p>
            <div class="deeds">
              {pieces.map((piece) => (
                <Deed
                  key={piece.need}
                  words={piece.name}
                  hint={shapeSaid(piece, bench)}
                  onPress={() => setOpen(piece.need)}
                />
              ))}
              <Deed words={words.done} onPress={onBack} />
            </div>
          </section>
        </div>
      )}
    </div>
  );
}
