import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { MixingTickets } from '../../components/practice/mixing-tickets';

/** Invented figures. */
const BATCH = {
  id: 'batch-1',
  fromCourse: 1,
  toCourse: 9,
  portland: 1,
  lime: 0.5,
  sand: 4,
  air: 25,
  minutes: 72,
};

test('a mixing is shown with its volumes, the air in both scales and its minutes, and can be picked', async () => {
  const heard: string[] = [];
  render(
    <MixingTickets
      batches={[BATCH]}
      open
      picked={null}
      onToggle={() => undefined}
      onPick={(batch) => heard.push(batch)}
    />,
  );
  expect(screen.getAllByRole('cell').map(({ textContent }) => textContent)).toEqual([
    '1–9',
    '1 : 0.5 : 4',
    '25 °C77 °F',
    '72 min',
  ]);
  await userEvent.click(screen.getByRole('button', { name: 'Pick 1' }));
  expect(heard).toEqual(['batch-1']);
});

test('with nothing to pick, as on a printed sheet, the keyboard still gets to the end of a wide table', async () => {
  render(<MixingTickets batches={[BATCH]} open picked={null} onToggle={() => undefined} onPick={null} />);
  await userEvent.tab();
  await userEvent.tab();
  expect(screen.getByRole('group', { name: 'Mixing tickets' })).toHaveFocus();
});
