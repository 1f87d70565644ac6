import { expect, test } from 'vitest';
import { HOME_WALL } from '../../app/home-wall';
import { layWall } from '../../lib/generate/generate';
import { inspect } from '../../lib/inspect/inspect';

test('the wall of the start page is called sound, and is', () => {
  const findings = inspect(layWall(HOME_WALL), HOME_WALL.rules);
  expect(findings.map(({ check, parts }) => `${check} ${parts[0]}`)).toEqual([]);
});
