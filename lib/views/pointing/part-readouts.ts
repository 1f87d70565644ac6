import { formatInches, formatMm, inches, type LengthSystem, type Mm } from '../../units';
import { clearHeight, isOver, pastEdge, supportsUnder, tellsDrainage, weepsOf } from '../../wall/drainage';
import { isTall, type Support, type Tie, topCourseOf, type Wall } from '../../wall/model';
import { bedId, headId } from '../../wall/part-id';
import { headWidth, type PanelSurvey, type Placed, type Survey } from '../../wall/survey';
import { offSquare, turnOf } from '../plan/corner';
import type { View } from '../view';
import type { Distance } from '../viewing-conditions';
import { seenOn } from './condition-words';

/**
 * What a rule laid on each part would read, and what is seen there, said after its name: ", left 10 mm, right 10 mm"; never whether that
 * is right. Only what the view shows is said: a tie's strap has no length from in front, and nobody reads a joint from six metres.
 */
export function partReadouts(
  { wall, panels }: Survey,
  view: View,
  system: LengthSystem,
  distance: Distance = 'near',
): ReadonlyMap<string, string> {
  const readouts = new Map<string, string>();
  const length = (mm: Mm): string => (system === 'mm' ? formatMm(Math.round(mm)) : formatInches(mm));
  const near = (words: string): string => (distance === 'near' ? words : '');
  const blocked = new Set(panels.flatMap((survey) => blockedWeeps({ wall, panels }, survey)));
  const filled = new Map(wall.heads.map((head) => [head.joint, head.filled]));
  for (const survey of panels) {
    for (const placed of survey.placed) {
      const { unit, bed, right } = placed;
      readouts.set(unit.id, `${unitReadout(placed)}${seenOn(unit.condition)}`);
      if (bed !== null) {
        readouts.set(bedId(unit.id), near(`, left ${length(bed.left)}, right ${length(bed.right)}`));
      }
      if (right !== null) {
        const id = headId(unit.id, right.unit.position);
        const share = filled.get(id) ?? 100;
        // As the eye sees it, to a tenth: the share is for the probe to tell.
        const fill = blocked.has(id)
          ? near(', open, mortar behind it')
          : share <= 0
            ? ', open'
            : near(Math.round(share / 10) === 10 ? ', full' : ', partly open');
        readouts.set(id, `${near(`, ${length(headWidth(unit, right.unit))} wide`)}${fill}`);
      }
    }
    for (const { id, width, height } of survey.openings) {
      readouts.set(id, `, ${length(width)} wide, ${length(height)} high`);
    }
    for (const support of survey.supports) {
      const { id, kind, fromX, toX } = support;
      const isCut = view.kind === 'section';
      const drained = isCut ? flashingReadout(wall, survey, support, length) : '';
      if (isCut || kind === 'ledge') readouts.set(id, `, ${length(toX - fromX)} long${drained}`);
    }
    for (const tie of survey.ties) readouts.set(tie.id, tieReadout(wall, tie, length, system));
  }
  const turn = view.kind === 'before-cover' ? turnOf(wall) : null;
  if (turn !== null) {
    const off = system === 'mm' ? formatMm(offSquare(turn)) : formatInches(offSquare(turn));
    readouts.set(turn.corner, `, ${length(1000)} along wall ${turn.turned.id} lies ${off} off square`);
  }
  return readouts;
}

/** Weeps that droppings lie behind to half their height and more: one sees mortar in them. */
function blockedWeeps(survey: Survey, panel: PanelSurvey): readonly string[] {
  return survey.wall.flashings
    .filter((flashing) => flashing.panel === panel.panel.id)
    .flatMap((flashing) =>
      weepsOf(survey, panel, flashing)
        .filter((weep) => clearHeight(survey.wall, flashing, weep) < weep.left.unit.height / 2)
        .map(({ id }) => id),
    );
}

/** ", flashing 210 mm up the backing and 8 mm past the edge, end dams 40 mm and 35 mm"; nothing of a wall that does not tell. */
function flashingReadout(
  wall: Wall,
  survey: PanelSurvey,
  support: Support,
  length: (mm: Mm) => string,
): string {
  if (!tellsDrainage(wall)) return '';
  const flashing = wall.flashings.find((each) => isOver(each, support, wall.gauge));
  if (flashing === undefined) return ', no flashing on it';
  const { shape, fromX, toX } = flashing;
  if (shape === undefined) return '';
  const past = length(pastEdge(shape, supportsUnder(wall, survey, flashing)));
  const dams = [
    ...(fromX > 0 ? [length(shape.leftDam)] : []),
    ...(toX < survey.panel.length ? [length(shape.rightDam)] : []),
  ];
  const ends = dams.length > 0 ? `, end dams ${dams.join(' and ')}` : '';
  return `, flashing ${length(shape.up)} up the backing and ${past} past the edge${ends}`;
}

/** ", bat"; ", number 4 in the row, standing through course 25". */
function unitReadout(placed: Placed): string {
  const { unit } = placed;
  if (unit.cut !== undefined) return ', cut to the slope';
  if (!isTall(unit)) return `, ${unit.kind}`;
  const inRow = unit.kind === 'soldier' ? `, number ${soldiersTo(placed)} in the row` : '';
  return `${inRow}, standing through course ${topCourseOf(unit)}`;
}

/** Soldiers from the left of a row to this one, itself counted. */
function soldiersTo({ left }: Placed): number {
  return left?.unit.kind === 'soldier' ? 1 + soldiersTo(left) : 1;
}

/** ", 400 mm from the left, 1.00 mm strap 25 mm wide, 50 mm in the bed": the thickness as a caliper reads it. */
function tieReadout(wall: Wall, tie: Tie, length: (mm: Mm) => string, system: LengthSystem): string {
  const reach = wall.cavity > 0 ? `, ${length(wall.cavity + tie.embedment)} long` : '';
  return `, ${length(tie.x)} from the left, ${caliper(tie.thickness, system)} strap ${length(tie.width)} wide${reach}, ${length(tie.embedment)} in the bed`;
}

/** As read on a caliper: hundredths of a millimetre, or thousandths of an inch ("0.039 in"). */
export function caliper(thickness: Mm, system: LengthSystem = 'mm'): string {
  if (system === 'inches') {
    const thousandths = Math.round((thickness / inches(1)) * 1000);
    return `${Math.floor(thousandths / 1000)}.${String(thousandths % 1000).padStart(3, '0')} in`;
  }
  const hundredths = Math.round(thickness * 100);
  return `${Math.floor(hundredths / 100)}.${String(hundredths % 100).padStart(2, '0')} mm`;
}
