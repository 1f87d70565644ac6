import type { LengthSystem } from '../units';
import { formatAmount } from './format-amount';
import type { Bound, Limit } from './limit';

type Stepped = Extract<Bound, { form: 'stepped' }>;

/**
 * What a limit asks, in short lines, lengths in both systems with `first` before the other: ["at most 15 mm (9/16 in)"].
 * Tables give no lines: they are shown as tables.
 */
export function formatBound(limit: Limit, first: LengthSystem): readonly string[] {
  const { bound, unit, end } = limit;
  const amount = (value: number) => formatAmount(value, unit, first);
  const length = (value: number) => formatAmount(value, 'mm', first);
  const asked = (text: string) => (end === 'is' ? text : `${end} ${text}`);
  switch (bound.form) {
    case 'number':
      return [asked(amount(bound.value))];
    case 'share-of-depth':
      return [asked(formatShare(bound.share))];
    case 'stepped':
      return bound.steps.map((step, index) => {
        const here = formatStep(bound, index, first);
        if (!Number.isFinite(step.value)) return `${here}: no limit`;
        return `${here}: ${step.value === 0 && end === 'at most' ? 'none' : asked(amount(step.value))}`;
      });
    case 'any-run':
      return [
        ...bound.runs.map(({ run, value }) => asked(`${amount(value)} in any ${length(run)}`)),
        asked(`${amount(bound.overall)} in all`),
      ];
    case 'pro-rata':
      return [
        asked(`${amount(bound.value)} in ${length(bound.run)}, in proportion if shorter`),
        asked(`${amount(bound.beyond)} if longer`),
      ];
    case 'present':
      return ['must be there'];
    case 'tie-area':
      return [
        `at most ${length(bound.vertical)} up the wall`,
        `at most ${length(bound.horizontal)} across it`,
        `at most ${formatAmount(bound.area, 'mm²', first)} to each tie`,
      ];
    case 'angle-table':
    case 'tie-rows':
    case 'mortar-table':
      return [];
  }
}

const SHARES: readonly (readonly [share: number, words: string])[] = [
  [1 / 3, 'a third of the thickness'],
  [1 / 2, 'half the thickness'],
  [1, 'the thickness of the unit'],
];

function formatShare(share: number): string {
  return SHARES.find(([value]) => value === share)?.[1] ?? `${share} times the thickness`;
}

const STEPPED_BY: Readonly<Record<Stepped['by'], readonly [thing: string, unit: Limit['unit']]>> = {
  'unit depth': ['units', 'mm'],
  'clear span': ['openings', 'mm'],
  'air temperature': ['air', '°C'],
  'storeys above': ['storeys above', 'times'],
};

/** "openings up to 1200 mm (3 ft …)", "openings over 1200 mm". A step that ends just short of a whole number is told by that number. */
function formatStep({ by, steps }: Stepped, index: number, first: LengthSystem): string {
  const [thing, unit] = STEPPED_BY[by];
  const edge = steps[Math.min(index, steps.length - 2)]?.upTo ?? 0;
  const whole = Math.ceil(edge);
  const size = formatAmount(whole, unit, first);
  const isLast = index === steps.length - 1;
  if (edge < whole) return isLast ? `${thing} at ${size} and over` : `${thing} under ${size}`;
  return isLast ? `${thing} over ${size}` : `${thing} up to ${size}`;
}
