import { type ChoiceWay, type Course, courseOf } from './learners/course';
import { LEARNERS, type LearnerKind } from './learners/simulated-learner';

const WAYS: readonly ChoiceWay[] = ['chooser', 'random', 'ladder'];
const SEEDS = 6;

/**
 * Simulated learners meet the chooser, random choice and a fixed ladder. Everything is a ratio or a count of walls, by seed: no clock. Usage:
 * learners [first seed]. Quick looks are not counted as walls, and nothing is taken to be learnt from them.
 */
export async function run([from = '1']: readonly string[]): Promise<void> {
  const seeds = Array.from({ length: SEEDS }, (_, index) => Number(from) + index);
  console.log(`seeds ${seeds[0]} to ${seeds.at(-1)}, at most 360 walls each`);
  const kinds = Object.keys(LEARNERS) as readonly LearnerKind[];
  const ratios: number[] = [];
  let said = 0;
  let wrongly = 0;
  for (const kind of kinds) {
    const courses = new Map(WAYS.map((way) => [way, seeds.map((seed) => courseOf(kind, way, seed))]));
    console.log(`\n${kind}`);
    for (const [way, all] of courses) console.log(`  ${way.padEnd(8)} ${lineOf(all)}`);
    const chosen = courses.get('chooser') ?? [];
    said += sum(chosen, (course) => course.said);
    wrongly += sum(chosen, (course) => course.saidWrongly);
    const base = courses.get('random') ?? [];
    const both = seeds.flatMap((_, index) => {
      const one = chosen[index]?.wallsToAll ?? null;
      const other = base[index]?.wallsToAll ?? null;
      return one === null || other === null ? [] : [{ one, other }];
    });
    if (both.length === 0) continue;
    const ratio = sum(both, ({ one }) => one) / sum(both, ({ other }) => other);
    ratios.push(ratio);
    const worst = Math.max(...both.map(({ one }) => one)) / Math.max(...both.map(({ other }) => other));
    console.log(
      `  walls, chooser ÷ random: ${ratio.toFixed(2)}; slowest of each: ${worst.toFixed(2)} (${both.length} seeds)`,
    );
  }
  console.log(
    `\nall learners: ${(sum(ratios, (ratio) => ratio) / ratios.length).toFixed(2)} of the walls of random choice`,
  );
  console.log(
    `said to be mastered and was not: ${wrongly} of ${said} family-days (${((100 * wrongly) / Math.max(1, said)).toFixed(1)} %)`,
  );
}

function lineOf(all: readonly Course[]): string {
  const reached = all.flatMap(({ wallsToAll }) => wallsToAll ?? []);
  const proved = all.flatMap(({ wallsToProof }) => wallsToProof ?? []);
  const met = all.map(({ wallsToMeetAll }) => wallsToMeetAll ?? 360);
  const known =
    sum(all, ({ onKnown }) => onKnown) /
    Math.max(
      1,
      sum(all, ({ wallsToAll }) => wallsToAll ?? 360),
    );
  const said = sum(all, (course) => course.said);
  const wrong = sum(all, ({ saidWrongly }) => saidWrongly);
  return [
    `walls to all families read well ${mean(reached)} (${reached.length} of ${all.length})`,
    `on what was known ${(100 * known).toFixed(0)} %`,
    `all families met within ${Math.max(...met)}`,
    `faults not met ${(sum(all, ({ neverMet }) => neverMet) / all.length).toFixed(1)}`,
    `proof of all ${mean(proved)} (${proved.length})`,
    `said wrongly ${wrong} of ${said}`,
  ].join('; ');
}

function sum<T>(all: readonly T[], value: (each: T) => number): number {
  return all.reduce((total, each) => total + value(each), 0);
}

function mean(all: readonly number[]): string {
  return all.length === 0 ? '–' : (sum(all, (each) => each) / all.length).toFixed(0);
}
