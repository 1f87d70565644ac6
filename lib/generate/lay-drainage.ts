import { boundAt } from '../limits/bound';
import { limitOf } from '../limits/limits';
import { type Mm, snap } from '../units';
import type { Droppings, Flashing } from '../wall/flashing';
import type { HeadFill, Support, Unit } from '../wall/model';
import { type HeadId, headId } from '../wall/part-id';
import { chanceOf } from './chance';
import type { Draft } from './draft';

/** What leads water out of a panel. */
export interface Drainage {
  readonly flashings: readonly Flashing[];
  readonly weeps: readonly HeadFill[];
  readonly droppings: readonly Droppings[];
}

/** A head joint between two neighbours, and its middle. */
interface Joint {
  readonly id: HeadId;
  readonly middle: Mm;
}

/** Its own stream of chance for each panel, so that nothing else of a wall moves with it. */
const STREAM = 40;
/** A sound flashing stands past the face line by so much, mm, and its ends are turned up as high: one bend of a sheet (common practice). */
const PAST_FACE = [8, 14] as const;
const DAM = [32, 60] as const;
/** How much higher than asked sound work turns it up, in hundredths, and over the upright leg of an angle, mm. */
const UP_PERCENT = [104, 130] as const;
const OVER_LEG: Mm = 40;
/** Droppings that a wall can do with: heaps at its foot, how high and how long, mm. */
const HEAPS = [0, 2] as const;
const HEAP_HIGH = [4, 16] as const;
const HEAP_LONG = [150, 500] as const;
/** Natural scatter moves a joint by less than this, mm. */
const SCATTERED: Mm = 4;
/** A weep stands clear of the end dam of a flashing by this, mm. */
const CLEAR_OF_DAM: Mm = 20;

/** Flashings on the ledge and then over the lintel, weeps as many units apart as wanted or a little less, and the droppings of sound work. */
export function layDrainage(
  draft: Draft,
  units: readonly Unit[],
  supports: readonly Support[],
  length: Mm,
  every: number,
): Drainage {
  const panel = units[0]?.panel ?? 'A';
  const chance = chanceOf(draft.plan.seed, STREAM + panel.charCodeAt(0) - 'A'.charCodeAt(0));
  const upstand = limitOf(draft.plan.rules, 'flashing-upstand');
  const least = upstand ? boundAt(upstand, {}) : 0;
  const flashings = supports.map((support): Flashing => {
    const { y, angle, kind } = support;
    const [fromX, toX] = kind === 'ledge' ? [0, length] : endsOver(draft, units, support, length);
    const up = (least * chance.whole(...UP_PERCENT)) / 100;
    return {
      panel,
      y,
      fromX,
      toX,
      shape: {
        up: Math.round(Math.max(up, (angle?.vertical ?? 0) + OVER_LEG)),
        front: chance.whole(...PAST_FACE),
        leftDam: chance.whole(...DAM),
        rightDam: chance.whole(...DAM),
      },
    };
  });
  return {
    flashings,
    weeps: flashings.flatMap((flashing) => weepsOn(draft, units, flashing, every)),
    droppings: flashings.slice(0, 1).flatMap(({ y, fromX, toX }) =>
      Array.from({ length: chance.whole(...HEAPS) }, (): Droppings => {
        const long = chance.whole(...HEAP_LONG);
        const from = snap(fromX + ((toX - fromX - long) * chance.whole(0, 100)) / 100);
        return { panel, y, height: chance.whole(...HEAP_HIGH), fromX: from, toX: from + long };
      }),
    ),
  };
}

/** Over an opening a flashing ends in the first head joint past each end of the steel, where its ends can be turned up. */
function endsOver(
  draft: Draft,
  units: readonly Unit[],
  { y, fromX, toX }: Support,
  length: Mm,
): readonly [Mm, Mm] {
  const middles = runsOn(draft, units, y).flatMap((run) => jointsOf(run).map(({ middle }) => middle));
  return [
    snap(Math.max(0, ...middles.filter((middle) => middle < fromX))),
    snap(Math.min(length, ...middles.filter((middle) => middle > toX))),
  ];
}

/** The course that stands on a level, parted where no joint is. */
function runsOn({ out }: Draft, units: readonly Unit[], y: Mm): readonly (readonly Unit[])[] {
  const runs: Unit[][] = [];
  let last: Unit | null = null;
  for (const unit of units) {
    if (unit.y < y || unit.y - y >= out.gauge / 2) continue;
    if (last !== null && unit.x - last.x - last.length < out.family.length / 2) {
      runs[runs.length - 1]?.push(unit);
    } else runs.push([unit]);
    last = unit;
  }
  return runs;
}

function jointsOf(run: readonly Unit[]): readonly Joint[] {
  return run.slice(1).flatMap((right, index): readonly Joint[] => {
    const left = run[index];
    return left === undefined
      ? []
      : [{ id: headId(left.id, right.position), middle: (left.x + left.length + right.x) / 2 }];
  });
}

/** Open head joints, each as far from the one before as they may be. */
function weepsOn(
  draft: Draft,
  units: readonly Unit[],
  { y, fromX, toX }: Flashing,
  every: number,
): readonly HeadFill[] {
  const reach = every * draft.module + SCATTERED;
  return runsOn(draft, units, y).flatMap((run) => {
    const first = run[0]?.x ?? 0;
    const end = Math.min(toX, ...run.slice(-1).map(({ x, length }) => x + length));
    const joints = jointsOf(run).filter(
      ({ middle }) => middle > fromX + CLEAR_OF_DAM && middle < toX - CLEAR_OF_DAM,
    );
    const weeps: HeadFill[] = [];
    let last = Math.max(fromX, first);
    while (end - last > reach) {
      const next = joints.findLast(({ middle }) => middle > last && middle <= last + reach);
      if (next === undefined) break;
      weeps.push({ joint: next.id, filled: 0 });
      last = next.middle;
    }
    return weeps;
  });
}
