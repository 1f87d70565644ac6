import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, expect, test } from 'vitest';
import { FirstWallHints, knowWalls, useFirstWall } from '../../../components/wall-page/first-wall-hints';

function Hints({ step }: { readonly step: 1 | 2 | 3 }) {
  return useFirstWall() ? <FirstWallHints step={step} onSkip={knowWalls} /> : <p>No hints</p>;
}

beforeEach(() => localStorage.clear());

test('come nearer, tap it, name it: in turn', () => {
  const { rerender } = render(<Hints step={1} />);
  expect(screen.getByRole('status')).toHaveTextContent('1 of 3 Come nearer');
  rerender(<Hints step={2} />);
  expect(screen.getByRole('status')).toHaveTextContent('2 of 3 Now tap what looks wrong');
  rerender(<Hints step={3} />);
  expect(screen.getByRole('status')).toHaveTextContent('3 of 3 Choose what is wrong');
});

test('skipped, they never come again', async () => {
  const { unmount } = render(<Hints step={1} />);
  await userEvent.click(screen.getByRole('button', { name: 'Skip' }));
  expect(screen.getByText('No hints')).toBeInTheDocument();
  unmount();
  render(<Hints step={1} />);
  expect(screen.getByText('No hints')).toBeInTheDocument();
});
