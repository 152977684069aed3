import { readHome } from '../../../garment/record/home.ts';
import { FromGarment } from './from-garment.tsx';
import { MadeBefore } from './made-before.tsx';
import { MadeNumber } from './made-number.tsx';
import { NameIt } from './name-it.tsx';
import { TakeOff } from './take-off.tsx';
import type { WorkInHand } from './use-work.ts';
import { WorkAs } from './work-as.tsx';

interface Props {
  hand: WorkInHand;
  /** The work is off the garment. */
  onOff: () => void;
}

/** What lies over the keys of a work, where something does. */
export function WorkPanel({ hand, onOff }: Props) {
  const { state, id, bench, onDo, panel, setPanel, typing } = hand;
  const all = { state, bench, onDo, onBack: () => setPanel(undefined) };
  if (panel?.of === 'off') return <TakeOff {...all} work={id} onOff={onOff} />;
  if (panel?.of === 'as') return <WorkAs {...all} work={id} />;
  if (panel?.of === 'made') {
    const { home, fact } = panel;
    const name = () => setPanel({ of: 'name', home });
    if (state.answer.sound.before.get(home)?.id === fact) {
      return <MadeBefore {...all} home={home} fact={fact} onName={name} />;
    }
    return <MadeNumber {...all} home={home} fact={fact} onName={name} />;
  }
  if (panel?.of === 'name') {
    const { side, key } = readHome(panel.home);
    const link = { work: id, output: key, ...(side !== '' && { of: side }) };
    const kind = state.answer.nodes.get(panel.home)?.kind ?? 'length';
    return <NameIt {...all} link={link} kind={kind} />;
  }
  if (!(panel && typing.field)) return null;
  return (
    <FromGarment
      {...all}
      field={typing.field}
      onTake={(offered) => {
        setPanel(undefined);
        typing.take(offered);
      }}
    />
  );
}
