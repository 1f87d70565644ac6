import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { MarkingPanel } from '../../../components/wall-page/marking-panel';
import { PartCard } from '../../../components/wall-page/part-card';
import type { Mark } from '../../../components/wall-page/work-state';
import { UNIT } from './samples';
import { showForm } from './show-mark-form';

test('faults that go with the part come first, the others by family', () => {
  showForm(() => null);
  const groups = screen.getAllByRole('group').map((group) => group.querySelector('legend')?.textContent);
  expect(groups).toEqual(['What is wrong here?', 'Marked on a unit', 'Joints', 'Line']);
});

test('typing a word shortens the list and says by how much', async () => {
  const user = showForm(() => null);
  await user.type(screen.getByRole('searchbox'), 'thick');
  expect(screen.getByRole('status').textContent).toBe('1 of 3 faults');
  expect(screen.queryByRole('radio', { name: 'Twisted unit' })).toBeNull();
  await user.type(screen.getByRole('searchbox'), 'qq');
  expect(screen.getByRole('status').textContent).toBe(
    'No fault that can be here has that word. Try another, or clear the box.',
  );
});

test('a unit is marked with the fault chosen and how sure the reader is', async () => {
  const marks: Mark[] = [];
  const user = showForm((mark) => {
    marks.push(mark);
    return null;
  });
  await user.click(screen.getByRole('radio', { name: 'Twisted unit' }));
  await user.click(screen.getByRole('radio', { name: 'Certain' }));
  await user.click(screen.getByRole('button', { name: 'Mark it' }));
  expect(marks).toEqual([{ part: 'A3.2', fault: 'twisted-unit', sure: 3 }]);
});

test('a fault of the whole panel goes on the panel, and the form says so', async () => {
  const marks: Mark[] = [];
  const user = showForm((mark) => {
    marks.push(mark);
    return null;
  });
  await user.click(screen.getByRole('radio', { name: 'Out of plumb' }));
  expect(screen.getByText('Out of plumb', { selector: 'strong' }).parentElement?.textContent).toBe(
    'Out of plumb on The whole panel',
  );
  await user.click(screen.getByRole('button', { name: 'Mark it' }));
  expect(marks).toEqual([{ part: 'A', fault: 'out-of-plumb', sure: 2 }]);
});

test('a fault of a joint asks which joint of the unit', async () => {
  const marks: Mark[] = [];
  const user = showForm((mark) => {
    marks.push(mark);
    return null;
  });
  await user.click(screen.getByRole('radio', { name: 'Joint too thick' }));
  const which = screen.getByRole('combobox', { name: 'Joint too thick goes on one of these. Which one?' });
  await user.selectOptions(which, 'Head joint between units 1 and 2, course 3');
  await user.click(screen.getByRole('button', { name: 'Mark it' }));
  expect(marks).toEqual([{ part: 'A3.1/2', fault: 'thick-joint', sure: 2 }]);
});

test('nothing is marked without a fault, and an objection is said in place', async () => {
  const marks: Mark[] = [];
  const user = showForm((mark) => {
    marks.push(mark);
    return 'This part has two marks already.';
  });
  await user.click(screen.getByRole('button', { name: 'Mark it' }));
  expect(screen.getByRole('alert').textContent).toBe('Choose a fault from the list first.');
  expect(marks).toEqual([]);
  await user.click(screen.getByRole('radio', { name: 'Twisted unit' }));
  await user.click(screen.getByRole('button', { name: 'Mark it' }));
  expect(screen.getByRole('alert').textContent).toBe('This part has two marks already.');
});

test('changing a mark starts from what was said before, readings in the lengths chosen', () => {
  showForm(
    () => null,
    { part: 'A3.2', fault: 'twisted-unit', sure: 1, reading: 9.525, act: 'put right now' },
    { system: 'inches' },
  );
  expect(screen.getByText('Twisted unit.').tagName).toBe('STRONG');
  expect(screen.getByRole('radio', { name: 'Unsure' })).toBeChecked();
  // 9.525 mm is three eighths of an inch.
  expect(screen.getByRole('textbox')).toHaveValue('3/8');
  expect(screen.getByRole('radio', { name: 'Put it right now' })).toBeChecked();
  expect(screen.getByRole('button', { name: 'Change the mark' }).textContent).toBe('Change the mark');
});

test('the list folds to the fault chosen, and unfolds for another', async () => {
  const user = showForm(() => null);
  await user.click(screen.getByRole('radio', { name: 'Twisted unit' }));
  expect(screen.queryByRole('searchbox')).toBeNull();
  expect(screen.getByRole('button', { name: 'Choose another fault' })).toHaveFocus();
  await user.click(screen.getByRole('button', { name: 'Choose another fault' }));
  expect(screen.getByRole('radio', { name: 'Twisted unit' })).toBeChecked();
});

test('with the keyboard the list stays while the arrows walk along it', async () => {
  const user = showForm(() => null);
  screen.getByRole('radio', { name: 'Twisted unit' }).focus();
  await user.keyboard('{ArrowDown}');
  expect(screen.getByRole('radio', { name: 'Joint too thick' })).toBeChecked();
  expect(screen.getByRole('searchbox')).toBeVisible();
});

test('the card has the tools handed in, offers what is near, and closes with Escape', async () => {
  const heard: string[] = [];
  render(
    <PartCard
      picked={UNIT}
      tools={<button type="button">Lift it</button>}
      onPick={(part) => heard.push(part)}
      onClose={() => heard.push('closed')}
    >
      form
    </PartCard>,
  );
  const card = screen.getByRole('region', { name: 'Course 3, unit 2' });
  expect(within(card).getByRole('button', { name: 'Lift it' })).toBeVisible();
  const user = userEvent.setup();
  await user.click(screen.getByText(/^Also here/));
  await user.click(screen.getByRole('button', { name: 'The whole of course 3' }));
  await user.keyboard('{Escape}');
  expect(heard).toEqual(['A3', 'closed']);
});

test('the bench lists marks by number and lets each be changed, removed or undone', async () => {
  const heard: string[] = [];
  const marks = [
    {
      mark: { part: 'A3.2', fault: 'twisted-unit', sure: 3 } as const,
      faultName: 'Twisted unit',
      partName: 'Unit 2',
      details: '9.5 mm · good practice',
    },
    {
      mark: { part: 'A', fault: 'out-of-plumb', sure: 1 } as const,
      faultName: 'Out of plumb',
      partName: 'Panel',
      details: '',
    },
  ];
  render(
    <MarkingPanel
      marks={marks}
      canUndo
      cautions={['A caution.']}
      notes={null}
      onChange={(index) => heard.push(`change ${index}`)}
      onRemove={(index) => heard.push(`remove ${index}`)}
      onUndo={() => heard.push('undo')}
      onSaySound={() => heard.push('sound')}
      onReview={() => heard.push('review')}
    >
      {null}
    </MarkingPanel>,
  );
  expect(screen.getAllByRole('listitem').map(({ textContent }) => textContent)).toEqual([
    '1Twisted unitUnit 2 · certain9.5 mm · good practiceChangeRemove',
    '2Out of plumbPanel · unsureChangeRemove',
  ]);
  expect(screen.queryByRole('button', { name: 'This wall is sound' })).toBeNull();
  const user = userEvent.setup();
  await user.click(screen.getByRole('button', { name: 'Change mark 2' }));
  await user.click(screen.getByRole('button', { name: 'Remove mark 1' }));
  await user.click(screen.getByRole('button', { name: 'Undo' }));
  await user.click(screen.getByRole('button', { name: 'Check once more, then hand in' }));
  expect(heard).toEqual(['change 1', 'remove 0', 'undo', 'review']);
  expect(screen.getByRole('note').textContent).toContain('A caution.');
});
