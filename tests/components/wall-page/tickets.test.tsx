import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { describe, expect, test, vi } from 'vitest';
import { DrawContext } from '../../../components/wall/looks/draw-context';
import type { DrawnMark } from '../../../components/wall/wall-drawing-props';
import { TicketLines } from '../../../components/wall-page/ticket-lines';
import { WallStage } from '../../../components/wall-page/wall-stage';
import { drawingOf } from '../../../lib/views/draw-view';
import { surveyedWall } from '../../../lib/wall/surveyed';
import { viewChoices, viewOf } from '../../../lib/wall-page/view-choices';
import { HAND_BATCHES, handWall } from '../../lib/views/hand-wall';

const WALL = handWall({ batches: HAND_BATCHES });
const SURVEYED = surveyedWall(WALL);
const SECOND = /^Mixing 2, courses 3 to 4, .* 300 minutes from mixing to the last unit laid$/;

function Stage(props: { readonly onPick?: (part: string) => void; readonly marks?: readonly DrawnMark[] }) {
  const [key, setKey] = useState('front');
  const [picked, setPicked] = useState<string | null>(null);
  const { onPick, marks = [] } = props;
  return (
    <DrawContext value={drawingOf}>
      <WallStage
        surveyed={SURVEYED}
        label="Wall"
        views={viewChoices(WALL)}
        viewKey={key}
        view={viewOf(key, 'A1.1', WALL)}
        hint="What shows."
        bar={null}
        below={null}
        marks={marks}
        selected={picked}
        system="mm"
        lengths={null}
        onView={setKey}
        onPick={
          onPick &&
          ((part) => {
            setPicked(part);
            onPick(part);
          })
        }
      />
    </DrawContext>
  );
}

async function atTheTickets(props: Parameters<typeof Stage>[0] = {}) {
  const user = userEvent.setup();
  render(<Stage {...props} />);
  const looks = within(screen.getByRole('group', { name: 'Look' })).getAllByRole('radio');
  // Last of all: a competent person looks at the wall first.
  await user.click(looks.at(-1) as HTMLElement);
  expect(screen.getByRole('radio', { name: 'Mixing tickets' })).toBeChecked();
  return user;
}

describe('the mixing tickets, as a look of the wall', () => {
  test('are walked with the arrow keys and picked', async () => {
    const onPick = vi.fn();
    const user = await atTheTickets({ onPick });
    const [first] = within(screen.getByRole('grid', { name: 'Wall' })).getAllByRole('gridcell');
    first?.focus();
    await user.keyboard('{ArrowUp}{Enter}');
    expect(onPick.mock.calls).toEqual([['batch-2']]);
    expect(screen.getByRole('gridcell', { name: SECOND })).toHaveAttribute('aria-selected', 'true');
  });

  test('show a mark on a mixing, and not one on a unit', async () => {
    const mark = { panel: 'A', x: 0, y: 0, width: 200, height: 60, state: 'found' } as const;
    await atTheTickets({
      marks: [
        { ...mark, number: 1, part: 'batch-2' },
        { ...mark, number: 2, part: 'A1.1' },
      ],
    });
    expect(screen.getByRole('img', { name: 'Found 1' })).toBeInTheDocument();
    expect(screen.queryByRole('img', { name: 'Found 2' })).not.toBeInTheDocument();
  });

  test('as a list are all in one row, each with all that is on it', async () => {
    const onPick = vi.fn();
    const user = await atTheTickets({ onPick });
    await user.click(screen.getByRole('radio', { name: 'a list' }));
    expect(screen.getByRole('combobox', { name: 'Row' })).toHaveDisplayValue('2 mixings');
    await user.click(screen.getByRole('button', { name: SECOND }));
    expect(onPick.mock.calls).toEqual([['batch-2']]);
  });

  test('offer nothing else to go by', async () => {
    const user = await atTheTickets({ onPick: vi.fn() });
    expect(screen.queryByRole('group', { name: 'Arrow keys and list go by' })).not.toBeInTheDocument();
    await user.click(screen.getByRole('radio', { name: 'Up close' }));
    expect(screen.getByRole('group', { name: 'Arrow keys and list go by' })).toBeInTheDocument();
  });
});

test('on paper there is a line a mixing', () => {
  render(<TicketLines batches={HAND_BATCHES} />);
  expect(screen.getAllByRole('listitem').map(({ textContent }) => textContent)).toEqual([
    'Mixing 1, courses 1 to 2, 1 cement, 0.5 lime, 4 sand by volume, sand damp and loose, air 25 °C or 77 °F, 72 minutes from mixing to the last unit laid',
    expect.stringMatching(SECOND),
  ]);
});
