import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, expect, test, vi } from 'vitest';
import type { Answer, NamedRun } from '../../src/calculation/calculation.ts';
import { Actions } from '../../src/controls/actions.tsx';
import { mm } from '../../src/lengths/length.ts';

afterEach(cleanup);

function runOf(name: string, marks: number): NamedRun {
  const places = Array.from({ length: marks }, (_, i) => mm(10 * i));
  return {
    name,
    item: 'Line',
    run: {
      datum: 'zero',
      length: mm(100),
      marks: places.map((at, i) => ({ at, label: String(i + 1), kind: 'press' })),
    },
  };
}

function show(runs: readonly NamedRun[], onMode = vi.fn()) {
  const none = { lines: [], offers: [], warnings: [], cautions: [], workings: [] };
  const answer: Answer = { headline: { number: '1', after: '' }, sentence: '', runs, ...none };
  render(
    <Actions
      work={{ ok: true, answer }}
      padOpen
      onPad={() => undefined}
      counts={undefined}
      field={undefined}
      onMode={onMode}
      onLeave={() => undefined}
    />,
  );
  return onMode;
}

test('a run of several marks can be followed, whatever stands before it', () => {
  for (const runs of [[runOf('One', 2)], [runOf('One', 1), runOf('Two', 2)]]) {
    const onMode = show(runs);
    fireEvent.click(screen.getByRole('button', { name: 'Follow' }));
    expect(onMode).toHaveBeenLastCalledWith('follow');
    cleanup();
  }
});

test('a single mark has nothing to follow', () => {
  show([runOf('One', 1), runOf('Two', 0)]);
  expect(screen.queryByRole('button', { name: 'Follow' })).toBeNull();
});
