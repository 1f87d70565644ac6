import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { ResultView } from '../../../components/result/result-view';
import type { Reading } from '../../../lib/instruments/reading';
import type { LengthSystem } from '../../../lib/units';
import type { FalseRow, FindingRow, ResultRows } from '../../../lib/wall-page/result-rows';
import { MISSED, NONE, NOTHING, TWISTED } from './samples';

function show(
  rows: ResultRows,
  system: LengthSystem = 'mm',
  next: string | null = '/walls/next',
  notebook: readonly Reading[] = [],
): string[] {
  const heard: string[] = [];
  render(
    <ResultView
      rows={rows}
      notebook={notebook}
      system={system}
      shown={null}
      again={
        next === null
          ? null
          : {
              next: { href: next, words: 'Next wall on this topic' },
              onStartAgain: () => heard.push('again'),
            }
      }
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

test('what was said of a fault stands beside what is so', () => {
  const row: FindingRow = {
    ...MISSED,
    outcome: 'found',
    answer: { reading: 55, kind: 'good practice', act: 'make safe and call' },
    verdicts: { found: true, named: true, measured: 'wrong', judged: 'wrong', acted: 'right' },
  };
  show({ ...NOTHING, findings: [row], marked: 1 });
  const said = screen.getAllByRole('listitem')[0]?.textContent ?? '';
  expect(said).toContain(
    'Your reading ✗ Not soYou read 55 mm, measured 50.8 mm. It has to come within 1.8 mm.',
  );
  expect(said).toContain('Which requirement ✗ Not soYou said good practice. It is a code minimum.');
  expect(said).toContain('What to do ✓ RightMake safe and call a competent person.');
});

test('a reading under another name is shown, and not marked', () => {
  show({ ...NOTHING, findings: [{ ...TWISTED, answer: { reading: 70 } }], marked: 1 });
  expect(screen.getAllByRole('listitem')[0]?.textContent).toContain('Your reading Not markedYou read 70 mm');
});

test('a bed held against the mean of eight says that its figure is no thickness', () => {
  const finding: FindingRow['finding'] = {
    ...MISSED.finding,
    ...{ check: 'thin-joint', measured: 7.6, limit: 5, margin: -2.6, hazard: 'lets water in' },
    source: { ...MISSED.finding.source, limit: 'bed-from-mean-of-eight' },
  };
  const verdicts = { ...MISSED.verdicts, found: true, named: true, measured: 'wrong' } as const;
  // The joint gauge reads the bed: 1.9 mm.
  show({
    ...NOTHING,
    findings: [{ ...MISSED, finding, outcome: 'found', within: 1, answer: { reading: 1.9 }, verdicts }],
  });
  expect(screen.getByText('7.6 mm thinner than the mean of eight beds')).toBeInTheDocument();
  expect(
    screen.getByText(
      'You read 1.9 mm, measured 7.6 mm thinner than the mean of eight beds. It has to come within 1 mm. The gauge rod reads it; the joint gauge reads the bed alone.',
    ),
  ).toBeInTheDocument();
});

test('what the notebook says of the place stands there too, though the fault was missed', () => {
  const reading: Reading = {
    instrument: 'tape',
    part: 'A-lintel1',
    what: 'Bearing, left end',
    value: 51.5,
    unit: 'mm',
    words: null,
    error: 1,
    fine: false,
    turned: false,
  };
  const elsewhere: Reading = { ...reading, part: 'A1.1', what: 'Length' };
  show({ ...NOTHING, findings: [MISSED], marked: 1 }, 'mm', '/walls/next', [reading, elsewhere]);
  const said = screen.getAllByRole('listitem')[0]?.textContent ?? '';
  expect(said).toContain('In your notebook. Bearing, left end: 51.5 mm.');
  expect(said).not.toContain('Length: 51.5 mm');
});

test('five marks are shown apart, and what was not given has no row', () => {
  show({
    ...NOTHING,
    findings: [MISSED],
    parts: {
      found: { got: 1, of: 3 },
      named: { got: 1, of: 1 },
      measured: { got: 0, of: 1 },
      judged: NONE,
      acted: { got: 2, of: 2 },
    },
  });
  const marks = screen.getByText('Found').closest('dl') as HTMLElement;
  expect(
    within(marks)
      .getAllByRole('definition')
      .map(({ textContent }) => textContent),
  ).toEqual(['1 of 3', '1 of 1', '0 of 1', '2 of 2']);
});

test('what could fall and was missed comes first, then what was said for certain and wrong', () => {
  const falseMark: FalseRow = {
    number: 3,
    faultName: 'Sliver',
    place: 'Course 2, unit 3',
    part: 'A2.3',
    within: null,
    lookAlike: null,
    certainWrong: true,
  };
  show({
    ...NOTHING,
    findings: [MISSED, TWISTED],
    falseMarks: [falseMark, { ...falseMark, number: 4, certainWrong: false }],
    marked: 3,
  });
  expect(screen.getAllByRole('heading', { level: 3 }).map(({ textContent }) => textContent)).toEqual([
    'Missed, and it could fall',
    'You were certain, and it is not so',
    'The other faults',
    'Marked, but within the limits',
  ]);
});

test('a look-alike rightly left is told, and leads nowhere', () => {
  show({
    ...NOTHING,
    marked: 1,
    left: [
      {
        faultName: 'Open head joint',
        place: 'Course 1',
        part: 'A1.1/2',
        lookAlike: 'Weeps. They stay open.',
      },
    ],
  });
  expect(screen.getByRole('listitem').textContent).toContain(
    'You said to leave it, and so it is. Weeps. They stay open.',
  );
});

test('a look-alike left without a word is named too, and says why it is right', () => {
  const row = {
    faultName: 'Sliver',
    place: 'Course 3',
    part: 'A3.1',
    lookAlike: 'Closers. They keep the bond.',
  };
  show({ ...NOTHING, tempting: [row] });
  expect(screen.getByRole('heading', { name: 'Looks wrong, is right' })).toBeInTheDocument();
  expect(screen.getByRole('listitem').textContent).toContain('Closers. They keep the bond. Course 3');
  expect(screen.getByText(/You left them alone, and rightly\./)).toBeInTheDocument();
});

test('a sound wall says what came nearest to its limit, and has no empty rows', () => {
  show({
    ...NOTHING,
    tightest: {
      faultName: 'Joint too thick',
      place: 'Bed joint under unit 4, course 5',
      part: 'A5.4-bed',
      within: { value: 12.1, limit: 13, end: 'at most', unit: 'mm', source: 'A Code · 4.5' },
    },
  });
  expect(
    screen.getByText(
      'Bed joint under unit 4, course 5, measured for “Joint too thick”. Measured there: 12.1 mm. The limit: at most 13 mm. So it is within the limit.',
    ),
  ).toBeInTheDocument();
  expect(screen.queryByLabelText('Five marks, each apart')).toBeNull();
});

test('the faulty place stands beside the same place built right; set work has no pictures', () => {
  const { unmount } = render(
    <ResultView
      rows={{ ...NOTHING, findings: [MISSED], marked: 1 }}
      notebook={[]}
      system="mm"
      shown={null}
      picture={({ check }, side) => `/walls/X/places/${check}.${side}`}
      again={null}
      drawingCautions={[]}
      couldFallCautions={[]}
      onShow={() => undefined}
    />,
  );
  expect(screen.getAllByRole('img').map((each) => each.getAttribute('src'))).toEqual([
    '/walls/X/places/short-lintel-bearing.as-laid',
    '/walls/X/places/short-lintel-bearing.sound',
  ]);
  unmount();
  show({ ...NOTHING, findings: [MISSED] });
  expect(screen.queryByRole('img')).toBeNull();
});

test('a fault leads to its passage in the lesson; set work ends here', () => {
  show({ ...NOTHING, findings: [MISSED] }, 'mm', null);
  expect(screen.getByRole('link', { name: 'The lesson on this' })).toHaveAttribute('href', MISSED.lesson);
  expect(screen.queryByRole('link', { name: 'Next wall on this topic' })).toBeNull();
  expect(screen.queryByRole('button', { name: /read this wall afresh/ })).toBeNull();
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
        certainWrong: false,
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

test('a sound wall called sound says so and offers one step: the next wall', async () => {
  const heard = show(NOTHING);
  expect(screen.getByText('This wall is sound, and you said so.').tagName).toBe('P');
  expect(screen.getByText('100').parentElement?.textContent).toBe('100 of 100');
  expect(screen.queryAllByRole('listitem')).toEqual([]);
  const steps = screen.getAllByRole('link').filter((each) => !each.closest('details, [role="note"]'));
  expect(steps.map((each) => each.getAttribute('href'))).toEqual(['/walls/next']);
  await userEvent.click(screen.getByText('How the score is worked out'));
  await userEvent.click(screen.getByRole('button', { name: 'Clear my answer and read this wall afresh' }));
  expect(heard).toEqual(['again']);
});
