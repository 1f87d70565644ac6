import type { Step, Tally, WallAnswer } from '../../classes/statistics/wall-answer';
import type { GradedFinding, Result } from '../../exercise/result';
import { parseResults } from '../../exercise/stored-results';
import type { FiveMarks } from '../../marking/five-marks';
import type { Store } from '../database';

/** Whose answers. `latest` keeps to the hand-ins made last: a big group has more than a page can read. */
export type Whose = { readonly latest?: number } & (
  | { readonly work: string }
  | { readonly learners: readonly string[] }
  | { readonly group: string }
);

export interface AttemptAnswers {
  readonly attempt: string;
  readonly learner: string;
  readonly work: string;
  readonly number: number;
  readonly handedInAt: number | null;
  readonly walls: readonly WallAnswer[];
}

/** Attempts read at once: their results are long. */
const PAGE = 50;

/** The newest marking of every marked hand-in, wall by wall, the latest hand-in first. Learners removed are left out. */
export async function attemptAnswers(db: Store['db'], whose: Whose): Promise<readonly AttemptAnswers[]> {
  let query = db
    .selectFrom('attempt as a')
    .innerJoin('learner as l', 'l.id', 'a.learner_id')
    .select(['a.id', 'a.learner_id', 'a.set_work_id', 'a.number', 'a.handed_in_at'])
    .where('a.state', 'in', ['marked', 'released'])
    .where('l.removed_at', 'is', null)
    .orderBy('a.handed_in_at', 'desc')
    .orderBy('a.id');
  if ('work' in whose) query = query.where('a.set_work_id', '=', whose.work);
  if ('learners' in whose) query = query.where('a.learner_id', 'in', whose.learners);
  if ('group' in whose) query = query.where('l.group_id', '=', whose.group);
  if (whose.latest !== undefined) query = query.limit(whose.latest);
  const attempts = await query.execute();
  const answers: AttemptAnswers[] = [];
  for (let start = 0; start < attempts.length; start += PAGE) {
    const page = attempts.slice(start, start + PAGE);
    const walls = await wallsOf(
      db,
      page.map(({ id }) => id),
    );
    for (const { id, learner_id, set_work_id, number, handed_in_at } of page) {
      const at = { learner: learner_id, work: set_work_id };
      answers.push({
        attempt: id,
        ...at,
        number,
        handedInAt: handed_in_at,
        walls: (walls.get(id) ?? []).map((wall) => wallAnswerOf({ ...at, ...wall.at }, wall.result)),
      });
    }
  }
  return answers;
}

async function wallsOf(db: Store['db'], attempts: readonly string[]) {
  const versions = await db
    .selectFrom('result_version as r')
    .select(['r.attempt_id', 'r.results'])
    .where('r.attempt_id', 'in', attempts)
    .where((e) =>
      e(
        'r.version',
        '=',
        e
          .selectFrom('result_version as newest')
          .select((n) => n.fn.max('newest.version').as('version'))
          .whereRef('newest.attempt_id', '=', 'r.attempt_id'),
      ),
    )
    .execute();
  const walls = await db
    .selectFrom('attempt_wall')
    .select(['attempt_id', 'place', 'code', 'says_sound'])
    .where('attempt_id', 'in', attempts)
    .orderBy('place')
    .execute();
  return new Map(
    versions.map(({ attempt_id, results }) => {
      const own = walls.filter((wall) => wall.attempt_id === attempt_id);
      const paired = parseResults(results).flatMap((result, index) => {
        const wall = own[index];
        if (wall === undefined) return [];
        return { at: { place: wall.place, code: wall.code, saysSound: wall.says_sound === 1 }, result };
      });
      return [attempt_id, paired] as const;
    }),
  );
}

/** Whose answer it is, and on which wall. */
export type AnsweredAt = Pick<WallAnswer, 'learner' | 'work' | 'place' | 'code' | 'saysSound'>;

export function wallAnswerOf(
  at: AnsweredAt,
  { score, findings, marks, parts, answered }: Result,
): WallAnswer {
  return {
    ...at,
    score,
    answered,
    faults: findings.map(({ finding, outcome, mark: index }) => {
      const own = index === null || !isFound(outcome) ? undefined : marks[index]?.mark;
      const named = outcome === 'found' ? finding.check : (own?.fault ?? null);
      return {
        fault: finding.check,
        hazard: finding.hazard,
        found: isFound(outcome),
        named: isFound(outcome) ? named : null,
        sure: own?.sure ?? null,
      };
    }),
    falseMarks: marks.flatMap(({ mark, outcome }) => (outcome === 'false' ? mark : [])),
    steps: asked(parts),
  };
}

/** One joint off is the right place, but not the fault's own joint: it is not found. */
function isFound(outcome: GradedFinding['outcome']): boolean {
  return outcome === 'found' || outcome === 'wrong name';
}

/** Without the steps that nobody was asked for. */
function asked(steps: FiveMarks): Partial<Record<Step, Tally>> {
  return Object.fromEntries(Object.entries(steps).filter(([, { of }]) => of > 0));
}
