import { useState } from 'preact/hooks';
import { layFlawWords as words } from '#words/garment/garment-lay-flaw-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { type Flaw, MOST_FLAWS } from '../../../garment/record/cloth-lay.ts';
import { UNITS_PER } from '../../../lengths/unit.ts';
import { Deed } from '../parts/deed.tsx';
import { MeasureEntry } from '../parts/measure-entry.tsx';
import { valueText } from '../said/value-text.ts';

interface ListProps {
  flaws: readonly Flaw[];
  bench: Bench;
  onAdd: () => void;
  /** Those that are left when one is taken out. */
  onLeft: (flaws: readonly Flaw[]) => void;
}

/** The flaws of a cloth: each taken out by a press, and another added. */
export function LayFlaws({ flaws, bench, onAdd, onLeft }: ListProps) {
  const said = (of: number) => valueText('length', of, bench);
  return (
    <>
      {flaws.map(({ along, across, long, wide }, at) => (
        <Deed
          key={at}
          words={words.flaw(said(long), said(wide), said(along), said(across))}
          hint={words.takeOut}
          onPress={() => onLeft(flaws.filter((_, other) => other !== at))}
        />
      ))}
      {flaws.length < MOST_FLAWS ? (
        <Deed words={words.add} hint={words.addHint} onPress={onAdd} />
      ) : (
        <p>{words.most(String(MOST_FLAWS))}</p>
      )}
    </>
  );
}

/** In the order in which they are measured. */
const ASKED = ['along', 'long', 'across', 'wide'] as const;
const FARTHEST = 100 * UNITS_PER.m;

interface EntryProps {
  bench: Bench;
  /** Of the cloth, in 1/8000 mm, where it is said. */
  width: number | undefined;
  onKeep: (flaw: Flaw) => void;
  onLeave: () => void;
}

/** A flaw, measured one length after another. */
export function FlawEntry({ bench, width = FARTHEST, onKeep, onLeave }: EntryProps) {
  const [given, setGiven] = useState<Partial<Flaw>>({});
  const asked = ASKED.find((key) => given[key] === undefined) ?? 'wide';
  const refuses = (read: number) => {
    const from = asked === 'along' || asked === 'across';
    if (asked === 'across' && read >= width) return words.offCloth;
    return (from ? read >= 0 : Math.round(read) > 0) && read <= FARTHEST
      ? undefined
      : words.refused;
  };
  const keep = (read: number) => {
    const { along = 0, long = 0, across = 0 } = given;
    const whole = Math.round(read);
    if (asked === 'wide') onKeep({ along, long, across, wide: whole });
    else setGiven({ ...given, [asked]: whole });
  };
  return (
    <MeasureEntry
      key={asked}
      {...{ bench, refuses, onLeave }}
      label={words.asked[asked]}
      deed={asked === 'wide' ? words.keep : words.next}
      kind="length"
      onKeep={keep}
    />
  );
}
