import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { useState } from 'preact/hooks';
import { afterEach, expect, test } from 'vitest';
import { usePress } from '../../src/controls/use-press.ts';

afterEach(cleanup);

const presses: string[] = [];

function Leads() {
  const [away, setAway] = useState(false);
  const press = usePress('', () => {
    presses.push('leads elsewhere');
    setAway(true);
  });
  if (!away) {
    return (
      <button type="button" {...press}>
        See the ways
      </button>
    );
  }
  return (
    <p>
      <button type="button" onClick={() => presses.push('a way')}>
        A way
      </button>
    </p>
  );
}

/** What a finger does to what lies under it, as far as the browser says it before the click. */
function down(on: HTMLElement) {
  const at = { button: 0, isPrimary: true, pointerId: 1 };
  fireEvent(on, new PointerEvent('pointerdown', { bubbles: true, ...at }));
  fireEvent(on, new PointerEvent('pointerup', { bubbles: true, ...at }));
}

/** A click is sent to what lies under the finger then, which may have come under it just before. */
test('the click that ends a press never reaches what came in the place of the key', () => {
  presses.length = 0;
  const { unmount } = render(<Leads />);
  const clickOf = (on: HTMLElement) => fireEvent.click(on, { detail: 1 });
  down(screen.getByRole('button', { name: 'See the ways' }));
  const way = screen.getByRole('button', { name: 'A way' });
  clickOf(way);
  expect(presses).toEqual(['leads elsewhere']);
  down(way);
  clickOf(way);
  expect(presses).toEqual(['leads elsewhere', 'a way']);
  unmount();
});

test('a press whose click never came takes none from the next one, by a finger or not', () => {
  presses.length = 0;
  render(<Leads />);
  down(screen.getByRole('button', { name: 'See the ways' }));
  const way = screen.getByRole('button', { name: 'A way' });
  fireEvent.click(way, { detail: 0 });
  down(way);
  fireEvent.click(way, { detail: 1 });
  expect(presses).toEqual(['leads elsewhere', 'a way', 'a way']);
});
