import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { AttemptWalls } from '../../../components/hand-in/attempt-walls';
import type { HandIn } from '../../../components/hand-in/hand-in';
import { HandInStatus } from '../../../components/hand-in/hand-in-status';
import { keepAnswer, keepWork } from '../../../components/hand-in/kept-answers';

beforeEach(() => localStorage.clear());

const WALLS = [
  { place: 1, kind: 'Plain panel' },
  { place: 2, kind: 'Gable end' },
];

function list() {
  const onHandIn = vi.fn();
  const onChange = vi.fn();
  render(
    <AttemptWalls
      attempt="a"
      walls={WALLS}
      addressOf={(place) => `#wall-${place}`}
      onChange={onChange}
      onHandIn={onHandIn}
      onDevice={WALLS.length}
    />,
  );
  return { onHandIn, onChange };
}

const finish = (place: number) =>
  keepAnswer('a', {
    place,
    fingerprint: 'f',
    marks: [],
    readings: [],
    saysSound: true,
    opened: [],
    spentMs: 1,
  });

describe('the list of walls', () => {
  test('says how far each wall is, in words', () => {
    finish(1);
    list();
    expect(screen.getAllByRole('listitem').map((item) => item.textContent)).toEqual([
      'Wall 1 · Plain panel✓ Done, saved on this device Change',
      'Wall 2 · Gable end○ Not begun ',
    ]);
    expect(screen.getByRole('link', { name: 'Wall 2 · Gable end' })).toHaveAttribute('href', '#wall-2');
  });

  test('with a wall not done it asks once, and then hands in anyway', async () => {
    finish(1);
    const { onHandIn } = list();
    await userEvent.click(screen.getByRole('button', { name: 'Hand in all 2 walls' }));
    expect(onHandIn).not.toHaveBeenCalled();
    expect(screen.getByRole('alert')).toHaveTextContent(
      'Wall 2 is not answered: you have marked nothing there and not said that it is sound.',
    );
    await userEvent.click(screen.getByRole('button', { name: 'Hand in anyway' }));
    expect(onHandIn).toHaveBeenCalledTimes(1);
  });

  test('a wall begun is told apart from walls without an answer, opened or not', async () => {
    const mark = { part: 'A1.1', fault: 'proud-unit', sure: 2 } as const;
    const seen = {
      marks: [],
      saysSound: false,
      phase: 'looking',
      opened: [],
      readings: [],
      half: null,
    } as const;
    keepWork('a', 1, { ...seen, marks: [mark] });
    keepWork('a', 2, { ...seen, opened: ['A1.1'] });
    render(
      <AttemptWalls
        attempt="a"
        walls={[...WALLS, { place: 3, kind: 'Gable end' }]}
        addressOf={String}
        onChange={vi.fn()}
        onHandIn={vi.fn()}
        onDevice={2}
      />,
    );
    expect(screen.getByText(/2 of 3 walls are on this device so far/)).toBeVisible();
    expect(screen.getByText(/A wall without an answer scores nothing, even if it is sound\./)).toBeVisible();
    await userEvent.click(screen.getByRole('button', { name: 'Hand in all 3 walls' }));
    expect(screen.getByRole('alert')).toHaveTextContent(
      'Wall 1 is not done: what you have not marked there counts as not found. ' +
        'Walls 2 and 3 are not answered: you have marked nothing there and not said that they are sound.',
    );
  });

  test('with all done it hands in at once; a wall can be changed before', async () => {
    finish(1);
    finish(2);
    const { onHandIn, onChange } = list();
    await userEvent.click(screen.getByRole('button', { name: 'Change wall 2' }));
    expect(onChange).toHaveBeenCalledWith(2);
    await userEvent.click(screen.getByRole('button', { name: 'Hand in all 2 walls' }));
    expect(onHandIn).toHaveBeenCalledTimes(1);
  });
});

describe('where a hand-in is', () => {
  const HAND_IN: HandIn = {
    attempt: 'a',
    learner: 'me',
    key: 'k',
    walls: [],
    state: 'waiting',
    receipt: null,
    problem: 'No connection just now.',
  };
  const show = (changes: Partial<HandIn>, sending = false, onSend = vi.fn()) => {
    render(<HandInStatus handIn={{ ...HAND_IN, ...changes }} sending={sending} onSend={onSend} />);
    return onSend;
  };

  test('waiting: it is safe, why it waits, and a way to try now', async () => {
    const onSend = show({});
    expect(screen.getByRole('status')).toHaveTextContent(
      'Your work is saved on this device. No connection just now. It is sent by itself when this page is open and the site answers.',
    );
    await userEvent.click(screen.getByRole('button', { name: 'Try now' }));
    expect(onSend).toHaveBeenCalledTimes(1);
  });

  test('signed out meanwhile: the way back in, and no promise that waiting will do', () => {
    show({ problem: 'You are signed out. Join your group again with your PIN, and it is sent.' });
    expect(screen.getByRole('link', { name: 'Join your group again' })).toHaveAttribute('href', '/join');
    expect(screen.getByRole('status')).not.toHaveTextContent('by itself');
  });

  test('on its way', () => {
    show({}, true);
    expect(screen.getByRole('heading', { name: 'Sending' })).toBeVisible();
    expect(screen.queryByRole('button')).toBe(null);
  });

  test('received: the receipt, and whether it was late', () => {
    show({ state: 'received', receipt: { receipt: 'AB12-CD34-EF56', handedInAt: 0, late: true } });
    expect(screen.getByRole('heading', { name: 'Received' })).toBeVisible();
    expect(screen.getByText('AB12-CD34-EF56')).toBeVisible();
    expect(screen.getByRole('status')).toHaveTextContent('It was late, and is flagged as late.');
  });

  test('refused: why, and that the marks are still there', () => {
    show({ state: 'refused', problem: 'walls.0: no such part.' });
    expect(screen.getByRole('alert')).toHaveTextContent(
      'walls.0: no such part. Your marks are still on this device.',
    );
  });
});
