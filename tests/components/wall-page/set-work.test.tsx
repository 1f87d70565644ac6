import { act, fireEvent, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeAll, beforeEach, expect, test, vi } from 'vitest';
import type { HandedWork, SetWork } from '../../../app/walls/[code]/set-work';
import { WallRoom } from '../../../app/walls/[code]/wall-room';
import { loadViews } from '../../../app/walls/use-later-views';
import type { ResultRows } from '../../../lib/wall-page/result-rows';
import { layForSetWork } from '../../../lib/wall-page/wall-to-read';

const LAID = layForSetWork({
  topic: 'line',
  kind: 'plain-panel',
  difficulty: 1,
  rules: 'canada',
  seed: 7,
});
const NONE = { got: 0, of: 0 };
/** A result as a server would send it; the figures are invented. */
const ROWS: ResultRows = {
  score: 0.5,
  answered: true,
  capped: null,
  parts: { found: { got: 0, of: 0 }, named: NONE, measured: NONE, judged: NONE, acted: NONE },
  findings: [],
  falseMarks: [],
  left: [],
  tempting: [],
  tightest: null,
  repeats: 0,
  marked: 0,
};

// jsdom has no screen: it is taken for a wide one.
vi.stubGlobal('matchMedia', () => ({ matches: false }));
// The parts that the page fetches later: here at once, so that no test waits for them.
beforeAll(() =>
  Promise.all([
    import('../../../app/walls/[code]/tools'),
    import('../../../lib/views/draw-view'),
    import('../../../components/result/result-view'),
  ]),
);
beforeEach(() => sessionStorage.clear());

function show(first: Partial<SetWork> = {}) {
  const handed: HandedWork[] = [];
  const page = (over: Partial<SetWork>) => (
    <WallRoom
      laid={LAID}
      label="A wall"
      setWork={{
        keptAs: 'attempt-1',
        openingsUp: 2,
        rows: null,
        onHandIn: (work) => handed.push(work),
        ...over,
      }}
    />
  );
  const view = render(page(first));
  return {
    handed,
    user: userEvent.setup(),
    again: (over: Partial<SetWork>) => view.rerender(page(over)),
    close: view.unmount,
  };
}

async function handInAsSound(user: ReturnType<typeof userEvent.setup>) {
  await user.click(screen.getByRole('button', { name: 'This wall is sound' }));
  await user.click(await screen.findByRole('button', { name: 'Done: the wall is sound' }));
}

test('work is handed out whole, and no result shows until it is given', async () => {
  const { handed, user, again } = show();
  await user.click(screen.getByRole('radio', { name: 'Behind a unit' }));
  await screen.findByText('Tap a unit on the wall to lift it. You may lift 2 units.');
  screen.getAllByRole('gridcell')[0]?.focus();
  await user.keyboard('{Enter}');
  await screen.findByText(/You may lift 1 more of 2\./);
  await handInAsSound(user);
  expect(handed.map(({ spentMs, ...work }) => work)).toEqual([
    { marks: [], saysSound: true, opened: [expect.stringMatching(/^A\d+\.\d+$/)], readings: [] },
  ]);
  expect(handed[0]?.spentMs).toBeGreaterThanOrEqual(0);
  expect(screen.getByRole('heading', { name: 'Handed in' })).toHaveFocus();
  expect(screen.queryByText(/of 100/)).toBeNull();
  again({ rows: ROWS });
  expect((await screen.findByText('50')).parentElement?.textContent).toBe('50 of 100');
  expect(screen.queryByRole('link', { name: 'Next wall on this topic' })).toBeNull();
});

test('a hand-in that did not arrive can be handed in again', async () => {
  const { handed, user, again } = show();
  await handInAsSound(user);
  again({ problem: 'The network is away. Your work is kept.' });
  expect(screen.getByRole('alert').textContent).toContain('The network is away.');
  await user.click(screen.getByRole('button', { name: 'Hand in again' }));
  expect(handed).toHaveLength(2);
});

test('a form half filled is there again when the page is opened anew, and gone once it is closed', async () => {
  const { user, close } = show();
  const pick = async () => {
    screen.getByRole('gridcell', { name: /^Course 1, unit 2,/ }).focus();
    await user.keyboard('{Enter}');
  };
  await pick();
  await user.type(await screen.findByRole('searchbox'), 'proud');
  await user.click(screen.getByRole('radio', { name: 'Unit proud or set back' }));
  await user.click(screen.getByText(/^Say more/));
  await user.type(screen.getByRole('textbox', { name: /How much/ }), '7.5');
  await user.click(screen.getByRole('radio', { name: 'Certain' }));
  close();

  show();
  expect(await screen.findByRole('region', { name: 'Course 1, unit 2' })).toBeVisible();
  expect(screen.getByText('Unit proud or set back.').tagName).toBe('STRONG');
  expect(screen.getByRole('textbox', { name: /How much/ })).toHaveValue('7.5');
  expect(screen.getByRole('radio', { name: 'Certain' })).toBeChecked();
  await user.click(screen.getByRole('button', { name: 'Close' }));
  await pick();
  expect(await screen.findByRole('searchbox')).toHaveValue('');
});

test('the keyboard keeps its place on the wall when what draws the other looks arrives', async () => {
  show();
  // The first key begins the fetching, and is dealt with before anything can arrive.
  fireEvent.keyDown(screen.getByRole('gridcell', { name: /^Course 1, .*unit 1,/ }), { key: 'ArrowRight' });
  await act(loadViews);
  fireEvent.keyDown(screen.getByRole('gridcell', { name: /^Course 1, unit 2,/ }), { key: 'ArrowRight' });
  expect(screen.getByRole('gridcell', { name: /^Course 1, unit 3,/ })).toHaveFocus();
});

test('each attempt keeps its own work', async () => {
  const { user } = show();
  await handInAsSound(user);
  expect(Object.keys(sessionStorage).filter((key) => key.startsWith('wall-work:'))).toEqual([
    'wall-work:attempt-1',
  ]);
});
