import { allowedBy, causesOf } from '../../lib/failing/causes/causes';
import { marginsOf } from '../../lib/failing/margins/margins';
import { hasOneNext, turnsOf } from '../../lib/failing/margins/next';
import { type FailingWall, SEASONS } from '../../lib/failing/state/model';
import { layPlan } from '../../lib/generate/generate';
import { planWith } from '../../lib/generate/planner';
import { acted, lackingFor } from '../../lib/mechanisms/act';
import type { Mechanism } from '../../lib/mechanisms/mechanism';
import { MECHANISMS } from '../../lib/mechanisms/mechanisms';
import { WALL_KINDS } from '../../lib/wall/model';
import { surveyOf } from '../../lib/wall/survey';
import { naiveAllowed } from '../naive/failing/causes';
import { naiveMargins } from '../naive/failing/margins';

/** A wall on which something has worked. */
export interface LawFailing {
  readonly mechanism: Mechanism;
  readonly failing: FailingWall;
  readonly name: string;
}

const MASONRIES = ['anchored', 'adhered'] as const;

/** The n-th failing wall of the laws: kinds and masonries in turn, the mechanisms that fit in turn, years from its first sign on. Null where none of eight fits. */
export function failingWall(n: number): LawFailing {
  const kind = WALL_KINDS[n % WALL_KINDS.length] ?? 'plain-panel';
  const masonry = MASONRIES[Math.floor(n / WALL_KINDS.length) % 2] ?? 'anchored';
  const survey = surveyOf(layPlan(planWith(kind, masonry, 'canada', [], n)));
  const fitting = MECHANISMS.filter((each) => lackingFor(each, survey) === null);
  const mechanism = fitting[Math.floor(n / 8) % fitting.length] as Mechanism;
  const years = mechanism.showsAfter + ((n * 7) % 60);
  const season = SEASONS[(n + Math.floor(n / 4)) % 4] ?? 'summer';
  return {
    mechanism,
    failing: acted(survey, mechanism, years, season, n),
    name: `${n} ${kind} ${masonry} ${mechanism.name} ${years} ${season}`,
  };
}

export interface Judged {
  readonly broken: readonly string[];
  readonly allowed: number;
}

/** The laws of a failing wall, in words where it breaks one; and how many causes it allows. */
export function judged({ mechanism, failing, name }: LawFailing): Judged {
  const broken: string[] = [];
  const allowed = allowedBy(causesOf(failing));
  if (!allowed.includes(mechanism.name)) broken.push(`${name}: its own cause is not allowed`);
  if (allowed.length > 3) broken.push(`${name}: allows ${allowed.join(', ')}`);
  const naive = naiveAllowed(failing);
  if (naive.join() !== allowed.join())
    broken.push(`${name}: allows ${allowed.join()}, by the second measurer ${naive.join()}`);
  const margins = marginsOf(failing);
  const second = naiveMargins(failing);
  for (const { part, margin, mode } of margins) {
    const other = second.get(part);
    if (
      other === undefined ||
      Math.abs(other.margin - margin) > 1e-9 * Math.max(1, margin) ||
      other.mode !== mode
    )
      broken.push(
        `${name}: ${part} ${mode} ${margin}, by the second measurer ${other?.mode} ${other?.margin}`,
      );
  }
  if (second.size !== margins.length)
    broken.push(`${name}: ${margins.length} margins against ${second.size}`);
  const turns = turnsOf(failing, margins);
  const rising = margins.map(({ margin }) => margin).sort((a, b) => a - b);
  const [first = 0, next = Number.POSITIVE_INFINITY] = rising;
  if (hasOneNext(turns) && next <= 2 * first)
    broken.push(`${name}: asks which comes next of ${first} and ${next}`);
  if (!hasOneNext(turns) && next > 2 * first)
    broken.push(`${name}: does not ask which comes next of ${first} and ${next}`);
  for (const { unit, v } of [...failing.state.moves].map(([id, move]) => ({ unit: id, v: move.v })))
    if (!Number.isFinite(v)) broken.push(`${name}: ${unit} has gone ${v}`);
  return { broken, allowed: allowed.length };
}
