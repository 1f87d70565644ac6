import { DIFFICULTIES } from '../../lib/generate/brief';
import { layWall } from '../../lib/generate/generate';
import { planOf } from '../../lib/generate/planner';
import { TOPICS } from '../../lib/generate/topics';
import type { Measurement } from '../../lib/inspect/check';
import { passes } from '../../lib/inspect/check';
import type { CheckId } from '../../lib/inspect/finding';
import { measureAll } from '../../lib/inspect/inspect';
import { RULE_SETS } from '../../lib/limits/limit';
import { WALL_KINDS, type Wall } from '../../lib/wall/model';
import { surveyOf } from '../../lib/wall/survey';
import { informationOf } from './tells/information';
import { OddOneOut } from './tells/odd-one-out';
import { shareOf } from './tells/share';
import { traitsOf } from './tells/traits';

const WALLS = 20_000;

/** What of a wall gives it away to somebody who knows no limit; over 20,000 walls, or as many as asked. */
export function run(args: readonly string[] = []): void {
  const count = Number(args[0] ?? WALLS);
  if (!Number.isInteger(count) || count < 1)
    throw new RangeError(`tells: "${args[0]}" is no number of walls`);
  const reaches = new Map<string, Reach>();
  const cheat = new OddOneOut();
  const seen: { readonly sound: boolean; readonly traits: Readonly<Record<string, string>> }[] = [];
  for (let n = 0; n < count; n++) {
    const brief = {
      topic: TOPICS[n % TOPICS.length] ?? 'mixed',
      kind: WALL_KINDS[Math.floor(n / TOPICS.length) % WALL_KINDS.length] ?? 'plain-panel',
      difficulty: 1 + (Math.floor(n / 32) % DIFFICULTIES.length),
      rules: RULE_SETS[Math.floor(n / 160) % RULE_SETS.length] ?? 'canada',
      seed: 7_000_003 + n,
    };
    const plan = planOf(brief);
    const wall = layWall(brief);
    const measured: { check: CheckId; measurement: Measurement }[] = [];
    measureAll(surveyOf(wall), brief.rules, (check, measurement) => measured.push({ check, measurement }));
    for (const { check, measurement } of measured)
      noteReach(reaches, check, brief.difficulty, measurement, wall);
    const sound = measured.every(({ measurement }) => passes(measurement));
    cheat.tries(wall, brief.topic, brief.difficulty, measured);
    seen.push({ sound, traits: traitsOf(wall, plan) });
  }
  printReaches(reaches);
  const out: string[] = [];
  for (const line of informationOf(seen)) out.push(line);
  process.stdout.write(
    `\ninformation about soundness, bits (chance: the most of 20 shufflings)\n${out.join('\n')}\n`,
  );
  process.stdout.write(
    `\nthe odd one out, taken by one who knows no limit (marks a wall, 0 to 1)\n${cheat.report()}\n`,
  );
}

/** The greatest sound departure and the least of a fault, as shares of what the limit leaves. */
interface Reach {
  sound: number;
  fault: number;
}

function noteReach(
  reaches: Map<string, Reach>,
  check: CheckId,
  difficulty: number,
  measurement: Measurement,
  wall: Wall,
): void {
  const share = shareOf(check, measurement, wall);
  if (share === null) return;
  const key = `${check} ${difficulty}`;
  const reach = reaches.get(key) ?? { sound: 0, fault: Number.POSITIVE_INFINITY };
  if (passes(measurement)) reach.sound = Math.max(reach.sound, share);
  else reach.fault = Math.min(reach.fault, share);
  reaches.set(key, reach);
}

function printReaches(reaches: ReadonlyMap<string, Reach>): void {
  const checks = [...new Set([...reaches.keys()].map((key) => key.slice(0, key.indexOf(' '))))];
  process.stdout.write(
    'least fault ÷ greatest sound departure, difficulty 1 to 5 (bars: 2 at 3, 1.3 at 5)\n',
  );
  for (const check of checks) {
    const cells = DIFFICULTIES.map((difficulty) => {
      const reach = reaches.get(`${check} ${difficulty}`);
      if (!reach || !Number.isFinite(reach.fault)) return '-'.padStart(20);
      const gap = reach.fault / reach.sound;
      return `${reach.fault.toFixed(2)}/${reach.sound.toFixed(2)} = ${gap.toFixed(2)}`.padStart(20);
    });
    process.stdout.write(`${check.padEnd(22)}${cells.join('')}\n`);
  }
}
