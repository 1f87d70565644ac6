import { runInThisContext } from 'node:vm';
import { fireEvent, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeAll, expect, test, vi } from 'vitest';
import { FRAME_SCRIPT } from '../../../app/frame/frame-script';
import { TargetsChoice, ThemeChoice } from '../../../app/frame/theme-choice';
import { WallDrawing } from '../../../components/wall/wall-drawing';
import { surveyedWall } from '../../../lib/wall/surveyed';
import { handWall } from '../../lib/views/hand-wall';

beforeAll(() => runInThisContext(FRAME_SCRIPT));
afterEach(() => {
  delete document.documentElement.dataset.targets;
  delete document.documentElement.dataset.theme;
  localStorage.clear();
});

test('large buttons are chosen, kept on the device, and given up again', async () => {
  const user = userEvent.setup();
  render(<TargetsChoice />);
  const choice = screen.getByRole('checkbox', { name: 'Large buttons, for gloves' });
  await user.click(choice);
  expect(choice).toBeChecked();
  expect(document.documentElement).toHaveAttribute('data-targets', 'gloves');
  expect(localStorage.getItem('targets')).toBe('gloves');
  await user.click(choice);
  expect(document.documentElement).not.toHaveAttribute('data-targets');
  expect(localStorage.getItem('targets')).toBeNull();
});

test('colours are chosen, kept on the device, and left to it again', async () => {
  const user = userEvent.setup();
  render(<ThemeChoice />);
  const choice = screen.getByRole('combobox', { name: 'Colours' });
  await user.selectOptions(choice, 'Dark');
  expect(document.documentElement).toHaveAttribute('data-theme', 'dark');
  expect(localStorage.getItem('theme')).toBe('dark');
  await user.selectOptions(choice, 'Like my device');
  expect(document.documentElement).not.toHaveAttribute('data-theme');
  expect(localStorage.getItem('theme')).toBeNull();
});

test.each([
  ['a bare finger', undefined, ['A1.1']],
  ['a glove', 'gloves', []],
] as const)('a course 49 px high: %s', (_, targets, picked) => {
  if (targets) document.documentElement.dataset.targets = targets;
  const onPick = vi.fn();
  const { container } = render(
    <WallDrawing
      surveyed={surveyedWall(handWall())}
      view={{ kind: 'front' }}
      marks={[]}
      selected={null}
      layer="units"
      system="mm"
      label="Wall"
      onPick={onPick}
    />,
  );
  const svg = container.querySelector('svg');
  if (svg === null) throw new Error('no drawing');
  // Seven tenths of full size: courses of 70 mm are 49 px high.
  const [x = 0, y = 0, width = 0, height = 0] = (svg.getAttribute('viewBox') ?? '').split(' ').map(Number);
  svg.getBoundingClientRect = () => new DOMRect(x * 0.7, y * 0.7, width * 0.7, height * 0.7);
  fireEvent.pointerDown(svg, { pointerId: 1, pointerType: 'touch', clientX: 70, clientY: -28 });
  fireEvent.pointerUp(svg, { pointerId: 1, pointerType: 'touch', clientX: 70, clientY: -28 });
  fireEvent.click(svg, { clientX: 70, clientY: -28 });
  expect(onPick.mock.calls.map(([part]) => part)).toEqual(picked);
});
