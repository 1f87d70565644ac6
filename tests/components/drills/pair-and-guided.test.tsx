import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import { GuidedFind } from '../../../components/drills/guided/guided-find';
import { GuidedName } from '../../../components/drills/guided/guided-name';
import { NameFault } from '../../../components/drills/name-fault';
import { PairResult } from '../../../components/drills/pair/pair-result';
import { FAULTS, UNIT } from '../wall-page/samples';
import { PROUD } from './samples';

describe('a fault is named at the part picked', () => {
  const named = () => {
    const heard: string[] = [];
    render(
      <NameFault picked={UNIT} faults={FAULTS} onMark={(part, fault) => heard.push(`${fault} ${part}`)} />,
    );
    return heard;
  };

  test('on the part itself where it fits', async () => {
    const heard = named();
    await userEvent.selectOptions(screen.getByLabelText('What is wrong there?'), 'Twisted unit');
    await userEvent.click(screen.getByRole('button', { name: 'Mark it' }));
    expect(heard).toEqual(['twisted-unit A3.2']);
  });

  test('on one of the joints around it, which the reader chooses', async () => {
    const heard = named();
    await userEvent.selectOptions(screen.getByLabelText('What is wrong there?'), 'Joint too thick');
    await userEvent.selectOptions(
      screen.getByLabelText('Which one?'),
      'Head joint between units 1 and 2, course 3',
    );
    await userEvent.click(screen.getByRole('button', { name: 'Mark it' }));
    expect(heard).toEqual(['thick-joint A3.1/2']);
  });

  test('and not before a fault is chosen: it says so', async () => {
    const heard = named();
    await userEvent.click(screen.getByRole('button', { name: 'Mark it' }));
    expect(screen.getByRole('alert')).toHaveTextContent('Choose a fault from the list first.');
    expect(heard).toEqual([]);
  });
});

describe('what differs between the two walls', () => {
  const told = (rightSide: boolean, outcome: 'found' | 'missed') =>
    render(
      <PairResult
        rows={{
          rightSide,
          findings: [{ ...PROUD, outcome, onSound: 0.5 }],
          falseMarks: [],
          met: { faults: [], falseCalls: [] },
        }}
        spoiledIs={2}
        system="mm"
        onShow={() => undefined}
      />,
    );

  test('is told by its measure on both', () => {
    told(true, 'found');
    expect(screen.getByRole('heading', { level: 2 })).toHaveTextContent('Right: wall 2 is the spoiled one');
    expect(screen.getByText('You found every difference.')).toBeVisible();
    expect(screen.getByText(/^Measured/)).toHaveTextContent(
      'Measured 9 mm. Limit: at most 3 mm. ✕ Beyond by 6 mm.',
    );
    expect(screen.getByText(/At the same place, wall 1 has/)).toHaveTextContent('0.5 mm');
  });

  test('and that marks on the sound wall do not count', () => {
    told(false, 'missed');
    expect(screen.getByRole('heading', { level: 2 })).toHaveTextContent('No: wall 2 is the spoiled one');
    expect(screen.queryByText('Missed')).toBeNull();
  });
});

test('every ring gets a name before they are checked', async () => {
  const heard: unknown[] = [];
  const names = [
    { id: 'proud-unit', name: 'Unit proud' },
    { id: 'twisted-unit', name: 'Twisted unit' },
  ];
  render(
    <GuidedName
      rows={[
        { number: 1, place: 'Course 3, unit 2', names },
        { number: 2, place: 'Course 9, unit 4', names },
      ]}
      onShow={(number) => heard.push(number)}
      onCheck={(named) => heard.push(named)}
    />,
  );
  const [first, second] = screen.getAllByRole('group');
  await userEvent.click(screen.getAllByRole('radio', { name: 'Unit proud' })[0] as HTMLElement);
  await userEvent.click(screen.getByRole('button', { name: 'Check' }));
  expect(screen.getByRole('alert')).toHaveTextContent('Choose a name for each ring first.');
  expect(first).toHaveAccessibleName('What is wrong at 1?');
  expect(second).toHaveAccessibleName('What is wrong at 2?');
  await userEvent.click(screen.getAllByRole('radio', { name: 'Twisted unit' })[1] as HTMLElement);
  await userEvent.click(screen.getByRole('button', { name: 'Check' }));
  await userEvent.click(screen.getByRole('button', { name: 'Show it on the wall: 2' }));
  expect(heard).toEqual([['proud-unit', 'twisted-unit'], 2]);
});

test('what is looked for can be changed, and what was picked for each is said', async () => {
  const heard: unknown[] = [];
  const row = { name: 'Unit proud', looksLike: 'It stands out.', whereToLook: 'Front.' };
  render(
    <GuidedFind
      rows={[
        { ...row, number: 1, picked: 'Course 3, unit 2' },
        { ...row, number: 2, picked: null },
      ]}
      active={1}
      onActive={(number) => heard.push(number)}
      onCheck={() => heard.push('check')}
    />,
  );
  expect(screen.getAllByRole('status').map(({ textContent }) => textContent)).toEqual([
    'Picked: Course 3, unit 2.',
    'Nothing picked yet.',
  ]);
  await userEvent.click(screen.getByRole('button', { name: 'Look for this one' }));
  await userEvent.click(screen.getByRole('button', { name: 'Check' }));
  expect(heard).toEqual([2, 'check']);
});
