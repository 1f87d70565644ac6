import { allowedBy, causesOf, type Weighed } from '../../lib/failing/causes/causes';
import { type Margin, marginsOf } from '../../lib/failing/margins/margins';
import { letGo, type Turn, turnsOf } from '../../lib/failing/margins/next';
import { type Crack, cracksOf } from '../../lib/failing/state/cracks';
import type { FailingWall, Season } from '../../lib/failing/state/model';
import { repairOf } from '../../lib/failing/state/repair';
import { acted } from '../../lib/mechanisms/act';
import type { Mechanism } from '../../lib/mechanisms/mechanism';
import { MECHANISMS } from '../../lib/mechanisms/mechanisms';
import type { Survey } from '../../lib/wall/survey';

interface Asked {
  readonly mechanism: Mechanism;
  readonly years: number;
  readonly season: Season;
  readonly seed: number;
  /** How many units are to come away, one after the other. */
  readonly losses: number;
}

interface Read {
  readonly state: object;
  readonly lost: readonly Margin[];
  readonly margins: readonly Margin[];
  readonly next: readonly Turn[];
  readonly causes: readonly Weighed[];
}

/** A wall after a mechanism has worked on it, and the units that have come away since. */
export interface Lost {
  readonly failing: FailingWall;
  readonly lost: readonly Margin[];
}

export function failingWall(survey: Survey, { mechanism, years, season, seed, losses }: Asked): Lost {
  return letGo(acted(survey, mechanism, years, season, seed), losses);
}

/** What can be seen, how each unit is held, which come next, what causes the wall allows. */
export function readFailing({ failing, lost }: Lost): Read {
  const margins = marginsOf(failing);
  return {
    state: shownState(failing),
    lost,
    margins,
    next: turnsOf(failing, margins),
    causes: causesOf(failing),
  };
}

function shownState(failing: FailingWall): object {
  const { state } = failing;
  return {
    ...state,
    moves: Object.fromEntries(state.moves),
    splits: Object.fromEntries(state.splits),
    supports: Object.fromEntries(state.supports),
    missing: Object.fromEntries(state.missing),
    cracks: cracksOf(failing).map(shownCrack),
  };
}

function shownCrack(crack: Crack): object {
  return { ...crack, repair: repairOf(crack.width) };
}

export function failingText({ next, causes }: Read): string {
  const [first] = next;
  const allowed = allowedBy(causes);
  const coming =
    first === undefined
      ? 'nothing is left'
      : `next: ${first.parts.slice(0, 6).join(', ')}${first.parts.length > 6 ? ' and others' : ''}, ${Math.round(first.margin * 100) / 100} times what draws on it`;
  return `${coming}\nallowed: ${allowed.length === 0 ? 'no cause' : allowed.join(', ')}`;
}

export function mechanismHelp(): string {
  return MECHANISMS.map(({ name, what }) => `${name.padEnd(20)}${what}`).join('\n');
}
