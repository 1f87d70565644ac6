import { expect, test } from 'vitest';
import { openPlace } from '../../app/desk/open-place';
import { gradeWalls } from '../../app/server/grade-walls';
import { measuredPair } from '../../lib/drills/pair/measured-pair';
import { layByCode } from '../../lib/engines/engines';
import { ENGINE } from '../../lib/generate/brief';
import { parseCode } from '../../lib/generate/wall-code';
import { wallToRead } from '../../lib/wall-page/wall-to-read';
import { frozenWalls, wallNow } from '../frozen/frozen-walls';

// The first wall with a fault that the first engine gave out, with the fingerprint an attempt of that day would hold.
const [given] = frozenWalls(1)
  .map(({ code, fingerprint }) => ({ ...wallNow(code), fingerprint }))
  .filter(({ findings }) => findings.length > 0);
const { code, fingerprint, findings } = given ?? { code: '', fingerprint: '', findings: [] };

test('an attempt opened under the first engine is marked, and all its faults found score in full', () => {
  const marks = findings.map(({ check, parts }) => ({
    part: parts[0] ?? '',
    fault: check,
    sure: 3 as const,
  }));
  const handedIn = {
    place: 1,
    code,
    fingerprint,
    marks,
    readings: [],
    saysSound: false,
    opened: [],
    spentMs: 0,
  };
  expect(gradeWalls([handedIn])).toMatchObject({
    engine: `${ENGINE}`,
    score: 1,
  });
});

test('the desk draws its wall and counts the group’s marks on it', () => {
  expect(openPlace(code, [])?.wall).toEqual(layByCode(parseCode(code)).wall);
});

test('the wall page keeps the code, and leads on to a wall of today', () => {
  const { code: kept, nextHref } = wallToRead(parseCode(code));
  expect(kept).toBe(code);
  expect(parseCode(nextHref.replace('/walls/', '')).engine).toBeUndefined();
});

test('a pair and its address stay with the engine of their code', () => {
  const { brief, spoiled } = measuredPair(parseCode(code));
  expect(brief.engine).toBe(1);
  expect(spoiled).toEqual(layByCode(brief).wall);
});
