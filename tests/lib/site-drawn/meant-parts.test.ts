import { expect, test } from 'vitest';
import { grade } from '../../../lib/exercise/grade';
import { keyOf } from '../../../lib/exercise/key';
import { gapBetween } from '../../../lib/geometry/box';
import { CATALOGUE } from '../../../lib/inspect/catalogue';
import { meantMarks, meantParts } from '../../../lib/site-drawn/meant-parts';
import { siteWall } from '../../../lib/site-drawn/site-wall';
import { WALLS } from './walls';

const LAID = WALLS.map((brief) => ({ brief, ...siteWall(brief) }));

test('every fault of a wall is found by a mark on a part of its bare wall, no farther off than a joint', () => {
  const unfound: string[] = [];
  let faults = 0;
  for (const { brief, wall, bare } of LAID) {
    const key = keyOf(wall, brief.rules);
    for (const [index, { check, region }] of key.findings.entries()) {
      faults += 1;
      const near = [...bare.parts.values()].filter(
        (part) =>
          part.panel === region.panel &&
          CATALOGUE[check].markedOn.includes(part.kind) &&
          (part.kind === 'batch' || gapBetween(part, region) <= 25),
      );
      const isFound = near.some(({ id }) => {
        const marks = meantMarks(bare, wall, [{ part: id, fault: check }]);
        return grade(key, marks).findings[index]?.outcome === 'found';
      });
      if (!isFound) unfound.push(`${brief.seed}: ${check} at ${JSON.stringify(region)}`);
    }
  }
  expect(faults).toBeGreaterThan(20);
  expect(unfound).toEqual([]);
});

test('each part of a bare wall means a part of the wall, nearly always the one of its name', () => {
  let all = 0;
  let same = 0;
  for (const { wall, bare } of LAID) {
    for (const [index, id] of [...bare.parts.keys()].entries()) {
      // One in seven: every kind of part, in every course.
      if (index % 7 !== 0) continue;
      const meant = meantParts(bare, wall, id);
      expect(meant, id).not.toEqual([]);
      all += 1;
      if (meant[0]?.id === id) same += 1;
    }
  }
  expect(same / all).toBeGreaterThan(0.99);
});

test('a name that the bare wall does not have stays, for the grading to refuse', () => {
  const [laid] = LAID;
  if (!laid) throw new Error('no wall');
  const { wall, bare } = laid;
  const mark = { part: 'Z9.9', fault: 'proud-unit' } as const;
  expect(meantMarks(bare, wall, [mark])).toEqual([mark]);
});
