import { expect, test } from 'vitest';
import { grade } from '../../../lib/exercise/grade';
import { keyOf } from '../../../lib/exercise/key';
import { metOnWall } from '../../../lib/exercise/met-on-wall';
import { layWall } from '../../../lib/generate/generate';
import type { RawMark } from '../../../lib/marking/mark';
import { surveyedWall } from '../../../lib/wall/surveyed';

/** The first wall of this sort with one proud unit on it and nothing else. */
function keyOfOneProudUnit() {
  for (let seed = 0; ; seed++) {
    const brief = { topic: 'line', kind: 'plain-panel', difficulty: 1, rules: 'canada', seed } as const;
    const key = keyOf(surveyedWall(layWall(brief)), brief.rules);
    const [only, ...others] = key.findings;
    if (only?.check === 'proud-unit' && others.length === 0) return { key, part: only.parts[0] ?? '' };
  }
}

const { key, part } = keyOfOneProudUnit();
const panel = key.findings[0]?.region.panel ?? '';
const elsewhere = [...key.parts.values()].find(
  ({ id, kind, x, panel: on }) =>
    kind === 'unit' && on === panel && id !== part && Math.abs(x - (key.findings[0]?.region.x ?? 0)) > 600,
)?.id;

const NOTHING = {
  fault: 'proud-unit',
  hazard: key.findings[0]?.hazard,
  named: null,
  sure: null,
  readRight: null,
};
test.each<readonly [string, readonly RawMark[], object, readonly object[]]>([
  ['nothing marked', [], { ...NOTHING, outcome: 'missed' }, []],
  [
    'found, named and certain',
    [{ part, fault: 'proud-unit', sure: 3 }],
    { ...NOTHING, outcome: 'found', named: 'proud-unit', sure: 3 },
    [],
  ],
  [
    'found, with a measure far off',
    [{ part, fault: 'proud-unit', sure: 2, reading: 400 }],
    { ...NOTHING, outcome: 'found', named: 'proud-unit', sure: 2, readRight: false },
    [],
  ],
  [
    'found under another name',
    [{ part, fault: 'twisted-unit', sure: 1 }],
    { ...NOTHING, outcome: 'wrong name', named: 'twisted-unit', sure: 1 },
    [],
  ],
  [
    'marked where nothing is wrong',
    [{ part: elsewhere ?? '', fault: 'proud-unit', sure: 3 }],
    { ...NOTHING, outcome: 'missed' },
    [{ fault: 'proud-unit', sure: 3 }],
  ],
])('a proud unit, %s', (_, marks, fault, falseCalls) => {
  expect(metOnWall(grade(key, marks))).toEqual({ faults: [fault], falseCalls });
});
