import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, expect, test, vi } from 'vitest';
import { fieldProblems } from '../../../app/walls/brief-problems';
import { CodeBox } from '../../../components/forms/code-box';
import { LengthChoice, useLengthSystem } from '../../../components/forms/length-choice';
import { ShareWall } from '../../../components/forms/share-wall';
import { WallForm } from '../../../components/forms/wall-form';

afterEach(() => localStorage.clear());

const FIELDS = [
  {
    name: 'topic',
    label: 'Topic',
    choices: [
      { value: 'joints', label: 'Joints' },
      { value: 'ties', label: 'Ties' },
    ],
  },
];

test('a wrong code stays in its box, with what is wrong beside it', () => {
  render(<CodeBox typed="3k7" problem="Has 3 signs." />);
  const box = screen.getByRole('textbox', { name: 'Wall code' });
  expect(box).toHaveValue('3k7');
  expect(box).toBeInvalid();
  expect(box).toHaveAccessibleDescription('Has 3 signs. Ten letters and digits, like 3K7-Q2WF-9TB.');
});

test('the form keeps what was typed and says what is wrong at the field', () => {
  const problem = { field: 'seed', problem: 'Not a whole number.' };
  render(
    <WallForm
      action="/walls"
      send="Show the wall"
      fields={FIELDS}
      typed={{ topic: 'ties', seed: 'x' }}
      problems={[problem]}
      mostSeed={9}
    />,
  );
  expect(screen.getByRole('combobox', { name: 'Topic' })).toHaveValue('ties');
  const number = screen.getByRole('textbox', { name: 'Wall number (leave empty for any)' });
  expect(number).toHaveValue('x');
  expect(number).toHaveAccessibleDescription('Not a whole number.');
});

function Lengths() {
  const system = useLengthSystem('mm');
  return (
    <>
      <LengthChoice system={system} />
      <p>now {system}</p>
    </>
  );
}

test('the lengths chosen hold everywhere and are remembered', async () => {
  const { unmount } = render(
    <>
      <Lengths />
      <Lengths />
    </>,
  );
  expect(screen.getAllByText('now mm').length).toBe(2);
  const [inches] = screen.getAllByRole('radio', { name: 'inches' });
  await userEvent.click(inches as HTMLElement);
  expect(screen.getAllByText('now inches').length).toBe(2);
  unmount();
  render(<Lengths />);
  expect(screen.getByText('now inches').tagName).toBe('P');
});

test('the link of a wall is copied, or shown where it cannot be', async () => {
  userEvent.setup();
  render(<ShareWall />);
  await userEvent.click(screen.getByRole('button', { name: 'Copy link' }));
  expect(await screen.findByText('The link is copied.')).toHaveAttribute('role', 'status');
  expect(await navigator.clipboard.readText()).toBe(window.location.href);
  vi.spyOn(navigator.clipboard, 'writeText').mockRejectedValue(new DOMException('Forbidden.'));
  await userEvent.click(screen.getByRole('button', { name: 'Copy link' }));
  expect(await screen.findByText(window.location.href)).toHaveAttribute('role', 'status');
});

test('every wrong field of a brief is told at once, in the words of the form', () => {
  expect(fieldProblems({ topic: 'roofs', seed: '-1' }, FIELDS)).toEqual([
    { field: 'topic', problem: 'Topic: “roofs” is not in the list. Choose from it.' },
    { field: 'seed', problem: '“-1” is not a whole number from 0 to 134,217,727.' },
  ]);
  expect(fieldProblems({ topic: 'ties', seed: 0 }, FIELDS)).toEqual([]);
});
