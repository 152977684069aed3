import { calculationName } from '#words/calculations/calculation-names.ts';
import { calculationUses } from '#words/calculations/calculation-uses.ts';
import { findWords } from '#words/calculations/find-words.ts';
import { type Choosable, FindAmong } from './find-among.tsx';

interface Props {
  /** Whether it is among those that may be chosen here. */
  offers?: (id: string) => boolean;
  onChoose: (id: string, name: string) => void;
}

const ALL: readonly Choosable[] = Object.values(calculationUses).flatMap(({ stage, of }) =>
  Object.entries(of).map(([id, also]) => ({
    id,
    group: stage,
    name: calculationName(id) ?? id,
    also,
  })),
);

/** Calculations by stage, or those that fit what is looked for. */
export function FindList({ offers, onChoose }: Props) {
  const all = offers ? ALL.filter(({ id }) => offers(id)) : ALL;
  return <FindAmong all={all} list={findWords.list} onChoose={onChoose} />;
}
