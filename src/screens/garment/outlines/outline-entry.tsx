import { useState } from 'preact/hooks';
import { outlineWords as words } from '#words/garment/garment-outline-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import {
  endsOf,
  MOST_ADDED,
  MOST_TILT,
  type PieceForm,
} from '../../../garment/record/piece-said.ts';
import { UNITS_PER } from '../../../lengths/unit.ts';
import { MeasureEntry } from '../parts/measure-entry.tsx';
import { bowOf, type OutlineShown, withBow, withPoint } from './outline-shown.ts';
import type { PieceSet, Typing } from './outlines-props.ts';

interface Props {
  one: OutlineShown;
  bench: Bench;
  typing: Typing;
  say: (set: PieceSet) => void;
  shape: (form: PieceForm | undefined) => void;
  onType: (typing: Typing) => void;
  onLeave: () => void;
}

/** As long as a bolt of cloth. */
const MOST = 50 * UNITS_PER.m;

const within = (read: number, most: number) =>
  Math.round(read) >= 0 && read <= most ? undefined : words.refused;

/** A number of an outline, typed. */
export function OutlineEntry(props: Props) {
  const { one, typing, say, shape } = props;
  const form = one.said.outline?.form;
  switch (typing.what) {
    case 'long':
    case 'top':
    case 'bottom':
      if (form?.kind !== 'four') return null;
      return (
        <Length
          {...props}
          label={words[typing.what]}
          onKeep={(read) => shape({ ...form, [typing.what]: read })}
        />
      );
    case 'adds': {
      const { outline } = one.said;
      if (!outline) return null;
      return (
        <Length
          {...props}
          label={words.addedWidth}
          most={MOST_ADDED}
          onKeep={(read) => {
            const { adds: _, ...bare } = outline;
            say({ outline: read > 0 ? { ...bare, adds: read } : bare });
          }}
        />
      );
    }
    case 'bow':
      return form ? <Bow {...props} form={form} at={typing.at} /> : null;
    case 'point':
      return form?.kind === 'points' ? <Point {...props} form={form} at={typing.at} /> : null;
    case 'match':
      return <Match {...props} />;
    case 'tilt':
      return <Tilt {...props} />;
  }
}

type LengthProps = Props & { label: string; most?: number; onKeep: (read: number) => void };

function Length({ bench, label, most = MOST, onKeep, onLeave }: LengthProps) {
  const keep = (read: number) => {
    onKeep(Math.round(read));
    onLeave();
  };
  const given = { bench, label, onLeave, kind: 'length', deed: words.keep } as const;
  return <MeasureEntry {...given} refuses={(read) => within(read, most)} onKeep={keep} />;
}

type BowProps = Props & { form: PieceForm; at: number };

function Bow({ form, at, bench, shape, onLeave }: BowProps) {
  const [inwards, setInwards] = useState(bowOf(form, at) < 0);
  const ends = endsOf(form);
  const [[x, y], [u, v]] = [ends[at] ?? [0, 0], ends[(at + 1) % ends.length] ?? [0, 0]];
  const most = Math.hypot(u - x, v - y) / 2;
  const put = (bow: number) => {
    shape(withBow(form, at, bow));
    onLeave();
  };
  const side = form.kind === 'four' ? words.sides[at] : undefined;
  return (
    <MeasureEntry
      {...{ bench, onLeave }}
      label={words.bow(side ?? words.sideOf(at + 1, ((at + 1) % ends.length) + 1))}
      kind="length"
      deed={words.keep}
      refuses={(read) => (read >= 0 && read <= most ? undefined : words.refusedBow)}
      onKeep={(read) => put((inwards ? -1 : 1) * Math.floor(read))}
    >
      <button type="button" aria-pressed={inwards} onClick={() => setInwards(!inwards)}>
        {words.inwards}
      </button>
      <button type="button" onClick={() => put(0)}>
        {words.makeStraight}
      </button>
    </MeasureEntry>
  );
}

type PointProps = Props & { form: PieceForm & { kind: 'points' }; at: number };

/** A point: first how far down, then how far across. */
function Point({ form, at, shape, onType, onLeave, bench }: PointProps) {
  const put = (down: number, across: number) => {
    const added = withPoint(form, at, [down, across]);
    shape(added);
    // One is typed after another until all are there.
    if (at < form.points.length) onLeave();
    else onType({ what: 'point', at: at + 1 });
  };
  const takeOut = () => {
    shape(withPoint(form, at, undefined));
    onLeave();
  };
  return (
    <Place
      key={at}
      {...{ bench, onLeave }}
      labels={[words.down(at + 1), words.across(at + 1)]}
      onPlace={put}
      {...(at < form.points.length && { forget: takeOut, forgetting: words.takeOut })}
    />
  );
}

function Match({ one, bench, say, onLeave }: Props) {
  const put = (match: readonly [number, number] | undefined) => {
    say({ match });
    onLeave();
  };
  return (
    <Place
      {...{ bench, onLeave }}
      labels={[words.matchDown, words.matchAcross]}
      onPlace={(down, across) => put([down, across])}
      {...(one.said.match && { forget: () => put(undefined), forgetting: words.forget })}
    />
  );
}

interface PlaceProps {
  bench: Bench;
  labels: readonly [down: string, across: string];
  forgetting?: string;
  forget?: () => void;
  onPlace: (down: number, across: number) => void;
  onLeave: () => void;
}

/** Two lengths one after the other. */
function Place({ bench, labels, forget, forgetting, onPlace, onLeave }: PlaceProps) {
  const [down, setDown] = useState<number>();
  const keep = (read: number) => {
    if (down === undefined) setDown(Math.round(read));
    else onPlace(down, Math.round(read));
  };
  return (
    <MeasureEntry
      key={down === undefined ? 'down' : 'across'}
      {...{ bench, onLeave }}
      label={labels[down === undefined ? 0 : 1]}
      kind="length"
      deed={down === undefined ? words.next : words.keep}
      refuses={(read) => within(read, MOST)}
      onKeep={keep}
    >
      {forget && (
        <button type="button" onClick={forget}>
          {forgetting}
        </button>
      )}
    </MeasureEntry>
  );
}

function Tilt({ bench, say, onLeave }: Props) {
  return (
    <MeasureEntry
      {...{ bench, onLeave }}
      label={words.tiltAsked}
      kind="number"
      deed={words.keep}
      refuses={(read) =>
        Number.isInteger(read) && read >= 0 && read <= MOST_TILT
          ? undefined
          : words.noTilt(String(MOST_TILT))
      }
      onKeep={(read) => {
        say({ tilt: read === 0 ? undefined : read });
        onLeave();
      }}
    />
  );
}
