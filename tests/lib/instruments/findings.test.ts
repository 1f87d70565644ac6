import { expect, test } from 'vitest';
import type { Finding } from '../../../lib/inspect/finding';
import { inspect } from '../../../lib/inspect/inspect';
import type { InstrumentId } from '../../../lib/instruments/instrument';
import { readAt } from '../../../lib/instruments/read';
import type { Reading } from '../../../lib/instruments/reading';
import { tellingFirst } from '../../../lib/instruments/telling-reading';
import { toleranceOf } from '../../../lib/instruments/tolerance';
import type { Part } from '../../../lib/wall/parts';
import { partsOf } from '../../../lib/wall/parts';
import { type Survey, surveyOf } from '../../../lib/wall/survey';
import { combinations, lawWall, layLawWall } from '../../laws/law-walls';

/** Of every fault, rule set, kind and masonry that fit together, every third: each fault comes in several. */
const WALLS = combinations().length;
const EVERY = 3;
/** The most telling parts come first; a line of head joints may name a hundred. */
const MOST_PLACES = 6;
/** A form offers so many readings of the notebook. */
const OFFERED = 4;

/** The parts a finding names; a gap between ties names only the panel, and is read from the ties at its ends too. */
function placesOf({ check, parts, region }: Finding, all: ReadonlyMap<string, Part>): readonly Part[] {
  const named = parts.flatMap((id) => all.get(id) ?? []);
  if (check !== 'ties-too-far-apart') return named;
  const ties = [...all.values()].filter(
    ({ kind, panel, x, y, width, height }) =>
      kind === 'tie' &&
      panel === region.panel &&
      x + width >= region.x &&
      x <= region.x + region.width &&
      y + height >= region.y &&
      y <= region.y + region.height,
  );
  return [...named, ...ties];
}

function readingsOf(finding: Finding, survey: Survey, all: ReadonlyMap<string, Part>): readonly Reading[] {
  const named = toleranceOf(finding.check, finding).instrument;
  // A bed held against the mean of eight is read on the rod, not with the gauge.
  const instruments: readonly InstrumentId[] = named === 'joint-gauge' ? [named, 'gauge-rod'] : [named];
  return placesOf(finding, all)
    .slice(0, MOST_PLACES)
    .flatMap((part) => instruments.flatMap((each) => readAt(survey, each, part, { lifted: true })))
    .filter(({ unit }) => unit === finding.unit);
}

function nearestOf(readings: readonly Reading[], measured: number): Reading | null {
  const away = ({ value }: Reading) => Math.abs((value ?? Number.POSITIVE_INFINITY) - measured);
  return readings.reduce<Reading | null>(
    (best, each) => (best === null || away(each) < away(best) ? each : best),
    null,
  );
}

test('every finding of a laid wall can be read at one of its parts, in its own unit, with the instrument its tolerance names, and is among the first a form offers', () => {
  const missed: string[] = [];
  const buried: string[] = [];
  const seen = new Set<string>();
  for (let n = 0; n < WALLS; n += EVERY) {
    const law = lawWall(n);
    const wall = layLawWall(law);
    const survey = surveyOf(wall);
    const all = partsOf(surveyOf(wall));
    for (const finding of inspect(wall, law.rules)) {
      seen.add(finding.check);
      const { within } = toleranceOf(finding.check, finding);
      const readings = readingsOf(finding, survey, all);
      const best = nearestOf(readings, finding.measured);
      const here = readings.filter(({ part }) => part === best?.part);
      const offered = tellingFirst(finding.check, here).slice(0, OFFERED);
      if (!offered.some(({ value }) => Math.abs((value ?? Number.NaN) - finding.measured) <= within)) {
        buried.push(`${finding.check}: ${best?.what}`);
      }
      if (best?.value == null || Math.abs(best.value - finding.measured) > within) {
        missed.push(
          `${finding.check} ${law.rules} ${law.kind} seed ${law.seed}: ${finding.measured} ${finding.unit}, read ${best?.value} (${best?.what})`,
        );
      }
    }
  }
  expect(missed).toEqual([]);
  expect(buried).toEqual([]);
  expect(seen.size).toBe(34);
});
