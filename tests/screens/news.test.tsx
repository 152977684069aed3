import { cleanup, render, screen, within } from '@testing-library/preact';
import { afterEach, expect, test, vi } from 'vitest';
import { newsWords } from '#words/phone/news-words.ts';
import { CHOICES } from '../../src/app/start/settings.ts';
import { Settings } from '../../src/screens/settings/settings.tsx';
import { benchOf } from '../controls/helpers.ts';

afterEach(cleanup);

test('the settings tell what is new, the latest first, without a connection', () => {
  const fetched = vi.spyOn(globalThis, 'fetch');
  render(
    <Settings
      bench={benchOf()}
      choices={CHOICES}
      said={undefined}
      onBench={() => {}}
      onLeave={() => {}}
      loadLicences={async () => []}
    />,
  );
  const news = screen.getByText('What is new').closest('details');
  if (!news) throw new Error('no news');
  const dates = within(news)
    .getAllByRole('heading', { level: 2, hidden: true })
    .map(({ textContent }) => Date.parse(textContent ?? ''));
  expect(dates.length).toBeGreaterThan(1);
  expect(dates).toEqual([...dates].sort((a, b) => b - a));
  for (const { says } of newsWords.releases) {
    for (const one of says) expect(within(news).getByText(one)).toBeDefined();
  }
  expect(fetched).not.toHaveBeenCalled();
});
