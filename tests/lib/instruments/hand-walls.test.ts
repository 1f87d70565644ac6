import { expect, test } from 'vitest';
import type { CheckId } from '../../../lib/inspect/finding';
import { CHECKS } from '../../../lib/inspect/finding';
import type { InstrumentId } from '../../../lib/instruments/instrument';
import { readAt } from '../../../lib/instruments/read';
import type { Reading } from '../../../lib/instruments/reading';
import { type Measured, toleranceOf } from '../../../lib/instruments/tolerance';
import { inches } from '../../../lib/units';
import { partsOf } from '../../../lib/wall/parts';
import { surveyOf } from '../../../lib/wall/survey';
import { HAND_WALLS } from '../../naive/hand-walls';

const FAULTY = HAND_WALLS.filter(({ expected }) => expected.length > 0);

/** An area where the number is too large for a share. */
function unitOf(check: CheckId, measured: number): string {
  return check.endsWith('back-mortar') || check === 'ring-buttered-back'
    ? measured > 100
      ? 'mm²'
      : '%'
    : '';
}

/** The instrument its tolerance names; a bed held against the mean of eight is read on the rod. */
function instrumentsFor(check: CheckId, found: Measured): readonly InstrumentId[] {
  const named = toleranceOf(check, found).instrument;
  return named === 'joint-gauge' ? [named, 'gauge-rod'] : [named];
}

// What is wrong with these walls was worked on paper from the definitions alone (tests/naive): here the instruments read the same figures.
test.each(FAULTY.map((each) => [each.name, each] as const))('%s', (_, { wall, expected }) => {
  const survey = surveyOf(wall);
  const all = partsOf(surveyOf(wall));
  for (const { check, measured, parts } of expected) {
    const unit = unitOf(check, measured);
    const found = { measured, unit };
    const { within } = toleranceOf(check, found);
    const places = parts.flatMap((id) => all.get(id) ?? []);
    // A gap between ties names its panel only: the ties themselves are read too.
    const ties = check === 'ties-too-far-apart' ? [...all.values()].filter(({ kind }) => kind === 'tie') : [];
    const readings: readonly Reading[] = [...places, ...ties].flatMap((part) =>
      instrumentsFor(check, found).flatMap((id) => readAt(survey, id, part, { lifted: true })),
    );
    // A return too short for a large triangle is told less closely: what the reading itself promises then counts.
    const near = readings
      .filter((each) => unit === '' || each.unit === unit)
      .filter(({ value, error }) => value !== null && Math.abs(value - measured) <= Math.max(within, error));
    expect(near.length, `${check}: ${measured}, read ${readings.map(({ value }) => value)}`).toBeGreaterThan(
      0,
    );
  }
});

test.each(FAULTY.map((each) => [each.name, each] as const))(
  '%s, written down in sixteenths of an inch',
  (_, { wall, expected }) => {
    const survey = surveyOf(wall);
    const all = partsOf(surveyOf(wall));
    for (const { check, measured, parts } of expected) {
      const found = { measured, unit: unitOf(check, measured) };
      const { within } = toleranceOf(check, found);
      const near = parts
        .flatMap((id) => all.get(id) ?? [])
        .flatMap((part) => instrumentsFor(check, found).flatMap((id) => readAt(survey, id, part)))
        .filter(
          ({ unit, fine, value }) =>
            unit === 'mm' && !fine && value !== null && Math.abs(value - measured) <= within,
        );
      for (const { value } of near.slice(0, 1)) {
        const written = inches(Math.round((value ?? 0) / inches(1 / 16)) / 16);
        expect(
          Math.abs(written - measured),
          `${check}: ${measured}, read ${value}, written ${written}`,
        ).toBeLessThanOrEqual(within);
      }
    }
  },
);

test('the walls above show every fault', () => {
  const shown = new Set(FAULTY.flatMap(({ expected }) => expected.map(({ check }) => check)));
  expect(CHECKS.filter((check) => !shown.has(check))).toEqual([]);
});
