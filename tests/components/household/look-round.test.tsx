import 'fake-indexeddb/auto';
import { act, fireEvent, render, screen, waitFor, within } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { openKeptLooks } from '../../../components/household/kept-looks';
import { LookRound } from '../../../components/household/look-round';

afterEach(async () => {
  const kept = await openKeptLooks();
  for (const { id } of await kept.all()) await kept.remove(id);
  kept.close();
  window.location.hash = '';
});

/** jsdom has no layout, so nothing to scroll. */
Element.prototype.scrollIntoView = () => undefined;

async function begin() {
  render(<LookRound pictures={{}} />);
  fireEvent.click(await screen.findByRole('button', { name: 'Begin the look round' }));
  return screen.findByRole('heading', { name: 'From the street' });
}

const answer = (ask: string, word: string) =>
  fireEvent.click(within(screen.getByRole('group', { name: ask })).getByRole('radio', { name: word }));

test('the keyboard begins at the top of each step', async () => {
  const street = await begin();
  await waitFor(() => expect(street).toHaveFocus());
  act(() => {
    window.location.hash = screen.getByRole('link', { name: 'Next: Each face' }).getAttribute('href') ?? '';
  });
  expect(await screen.findByRole('heading', { name: 'Each face' })).toHaveFocus();
});

test('a sign of falling is told on the spot, and the way leads to the note and no nearer', async () => {
  await begin();
  answer('Does the wall lean, in or out?', 'I can’t see that');
  expect(screen.queryByRole('alert')).toBe(null);
  answer('Does the wall lean, in or out?', 'Yes');
  expect(screen.getByRole('alert')).toHaveTextContent('Go away from the wall now.');
  expect(screen.getByRole('link', { name: 'Next: Your note' })).toBeVisible();
  answer('Does the wall lean, in or out?', 'No');
  expect(screen.getByRole('link', { name: 'Next: Each face' })).toBeVisible();
});

test('an answer is kept on the device', async () => {
  await begin();
  answer('Is anything loose, hanging, or coming away from the wall?', 'No');
  await screen.findByText('Kept on this device.');
  const kept = await openKeptLooks();
  await waitFor(async () =>
    expect((await kept.all()).map(({ answers }) => answers)).toEqual([{ loose: 'no' }]),
  );
  kept.close();
});
