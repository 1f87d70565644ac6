// Prints the frozen tables that are missing, and the keys of earlier engines that a limit or check of today has moved:
//
//   npx tsx tests/frozen/print-tables.ts
//
// What is frozen of today's engine it leaves alone, and fingerprints always.

import { existsSync, writeFileSync } from 'node:fs';
import { plannedFaults } from '../../lib/engines/engines';
import { type Brief, DIFFICULTIES, ENGINE } from '../../lib/generate/brief';
import { engineOfTopic, TOPIC_FAULTS, TOPICS } from '../../lib/generate/topics';
import { codeOf } from '../../lib/generate/wall-code';
import { CHECKS, type CheckId } from '../../lib/inspect/finding';
import { RULE_SETS } from '../../lib/limits/limit';
import { WALL_KINDS, type WallKind } from '../../lib/wall/model';
import { type FrozenWall, frozenWalls, type MeasuredWall, tableOf, wallNow } from './frozen-walls';

for (let engine = 1; engine <= ENGINE; engine++) {
  const isNew = !existsSync(tableOf(engine));
  if (engine === ENGINE && !isNew) continue;
  const walls = isNew ? newTable(engine) : frozenWalls(engine).map(withKeyNow);
  const lines = walls.map(({ code, fingerprint, key }) => `${code} ${fingerprint} ${key}\n`);
  writeFileSync(tableOf(engine), lines.join(''));
}

function withKeyNow({ code, fingerprint }: FrozenWall): FrozenWall {
  return { code, fingerprint, key: wallNow(code).key };
}

function newTable(engine: number): readonly MeasuredWall[] {
  const walls = codesOf(engine).map(wallNow);
  const found = new Set(walls.flatMap(({ findings }) => findings.map(({ check }) => check)));
  return [...walls, ...CHECKS.filter((check) => !found.has(check)).map((check) => wallWith(check, engine))];
}

/** The first wall of an easy plain panel on which the fault is measured. */
function wallWith(check: CheckId, engine: number): MeasuredWall {
  const topic = TOPICS.find((each) => TOPIC_FAULTS[each].includes(check)) ?? 'mixed';
  for (let seed = 0; ; seed++) {
    const brief: Brief = { topic, kind: 'window-panel', difficulty: 1, rules: 'canada', seed, engine };
    if (!plannedFaults(brief).includes(check)) continue;
    const wall = wallNow(codeOf(brief));
    if (wall.findings.some((finding) => finding.check === check)) return wall;
  }
}

/** A wall for each topic, difficulty and rule set, the kinds in turn. */
function codesOf(engine: number): readonly string[] {
  return TOPICS.filter((topic) => engineOfTopic(topic) <= engine).flatMap((topic, t) =>
    DIFFICULTIES.flatMap((difficulty, d) =>
      RULE_SETS.map((rules, r) => {
        const kind = WALL_KINDS[(t + d + r) % WALL_KINDS.length] as WallKind;
        return codeOf({ topic, kind, difficulty, rules, seed: 1_000_003 * t + 10_007 * d + 101 * r, engine });
      }),
    ),
  );
}
