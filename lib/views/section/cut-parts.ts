import { cut, cutMortar, cutStrap } from '../../drawing/cut';
import { scatterOf } from '../../drawing/drawn-chance';
import { type Area, type Paint, rect, type Shape } from '../../drawing/shape';
import { type Ring, rectRing } from '../../geometry/polygon';
import type { Mm } from '../../units';
import { heightAt } from '../../wall/cut';
import type { Flashing } from '../../wall/flashing';
import type { Support, Tie, Unit, Wall } from '../../wall/model';
import type { PanelSurvey, Placed } from '../../wall/survey';
import { courseRows } from '../course-rows';
import { jointShade } from '../front/joints';
import { isStone } from '../front/stone-faces';

/** The units that a cut at x goes through, bottom up, each once; of a head joint the unit to its left. */
export function unitsCut(survey: PanelSurvey, x: Mm): readonly Placed[] {
  const through = courseRows(survey).flatMap((course) => {
    const hit = course.find(({ unit }) => x >= unit.x && x < unit.x + unit.length);
    const beside = course.find(({ unit, right }) => right !== null && x >= unit.x && x < right.unit.x);
    return hit ? [hit.placed] : beside ? [beside.placed] : [];
  });
  return [...new Set(through)];
}

/** The hatching of a cut unit. */
export function cutFill(wall: Pick<Wall, 'finish'>, unit: Pick<Unit, 'kind'>): Paint {
  return isStone(wall, unit) ? 'url:cut-stone' : 'url:cut-brick';
}

/** A cut unit: back to face, leaning as it leans; its underside and top at the cut. */
export function cutUnit(wall: Wall, unit: Unit, x: Mm): Area {
  const along = Math.min(1, Math.max(0, (x - unit.x) / unit.length));
  const low = unit.y - unit.fall * along;
  const high = heightAt(unit, x);
  const z = unit.set + unit.twist * (along - 0.5);
  const face = (up: number): Mm => z + unit.lean * (up - 0.5);
  const nick = scatterOf(unit.id, 60, 0.6);
  const top = high / unit.height;
  return cut(
    [
      [face(0) - unit.depth, low],
      [face(0) - 1, low],
      [face(0), low + Math.min(1.4, high / 3)],
      [face(top / 2) + nick, low + high * 0.5],
      [face(top), low + high - Math.min(1.4, high / 3)],
      [face(top) - 1, low + high],
      [face(top) - unit.depth, low + high],
    ],
    cutFill(wall, unit),
  );
}

/** The bed under a cut unit, from the back to the mortar's face: tooled, flush or raked back. */
export function cutBed(survey: PanelSurvey, { unit, bed, support }: Placed, x: Mm): readonly Shape[] {
  if (bed === null) return [];
  const along = Math.min(1, Math.max(0, (x - unit.x) / unit.length));
  const thick = bed.left + (bed.right - bed.left) * along;
  const low = unit.y - unit.fall * along;
  const { profile, recess } = survey.panel;
  const face = unit.set - (profile === 'raked' ? recess : 0);
  const back = Math.max(unit.set - unit.depth, support ? support.back : Number.NEGATIVE_INFINITY);
  const front = support ? Math.min(face, support.front) : face;
  // On a support the mortar reaches the edge it lies on; past it there is a pointed lip under the unit.
  return [
    cutMortar(back, front, low - thick, low, profile === 'concave' ? undefined : 0),
    ...(profile === 'raked'
      ? [
          rect(
            { x: face, y: low - thick, width: Math.max(1, jointShade(survey.panel) / 3), height: thick },
            '#1a1310',
            0.4,
          ),
        ]
      : []),
  ];
}

/** The flat part of a cut support: concrete or wood as a block, steel as an angle with its two legs. */
export function cutSupport(support: Support, deep: Mm): readonly Shape[] {
  const { y, back, front, angle, material } = support;
  if (angle !== undefined) {
    const { vertical, thickness } = angle;
    const ring: Ring = [
      [back, y - thickness],
      [front, y - thickness],
      [front, y],
      [back + thickness, y],
      [back + thickness, y - thickness + vertical],
      [back, y - thickness + vertical],
    ];
    return [cut(ring, 'url:cut-steel')];
  }
  const fill = material === 'wood' ? 'url:cut-wood' : material === 'steel' ? 'url:cut-steel' : 'url:concrete';
  return [cut(rectRing(back, y - deep, front - back, deep), fill)];
}

/** Where the air space begins behind the units. */
export function framesFace(wall: Wall): Mm {
  return -wall.family.depth - wall.cavity;
}

/** A strap from the sheathing through the air space into its bed: as thick and as far in as it is. */
export function cutTie(wall: Wall, tie: Tie): readonly Shape[] {
  return cutStrap(framesFace(wall), -wall.family.depth + tie.embedment, tie.y, tie.thickness);
}

/** The flashing that a cut at x goes through at a level. */
export function flashingAt(wall: Wall, { panel }: PanelSurvey, x: Mm, y: Mm): Flashing | undefined {
  const isCut = (each: Flashing) => each.panel === panel.id && each.fromX <= x && each.toX >= x;
  return wall.flashings.find((each) => isCut(each) && Math.abs(each.y - y) < wall.gauge / 2);
}
