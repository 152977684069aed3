import { render } from '@testing-library/preact';
import { useState } from 'preact/hooks';
import { CALCULATIONS, DRAWINGS } from '../../../src/calculations/list.ts';
import { type Action, act } from '../../../src/garment/actions/act.ts';
import { begin, type Refused, type State } from '../../../src/garment/actions/state.ts';
import type { Garment } from '../../../src/garment/record/record.ts';
import { StaleLay } from '../../../src/screens/garment/materials/stale-lay.tsx';
import { WorkView, type WorkViewProps } from '../../../src/screens/garment/works/work-view.tsx';
import { benchOf } from '../../controls/helpers.ts';
import { garmentOf, output, quantity, typed } from '../../garment/trial/garments.ts';
import { KNOWN } from '../../garment/trial/known.ts';

/** What the store would hold: the state after each press, and what was refused. */
export interface Held {
  state: State;
  refused: Refused | undefined;
  /** Does something beside the screen, as another tab might. */
  act(action: Action): void;
}

/** Opens a work of a garment in a hand of its own, as the app does. */
export async function openIn(
  garment: Garment,
  work: string,
  set: Partial<WorkViewProps> = {},
): Promise<Held> {
  let again: () => void = () => undefined;
  const held: Held = {
    state: begin(garment, KNOWN),
    refused: undefined,
    act: (action) => {
      const done = act(held.state, action);
      held.state = done.state;
      held.refused = done.refused;
      again();
    },
  };
  const id = held.state.answer.works.get(work)?.work.calculation ?? '';
  const bench = benchOf();
  const [page, drawing] = await Promise.all([CALCULATIONS[id]?.(), DRAWINGS[id]?.()]);
  function Hand() {
    const [, draw] = useState(0);
    again = () => draw((n) => n + 1);
    return (
      <WorkView
        state={held.state}
        work={work}
        bench={bench}
        page={page}
        drawing={drawing}
        refused={held.refused}
        onDone={() => undefined}
        onAct={held.act}
        Stale={StaleLay}
        {...set}
      />
    );
  }
  render(<Hand />);
  return held;
}

const hemFields = {
  ...{ depth: typed('3'), given: typed('depth'), turn: typed('1'), style: typed('unequal') },
  ...{ shape: typed('straight'), edgeStitch: typed('0.2'), taper: typed('none') },
};

/** An invented skirt: two hems of which one is as deep as the other, and closures on its front edge. */
export const skirt = garmentOf({
  quantities: {
    front: { name: 'Front edge', kind: 'length', rank: 1, parts: typed('46.3') },
    snaps: { name: 'Snaps', kind: 'count', rank: 2, parts: typed('7') },
  },
  works: {
    hem: { name: 'Back hem', calculation: 'hem', rank: 1, fields: hemFields },
    lining: {
      name: 'Lining hem',
      calculation: 'hem',
      rank: 2,
      fields: { ...hemFields, depth: [output('hem', 'depth'), { text: ' − 1', unit: 'cm' }] },
    },
    close: {
      name: 'Front',
      calculation: 'closures',
      rank: 3,
      fields: {
        ...{ opening: [quantity('front')], count: typed('7'), by: typed('count') },
        ...{ top: typed('1.2'), bottom: typed('2.5'), ends: typed('given'), item: typed('hook') },
      },
    },
  },
});
