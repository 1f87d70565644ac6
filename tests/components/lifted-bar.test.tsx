import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { LiftedBar, LiftedRecord } from '../../components/practice/lifted-bar';

test('the unit lifted is told with what its back shows, and others can be reached along and across', async () => {
  const heard: string[] = [];
  render(
    <LiftedBar
      name="Course 5, unit 3"
      back="Back covered: 97 %"
      onStep={({ along, by }) => heard.push(`${along} ${by}`)}
      onRead={undefined}
    />,
  );
  expect(screen.getByRole('status')).toHaveTextContent('Lifted: Course 5, unit 3. Back covered: 97 %');
  await userEvent.click(screen.getByRole('button', { name: '↑ Course up' }));
  await userEvent.click(screen.getByRole('button', { name: '← Unit before' }));
  expect(heard).toEqual(['wall 1', 'course -1']);
  expect(screen.queryByRole('button', { name: 'Read or mark it' })).toBeNull();
});

test('the units lifted before are kept with what their backs showed, and each can be lifted again', async () => {
  const heard: string[] = [];
  render(
    <LiftedRecord
      record={[
        { unit: 'A5.3', name: 'Course 5, unit 3', back: 'Back covered: 97 %' },
        { unit: 'A4.3', name: 'Course 4, unit 3', back: 'Back covered: 41 %' },
      ]}
      onLift={(unit) => heard.push(unit)}
    />,
  );
  expect(screen.getAllByRole('listitem').map(({ textContent }) => textContent)).toEqual([
    'Course 4, unit 3 Back covered: 41 %',
  ]);
  await userEvent.click(screen.getByRole('button', { name: 'Course 4, unit 3' }));
  expect(heard).toEqual(['A4.3']);
});
