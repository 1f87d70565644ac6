import { SLOT } from '../../drawing/colours';
import { shareOf } from '../../drawing/drawn-chance';
import type { Area, Shape } from '../../drawing/shape';
import { type Point, type Ring, rectRing } from '../../geometry/polygon';
import type { Mm } from '../../units';
import { topLeft, topRight } from '../../wall/cut';
import { isTall, type Panel, type Unit, type Wall } from '../../wall/model';
import { headId } from '../../wall/part-id';
import type { PanelSurvey, Placed } from '../../wall/survey';
import { courseRows, type InCourse, partBeside } from '../course-rows';
import { faceOf } from '../unit-outline';
import { DAYLIGHT, type Light } from '../viewing-conditions';

/** How far the edge of a unit shades a tooled or flush joint, mm: down, and half of it to the right. */
const TOOLED_SHADE = 2.6;
const FLUSH_SHADE = 0.9;
/** A raked joint lies in its units' shade by this much for each mm of recess. */
const RAKED_SHADE = 0.5;

/** A joint lies no deeper in shade than this: the unit below stands in the light again, mm. */
const MOST_SHADE: Mm = 12;

/** The mortar between the units of a panel, its shade under the units, and what is not filled. */
export function frontJoints(wall: Wall, survey: PanelSurvey, light: Light = DAYLIGHT): readonly Shape[] {
  const courses = courseRows(survey);
  const starting = courses.flatMap((row, index) => row.filter(({ unit }) => unit.course === index + 1));
  const patches = [...survey.placed.map(mortarAround), ...courses.flat().flatMap(mortarBesideTall)];
  const [aside, down] = shadeIn(survey.panel, light);
  const raked = survey.panel.profile === 'raked';
  return [
    { kind: 'area', rings: patches, fill: 'url:mortar' },
    ...(raked ? [{ kind: 'area', rings: patches, fill: '#1a1310', opacity: 0.12 } as Area] : []),
    {
      kind: 'area',
      // A free end shades nothing beside it.
      rings: starting.map(({ unit, left, right }) =>
        shifted(faceOf(unit), (aside < 0 ? left : right) === null ? 0 : aside, -down),
      ),
      fill: '#1a1310',
      opacity: raked ? 0.42 : 0.36,
    },
    ...slots(wall, survey),
  ];
}

/** How far the shade of the units reaches over the joint, to the right and down, mm. A raked joint is as deep as it is; a tooled one rounds off. */
function shadeIn(panel: PanelSurvey['panel'], light: Light): readonly [Mm, Mm] {
  const shade = jointShade(panel);
  if (light === DAYLIGHT) return [shade / 2, shade];
  const deep = panel.profile === 'raked' ? panel.recess : shade / DAYLIGHT.down;
  const aside = Math.min(MOST_SHADE, deep * Math.abs(light.right));
  return [light.right < 0 ? -aside : aside, Math.min(MOST_SHADE, deep * light.down)];
}

export function jointShade({ profile, recess }: PanelSurvey['panel']): number {
  if (profile === 'raked') return Math.max(TOOLED_SHADE, recess * RAKED_SHADE);
  return profile === 'concave' ? TOOLED_SHADE : FLUSH_SHADE;
}

/** What one unit brings with it, as one ring behind it: the bed under it and the head joint to its right, where the two are as high. */
function mortarAround({ unit, bed, right, below }: Placed): Ring {
  const [lowLeft, lowRight, highRight, highLeft] = faceOf(unit);
  const next = right === null || isTall(unit) !== isTall(right.unit) ? null : faceOf(right.unit);
  const footRight = lowRight[1] - (bed?.right ?? 0);
  // Under a cut end the bed goes on along its slope, as far as there is something to lie on.
  const { cut, height } = unit;
  const leftFoot = cut
    ? Math.max(lowLeft[0] - (cut.left * (bed?.left ?? 0)) / height, topLeft(below[0]?.unit ?? unit))
    : lowLeft[0];
  const rightFoot = cut
    ? Math.min(
        lowRight[0] + (cut.right * (bed?.right ?? 0)) / height,
        topRight(below[below.length - 1]?.unit ?? unit),
      )
    : lowRight[0];
  const foot: Point = [leftFoot, lowLeft[1] - (bed?.left ?? 0)];
  if (next === null || right === null) return [foot, [rightFoot, footRight], highRight, highLeft];
  const nextFoot = right.bed === null ? footRight : next[0][1] - right.bed.left;
  return [foot, [next[0][0], nextFoot], next[3], highRight, highLeft];
}

/** The joint between a tall unit and a lower one to its right or left, and the end of the bed under that. */
function mortarBesideTall({ placed, unit, right }: InCourse): readonly Ring[] {
  if (right === null || isTall(unit) === isTall(right.unit)) return [];
  const lower = isTall(unit) ? right : placed;
  const left = partBeside(unit, lower);
  const beyond = partBeside(right.unit, lower);
  const foot = Math.min(left.y - left.fall, beyond.y) - (lower.bed?.left ?? 0);
  return [
    [
      [left.x + left.length, foot],
      [beyond.x, foot],
      [beyond.x, beyond.y + beyond.height],
      [left.x + left.length, left.y - left.fall + left.height],
    ],
  ];
}

function shifted(ring: Ring, x: number, y: number): Ring {
  return ring.map(([px, py]) => [px + x, py + y]);
}

/** Dark slots where head joints are open: as much of the joint's height as is not filled, from the top down. */
function slots(wall: Wall, { panel, placed: all }: PanelSurvey): readonly Shape[] {
  const filled = new Map(wall.heads.map((head) => [head.joint, head.filled]));
  const rings = all.flatMap((placed) => {
    const { unit, right } = placed;
    if (right === null) return [];
    const share = filled.get(headId(unit.id, right.unit.position));
    if (share === undefined || share >= 100) return [];
    return [slotRing(partBeside(unit, right), partBeside(right.unit, placed), 1 - share / 100)];
  });
  if (rings.length === 0) return [];
  return [
    { kind: 'area', rings, fill: SLOT, pen: { paint: '#000000', width: 0.5, opacity: 0.4 } },
    ...mortarInSlots(wall, panel, rings),
  ];
}

/** Droppings seen through the open joints that they lie behind: mortar in deep shade. */
function mortarInSlots(
  { droppings = [], gauge }: Wall,
  { id }: Panel,
  slots: readonly Ring[],
): readonly Shape[] {
  const rings = slots.flatMap((slot) => {
    const [[left, foot], [right]] = slot as [Point, Point];
    const head = Math.max(...slot.map(([, y]) => y));
    const middle = (left + right) / 2;
    return droppings.flatMap(({ panel, y, height, fromX, toX }): readonly Ring[] => {
      const lies = panel === id && fromX <= middle && middle <= toX && foot >= y && foot - y < gauge;
      const top = Math.min(head, y + height);
      return lies && top > foot ? [rectRing(left, foot, right - left, top - foot)] : [];
    });
  });
  if (rings.length === 0) return [];
  return [
    { kind: 'area', rings, fill: 'url:mortar' },
    { kind: 'area', rings, fill: '#1a1310', opacity: 0.45 },
  ];
}

/** The open part of the head joint between two units; `open` is its share of the joint's height. */
export function slotRing(left: Unit, right: Unit, open: number): Ring {
  const [, lowLeft, highLeft] = faceOf(left);
  const [lowRight, , , highRight] = faceOf(right);
  const footLeft = highLeft[1] - (highLeft[1] - lowLeft[1]) * open;
  const footRight = highRight[1] - (highRight[1] - lowRight[1]) * open;
  if (open === 1) return [[lowLeft[0], footLeft], [lowRight[0], footRight], highRight, highLeft];
  // The mortar that is there ends in a rough slope; the mean of its edge keeps the measured share.
  const tip = (shareOf(left.id, 21) - 0.5) * 4;
  return [[lowLeft[0], footLeft - tip], [lowRight[0], footRight + tip], highRight, highLeft];
}

/** A plain ring for shared overlays: cheap, four corners. */
export function plainFace(unit: Unit): Ring {
  return unit.fall === 0 && unit.cut === undefined
    ? rectRing(unit.x, unit.y, unit.length, unit.height)
    : faceOf(unit);
}
