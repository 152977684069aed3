import { cleanup, render, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { phoneWords } from '#words/phone/phone-words.ts';
import type { Offline } from '../../../src/app/offline/watch.ts';
import { PhoneNews } from '../../../src/app/places/phone-news.tsx';

afterEach(cleanup);

const show = (offline: Offline) =>
  render(<PhoneNews offline={offline} fault={undefined} onDismiss={() => undefined} />);

test.each(['asked', 'held up'] as const)(
  'a newer build that is being taken (%s) is said to be, and not offered meanwhile',
  (taking) => {
    show({ ready: true, update: () => undefined, taking });
    expect(screen.getByRole('status').textContent).toBe(phoneWords.taking[taking]);
    expect(screen.queryByRole('button')).toBeNull();
  },
);

test('one that waits is offered', () => {
  show({ ready: true, update: () => undefined });
  expect(screen.getByRole('button', { name: phoneWords.takeUpdate })).toBeTruthy();
});
