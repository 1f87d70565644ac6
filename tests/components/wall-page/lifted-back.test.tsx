import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { LiftedBack, LiftedRecord } from '../../../components/wall-page/lifted-back';

function show(isOpen: boolean, left: number | null): string[] {
  const heard: string[] = [];
  render(
    <LiftedBack
      name="Course 5, unit 3"
      isOpen={isOpen}
      lifting={left === null ? null : { left, most: 12 }}
      plan="Sound the wall first."
      onRead={left === null ? undefined : () => heard.push('read')}
    >
      <p>The back</p>
    </LiftedBack>,
  );
  return heard;
}

test('before anything is lifted it says how to, and how to choose', () => {
  show(false, 12);
  expect(screen.getByRole('status')).toHaveTextContent(
    'Tap a unit on the wall to lift it. You may lift 12 units.',
  );
  expect(screen.getByText('Sound the wall first.')).toBeInTheDocument();
  expect(screen.queryByText('The back')).toBeNull();
});

test('a lifted unit shows its back, can be marked, and the number left is said', async () => {
  const heard = show(true, 6);
  expect(screen.getByRole('status')).toHaveTextContent(
    'Lifted: Course 5, unit 3. You may lift 6 more of 12.',
  );
  expect(screen.getByText('The back')).toBeInTheDocument();
  await userEvent.click(screen.getByRole('button', { name: 'Mark this unit' }));
  expect(heard).toEqual(['read']);
});

test('with none left a unit stays where it is', () => {
  show(false, 0);
  expect(screen.getByRole('status')).toHaveTextContent(
    'Course 5, unit 3 stays where it is. You have lifted all 12 that you may.',
  );
});

test('after hand-in nothing is counted or marked any more', () => {
  show(true, null);
  expect(screen.getByRole('status')).toHaveTextContent(/^Lifted: Course 5, unit 3\.$/);
  expect(screen.queryByRole('button')).toBeNull();
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
