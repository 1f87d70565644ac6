import { render, screen, within } from '@testing-library/react';
import { expect, test } from 'vitest';
import { GivenScores } from '../../../app/my-work/given-scores';

const HANDED_IN = { kind: 'handed in', score: 1 / 3, reason: 'handed in' } as const;

test('one marking: how near it is, and no list', () => {
  render(<GivenScores score={1 / 3} walls={3} marks={[HANDED_IN]} />);
  // By hand: p = (1 + 1) / (3 + 2) = 0.4, and √(0.4 · 0.6 / 2) = 0.346.
  expect(screen.getByText('A score from so few walls is not exact: give or take 35.').tagName).toBe('P');
  expect(screen.queryByRole('list')).toBeNull();
});

test('a mark set by hand stands beside the one it goes before, with its reason', () => {
  render(
    <GivenScores
      score={0.55}
      walls={3}
      marks={[
        HANDED_IN,
        { kind: 'marked again', score: 0.4, reason: 'The limit was put right' },
        { kind: 'set by hand', score: 0.55, reason: 'Saw the joint, pressed wrong' },
      ]}
    />,
  );
  const list = screen.getByRole('list', { name: 'The marks this work was given. The last one counts.' });
  expect(
    within(list)
      .getAllByRole('listitem')
      .map(({ textContent }) => textContent),
  ).toEqual([
    '33 of 100, from the walls, when you handed in',
    '40 of 100, from the walls, marked again: The limit was put right',
    '55 of 100, set by your instructor: Saw the joint, pressed wrong',
  ]);
  expect(screen.queryByText(/give or take/)).toBeNull();
});
