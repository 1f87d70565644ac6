import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { LiftedBar, LiftedRecord } from '../../../components/wall-page/lifted-bar';

function show(isOpen: boolean, left: number): string[] {
  const heard: string[] = [];
  render(
    <LiftedBar
      name="Course 5, unit 3"
      isOpen={isOpen}
      left={left}
      most={12}
      onLift={() => heard.push('lift')}
      onStep={({ along, by }) => heard.push(`${along} ${by}`)}
      onRead={() => heard.push('read')}
    />,
  );
  return heard;
}

test('one press lifts the unit pointed at, and the number left is said', async () => {
  const heard = show(false, 7);
  expect(screen.getByRole('status')).toHaveTextContent(
    'Not lifted: Course 5, unit 3. You may lift 7 more of 12.',
  );
  await userEvent.click(screen.getByRole('button', { name: 'Lift it' }));
  expect(heard).toEqual(['lift']);
});

test('a lifted unit can be read or marked, and others reached along and across', async () => {
  const heard = show(true, 6);
  expect(screen.getByRole('status')).toHaveTextContent('Lifted: Course 5, unit 3.');
  expect(screen.queryByRole('button', { name: 'Lift it' })).toBeNull();
  await userEvent.click(screen.getByRole('button', { name: 'Read or mark it' }));
  await userEvent.click(screen.getByRole('button', { name: '↑ Course up' }));
  await userEvent.click(screen.getByRole('button', { name: '← Unit before' }));
  expect(heard).toEqual(['read', 'wall 1', 'course -1']);
});

test('with none left no unit can be lifted', () => {
  show(false, 0);
  expect(screen.getByRole('status')).toHaveTextContent('You have lifted all 12 that you may.');
  expect(screen.queryByRole('button', { name: 'Lift it' })).toBeNull();
});

test('the units lifted are kept, and each can be looked at again', async () => {
  const heard: string[] = [];
  render(
    <LiftedRecord
      record={[
        { unit: 'A5.3', name: 'Course 5, unit 3' },
        { unit: 'A4.3', name: 'Course 4, unit 3' },
      ]}
      onLook={(unit) => heard.push(unit)}
    />,
  );
  await userEvent.click(screen.getByText('Lifted so far (2)'));
  await userEvent.click(screen.getByRole('button', { name: 'Course 4, unit 3' }));
  expect(heard).toEqual(['A4.3']);
});
