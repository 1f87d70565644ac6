import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { Bench } from '../../components/practice/bench';
import { MarkForm } from '../../components/practice/mark-form';
import type { NotedReading } from '../../components/practice/notebook';
import { PartCard } from '../../components/practice/part-card';
import type { Mark } from '../../components/practice/practice-state';
import type { LengthSystem } from '../../lib/units';
import { FAULTS, findByName, UNIT } from './practice-samples';

function showForm(
  onMark: (mark: Mark) => string | null,
  before?: Mark,
  { system = 'mm', notebook = [] }: { system?: LengthSystem; notebook?: readonly NotedReading[] } = {},
) {
  const shared = { picked: UNIT, faults: FAULTS, find: findByName, rules: 'Canada', system, notebook };
  const view = render(<MarkForm {...shared} attached={null} before={before} onMark={onMark} />);
  const attach = (reading: NotedReading) =>
    view.rerender(<MarkForm {...shared} attached={{ reading }} before={before} onMark={onMark} />);
  return Object.assign(userEvent.setup(), { attach });
}

const TWIST: NotedReading = {
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
    'No fault has that word. Try another, or clear the box.',
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
  expect(screen.getByText('9,5 mm · good practice · put right now').tagName).toBe('SPAN');
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
      said: '9.5 mm · good practice',
    },
    {
      mark: { part: 'A', fault: 'out-of-plumb', sure: 1 } as const,
      faultName: 'Out of plumb',
      partName: 'Panel',
      said: '',
    },
  ];
  render(
    <Bench
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
    </Bench>,
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
  await user.click(screen.getByRole('button', { name: 'Look once more, then hand in' }));
  expect(heard).toEqual(['change 1', 'remove 0', 'undo', 'review']);
  expect(screen.getByRole('note').textContent).toContain('A caution.');
});
