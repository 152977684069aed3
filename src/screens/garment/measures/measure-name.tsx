import { measuresWords as words } from '#words/garment/garment-measures-words.ts';
import { NameEntry } from '../parts/name-entry.tsx';

/** A quantity's kind, where it can be chosen. */
export type MeasureKind = 'length' | 'count' | 'run';

interface Props {
  first: string;
  deed: string;
  /** Its kind is asked for, too. */
  kinds: boolean;
  onName: (name: string, kind: MeasureKind) => void;
  onLeave: () => void;
}

const KINDS: readonly MeasureKind[] = ['length', 'count', 'run'];

/** Names a number of the garment. */
export function MeasureName({ kinds, onName, ...given }: Props) {
  return (
    <NameEntry
      {...given}
      hint={words.nameHint}
      kinds={kinds ? KINDS.map((one) => [one, words[one]] as const) : []}
      onName={(name, kind = 'length') => onName(name, kind)}
    />
  );
}
