import { describe, expect, test } from 'vitest';
import { DIFFICULTIES, ENGINE } from '../../lib/generate/brief';
import { engineOfTopic, TOPICS } from '../../lib/generate/topics';
import { parseCode } from '../../lib/generate/wall-code';
import { CHECKS, type CheckId } from '../../lib/inspect/finding';
import { RULE_SETS } from '../../lib/limits/limit';
import { WALL_KINDS } from '../../lib/wall/model';
import { type FrozenWall, frozenWalls, type MeasuredWall, wallNow } from './frozen-walls';

const PRINT = 'npx tsx tests/frozen/print-tables.ts';

const RAISE = `Codes that are out there would mean something else. If that is what you want, give it a new engine:
  1. node tests/commands/freeze-engine.mjs COMMIT   (the last commit before your change)
  2. name the new file in lib/engines/engines.ts
  3. raise ENGINE in lib/generate/brief.ts
  4. ${PRINT}
If it is not, a change of yours lays or measures otherwise without meaning to. The walls:`;

const EARLIER_LAID = `An earlier engine lays other walls than it did: its file in lib/engines, or the way a wall is read from it, was changed.
Put that back; stored work hangs on these walls. They are:`;

const EARLIER_KEY = `Walls of an earlier engine are measured otherwise: a limit or a check has changed. Results that are stored stay as they are.
If it is meant, ${PRINT} writes the new keys; say in the commit how many walls changed. They are:`;

/** Faults that no engine before this one lays. */
const CAME_WITH: Readonly<Partial<Record<CheckId, number>>> = {
  'tie-near-face': 3,
  'weeps-too-far-apart': 6,
  'blocked-weep': 6,
  'no-flashing': 6,
  'low-flashing': 6,
  'short-flashing': 6,
  'no-end-dam': 6,
};

const ENGINES = Array.from({ length: ENGINE }, (_, index) => index + 1);

describe.each(ENGINES)('the frozen walls of engine %i', (engine) => {
  const frozen = frozenWalls(engine);
  const now = frozen.map(({ code }) => wallNow(code));
  const isToday = engine === ENGINE;

  test('are laid as they always were', () => {
    expect(changed(frozen, now, 'fingerprint'), isToday ? RAISE : EARLIER_LAID).toEqual([]);
  });

  test('have the key they had, places and figures', () => {
    expect(changed(frozen, now, 'key'), isToday ? RAISE : EARLIER_KEY).toEqual([]);
  });

  test('are two hundred or more, of every topic, kind, difficulty and rule set, each code of this engine', () => {
    const briefs = frozen.map(({ code }) => parseCode(code));
    expect(new Set(frozen.map(({ code }) => code)).size).toBeGreaterThanOrEqual(200);
    expect(briefs.every((brief) => (brief.engine ?? ENGINE) === engine)).toBe(true);
    const topics = TOPICS.filter((topic) => engineOfTopic(topic) <= engine);
    expect(new Set(briefs.map(({ topic }) => topic)).size).toBe(topics.length);
    expect(new Set(briefs.map(({ kind }) => kind)).size).toBe(WALL_KINDS.length);
    expect(new Set(briefs.map(({ difficulty }) => difficulty)).size).toBe(DIFFICULTIES.length);
    expect(new Set(briefs.map(({ rules }) => rules)).size).toBe(RULE_SETS.length);
  });

  test('show every fault of their day, and some are sound', () => {
    const found = new Set(now.flatMap(({ findings }) => findings.map(({ check }) => check)));
    const known = CHECKS.filter((check) => (CAME_WITH[check] ?? 1) <= engine);
    expect(known.filter((check) => !found.has(check))).toEqual([]);
    expect(now.filter(({ findings }) => findings.length === 0).length).toBeGreaterThan(frozen.length / 5);
  });
});

function changed(
  frozen: readonly FrozenWall[],
  now: readonly MeasuredWall[],
  what: 'fingerprint' | 'key',
): readonly string[] {
  return frozen.flatMap((before, index) => {
    const after = now[index];
    if (after === undefined || after[what] === before[what]) return [];
    const said = after.findings.map(({ check, parts, measured }) => `${check} at ${parts[0]}: ${measured}`);
    return [`${before.code}, now: ${said.join('; ') || 'sound'}`];
  });
}
