import { fireEvent, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { renderToString } from 'react-dom/server';
import { describe, expect, test, vi } from 'vitest';
import { DrawContext } from '../../../components/wall/looks/draw-context';
import { WallDrawing } from '../../../components/wall/wall-drawing';
import type { DrawnMark, WallDrawingProps } from '../../../components/wall/wall-drawing-props';
import { drawingOf } from '../../../lib/views/draw-view';
import { surveyedWall } from '../../../lib/wall/surveyed';
import { handTall, handWall, handWindow } from '../../lib/views/hand-wall';

const WALL = surveyedWall(handWall());

function drawing(other: Partial<WallDrawingProps> = {}) {
  return (
    <DrawContext value={drawingOf}>
      <WallDrawing
        surveyed={WALL}
        view={{ kind: 'front' }}
        marks={[]}
        selected={null}
        layer="units"
        system="mm"
        label="Wall, seen from outside"
        {...other}
      />
    </DrawContext>
  );
}

const cell = (name: string) => screen.getByRole('gridcell', { name });
const tabStops = () =>
  screen.getAllByRole('gridcell').filter((each) => each.getAttribute('tabindex') === '0');

describe('the grid over the drawing', () => {
  test('a row a course, from the bottom; every unit a cell; one tab stop', () => {
    render(drawing());
    const grid = screen.getByRole('grid', { name: 'Wall, seen from outside' });
    const rows = within(grid).getAllByRole('row');
    expect(rows.map((row) => within(row).getAllByRole('gridcell').length)).toEqual([3, 4, 3, 4]);
    expect(tabStops().map((each) => each.getAttribute('aria-label'))).toEqual([
      'Course 1, unit 1, stretcher',
    ]);
  });

  test('the layer decides what can be pointed at', () => {
    const { rerender } = render(drawing({ layer: 'joints' }));
    expect(cell('Bed joint under unit 2, course 1, left 10 mm, right 10 mm')).toBeInTheDocument();
    rerender(drawing({ layer: 'fixings', surveyed: surveyedWall(handWindow()) }));
    expect(cell('The window opening, 210 mm wide, 130 mm high')).toBeInTheDocument();
    expect(screen.queryByRole('gridcell', { name: /unit/ })).not.toBeInTheDocument();
  });

  test('what is selected says so', () => {
    render(drawing({ selected: 'A2.2' }));
    expect(cell('Course 2, unit 2, stretcher')).toHaveAttribute('aria-selected', 'true');
    expect(screen.getAllByRole('gridcell', { selected: true })).toHaveLength(1);
  });

  test('nothing aloud says right or wrong', () => {
    render(drawing({ surveyed: surveyedWall(handWindow()), layer: 'joints' }));
    const names = screen.getAllByRole('gridcell').map((each) => each.getAttribute('aria-label'));
    expect(names.filter((name) => /too|wrong|bad|fault|thin|thick/.test(name ?? ''))).toEqual([]);
  });
});

describe('by keyboard', () => {
  test('tab goes in once, arrows travel, the tab stop moves along', async () => {
    const user = userEvent.setup();
    render(drawing());
    await user.tab();
    expect(cell('Course 1, unit 1, stretcher')).toHaveFocus();
    await user.keyboard('{ArrowRight}{ArrowUp}');
    expect(cell('Course 2, unit 2, stretcher')).toHaveFocus();
    expect(tabStops()).toHaveLength(1);
    await user.keyboard('{End}{PageUp}');
    expect(cell('Course 4, unit 4, bat')).toHaveFocus();
    // The zoom buttons are for the pointer: in the grid plus, minus and 0 do the same.
    await user.tab();
    expect(document.body).toHaveFocus();
  });

  test('beside and over what stands through three courses there is no dead end', async () => {
    const user = userEvent.setup();
    render(drawing({ surveyed: surveyedWall(handTall()), selected: 'A2.1' }));
    await user.tab();
    await user.keyboard('{ArrowUp}{ArrowLeft}');
    expect(cell('Course 1, quoin at the left end, unit 1, standing through course 3')).toHaveFocus();
    // Right again keeps to the course one came along.
    await user.keyboard('{ArrowRight}{ArrowRight}');
    expect(cell('Course 2, soldier, unit 2, number 1 in the row, standing through course 4')).toHaveFocus();
    await user.keyboard('{ArrowUp}');
    expect(cell('Course 5, unit 2, stretcher')).toHaveFocus();
    expect(tabStops()).toHaveLength(1);
  });

  test('Enter and Space pick the part, with Shift its course', async () => {
    const user = userEvent.setup();
    const onPick = vi.fn();
    render(drawing({ onPick }));
    await user.tab();
    await user.keyboard('{ArrowUp}{Enter}');
    await user.keyboard('{ArrowRight} ');
    await user.keyboard('{Shift>}{Enter}{/Shift}');
    expect(onPick.mock.calls).toEqual([
      ['A2.1', null],
      ['A2.2', null],
      ['A2', null],
    ]);
  });

  test('on paper the whole wall is seen, and after it what was seen before', async () => {
    const user = userEvent.setup();
    const { container } = render(drawing());
    const seen = () => container.querySelector('svg')?.getAttribute('viewBox');
    const whole = seen();
    await user.tab();
    await user.keyboard('+');
    const near = seen();
    expect(near).not.toBe(whole);
    fireEvent(window, new Event('beforeprint'));
    expect(seen()).toBe(whole);
    fireEvent(window, new Event('afterprint'));
    expect(seen()).toBe(near);
  });

  test('plus comes nearer, minus goes back, 0 shows the whole', async () => {
    const user = userEvent.setup();
    const { container } = render(drawing());
    const seen = () => Number(container.querySelector('svg')?.getAttribute('viewBox')?.split(' ')[2]);
    const whole = seen();
    await user.tab();
    await user.keyboard('++');
    expect(seen()).toBeCloseTo(whole / 2.25, 0);
    await user.keyboard('-');
    expect(seen()).toBeCloseTo(whole / 1.5, 0);
    await user.keyboard('0');
    expect(seen()).toBe(whole);
  });
});

/** jsdom lays nothing out: the drawing is given the size of its own sheet, so that one pixel is one millimetre. */
function sized(container: HTMLElement): SVGSVGElement {
  const svg = container.querySelector('svg');
  if (svg === null) throw new Error('no drawing');
  const [x = 0, y = 0, width = 0, height = 0] = (svg.getAttribute('viewBox') ?? '').split(' ').map(Number);
  svg.getBoundingClientRect = () => new DOMRect(x, y, width, height);
  return svg;
}

describe('by pointer', () => {
  test.each([
    [100, -40, 'A1.1'],
    [318, -110, 'A2.3'],
    [205, -40, 'A1.1/2'],
    [60, -75, 'A2.1-bed'],
    [60, -54, 'A1.1'],
    [300, 20, 'A-ledge'],
  ])('a click at (%s, %s) picks %s, whatever the keyboard moves over', (clientX, clientY, part) => {
    const onPick = vi.fn();
    const { container } = render(drawing({ onPick }));
    fireEvent.click(sized(container), { clientX, clientY });
    expect(onPick.mock.calls.map(([picked]) => picked)).toEqual([part]);
  });

  test('a drag of more than 8 px is no click', () => {
    const onPick = vi.fn();
    const { container } = render(drawing({ onPick }));
    const svg = sized(container);
    fireEvent.pointerDown(svg, { pointerId: 1, clientX: 100, clientY: -40 });
    fireEvent.pointerMove(svg, { pointerId: 1, clientX: 120, clientY: -40 });
    fireEvent.pointerUp(svg, { pointerId: 1, clientX: 120, clientY: -40 });
    fireEvent.click(svg, { clientX: 120, clientY: -40 });
    expect(onPick).not.toHaveBeenCalled();
  });
});

test('what is seen is moved by buttons, while not all of it is seen', async () => {
  const user = userEvent.setup();
  const { container } = render(drawing());
  const seen = () => (container.querySelector('svg')?.getAttribute('viewBox') ?? '').split(' ').map(Number);
  expect(screen.queryByRole('button', { name: 'Look further left' })).not.toBeInTheDocument();
  await user.click(screen.getByRole('button', { name: 'Nearer' }));
  await user.click(screen.getByRole('button', { name: 'Nearer' }));
  const [x = 0, y = 0, width = 0, height = 0] = seen();
  await user.click(screen.getByRole('button', { name: 'Look further right' }));
  await user.click(screen.getByRole('button', { name: 'Look further up' }));
  // By two fifths of what is seen, never past the edge: from the middle, 1 ÷ 2.25 seen, there is room for 0.625 of it.
  expect(seen()[0]).toBeCloseTo(x + 0.4 * width, 0);
  expect(seen()[1]).toBeCloseTo(y - 0.4 * height, 0);
  await user.click(screen.getByRole('button', { name: 'Look further left' }));
  await user.click(screen.getByRole('button', { name: 'Look further down' }));
  expect(seen().slice(0, 2)).toEqual([x, y]);
});

test('a first tap on a small wall comes closer, says so and picks nothing', () => {
  const onPick = vi.fn();
  const { container } = render(drawing({ onPick }));
  const svg = sized(container);
  // A fifth of full size: courses of 70 mm are 14 px high.
  const { left, top, width, height } = svg.getBoundingClientRect();
  svg.getBoundingClientRect = () => new DOMRect(left / 5, top / 5, width / 5, height / 5);
  expect(screen.getByRole('status')).toHaveTextContent(/^$/);
  fireEvent.pointerDown(svg, { pointerId: 1, pointerType: 'touch', clientX: 20, clientY: -8 });
  fireEvent.pointerUp(svg, { pointerId: 1, pointerType: 'touch', clientX: 20, clientY: -8 });
  fireEvent.click(svg, { clientX: 20, clientY: -8 });
  expect(screen.getByRole('status')).toHaveTextContent('Closer. Tap again to pick.');
  expect(onPick).not.toHaveBeenCalled();
});

test('two clicks at once come nearer; only the first of them picks', () => {
  const onPick = vi.fn();
  const { container } = render(drawing({ onPick }));
  const svg = sized(container);
  const before = svg.getAttribute('viewBox')?.split(' ').map(Number);
  fireEvent.click(svg, { clientX: 100, clientY: -40 });
  fireEvent.click(svg, { clientX: 102, clientY: -41 });
  const after = svg.getAttribute('viewBox')?.split(' ').map(Number);
  expect(onPick).toHaveBeenCalledTimes(1);
  expect(after?.[2]).toBeCloseTo((before?.[2] ?? 0) / 2, 0);
});

test('a click beside the wall says that there is nothing to mark', () => {
  const onPick = vi.fn();
  const { container } = render(drawing({ onPick }));
  fireEvent.click(sized(container), { clientX: -5000, clientY: -5000 });
  expect(screen.getByRole('status')).toHaveTextContent(
    'There is nothing to mark there. Tap a brick or a joint.',
  );
  expect(onPick).not.toHaveBeenCalled();
});

test('where taps mean units alone, a click on a joint means the unit beside it', () => {
  const onPick = vi.fn();
  const { container } = render(drawing({ onPick, unitsAlone: true, lifted: ['A2.2'] }));
  const svg = sized(container);
  // In the middle of the bed under course 1, and of nothing else.
  fireEvent.click(svg, { clientX: 100, clientY: -5 });
  expect(onPick).toHaveBeenCalledWith('A1.1', expect.anything());
  expect(container.querySelectorAll('[data-lifted]')).toHaveLength(1);
});

describe('marks', () => {
  const mark: DrawnMark = {
    number: 3,
    part: 'A1.1',
    panel: 'A',
    x: 0,
    y: 10,
    width: 200,
    height: 60,
    state: 'missed',
  };

  test('each says its number and what became of it', () => {
    render(drawing({ marks: [mark, { ...mark, number: 1, state: 'found', x: 210 }] }));
    expect(screen.getByRole('img', { name: 'Missed 3' })).toBeInTheDocument();
    expect(screen.getByRole('img', { name: 'Found 1' })).toBeInTheDocument();
  });

  test('where its face is not shown it is drawn on its part, and nowhere without that', () => {
    const behind = (unit: string) => (
      <DrawContext value={drawingOf}>
        {drawing({ marks: [mark], view: { kind: 'behind', unit } })}
      </DrawContext>
    );
    const { rerender } = render(behind('A1.1'));
    expect(screen.getByRole('img', { name: 'Missed 3' })).toBeInTheDocument();
    rerender(behind('A1.2'));
    expect(screen.queryByRole('img')).not.toBeInTheDocument();
  });
});

test('the server draws the whole wall: one path a unit', () => {
  const html = renderToString(drawing());
  expect(html.match(/<path[^>]*fill="url\(#[^)]*unit\d[ab]\)"/g)).toHaveLength(14);
  expect(html).toContain('620 mm');
});

test('with the picking over the whole wall is seen again; another light does not do that', async () => {
  const { rerender } = render(drawing({ onPick: vi.fn() }));
  await userEvent.click(screen.getByRole('button', { name: 'Nearer' }));
  rerender(drawing({ onPick: vi.fn(), viewing: { distance: 'near', sun: -70 } }));
  expect(screen.getByRole('button', { name: 'Whole wall' })).toBeEnabled();
  rerender(drawing());
  expect(screen.getByRole('button', { name: 'Whole wall' })).toBeDisabled();
  await userEvent.click(screen.getByRole('button', { name: 'Nearer' }));
  rerender(drawing({ viewing: { distance: 'near', sun: -70 } }));
  expect(screen.getByRole('button', { name: 'Whole wall' })).toBeEnabled();
});
