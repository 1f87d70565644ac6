import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test, vi } from 'vitest';
import { WallList } from '../../../components/wall/wall-list';
import type { Distance } from '../../../lib/views/viewing-conditions';
import { surveyedWall } from '../../../lib/wall/surveyed';
import { handTall, handWall } from '../../lib/views/hand-wall';

function list(
  selected: string | null,
  marked: readonly string[] = [],
  distance: Distance = 'near',
  wall = handWall(),
) {
  const marks = marked.map((part, index) => ({
    number: index + 1,
    part,
    panel: 'A',
    x: 0,
    y: 0,
    width: 1,
    height: 1,
    state: 'mark' as const,
  }));
  return (
    <WallList
      surveyed={surveyedWall(wall)}
      view={{ kind: 'front' }}
      marks={marks}
      selected={selected}
      layer="units"
      system="mm"
      label="Wall"
      distance={distance}
      onPick={vi.fn()}
    />
  );
}

const row = () => screen.getByRole('combobox', { name: 'Row' });

test('opens at the bottom, goes up and down, and stops at both ends', async () => {
  const user = userEvent.setup();
  render(list(null));
  expect(row()).toHaveDisplayValue('Course 1: 3 units');
  expect(screen.getByRole('button', { name: 'Row below' })).toBeDisabled();
  await user.selectOptions(row(), 'Course 4: 4 units');
  expect(screen.getByRole('button', { name: 'Row above' })).toBeDisabled();
  await user.click(screen.getByRole('button', { name: 'Row below' }));
  expect(row()).toHaveDisplayValue('Course 3: 3 units');
});

test('what is selected is in sight, and pressed; the reader may go on from there', async () => {
  const user = userEvent.setup();
  const { rerender } = render(list('A2.2'));
  expect(screen.getByRole('button', { pressed: true })).toHaveTextContent('Course 2, unit 2');
  await user.click(screen.getByRole('button', { name: 'Row above' }));
  expect(row()).toHaveDisplayValue('Course 3: 3 units');
  rerender(list('A4.1'));
  expect(row()).toHaveDisplayValue('Course 4: 4 units');
});

test('a marked part says its marks', () => {
  render(list(null, ['A1.2', 'A1.2']));
  expect(screen.getByRole('button', { name: /^Course 1, unit 2, .*mark 1, 2$/ })).toBeInTheDocument();
});

test('close by a unit is measured; from six metres it is not', () => {
  const { unmount } = render(list(null));
  expect(
    screen.getByRole('button', { name: /^Course 1, unit 2, stretcher · 200 mm × 60 mm/ }),
  ).toBeInTheDocument();
  unmount();
  render(list(null, [], 'six metres'));
  expect(screen.getByRole('button', { name: 'Course 1, unit 2, stretcher' })).toBeInTheDocument();
});

test('what stands through three courses is listed in its lowest, and says so', async () => {
  const user = userEvent.setup();
  render(list('A2.3', [], 'near', handTall()));
  expect(row()).toHaveDisplayValue('Course 2: 6 units');
  expect(screen.getByRole('button', { pressed: true })).toHaveTextContent(
    /^Course 2, soldier, unit 3, number 2 in the row, standing through course 4 · 60 mm × 200 mm/,
  );
  await user.click(screen.getByRole('button', { name: 'Row above' }));
  expect(row()).toHaveDisplayValue('Course 3: 2 units');
});

test('a row is one stop of the keyboard; arrows, Home and End move along it', async () => {
  const user = userEvent.setup();
  render(list('A1.2'));
  const part = (position: number) =>
    screen.getByRole('button', { name: new RegExp(`^Course 1, unit ${position},`) });
  const stops = () => [1, 2, 3].filter((position) => part(position).tabIndex === 0);
  expect(stops()).toEqual([2]);
  part(2).focus();
  await user.keyboard('{ArrowRight}{ArrowRight}');
  expect(part(3)).toHaveFocus();
  expect(stops()).toEqual([3]);
  await user.keyboard('{Home}');
  expect(part(1)).toHaveFocus();
  await user.keyboard('{ArrowUp}{End}');
  expect(part(3)).toHaveFocus();
});
