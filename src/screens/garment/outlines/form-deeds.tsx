import { outlineWords as words } from '#words/garment/garment-outline-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import {
  MOST_PIECE_CORNERS,
  type PieceForm,
  type PieceOutline,
} from '../../../garment/record/piece-said.ts';
import { Deed } from '../parts/deed.tsx';
import { foundText, valueText } from '../said/value-text.ts';
import { bowOf, type OutlineShown, turnedForm } from './outline-shown.ts';
import type { PieceSet, Typing } from './outlines-props.ts';

interface Props {
  one: OutlineShown;
  bench: Bench;
  say: (set: PieceSet) => void;
  shape: (form: PieceForm | undefined) => void;
  onType: (typing: Typing) => void;
}

/** All that is said of an outline, each to be said anew. */
export function FormDeeds(props: Props) {
  const { one, say } = props;
  const { outline } = one.said;
  if (!outline) return null;
  const { form } = outline;
  return (
    <>
      {form.kind === 'four' ? <Four {...props} form={form} /> : <Points {...props} form={form} />}
      <Adds {...props} outline={outline} />
      <Deed words={words.takeOff} onPress={() => say({ outline: undefined, match: undefined })} />
    </>
  );
}

type FourProps = Props & { form: PieceForm & { kind: 'four' } };

function Four({ form, bench, shape, onType }: FourProps) {
  const said = (of: number) => valueText('length', of, bench);
  return (
    <>
      {(['long', 'top', 'bottom'] as const).map((what) => (
        <Deed
          key={what}
          words={words.valued(words[what], said(form[what]))}
          onPress={() => onType({ what })}
        />
      ))}
      {form.top !== form.bottom && (
        <Deed
          words={words.slant}
          hint={words.slantHint}
          on={form.slant === 'right'}
          onPress={() => shape({ ...form, slant: form.slant === 'right' ? 'both' : 'right' })}
        />
      )}
      {words.sides.map((side, at) => (
        <Bow key={side} {...{ side, at, form, bench, onType }} />
      ))}
    </>
  );
}

interface BowProps extends Pick<Props, 'bench' | 'onType'> {
  side: string;
  at: number;
  form: PieceForm;
}

function Bow({ side, at, form, bench, onType }: BowProps) {
  const bow = bowOf(form, at);
  const by = valueText('length', Math.abs(bow), bench);
  const is = bow === 0 ? words.straight : bow > 0 ? words.bowsOut(by) : words.bowsIn(by);
  return <Deed words={words.valued(side, is)} onPress={() => onType({ what: 'bow', at })} />;
}

/** More points than this were not typed: they are there to be opened. */
const TYPED = 12;

type PointsProps = Props & { form: PieceForm & { kind: 'points' } };

function Points({ form, bench, say, shape, onType }: PointsProps) {
  const { points } = form;
  const said = (of: number) => valueText('length', of, bench);
  const turn = (how: 'quarter' | 'mirror') => {
    shape(turnedForm(form, how));
    say({ match: undefined });
  };
  return (
    <>
      <details open={points.length <= TYPED}>
        <summary>{words.corners(points.length)}</summary>
        {points.map(([down, across], at) => (
          <Deed
            key={at}
            words={words.point(at + 1, said(down), said(across))}
            onPress={() => onType({ what: 'point', at })}
          />
        ))}
        {points.length > 2 &&
          points.map((_, at) => {
            const side = words.sideOf(at + 1, ((at + 1) % points.length) + 1);
            return <Bow key={at} {...{ side, at, form, bench, onType }} />;
          })}
      </details>
      {points.length < MOST_PIECE_CORNERS ? (
        <Deed words={words.addPoint} onPress={() => onType({ what: 'point', at: points.length })} />
      ) : (
        <p class="said">{words.most(String(MOST_PIECE_CORNERS))}</p>
      )}
      {points.length > 2 && (
        <>
          <Deed words={words.quarter} hint={words.quarterHint} onPress={() => turn('quarter')} />
          <Deed words={words.mirror} onPress={() => turn('mirror')} />
        </>
      )}
    </>
  );
}

type AddsProps = Pick<Props, 'one' | 'bench' | 'say' | 'onType'> & { outline: PieceOutline };

/** What is cut outside of it: one of these ways. */
function Adds({ one, outline, bench, say, onType }: AddsProps) {
  const { adds, ...bare } = outline;
  const { edges } = one;
  const said = (of: number) => foundText('length', of, bench);
  return (
    <>
      <Deed words={words.isCut} on={adds === undefined} onPress={() => say({ outline: bare })} />
      {edges && (
        <Deed
          words={words.addsEdges}
          hint={
            bare.form.kind === 'four'
              ? words.edges(
                  said(edges.other),
                  said(edges.bottom),
                  said(edges.side),
                  said(edges.top),
                )
              : words.widest(said(Math.max(...Object.values(edges))))
          }
          on={adds === 'edges'}
          onPress={() => say({ outline: { ...bare, adds: 'edges' } })}
        />
      )}
      <Deed
        words={typeof adds === 'number' ? words.addsBy(said(adds)) : words.addsAll}
        on={typeof adds === 'number'}
        onPress={() => onType({ what: 'adds' })}
      />
    </>
  );
}
