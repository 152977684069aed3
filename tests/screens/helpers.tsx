import { act, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { useState } from 'preact/hooks';
import { vi } from 'vitest';
import type { Bench } from '../../src/calculation/bench.ts';
import type { Answer, Calculation, Draft, Work } from '../../src/calculation/calculation.ts';
import type { Held, PageState } from '../../src/calculation/page.ts';
import { stateOf } from '../../src/calculation/parted.ts';
import { CalculationView } from '../../src/controls/calculation-view.tsx';
import { benchOf } from '../controls/helpers.ts';

interface Props {
  calculation: Calculation;
  first: PageState;
  bench: Bench;
}

function Typed({ calculation, first, bench }: Props) {
  const [{ draft, page }, setState] = useState(first);
  return (
    <CalculationView
      calculation={calculation}
      draft={draft}
      page={page}
      bench={bench}
      onDraft={(next) => setState({ draft: next, page })}
      onMode={() => undefined}
      onLeave={() => undefined}
      onOpen={() => undefined}
    />
  );
}

/** Opens a calculation as the app does, with its own start and what a test sets. */
export function open(calculation: Calculation, set: Held = {}, bench = benchOf()) {
  const first = stateOf({ ...calculation.start(bench), ...set });
  return render(<Typed calculation={calculation} first={first} bench={bench} />);
}

/** Types into a field as a keyboard would. */
export function type(label: string, text: string): void {
  fireEvent.input(screen.getByLabelText(new RegExp(`^${label}`)), { target: { value: text } });
}

/** What the answer says, once every part of it is there. */
export async function answer(): Promise<string> {
  const region = screen.getByRole('region', { name: 'Answer' });
  await waitFor(() => {
    if (!region.textContent) throw new Error('no answer yet');
  });
  // Its parts are fetched just after it.
  await act(() => vi.dynamicImportSettled());
  return region.textContent ?? '';
}

/** The answer to a draft without any screen. */
export function answerTo(calculation: Calculation, set: Draft, bench = benchOf()): Answer {
  const work = workOn(calculation, set, bench);
  if (!work.ok) throw new Error(`no answer: ${JSON.stringify(work.faults)}`);
  return work.answer;
}

export function workOn(calculation: Calculation, set: Draft, bench = benchOf()): Work {
  return calculation.work({ ...calculation.start(bench), ...set }, bench);
}
