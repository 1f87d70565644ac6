import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { MarkForm } from '../../../components/wall-page/marking/mark-form';
import type { Mark } from '../../../components/wall-page/work-state';
import type { Reading } from '../../../lib/instruments/reading';
import type { LengthSystem } from '../../../lib/units';
import { FAULTS, findByName, UNIT } from './samples';
import { showForm } from './show-mark-form';

const TWIST: Reading = {
  instrument: 'straightedge',
  part: 'A3.2',
  what: 'Right end proud',
  value: 9.5,
  unit: 'mm',
  words: null,
  error: 0.2,
  fine: false,
  turned: false,
};

test('more can be said: how much, by which requirement, and what to do', async () => {
  const marks: Mark[] = [];
  const user = showForm((mark) => {
    marks.push(mark);
    return null;
  });
  await user.click(screen.getByRole('radio', { name: 'Twisted unit' }));
  await user.click(screen.getByText(/^Say more/));
  await user.type(screen.getByRole('textbox', { name: /How much/ }), '9,5');
  await user.click(screen.getByRole('radio', { name: /^Good practice/ }));
  await user.click(screen.getByRole('radio', { name: 'Put it right now' }));
  expect(screen.getByText('9.5 mm · good practice · put right now').tagName).toBe('SPAN');
  await user.click(screen.getByRole('button', { name: 'Mark it' }));
  expect(marks).toEqual([
    {
      part: 'A3.2',
      fault: 'twisted-unit',
      sure: 2,
      reading: 9.5,
      kind: 'good practice',
      act: 'put right now',
    },
  ]);
});

test('a reading typed in inches is told in millimetres when the lengths are changed', async () => {
  const shared = { picked: UNIT, faults: FAULTS, find: findByName, rules: 'Canada', notebook: [] };
  const form = (system: LengthSystem) => (
    <MarkForm {...shared} system={system} attached={null} onFill={() => undefined} onMark={() => null} />
  );
  const { rerender } = render(form('inches'));
  const user = userEvent.setup();
  await user.click(screen.getByRole('radio', { name: 'Twisted unit' }));
  await user.click(screen.getByText(/^Say more/));
  await user.type(screen.getByRole('textbox', { name: /How much/ }), '3/8');
  rerender(form('mm'));
  // 3/8 in is 9.525 mm.
  expect(screen.getByRole('textbox', { name: /How much/ })).toHaveValue('9.53');
});

test('a reading that is no number is asked for again, and what was typed stays', async () => {
  const marks: Mark[] = [];
  const user = showForm((mark) => {
    marks.push(mark);
    return null;
  });
  await user.click(screen.getByRole('radio', { name: 'Twisted unit' }));
  await user.click(screen.getByText(/^Say more/));
  await user.type(screen.getByRole('textbox', { name: /How much/ }), 'a lot');
  await user.click(screen.getByRole('button', { name: 'Mark it' }));
  expect(screen.getByRole('alert').textContent).toBe('“How much?” takes a number, like 12 or 9.5.');
  expect(screen.getByRole('textbox', { name: /How much/ })).toHaveValue('a lot');
  expect(marks).toEqual([]);
});

test('a reading out of the notebook is taken over, from the form or from the notebook', async () => {
  const user = showForm(() => null, undefined, { notebook: [TWIST] });
  await user.click(screen.getByRole('radio', { name: 'Twisted unit' }));
  await user.click(screen.getByText(/^Say more/));
  await user.click(screen.getByRole('button', { name: 'Use 9.5 mm: right end proud' }));
  expect(screen.getByRole('textbox', { name: /How much/ })).toHaveValue('9.5');
  user.attach({ ...TWIST, value: 8 });
  expect(screen.getByRole('textbox', { name: /How much/ })).toHaveValue('8');
  user.attach({ ...TWIST, unit: '%' });
  expect(screen.getByRole('alert').textContent).toBe(
    'That reading does not fit: Twisted unit is read in mm.',
  );
});

test('of what one instrument read, the reading that answers for the fault is offered first', async () => {
  const face: Reading = { ...TWIST, what: 'Face against its neighbours', value: 4, words: 'proud' };
  const end: Reading = { ...TWIST, what: 'One end against the other', words: 'right end proud' };
  const length: Reading = { ...TWIST, instrument: 'tape', what: 'Length', value: 190 };
  const user = showForm(() => null, undefined, { notebook: [end, face, length] });
  await user.click(screen.getByRole('radio', { name: 'Twisted unit' }));
  await user.click(screen.getByText(/^Say more/));
  expect(screen.getAllByRole('button', { name: /^Use / }).map(({ textContent }) => textContent)).toEqual([
    'Use 9.5 mm: one end against the other',
    'Use 4 mm: face against its neighbours',
    'Use 190 mm: length',
  ]);
});

test.each([
  ['-1', '“How much?” takes a number from 0 up. Leave the minus out.'],
  ['99999999', '“How much?” is more than any wall can have. Look at the unit behind the box.'],
])('%s is no reading of a wall: it is asked for again, and stays', async (typed, problem) => {
  const marks: Mark[] = [];
  const user = showForm((mark) => {
    marks.push(mark);
    return null;
  });
  await user.click(screen.getByRole('radio', { name: 'Twisted unit' }));
  await user.click(screen.getByText(/^Say more/));
  await user.type(screen.getByRole('textbox', { name: /How much/ }), typed);
  await user.click(screen.getByRole('button', { name: 'Mark it' }));
  expect(screen.getByRole('alert').textContent).toBe(problem);
  expect(screen.getByRole('textbox', { name: /How much/ })).toHaveValue(typed);
  expect(marks).toEqual([]);
});
