import type { Mm } from '../units';
import type { Droppings, Flashing, FlashingShape } from './flashing';
import type { Support, Wall } from './model';
import { type HeadId, headId } from './part-id';
import type { PanelSurvey, Placed, Survey } from './survey';

/** A head joint in a course on a flashing. */
export interface DrainedHead {
  readonly id: HeadId;
  readonly left: Placed;
  readonly right: Placed;
  readonly middle: Mm;
  /** Left open right on the flashing. */
  readonly isWeep: boolean;
}

/** A stretch of a course along which water finds no way out: from a weep, or an end of the run, to the next. */
export interface WeepGap {
  readonly from: Mm;
  readonly to: Mm;
  /** What stands along it: units, and the head joints between them that are no weeps. */
  readonly units: readonly Placed[];
  readonly heads: readonly DrainedHead[];
}

/** Whether a wall tells how it drains. Earlier engines laid flashings and weeps and told no more of them. */
export function tellsDrainage({ droppings }: Wall): boolean {
  return droppings !== undefined;
}

/** An open head in the course right on a flashing. */
export function isWeep({ wall }: Survey, { unit }: Placed, right: Placed): boolean {
  return wall.flashings.some(
    (flashing) =>
      isOn(wall, flashing, unit) && unit.x + unit.length >= flashing.fromX && right.unit.x <= flashing.toX,
  );
}

/** A unit stands right on a flashing when its underside is no lower than it, and less than half a gauge over it. */
function isOn({ gauge }: Wall, { panel, y }: Flashing, unit: Placed['unit']): boolean {
  return unit.panel === panel && unit.y >= y && unit.y - y < gauge / 2;
}

/** The course on a flashing, in runs of units with head joints between: an opening parts them. */
function runsOn(
  { wall }: Survey,
  { placed }: PanelSurvey,
  flashing: Flashing,
): readonly (readonly Placed[])[] {
  const runs: Placed[][] = [];
  let last: Placed | null = null;
  for (const each of placed) {
    const { unit } = each;
    const over = Math.min(unit.x + unit.length, flashing.toX) - Math.max(unit.x, flashing.fromX);
    if (!isOn(wall, flashing, unit) || over <= 0) continue;
    const run = runs[runs.length - 1];
    if (run !== undefined && last !== null && last.right === each) run.push(each);
    else runs.push([each]);
    last = each;
  }
  return runs;
}

function headsOf(survey: Survey, run: readonly Placed[]): readonly DrainedHead[] {
  const open = new Set(survey.wall.heads.filter(({ filled }) => filled === 0).map(({ joint }) => joint));
  return run.slice(1).flatMap((right, index): readonly DrainedHead[] => {
    const left = run[index];
    if (left === undefined) return [];
    const id = headId(left.unit.id, right.unit.position);
    const middle = (left.unit.x + left.unit.length + right.unit.x) / 2;
    return [{ id, left, right, middle, isWeep: open.has(id) && isWeep(survey, left, right) }];
  });
}

/** Along a flashing, every stretch from weep to weep, and from the ends of the run to the first and the last. */
export function weepGapsOf(survey: Survey, panel: PanelSurvey, flashing: Flashing): readonly WeepGap[] {
  return runsOn(survey, panel, flashing).flatMap((run) => {
    const [first, last] = [run[0], run[run.length - 1]];
    if (first === undefined || last === undefined) return [];
    const heads = headsOf(survey, run);
    const from = Math.max(flashing.fromX, first.unit.x);
    const to = Math.min(flashing.toX, last.unit.x + last.unit.length);
    const stops = [from, ...heads.filter((head) => head.isWeep).map(({ middle }) => middle), to];
    return stops.slice(1).map((end, index): WeepGap => {
      const start = stops[index] ?? from;
      return {
        from: start,
        to: end,
        units: run.filter(({ unit }) => unit.x < end && unit.x + unit.length > start),
        heads: heads.filter((head) => !head.isWeep && head.middle > start && head.middle < end),
      };
    });
  });
}

/** The weeps right on a flashing. */
export function weepsOf(survey: Survey, panel: PanelSurvey, flashing: Flashing): readonly DrainedHead[] {
  return runsOn(survey, panel, flashing).flatMap((run) => headsOf(survey, run).filter((head) => head.isWeep));
}

/** How much of a weep's height is open over the mortar that lies behind it on the flashing: 0 where that reaches over its top. */
export function clearHeight(wall: Wall, flashing: Flashing, { left, right, middle }: DrainedHead): Mm {
  const beside = left.unit.y - left.unit.fall;
  const foot = Math.max(beside, right.unit.y);
  const head = Math.min(beside + left.unit.height, right.unit.y + right.unit.height);
  const tops = heapsAt(wall, flashing, middle).map(({ y, height }) => y + height);
  return Math.max(0, head - Math.max(foot, ...tops));
}

/** The droppings on a flashing at a place along it: their level is its own within half a gauge. */
export function heapsAt({ droppings = [], gauge }: Wall, flashing: Flashing, x: Mm): readonly Droppings[] {
  return droppings.filter(
    ({ panel, y, fromX, toX }) =>
      panel === flashing.panel && Math.abs(y - flashing.y) < gauge / 2 && fromX <= x && x <= toX,
  );
}

/** Supports, but of wood, under a flashing: its level is theirs, within half a gauge, and they share some length. */
export function supportsUnder(
  { gauge }: Wall,
  { supports }: PanelSurvey,
  flashing: Flashing,
): readonly Support[] {
  return supports.filter((support) => support.material !== 'wood' && isOver(flashing, support, gauge));
}

export function isOver({ panel, y, fromX, toX }: Flashing, support: Support, gauge: Mm): boolean {
  return (
    panel === support.panel &&
    Math.abs(y - support.y) < gauge / 2 &&
    Math.min(toX, support.toX) > Math.max(fromX, support.fromX)
  );
}

/** How far a flashing reaches past the foremost edge under it: nothing where it stops there, or inside. */
export function pastEdge({ front }: FlashingShape, under: readonly Support[]): Mm {
  return Math.max(0, front - Math.max(...under.map((support) => support.front)));
}

/** The lower of its end dams, of ends with masonry beyond them; null where the flashing runs from end to end of its panel. */
export function lowestDam({ fromX, toX }: Flashing, shape: FlashingShape, length: Mm): Mm | null {
  const dams = [...(fromX > 0 ? [shape.leftDam] : []), ...(toX < length ? [shape.rightDam] : [])];
  return dams.length === 0 ? null : Math.min(...dams);
}
