import { cleanup, screen } from '@testing-library/react';
import { expect, test } from 'vitest';
import type { HalfMark, Mark } from '../../../components/wall-page/work-state';
import { showForm } from './show-mark-form';

/** A mark half made in inches: 1/2 in is 12.7 mm. */
const HALF: HalfMark = {
  words: 'thick',
  fault: 'thick-joint',
  place: 'A3.1/2',
  sure: 3,
  details: { reading: '1/2', kind: 'good practice', act: 'leave' },
  system: 'inches',
};

test('all that a form holds is told as it changes, and a form that is only looked at tells nothing', async () => {
  const told: HalfMark[] = [];
  const user = showForm(() => null, undefined, { onFill: (half) => told.push(half) });
  expect(told).toEqual([]);
  await user.type(screen.getByRole('searchbox'), 'th');
  expect(told.map(({ words }) => words)).toEqual(['t', 'th']);
  await user.click(screen.getByRole('radio', { name: 'Joint too thick' }));
  await user.selectOptions(
    screen.getByRole('combobox', { name: /Which one\?/ }),
    'Head joint between units 1 and 2, course 3',
  );
  await user.click(screen.getByText(/^Say more/));
  await user.type(screen.getByRole('textbox', { name: /How much/ }), '12');
  await user.click(screen.getByRole('radio', { name: /^Good practice/ }));
  await user.click(screen.getByRole('radio', { name: 'Leave it' }));
  await user.click(screen.getByRole('radio', { name: 'Certain' }));
  expect(told.at(-1)).toEqual({
    words: 'th',
    fault: 'thick-joint',
    place: 'A3.1/2',
    sure: 3,
    details: { reading: '12', kind: 'good practice', act: 'leave' },
    system: 'mm',
  });
});

test('a form goes on from what it held', async () => {
  const marks: Mark[] = [];
  const user = showForm(
    (mark) => {
      marks.push(mark);
      return null;
    },
    undefined,
    { kept: HALF, system: 'inches' },
  );
  expect(screen.getByText('Joint too thick.').tagName).toBe('STRONG');
  expect(screen.getByRole('combobox', { name: /Which one\?/ })).toHaveValue('A3.1/2');
  expect(screen.getByRole('radio', { name: 'Certain' })).toBeChecked();
  expect(screen.getByRole('textbox', { name: /How much/ })).toHaveValue('1/2');
  expect(screen.getByRole('radio', { name: /^Good practice/ })).toBeChecked();
  expect(screen.getByRole('radio', { name: 'Leave it' })).toBeChecked();
  await user.click(screen.getByRole('button', { name: 'Mark it' }));
  expect(marks).toEqual([
    {
      part: 'A3.1/2',
      fault: 'thick-joint',
      sure: 3,
      reading: 12.7,
      kind: 'good practice',
      act: 'leave',
    },
  ]);
  await user.click(screen.getByRole('button', { name: 'Choose another fault' }));
  expect(screen.getByRole('searchbox')).toHaveValue('thick');
});

test('what was typed in inches comes back in millimetres where those are chosen since', () => {
  showForm(() => null, undefined, { kept: HALF, system: 'mm' });
  expect(screen.getByRole('textbox', { name: /How much/ })).toHaveValue('12.7');
});

test('a change half made goes before the mark it changes', () => {
  const before: Mark = { part: 'A3.1/2', fault: 'thick-joint', sure: 1 };
  showForm(() => null, before, { kept: HALF, system: 'inches' });
  expect(screen.getByRole('radio', { name: 'Certain' })).toBeChecked();
  expect(screen.getByRole('button', { name: 'Change the mark' })).toBeVisible();
  cleanup();
  showForm(() => null, before);
  expect(screen.getByRole('radio', { name: 'Unsure' })).toBeChecked();
});
