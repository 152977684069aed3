import { useState } from 'preact/hooks';
import { bodyMeasureWords as words } from '#words/body/body-measure-words.ts';
import { measuresWords } from '#words/garment/garment-measures-words.ts';
import { type Choosable, FindAmong } from '../../../controls/find-among.tsx';
import {
  BODY_MEASURES,
  type BodyMeasureId,
  isBodyMeasure,
} from '../../../sewing/sources/body-measures.ts';
import { MeasureGuide } from './measure-guide.tsx';

interface Props {
  /** Measures that are among the numbers already. */
  there: ReadonlySet<string>;
  /** Only which one it is, of a number there is. */
  which?: true;
  /** The names of what is to be added: one, or left and right. */
  onChoose: (id: BodyMeasureId, names: readonly string[]) => void;
  onLeave: () => void;
}

const EVERY = Object.keys(BODY_MEASURES) as BodyMeasureId[];

/** A measure of the body, chosen from all there are; where and how it is taken is shown first. */
export function MeasureChoose({ there, which, onChoose, onLeave }: Props) {
  const [id, setId] = useState<BodyMeasureId>();
  if (id === undefined) {
    const all = EVERY.map((one): Choosable => {
      const { name, also, where } = words.measures[one];
      const group = words.groups[BODY_MEASURES[one].group];
      return {
        id: one,
        name: there.has(one) ? words.there(name) : name,
        also: `${also} ${where}`,
        group,
      };
    });
    const pick = (one: string) => isBodyMeasure(one) && setId(one);
    return (
      <div class="choosing">
        <h1>{words.choose}</h1>
        <FindAmong all={all} list={words.list} onChoose={pick} />
        <nav class="actions" aria-label={words.choose}>
          <button type="button" onClick={onLeave}>
            {measuresWords.cancel}
          </button>
        </nav>
      </div>
    );
  }
  const { name } = words.measures[id];
  const both = Object.values(words.sides).map((side) => words.side(name, side));
  return (
    <div class="choosing">
      <h1>{name}</h1>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key */}
      <section class="scroll" tabIndex={0} aria-label={name}>
        <MeasureGuide id={id} />
      </section>
      <nav class="actions" aria-label={name}>
        <button type="button" onClick={() => setId(undefined)}>
          {words.others}
        </button>
        {!which && 'sides' in BODY_MEASURES[id] && (
          <button type="button" onClick={() => onChoose(id, both)}>
            {words.takeBoth}
          </button>
        )}
        <button type="button" class="main" onClick={() => onChoose(id, [name])}>
          {which ? words.isIt : words.take}
        </button>
      </nav>
    </div>
  );
}
