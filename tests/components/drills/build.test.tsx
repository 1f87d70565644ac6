import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { BlemishField } from '../../../components/drills/build/blemish-choice';
import { BuildFound } from '../../../components/drills/build/build-found';
import { BuildSlider } from '../../../components/drills/build/build-slider';
import type { BuildVerdict, Compared } from '../../../lib/drills/build/build-measures';
import { PROUD } from './samples';

const VERDICT: BuildVerdict = {
  limit: 'unit-set',
  end: 'at most',
  measured: 2,
  bound: 3,
  margin: 1,
  passes: true,
  unit: 'mm',
  kind: 'good practice',
  source: 'A book · 3.1',
};
const COMPARED: readonly Compared[] = [
  { rules: 'canada', title: 'Canada', verdicts: [{ ...VERDICT, crossedAt: 3 }] },
  { rules: 'ontario', title: 'Ontario', verdicts: [{ ...VERDICT, crossedAt: 3 }] },
  {
    rules: 'united-kingdom',
    title: 'United Kingdom',
    verdicts: [{ ...VERDICT, bound: 1.5, margin: -0.5, passes: false, crossedAt: 1.5, source: 'Another' }],
  },
  { rules: 'united-states', title: 'United States', verdicts: [] },
];

function slider(refusal: string | null = null) {
  const heard: unknown[] = [];
  render(
    <BuildSlider
      name="How far one unit stands out"
      unit="mm"
      value={2}
      least={0}
      most={6}
      step={0.125}
      system="mm"
      verdicts={[VERDICT]}
      refusal={refusal}
      compare={() => COMPARED}
      onChange={(value) => heard.push(value)}
      onLook={() => heard.push('look')}
    />,
  );
  return heard;
}

test('a slider says what is measured, the limit and what is left to it', () => {
  slider();
  expect(screen.getByText(/Within/).closest('p')).toHaveTextContent(
    '✓ Within 2 mm; limit at most 3 mm; 1 mm to spare',
  );
});

test('a number can be typed instead of sliding; one out of range changes nothing and stays', async () => {
  const heard = slider();
  const box = screen.getByRole('spinbutton', { name: 'How far one unit stands out' });
  await userEvent.clear(box);
  await userEvent.type(box, '7');
  expect(box).toHaveValue('7');
  expect(box).toBeInvalid();
  expect(heard).toEqual([]);
  await userEvent.clear(box);
  await userEvent.type(box, '5');
  await userEvent.click(screen.getByRole('button', { name: 'Look at it: How far one unit stands out' }));
  expect(heard).toEqual([5, 'look']);
});

test('rule sets that ask the same stand together, each group with where it is crossed; silent ones are named', async () => {
  slider();
  await userEvent.click(screen.getByText(/All rule sets/));
  expect(screen.getAllByRole('listitem').map(({ textContent }) => textContent)).toEqual([
    'Canada; Ontario✓ 2 mm; limit at most 3 mm. Crossed above 3 mm.A book · 3.1',
    'United Kingdom✕ 2 mm; limit at most 1.5 mm. Crossed above 1.5 mm.Another',
  ]);
  expect(screen.getByText('No limit for this: United States.')).toBeVisible();
});

test('a wall that would not stay up is refused in words', () => {
  slider('The bottom course tips off its ledge.');
  expect(screen.getByRole('alert')).toHaveTextContent(
    'The bottom course tips off its ledge. The wall is shown as it last stood.',
  );
});

test('what is beyond its limit is counted and listed', () => {
  const { rerender } = render(<BuildFound findings={[]} system="mm" />);
  expect(screen.getByRole('status')).toHaveTextContent('The wall is sound: no limit is crossed.');
  rerender(<BuildFound findings={[PROUD]} system="mm" />);
  expect(screen.getByRole('status')).toHaveTextContent('One limit is crossed.');
  expect(screen.getByRole('listitem')).toHaveTextContent('1. Unit proud or set back. Course 3, unit 2: 9 mm');
});

test('a mark is chosen by name, and the page says how far it is to be taken', async () => {
  const heard: string[] = [];
  const flake = {
    condition: 'flake',
    name: 'Flakes off the face',
    tells: 'could be loose, so have it looked at',
    means: 'Frost pushes the face off.',
    remedy: 'Do not pull at it.',
    figure: null,
  } as const;
  const shown = (value: 'sound' | 'flake') => (
    <BlemishField choices={[flake]} value={value} onChange={(condition) => heard.push(condition)} />
  );
  const { rerender } = render(shown('sound'));
  expect(screen.queryByText('Do not pull at it.')).toBeNull();
  await userEvent.selectOptions(screen.getByRole('combobox', { name: 'What a few units can show' }), 'flake');
  expect(heard).toEqual(['flake']);
  rerender(shown('flake'));
  expect(screen.getByText(/could be loose, so have it looked at\./)).toBeVisible();
  expect(screen.getByText('Do not pull at it.')).toBeVisible();
  await userEvent.selectOptions(screen.getByRole('combobox'), 'Nothing');
  expect(heard).toEqual(['flake', 'sound']);
});
