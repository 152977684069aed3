import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { licenceWords as words } from '#words/phone/licence-words.ts';
import { Licences } from '../../src/screens/settings/licences.tsx';

afterEach(cleanup);

const PARTS = [
  { name: 'one', version: '1.0.0', licence: 'MIT', text: 'Permission is granted' },
  { name: 'two', version: '2.0.0', licence: 'Apache-2.0', text: '' },
];

test('parts are listed once asked for, each with its licence or the word that it brought none', async () => {
  render(<Licences load={async () => PARTS} />);
  expect(screen.queryByText(/one 1\.0\.0/)).toBeNull();
  fireEvent.click(screen.getByRole('button', { name: words.title }));
  await screen.findByText('one 1.0.0 · MIT');
  screen.getByText('Permission is granted');
  screen.getByText(words.noText('Apache-2.0'));
});

test('a list that can’t be fetched says so, and can be asked for again', async () => {
  let there = false;
  const load = async () => {
    if (!there) throw new Error('not there');
    return PARTS;
  };
  render(<Licences load={load} />);
  fireEvent.click(screen.getByRole('button', { name: words.title }));
  await screen.findByText(words.missing, { exact: false });
  there = true;
  fireEvent.click(screen.getByRole('button', { name: words.again }));
  await screen.findByText('one 1.0.0 · MIT');
});
