import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { LiftedBar } from '../../components/practice/lifted-bar';

test('the units lifted are kept with what their backs showed, and each can be lifted again', async () => {
  const heard: string[] = [];
  render(
    <LiftedBar
      name="Course 5, unit 3"
      record={[
        { unit: 'A5.3', name: 'Course 5, unit 3', back: 'Back covered: 97 %' },
        { unit: 'A4.3', name: 'Course 4, unit 3', back: 'Back covered: 41 %' },
      ]}
      onStep={({ along, by }) => heard.push(`${along} ${by}`)}
      onLift={(unit) => heard.push(unit)}
      onRead={undefined}
    />,
  );
  expect(screen.getByRole('status')).toHaveTextContent('Lifted: Course 5, unit 3. Back covered: 97 %');
  expect(screen.getByRole('listitem', { hidden: true })).toHaveTextContent(
    'Course 4, unit 3 Back covered: 41 %',
  );
  await userEvent.click(screen.getByRole('button', { name: '↑ Course up' }));
  await userEvent.click(screen.getByRole('button', { name: '← Unit before' }));
  await userEvent.click(screen.getByText('Lifted before (1)'));
  await userEvent.click(screen.getByRole('button', { name: 'Course 4, unit 3' }));
  expect(heard).toEqual(['wall 1', 'course -1', 'A4.3']);
  expect(screen.queryByRole('button', { name: 'Read or mark it' })).toBeNull();
});
