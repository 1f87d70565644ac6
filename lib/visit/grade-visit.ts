import type { Weighed } from '../failing/causes/causes';
import { type FailingWall, STILL } from '../failing/state/model';
import type { UnitId } from '../wall/part-id';
import { NEVER, neededToday, type StreetAct, type TodayAct, wrongOrders } from './acts';
import { type CauseAnswer, type CauseVerdict, judgeCause } from './judge-cause';
import type { Risk } from './risk';
import { type Condition, farthest, type Shown } from './shown';

/** What costs how many points. Ours: what could hurt somebody costs more than what was not seen. Caution costs nothing. */
export const COSTS = {
  'wrong act': 3,
  'wrong order': 3,
  'left open': 3,
  'not told': 2,
  missed: 1,
  'false mark': 1,
  'wrong next': 1,
  'wrong cause': 1,
  'beyond the evidence': 1,
} as const;

export interface VisitMark {
  readonly condition: Condition;
  readonly part: UnitId;
}

/** All that was done and said on a visit. */
export interface Visited {
  readonly street: readonly StreetAct[];
  readonly touched: readonly UnitId[];
  readonly marks: readonly VisitMark[];
  /** The unit that may come down next; null: none. */
  readonly next: UnitId | null;
  readonly cause: CauseAnswer;
  readonly today: readonly TodayAct[];
}

/** A failing wall with all that is measured of it. */
export interface Measured {
  readonly failing: FailingWall;
  readonly risk: Risk;
  readonly shown: readonly Shown[];
  readonly causes: readonly Weighed[];
}

export interface VisitResult {
  readonly found: readonly { readonly shown: Shown; readonly isFound: boolean }[];
  readonly falseMarks: readonly VisitMark[];
  readonly orders: readonly (readonly [first: StreetAct, then: StreetAct])[];
  readonly wrongActs: readonly (StreetAct | TodayAct)[];
  /** Touched though it, or what is above it, may come down. */
  readonly touched: readonly UnitId[];
  /** Needed today and not done. */
  readonly undone: readonly TodayAct[];
  readonly isNextRight: boolean;
  readonly cause: CauseVerdict;
  /** Points lost, each by what it was lost for. */
  readonly lost: Readonly<Record<keyof typeof COSTS, number>>;
}

export function gradeVisit(visited: Visited, measured: Measured): VisitResult {
  const { risk, shown, causes } = measured;
  const found = shown.map((each) => ({
    shown: each,
    isFound: visited.marks.some(
      ({ condition, part }) => condition === each.condition && each.parts.includes(part),
    ),
  }));
  const falseMarks = visited.marks.filter((mark) => isFalse(mark, measured));
  const orders = wrongOrders(visited.street);
  const isClosed = visited.street.includes('keep-away');
  const wrongActs = [...visited.street, ...visited.today].filter((act) => NEVER.includes(act));
  const touched = visited.touched.filter((part) => risk.untouchable.has(part));
  const undone = neededToday({
    mayFall: risk.loose.size > 0,
    hasMoved: shown.some(({ condition }) => condition === 'cracked' || condition === 'moved'),
  }).filter((act) => !visited.today.includes(act));
  // Where nothing may come down, a unit named all the same is caution.
  const isNextRight = risk.next.length === 0 || (visited.next !== null && risk.next.includes(visited.next));
  const cause = judgeCause(visited.cause, causes);
  const counts = {
    'wrong act': wrongActs.length + touched.length,
    'wrong order': orders.length + (isClosed || orders.some(([first]) => first === 'keep-away') ? 0 : 1),
    'left open': undone.includes('closed') ? 1 : 0,
    'not told': undone.filter((act) => act !== 'closed').length,
    missed: found.filter(({ isFound }) => !isFound).length,
    'false mark': falseMarks.length,
    'wrong next': isNextRight ? 0 : 1,
    'wrong cause': isCauseWrong(cause) ? 1 : 0,
    'beyond the evidence': cause.kind === 'one of several' ? 1 : 0,
  };
  const lost = Object.fromEntries(
    Object.entries(counts).map(([what, count]) => [what, count * COSTS[what as keyof typeof COSTS]]),
  ) as VisitResult['lost'];
  return { found, falseMarks, orders, wrongActs, touched, undone, isNextRight, cause, lost };
}

export function pointsLost({ lost }: VisitResult): number {
  return Object.values(lost).reduce((sum, points) => sum + points, 0);
}

/** A cause that the wall rules out or does not show, a reading that would not tell, or one named with no sign that carries it. */
function isCauseWrong(verdict: CauseVerdict): boolean {
  switch (verdict.kind) {
    case 'barred':
    case 'lacks':
    case 'would not tell':
      return true;
    case 'the cause':
    case 'one of several':
      return verdict.kind === 'the cause' && (verdict.named.length === 0 || verdict.notSo.length > 0);
    case 'told apart':
    case 'could be told':
      return false;
    default: {
      const unknown: never = verdict;
      throw new RangeError(`verdict ${String(unknown)} is none`);
    }
  }
}

/** On nothing of its kind, and not in doubt either: to call a unit loose is caution; what has moved less than counts, or has a broken joint, is not held against anybody. */
function isFalse({ condition, part }: VisitMark, { failing, shown }: Measured): boolean {
  if (shown.some((each) => each.condition === condition && each.parts.includes(part))) return false;
  const { moves, contacts } = failing.state;
  switch (condition) {
    case 'loose':
      return false;
    case 'moved':
      return farthest(moves.get(part) ?? STILL) === 0;
    case 'cracked':
      return !contacts.some(
        ({ unit, other, state }) => state !== 'bonded' && (unit === part || other === part),
      );
    case 'missing':
    case 'flaked':
    case 'mortar gone':
      return true;
    default: {
      const unknown: never = condition;
      throw new RangeError(`condition ${String(unknown)} is none`);
    }
  }
}
