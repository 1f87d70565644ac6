import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import { KeptRounds } from '../../../components/drills/quick/kept-rounds';
import { QuickBar } from '../../../components/drills/quick/quick-bar';
import { QuickFigures } from '../../../components/drills/quick/quick-figures';
import { QuickStart } from '../../../components/drills/quick/quick-start';
import { detectionFiguresOf } from '../../../lib/drills/quick/detection-figures';
import { QUICK_START, type QuickState } from '../../../lib/drills/quick/quick-round';

const LOOKING: QuickState = { ...QUICK_START, phase: 'looking', left: 12_400 };

function many(count: number, faulty: boolean, saidFaulty: boolean) {
  return Array.from({ length: count }, () => ({ faulty, saidFaulty }));
}

test('the time is chosen before the start, and there is a way without a clock', async () => {
  const heard: unknown[] = [];
  render(
    <QuickStart
      time={30}
      begun={0}
      onTime={(time) => heard.push(time)}
      onStart={() => heard.push('start')}
    />,
  );
  expect(screen.getByRole('radio', { name: '30 seconds' })).toBeChecked();
  await userEvent.click(screen.getByRole('radio', { name: 'No clock' }));
  await userEvent.click(screen.getByRole('radio', { name: '10 seconds' }));
  await userEvent.click(screen.getByRole('button', { name: 'Show the first wall' }));
  expect(heard).toEqual([null, 10, 'start']);
});

describe('under the wall', () => {
  const bar = (
    state: QuickState,
    before: { readonly faulty: boolean; readonly right: boolean } | null = null,
  ) => {
    const heard: unknown[] = [];
    render(
      <QuickBar
        state={state}
        before={before}
        onAnswer={(faulty) => heard.push(faulty)}
        onPause={(paused) => heard.push(`pause ${paused}`)}
      />,
    );
    return heard;
  };

  test('stands whether the answer to the wall before was right', () => {
    bar({ ...LOOKING, answers: [true] }, { faulty: false, right: false });
    expect(screen.getByRole('status')).toHaveTextContent('Wall 1: ✕ wrong, it was sound.');
  });

  test('the first wall has none before it', () => {
    bar(LOOKING);
    expect(screen.queryByRole('status')).toBeNull();
  });

  test('stand the place in the round, the time left and both answers', async () => {
    const heard = bar({ ...LOOKING, answers: [true, false] });
    expect(screen.getByText('Wall 3 of 10')).toBeVisible();
    expect(screen.getByRole('timer')).toHaveTextContent('13 s');
    await userEvent.click(screen.getByRole('button', { name: 'Something is wrong' }));
    await userEvent.click(screen.getByRole('button', { name: 'Sound' }));
    await userEvent.click(screen.getByRole('button', { name: 'Pause' }));
    expect(heard).toEqual([true, false, 'pause true']);
  });

  test('no answer is taken while the wall is covered by a pause, only once it goes on', () => {
    bar({ ...LOOKING, paused: true });
    expect(screen.getByRole('button', { name: 'Sound' })).toBeDisabled();
    expect(screen.getByRole('button', { name: 'Go on' })).toBeEnabled();
  });

  test('nothing speaks of time where there is no clock', () => {
    bar({ ...LOOKING, time: null, left: null });
    expect(screen.queryByRole('timer')).toBeNull();
    expect(screen.queryByRole('button', { name: 'Pause' })).toBeNull();
  });
});

describe('all rounds together', () => {
  test('are plain counts with their limits while there are few', () => {
    const few = [...many(3, true, true), ...many(2, true, false), ...many(5, false, false)];
    render(<QuickFigures of="Up close, easy" figures={detectionFiguresOf(few)} rounds={1} />);
    // Wilson limits of 3 in 5: .231 and .882 (E. B. Wilson's formula by hand).
    expect(screen.getByText(/Of 5 faulty walls you called 3 faulty/)).toHaveTextContent('from 23 to 88 %');
    expect(screen.getByText(/15 sound walls and 15 faulty walls still to come/)).toBeVisible();
    expect(screen.queryByText(/d′/)).toBeNull();
  });

  test('are put in words once there are twenty of each', () => {
    const enough = [
      ...many(82, true, true),
      ...many(18, true, false),
      ...many(46, false, true),
      ...many(54, false, false),
    ];
    render(<QuickFigures of="Up close, easy" figures={detectionFiguresOf(enough)} rounds={20} />);
    expect(screen.getByText(/d′ = 1.0/)).toBeVisible();
    expect(screen.getByText(/about 76 times in 100/)).toBeVisible();
    expect(screen.getByText(/call good walls bad/)).toBeVisible();
  });
});

describe('what the device keeps', () => {
  test('can be taken away as it is, and is erased only when asked twice', async () => {
    const heard: string[] = [];
    render(<KeptRounds text='{"version":1}' unknown={null} onErase={() => heard.push('erased')} />);
    const file = screen.getByRole('link', { name: 'Download it as a file' });
    expect(file).toHaveAttribute('download', 'quick-looks.json');
    expect(decodeURIComponent(file.getAttribute('href') ?? '')).toMatch(/,\{"version":1\}$/);
    await userEvent.click(screen.getByRole('button', { name: 'Delete it' }));
    await userEvent.click(screen.getByRole('button', { name: 'Keep it' }));
    expect(heard).toEqual([]);
    await userEvent.click(screen.getByRole('button', { name: 'Delete it' }));
    await userEvent.click(screen.getByRole('button', { name: 'Yes, delete it' }));
    expect(heard).toEqual(['erased']);
  });

  test('is said to be unreadable, with why, and left to the reader', () => {
    render(<KeptRounds text="x" unknown="it says version 2" onErase={() => undefined} />);
    expect(screen.getByRole('alert')).toHaveTextContent('it says version 2');
    expect(within(screen.getByRole('region')).getByRole('link', { name: /Download it/ })).toBeVisible();
  });

  test('is not spoken of where nothing is kept', () => {
    const { container } = render(<KeptRounds text={null} unknown={null} onErase={() => undefined} />);
    expect(container).toBeEmptyDOMElement();
  });
});
