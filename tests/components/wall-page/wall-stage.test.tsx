import { fireEvent, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useMemo, useState } from 'react';
import { describe, expect, test, vi } from 'vitest';
import { DrawContext } from '../../../components/wall/looks/draw-context';
import { WallStage } from '../../../components/wall-page/wall-stage';
import { drawingOf } from '../../../lib/views/draw-view';
import { surveyedWall } from '../../../lib/wall/surveyed';
import { viewChoices, viewKeyFor, viewOf } from '../../../lib/wall-page/view-choices';
import { HAND_BATCHES, handWall, handWindow } from '../../lib/views/hand-wall';

const WINDOW = { ...handWindow(), batches: HAND_BATCHES };

function Stage({
  wall = WINDOW,
  onPick,
  onPaper = false,
}: {
  readonly wall?: typeof WINDOW;
  readonly onPick?: (part: string) => void;
  readonly onPaper?: boolean;
}) {
  const [key, setKey] = useState('front');
  const surveyed = useMemo(() => surveyedWall(wall), [wall]);
  return (
    <DrawContext value={drawingOf}>
      <WallStage
        surveyed={surveyed}
        label="Wall"
        views={viewChoices(wall)}
        viewKey={key}
        view={viewOf(key, 'A1.1', wall)}
        hint="What shows."
        bar={null}
        below={null}
        marks={[]}
        selected={null}
        system="mm"
        lengths={null}
        onView={setKey}
        onPick={onPick}
        onPaper={onPaper}
      />
    </DrawContext>
  );
}

const look = (name: string) => screen.getByRole('radio', { name });
const radios = (legend: string) =>
  within(screen.getByRole('group', { name: legend }))
    .getAllByRole('radio')
    .map((each) => each.closest('label')?.textContent);

describe('the looks', () => {
  test('stand in the order a competent person takes them', () => {
    render(<Stage />);
    expect(radios('Look')).toEqual([
      'From afar',
      'Up close',
      'Side light',
      'From the side',
      'From above',
      'From below',
      'Behind a unit',
      'Before cover',
      'Mixing tickets',
    ]);
    expect(look('Up close')).toBeChecked();
  });

  test('a look with several places asks where', async () => {
    render(<Stage />);
    expect(screen.queryByRole('group', { name: 'At' })).not.toBeInTheDocument();
    await userEvent.click(look('From the side'));
    expect(radios('At')).toEqual(['Whole height', 'Base', 'Over window']);
    await userEvent.click(look('Over window'));
    expect(screen.getByText('clear width 210 mm')).toBeInTheDocument();
    await userEvent.click(look('From below'));
    expect(radios('At')).toEqual(['Bottom edge', 'Over window']);
  });

  test('an adhered wall has nothing to look up at and no cover to wait for', () => {
    render(<Stage wall={handWall({ masonry: 'adhered', cavity: 0, supports: [], ties: [] })} />);
    expect(radios('Look')).not.toContain('From below');
    expect(radios('Look')).not.toContain('Before cover');
  });
});

describe('what can be set in a look, with buttons alone', () => {
  test('the sun: ten degrees at a time, as far as 80', async () => {
    const user = userEvent.setup();
    render(<Stage />);
    await user.click(look('Side light'));
    const sun = screen.getByRole('slider', { name: 'Sun' });
    expect(sun).toHaveAttribute('aria-valuetext', '70° to the left');
    await user.click(screen.getByRole('button', { name: 'Sun further left' }));
    expect(sun).toHaveAttribute('aria-valuetext', '80° to the left');
    expect(screen.getByRole('button', { name: 'Sun further left' })).toBeDisabled();
    fireEvent.change(sun, { target: { value: '0' } });
    expect(screen.getByText('straight in front')).toBeInTheDocument();
  });

  test('how far off one stands, and what the eye tells apart from there', async () => {
    const { container } = render(<Stage />);
    expect(container.querySelector('filter')).toBeNull();
    await userEvent.click(look('From afar'));
    expect(screen.getByText('From here a good eye tells apart lines 1.7 mm apart.')).toBeInTheDocument();
    expect(container.querySelector('feGaussianBlur')).toHaveAttribute('stdDeviation', '0.741');
    await userEvent.click(look('10 m'));
    expect(screen.getByText('From here a good eye tells apart lines 2.9 mm apart.')).toBeInTheDocument();
  });

  test('where the wall is cut, and it is still cut there on coming back', async () => {
    const user = userEvent.setup();
    render(<Stage />);
    await user.click(look('From the side'));
    // 620 mm long: cut at 300, the step of 25 nearest to the middle.
    expect(screen.getByText('Wall A, cut 300 mm from its left end.')).toBeInTheDocument();
    await user.click(screen.getByRole('button', { name: 'Cut further right' }));
    await user.click(look('Up close'));
    await user.click(look('From the side'));
    expect(screen.getByText('Wall A, cut 325 mm from its left end.')).toBeInTheDocument();
  });

  test('the course looked down on', async () => {
    const user = userEvent.setup();
    render(<Stage />);
    await user.click(look('From above'));
    expect(screen.getByText('Course 2 of wall A from above')).toBeInTheDocument();
    await user.click(screen.getByRole('button', { name: 'A course higher' }));
    expect(screen.getByText('Course 3 of wall A from above')).toBeInTheDocument();
  });
});

test('the place one has come to is kept in another light, and on coming back from another view', async () => {
  const user = userEvent.setup();
  const { container } = render(<Stage />);
  const seen = () => container.querySelector('svg')?.getAttribute('viewBox');
  const whole = seen();
  await user.click(screen.getByRole('button', { name: 'Nearer' }));
  const close = seen();
  expect(close).not.toBe(whole);
  await user.click(look('Side light'));
  expect(seen()).toBe(close);
  await user.click(look('Before cover'));
  expect(seen()).not.toBe(close);
  await user.click(look('Up close'));
  expect(seen()).toBe(close);
});

describe('as a list', () => {
  async function asList(onPick?: (part: string) => void) {
    const user = userEvent.setup();
    render(<Stage {...(onPick ? { onPick } : {})} />);
    await user.click(screen.getByText('Lengths and list'));
    await user.click(look('a list'));
    return user;
  }

  test('row by row from the bottom, each unit with its measures, to be picked', async () => {
    const onPick = vi.fn();
    const user = await asList(onPick);
    expect(screen.getByRole('combobox', { name: 'Row' })).toHaveDisplayValue('Course 1: 2 units');
    await user.click(screen.getByRole('button', { name: 'Row above' }));
    await user.click(
      screen.getByRole('button', { name: 'Course 2, unit 1, bat · 95 mm × 60 mm, face on the line' }),
    );
    expect(onPick.mock.calls).toEqual([['A2.1', null]]);
  });

  test('joints and supports too', async () => {
    const user = await asList(vi.fn());
    await user.click(look('Joints'));
    expect(
      screen.getByRole('button', { name: 'Bed joint under unit 1, course 1, left 10 mm, right 10 mm' }),
    ).toBeInTheDocument();
    await user.click(look('Ties and supports'));
    expect(screen.getByRole('button', { name: 'The concrete ledge, 620 mm long' })).toBeInTheDocument();
  });

  test('of every look: the same parts as its drawing', async () => {
    const user = await asList(vi.fn());
    await user.click(look('From below'));
    await user.click(look('Over window'));
    expect(screen.getByRole('combobox', { name: 'Row' })).toHaveDisplayValue('Course 3: 1 unit');
  });

  test('after hand-in it is read only', async () => {
    await asList();
    expect(screen.queryByRole('button', { name: /stretcher/ })).not.toBeInTheDocument();
    expect(screen.getByText(/^Course 1, unit 1, stretcher/)).toBeInTheDocument();
  });
});

describe('the look in which a fault shows best', () => {
  test.each([
    ['thick-joint', ['A1.1/2'], 'front'],
    ['proud-unit', ['A3.2'], 'side-light'],
    ['no-bearing-return', ['A-ledge', 'A1.2'], 'below:A'],
    ['short-lintel-bearing', ['A-lintel1', 'A-window1'], 'cut:A-lintel1'],
    ['thin-tie', ['A-tie2.1'], 'before-cover'],
    ['ring-buttered-back', ['A2.2'], 'behind'],
    ['stale-mortar', ['batch-1', 'A1', 'A2'], 'tickets'],
    ['lean-mortar', ['batch-2', 'A3', 'A4'], 'tickets'],
  ] as const)('%s: %s', (check, parts, key) => {
    const region = { panel: 'A', x: 0, y: 0, width: 620, height: 280 };
    expect(viewKeyFor({ check, parts, region }, WINDOW)).toBe(key);
    expect(viewChoices(WINDOW).map(({ value }) => value)).toContain(key);
  });
});

test('a wall read as a list is a drawing on paper, and a list again on the screen', async () => {
  const { rerender } = render(<Stage />);
  await userEvent.click(screen.getByRole('radio', { name: 'a list' }));
  expect(screen.queryByRole('grid')).not.toBeInTheDocument();
  rerender(<Stage onPaper />);
  expect(screen.getByRole('grid', { name: 'Wall' })).toBeInTheDocument();
  rerender(<Stage />);
  expect(screen.getByRole('combobox', { name: 'Row' })).toBeInTheDocument();
});
