import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import type { FindingRow, ResultRows } from '../../components/result/result-rows';
import { ResultView } from '../../components/result/result-view';
import type { Finding } from '../../lib/inspect/finding';
import type { LengthSystem } from '../../lib/units';

const REGION = { panel: 'A', x: 0, y: 0, width: 1, height: 1 };
/** Invented figures and a source that does not exist: for the tests alone. */
const SOURCE = {
  limit: 'lintel-bearing',
  rules: 'ontario',
  title: 'A Code',
  edition: '2001',
  clause: '1.2.3',
  howSure: 'read',
} as const;
const BEARING: Finding = {
  check: 'short-lintel-bearing',
  parts: ['A-lintel1'],
  region: REGION,
  measured: 50.8,
  unit: 'mm',
  limit: 152.4,
  margin: -101.6,
  kind: 'code minimum',
  hazard: 'could fall',
  source: SOURCE,
};
const TEXTS = {
  name: 'Lintel bearing too short',
  looksLike: 'Looks.',
  whyItMatters: 'Matters.',
  putsRight: 'Right.',
  caughtAt: 'Caught.',
};
const MISSED: FindingRow = {
  number: 1,
  finding: BEARING,
  outcome: 'missed',
  texts: TEXTS,
  place: 'The lintel over the window',
  namedAs: null,
  rulesTitle: 'Ontario',
  standsIn: false,
};
const TWISTED: FindingRow = {
  ...MISSED,
  number: 2,
  finding: {
    ...BEARING,
    check: 'twisted-unit',
    measured: 8,
    limit: 3,
    margin: -5,
    kind: 'good practice',
    hazard: 'looks',
    source: { ...SOURCE, rules: 'good-practice', howSure: 'common practice' },
  },
  outcome: 'wrong name',
  texts: { ...TEXTS, name: 'Twisted unit' },
  namedAs: 'Sliver',
  rulesTitle: 'Good practice',
  standsIn: true,
};
const NOTHING: ResultRows = { score: 1, capped: null, findings: [], falseMarks: [], repeats: 0, marked: 0 };

function show(rows: ResultRows, system: LengthSystem = 'mm'): string[] {
  const heard: string[] = [];
  render(
    <ResultView
      rows={rows}
      system={system}
      shown={null}
      again={{ nextHref: '/walls/next', onStartAgain: () => heard.push('again') }}
      drawingCautions={['A drawing.']}
      couldFallCautions={['Keep away.']}
      onShow={(number) => heard.push(`show ${number}`)}
    />,
  );
  return heard;
}

test('a missed fault shows its sign, its figures, its source and what to do', async () => {
  const heard = show({
    ...NOTHING,
    score: 0.5,
    capped: 'So the score stops at half.',
    findings: [MISSED],
    marked: 1,
  });
  const [item] = screen.getAllByRole('listitem');
  const said = item?.textContent ?? '';
  expect(said).toContain('Missed');
  expect(said).toContain('Could fall');
  expect(said).toContain('Measured50.8 mm');
  expect(said).toContain('LimitAt least 152.4 mm');
  expect(said).toContain('Too little by101.6 mm');
  expect(said).toContain('Code minimum. A Code, 2001, 1.2.3 (read in the text).');
  expect(said).toContain('What puts it rightRight.');
  expect(screen.getByText('So the score stops at half.').tagName).toBe('P');
  expect(screen.getByText(/^The rule: while a fault .* the score stops at 50\.$/).tagName).toBe('P');
  expect(screen.getAllByRole('note').map(({ textContent }) => textContent)).toEqual([
    '⚠ Danger, on a real wallKeep away. If masonry looks loose',
    '⚠ Take careA drawing.',
  ]);
  await userEvent.click(screen.getByRole('button', { name: /^Show it on the wall/ }));
  expect(heard).toEqual(['show 1']);
});

test('figures come in inches, to a sixteenth', () => {
  show({ ...NOTHING, findings: [MISSED], marked: 1 }, 'inches');
  const [item] = screen.getAllByRole('listitem');
  expect(item?.textContent).toContain('Measured2 inLimitAt least 6 inToo little by4 in');
});

test('good practice that stands in for a silent rule set is shown as such, and the learner’s name beside the right one', () => {
  show({ ...NOTHING, score: 0.5, findings: [TWISTED], marked: 1 });
  const [item] = screen.getAllByRole('listitem');
  expect(item?.textContent).toContain('Good practice: the rule set in use says nothing on this. A Code');
  expect(item?.textContent).toContain('Found, other name');
  expect(item?.textContent).toContain('You called it “Sliver”.');
});

test('a false mark says what was measured there, the limit, and what it looked like', () => {
  show({
    ...NOTHING,
    score: 0.5,
    marked: 1,
    falseMarks: [
      {
        number: 1,
        faultName: 'Open head joint',
        place: 'Course 1',
        part: 'A1.1/2',
        within: { value: 98, limit: 95, end: 'at least', unit: '%', source: 'A Code · 4.5' },
        lookAlike: 'Weeps. They stay open.',
      },
    ],
  });
  const [item] = screen.getAllByRole('listitem');
  expect(within(item as HTMLElement).getByText('False mark').tagName).toBe('SPAN');
  expect(item?.textContent).toContain(
    'Measured there: 98 %. The limit: at least 95 %. So it is within the limit.',
  );
  expect(item?.textContent).toContain('Looks wrong, is right. Weeps. They stay open.');
  expect(
    screen.getByText('This wall is sound. You marked one place that is within the limits.').tagName,
  ).toBe('P');
});

test('a sound wall called sound says so and goes on to the next', async () => {
  const heard = show(NOTHING);
  expect(screen.getByText('This wall is sound, and you said so.').tagName).toBe('P');
  expect(screen.getByText('100').parentElement?.textContent).toBe('100 of 100');
  expect(screen.queryAllByRole('listitem')).toEqual([]);
  expect(screen.getByRole('link', { name: 'Try another like it' })).toHaveAttribute('href', '/walls/next');
  await userEvent.click(screen.getByRole('button', { name: 'Lay this wall again' }));
  expect(heard).toEqual(['again']);
});
