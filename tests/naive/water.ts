import type { RuleSetId } from '../../lib/limits/limit';
import type { Flashing } from '../../lib/wall/flashing';
import type { Support, Unit, Wall } from '../../lib/wall/model';
import { numberOf, ruleOf } from './bounds';
import { coursesOf, type Head, headsOfCourse, overlap, rightOf, unitsOf } from './geometry';
import { found, isOver, isUnder, type NaiveFinding } from './naive-finding';
import { faces } from './regions';

/** How a wall drains. A wall that tells of no droppings, not even that there are none, is not asked. */
export function measureWater(wall: Wall, rules: RuleSetId): NaiveFinding[] {
  if (wall.droppings === undefined) return [];
  return [
    ...wall.flashings.flatMap((flashing) => [
      ...weepStretches(wall, rules, flashing),
      ...stoppedWeeps(wall, rules, flashing),
      ...shapes(wall, rules, flashing),
    ]),
    ...bareSupports(wall, rules),
  ];
}

const near = (wall: Wall, a: number, b: number) => Math.abs(a - b) < wall.gauge / 2;
const standsOn = (wall: Wall, flashing: Flashing, unit: Unit) =>
  unit.panel === flashing.panel && unit.y >= flashing.y && near(wall, unit.y, flashing.y);

function panelCourses(wall: Wall, id: string): number[] {
  return wall.panels.filter((panel) => panel.id === id).flatMap((panel) => coursesOf(wall, panel));
}

/** Every head joint in the course on a flashing, both of whose units stand on it, at least in part over it. */
function headsOn(wall: Wall, flashing: Flashing): Head[] {
  const { fromX, toX } = flashing;
  return panelCourses(wall, flashing.panel)
    .flatMap((course) => headsOfCourse(wall, flashing.panel, course))
    .filter(({ left, right }) =>
      [left, right].every(
        (unit) => standsOn(wall, flashing, unit) && overlap(unit.x, rightOf(unit), fromX, toX),
      ),
    );
}

const middleOf = ({ left, right }: Head) => (rightOf(left) + right.x) / 2;

function isOpen(wall: Wall, flashing: Flashing, head: Head): boolean {
  if (!wall.heads.some(({ joint, filled }) => joint === head.id && filled === 0)) return false;
  return rightOf(head.left) >= flashing.fromX && head.right.x <= flashing.toX;
}

function weepStretches(wall: Wall, rules: RuleSetId, flashing: Flashing): NaiveFinding[] {
  const most = numberOf(rules, 'weep-spacing');
  if (most === undefined) return [];
  const { panel, fromX, toX } = flashing;
  const units = unitsOf(wall, panel)
    .filter((unit) => standsOn(wall, flashing, unit) && overlap(unit.x, rightOf(unit), fromX, toX))
    .sort((a, b) => a.x - b.x);
  const heads = headsOn(wall, flashing);
  const findings: NaiveFinding[] = [];
  let start: number | undefined;
  for (const unit of units) {
    // A run begins where no head joint leads to the unit, and ends where none leads on.
    if (!heads.some(({ right }) => right.id === unit.id)) start = Math.max(fromX, unit.x);
    const next = heads.find(({ left }) => left.id === unit.id);
    if (next !== undefined && !isOpen(wall, flashing, next)) continue;
    const end = next === undefined ? Math.min(toX, rightOf(unit)) : middleOf(next);
    const from = start ?? fromX;
    start = end;
    if (!isOver(end - from, most)) continue;
    const between = heads.filter(
      (head) => middleOf(head) > from && middleOf(head) < end && !isOpen(wall, flashing, head),
    );
    const along = units.filter((each) => each.x < end && rightOf(each) > from);
    const named = between.length > 0 ? between : along;
    findings.push(
      found(
        'weeps-too-far-apart',
        named.map(({ id }) => id),
        end - from,
        most,
        { ...faces(along), x: from, width: end - from },
      ),
    );
  }
  return findings;
}

function stoppedWeeps(wall: Wall, rules: RuleSetId, flashing: Flashing): NaiveFinding[] {
  const least = numberOf(rules, 'weep-size');
  if (least === undefined) return [];
  const findings: NaiveFinding[] = [];
  for (const head of headsOn(wall, flashing)) {
    if (!isOpen(wall, flashing, head)) continue;
    const { left, right } = head;
    let low = Math.max(left.y - left.fall, right.y);
    const high = Math.min(left.y - left.fall + left.height, right.y + right.height);
    for (const heap of wall.droppings ?? []) {
      const lies = heap.panel === flashing.panel && near(wall, heap.y, flashing.y);
      const across = heap.fromX <= middleOf(head) && heap.toX >= middleOf(head);
      if (lies && across) low = Math.max(low, heap.y + heap.height);
    }
    const open = Math.max(0, high - low);
    if (isUnder(open, least)) findings.push(found('blocked-weep', [head.id, left.id, right.id], open, least));
  }
  return findings;
}

const liesOn = (wall: Wall, { panel, y, fromX, toX }: Flashing, support: Support) =>
  support.panel === panel && near(wall, support.y, y) && overlap(support.fromX, support.toX, fromX, toX);

function shapes(wall: Wall, rules: RuleSetId, flashing: Flashing): NaiveFinding[] {
  const { shape, panel, y, fromX, toX } = flashing;
  const under = wall.supports.filter(
    (support) => support.material !== 'wood' && liesOn(wall, flashing, support),
  );
  if (shape === undefined || under.length === 0) return [];
  const long = wall.panels.find(({ id }) => id === panel)?.length ?? 0;
  const dams: number[] = [];
  if (fromX > 0) dams.push(shape.leftDam);
  if (toX < long) dams.push(shape.rightDam);
  const outermost = Math.max(...under.map(({ front }) => front));
  const asked = [
    ['low-flashing', 'flashing-upstand', shape.up],
    ['short-flashing', 'flashing-past-face', Math.max(0, shape.front - outermost)],
    ...(dams.length === 0 ? [] : [['no-end-dam', 'end-dam', Math.min(...dams)] as const]),
  ] as const;
  const region = { panel, x: fromX, y: y - wall.gauge / 2, width: toX - fromX, height: wall.gauge };
  return asked.flatMap(([check, limit, measured]) => {
    const least = numberOf(rules, limit);
    return least !== undefined && isUnder(measured, least)
      ? [
          found(
            check,
            under.map(({ id }) => id),
            measured,
            least,
            region,
          ),
        ]
      : [];
  });
}

function bareSupports(wall: Wall, rules: RuleSetId): NaiveFinding[] {
  if (ruleOf(rules, 'flashing-present') === undefined) return [];
  return wall.supports
    .filter(
      (support) =>
        support.material !== 'wood' && !wall.flashings.some((flashing) => liesOn(wall, flashing, support)),
    )
    .map(({ id, panel, fromX, toX, y }) =>
      found('no-flashing', [id], 0, 1, {
        panel,
        x: fromX,
        y: y - wall.gauge / 2,
        width: toX - fromX,
        height: wall.gauge,
      }),
    );
}
