import { formatInches, formatMm, inches, type LengthSystem, type Mm } from '../../units';
import { isTall, type Panel, type Tie, topCourseOf, type Unit, type Wall } from '../../wall/model';
import { bedId, cornerId, endId, headId } from '../../wall/part-id';
import { headWidth, type Placed, surveyOf } from '../../wall/survey';
import { offSquare, turnOf } from '../plan/corner';
import type { View } from '../view';
import type { Distance } from '../viewing-conditions';
import { seenOn } from './condition-words';

/**
 * What every part is called aloud: where it is and what a rule laid on it would read; never whether that is right. Only what the
 * view shows is said: a tie's strap has no length from in front, and nobody reads a joint from six metres.
 */
export function partNames(
  wall: Wall,
  view: View,
  system: LengthSystem,
  distance: Distance = 'near',
): ReadonlyMap<string, string> {
  const names = new Map<string, string>();
  const length = (mm: Mm): string => (system === 'mm' ? formatMm(Math.round(mm)) : formatInches(mm));
  const where = (panel: string): string => (wall.panels.length > 1 ? `wall ${panel}, ` : '');
  const near = (words: string): string => (distance === 'near' ? words : '');
  const filled = new Map(wall.heads.map((head) => [head.joint, head.filled]));
  for (const survey of surveyOf(wall).panels) {
    const wallName = where(survey.panel.id);
    for (const placed of survey.placed) {
      nameUnit(names, placed, survey.panel, wallName, (bed) =>
        near(`, left ${length(bed.left)}, right ${length(bed.right)}`),
      );
      if (placed.right !== null) {
        const { unit, right } = placed;
        const id = headId(unit.id, right.unit.position);
        const share = filled.get(id) ?? 100;
        const fill = share >= 100 ? '' : share <= 0 ? ', open' : near(`, filled ${share}%`);
        const width = near(`, ${length(headWidth(unit, right.unit))} wide`);
        names.set(
          id,
          `${wallName}course ${unit.course}, head joint after unit ${unit.position}${width}${fill}`,
        );
      }
    }
    for (const opening of survey.openings) {
      names.set(
        opening.id,
        `${wallName}${opening.kind}, ${length(opening.width)} wide, ${length(opening.height)} high`,
      );
    }
    for (const { id, kind, material, fromX, toX, opening } of survey.supports) {
      const over = survey.openings.find((each) => each.id === opening)?.kind ?? 'opening';
      const said = kind === 'ledge' ? `${material} ledge` : `${material} lintel over the ${over}`;
      names.set(
        id,
        `${wallName}${said}${view.kind === 'section' || kind === 'ledge' ? `, ${length(toX - fromX)} long` : ''}`,
      );
    }
    for (const tie of survey.ties) names.set(tie.id, `${wallName}${tieName(wall, tie, length, system)}`);
    names.set(endId(survey.panel.id, 'left'), `${wallName}left end`);
    names.set(endId(survey.panel.id, 'right'), `${wallName}right end`);
  }
  for (const [index, { id }] of wall.panels.entries()) {
    const next = wall.panels[index + 1];
    if (next) names.set(cornerId(id, next.id), `corner of wall ${id} and wall ${next.id}`);
  }
  const turn = view.kind === 'before-cover' ? turnOf(wall) : null;
  if (turn !== null) {
    const off = system === 'mm' ? formatMm(offSquare(turn)) : formatInches(offSquare(turn));
    names.set(
      turn.corner,
      `${names.get(turn.corner)}, ${length(1000)} along wall ${turn.turned.id} lies ${off} off square`,
    );
  }
  return names;
}

function nameUnit(
  names: Map<string, string>,
  placed: Placed,
  panel: Panel,
  wallName: string,
  thickness: (bed: NonNullable<Placed['bed']>) => string,
): void {
  const { unit, bed } = placed;
  const at = `${wallName}course ${unit.course}`;
  names.set(unit.id, `${at}, ${unitWords(placed, panel)}${seenOn(unit.condition)}`);
  if (bed !== null) {
    names.set(bedId(unit.id), `${at}, bed under unit ${unit.position}${thickness(bed)}`);
  }
}

/** "unit 3, bat"; "soldier 4 of the row, unit 12, standing through course 25"; "quoin at the left end, unit 1, standing through course 6". */
function unitWords(placed: Placed, panel: Panel): string {
  const { unit } = placed;
  if (!isTall(unit)) return `unit ${unit.position}, ${unit.kind}`;
  const kind =
    unit.kind === 'soldier'
      ? `soldier ${soldiersTo(placed)} of the row`
      : `quoin at the ${endOf(unit, panel)}`;
  return `${kind}, unit ${unit.position}, standing through course ${topCourseOf(unit)}`;
}

/** Soldiers from the left of a row to this one, itself counted. */
function soldiersTo({ left }: Placed): number {
  return left?.unit.kind === 'soldier' ? 1 + soldiersTo(left) : 1;
}

/** The end of its panel that a quoin stands at. */
function endOf({ x, length }: Pick<Unit, 'x' | 'length'>, panel: Pick<Panel, 'length'>): string {
  return x + length / 2 < panel.length / 2 ? 'left end' : 'right end';
}

/** "tie over course 7, 400 mm from the left, 1.00 mm strap 25 mm wide, 50 mm in the bed": the thickness as a caliper reads it. */
function tieName(wall: Wall, tie: Tie, length: (mm: Mm) => string, system: LengthSystem = 'mm'): string {
  const reach = wall.cavity > 0 ? `, ${length(wall.cavity + tie.embedment)} long` : '';
  return `tie over course ${tie.course}, ${length(tie.x)} from the left, ${caliper(tie.thickness, system)} strap ${length(tie.width)} wide${reach}, ${length(tie.embedment)} in the bed`;
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
