import type { RuleSetId } from '../limits/limit';
import { type Mm, snap } from '../units';
import type { Opening, Tie } from '../wall/model';
import { tieId } from '../wall/part-id';
import { type Draft, lengthOf, levelOf, type PanelDraft, steppedIn, topOf } from './draft';
import { quoinCourses, quoinReach } from './tall-units';

/** How sound ties are set out under each rule set: studs apart, courses between rows in the field and at edges. */
interface TieField {
  readonly studs: Mm;
  readonly rowCourses: number;
  /** So many courses under the top lies the highest row, where the rules say how near; rows then count down from it. */
  readonly topRow: number | null;
  /** The first row of edge columns, and courses between their rows. */
  readonly edgeFrom: number;
  readonly edgeCourses: number;
  /** Courses between rows on quoins: whole quoins. */
  readonly quoinCourses: number;
  readonly embedment: Mm;
}

const SIXTEEN_INCHES = 406.375;
const NORTH_AMERICA: TieField = {
  studs: SIXTEEN_INCHES,
  rowCourses: 6,
  topRow: null,
  edgeFrom: 6,
  edgeCourses: 6,
  quoinCourses: 6,
  embedment: 50,
};
const FIELDS: Readonly<Record<RuleSetId, TieField>> = {
  canada: NORTH_AMERICA,
  ontario: NORTH_AMERICA,
  'good-practice': NORTH_AMERICA,
  'united-states': { ...NORTH_AMERICA, rowCourses: 7, edgeFrom: 7, edgeCourses: 7 },
  'united-kingdom': {
    studs: 400,
    rowCourses: 5,
    topRow: 2,
    edgeFrom: 2,
    edgeCourses: 3,
    quoinCourses: 3,
    embedment: 64,
  },
};
/** An edge stud stands this far from the jamb or end. */
const EDGE: Mm = 100;
/** Two studs stand no nearer than this. */
const SMALLEST_GAP: Mm = 50;
/** Straps as they come in boxes, one for a panel: thickness and width, mm, over every minimum (common practice). */
const THICKNESSES = [0.85, 0.9, 1, 1.2, 1.5] as const;
const WIDTHS = [24, 25, 28, 30] as const;
/** How far in ties reach more or less than is wanted, mm. */
const REACH_SCATTER = 4;

/** Stud centre lines: one at each edge and jamb, then outward from the jamb at the stud spacing; evenly across an opening. */
export function studsOf(draft: Draft, panel: PanelDraft, opening: Opening | null): readonly Mm[] {
  const { studs } = FIELDS[draft.plan.rules];
  const end = lengthOf(draft, panel.modules) - EDGE;
  if (opening === null) return marching(EDGE, end, studs);
  const leftJamb = opening.x - EDGE;
  const rightJamb = opening.x + opening.width + EDGE;
  const across = Math.ceil((rightJamb - leftJamb) / studs);
  const inner = Array.from({ length: across - 1 }, (_, index) =>
    snap(leftJamb + ((index + 1) * (rightJamb - leftJamb)) / across),
  );
  const mirroredLeft = marching(0, leftJamb - EDGE, studs).map((away) => leftJamb - away);
  return [...mirroredLeft.reverse(), ...inner, ...marching(rightJamb, end, studs)];
}

/** Ties of sound work: rows in the field, closer rows where the rules want them at edges; none where an opening or a raking end is. */
export function layTies(
  draft: Draft,
  panel: PanelDraft,
  opening: Opening | null,
  studs: readonly Mm[],
  freeEnds: readonly ('left' | 'right')[],
): readonly Tie[] {
  const field = FIELDS[draft.plan.rules];
  const length = lengthOf(draft, panel.modules);
  const ties: Tie[] = [];
  const strap = { thickness: draft.chance.pick(THICKNESSES), width: draft.chance.pick(WIDTHS) };
  for (let course = 2; course < panel.courses; course++) {
    const inField = isFieldRow(draft.plan.rules, panel, course);
    const atEdge = course >= field.edgeFrom && (course - field.edgeFrom) % field.edgeCourses === 0;
    const y = snap((topOf(draft, course) + levelOf(draft, course + 1)) / 2);
    const stepIn = steppedIn(draft, panel, course + 1);
    let place = 0;
    for (const x of studs) {
      if (x < stepIn + EDGE - 1 || x > length - stepIn - EDGE + 1) continue;
      if (opening !== null && x > opening.x && x < opening.x + opening.width && insideHeight(opening, y))
        continue;
      const edge =
        (freeEnds.includes('left') && x <= EDGE) ||
        (freeEnds.includes('right') && x >= length - EDGE) ||
        (opening !== null &&
          (x === opening.x - EDGE || x === opening.x + opening.width + EDGE) &&
          insideHeight(opening, y));
      const underRake = panel.gableFrom !== null && isLastUnderRake(draft, panel, course, x);
      const onQuoin = isAtQuoin(draft, panel, course, x);
      if (onQuoin ? course % field.quoinCourses !== 0 : !inField && !(atEdge && edge) && !underRake) continue;
      place += 1;
      ties.push({
        ...strap,
        kind: 'strap',
        id: tieId(panel.id, course, place),
        panel: panel.id,
        course,
        x,
        y,
        embedment: field.embedment + draft.chance.whole(-REACH_SCATTER, REACH_SCATTER),
      });
    }
  }
  return ties;
}

/** Whether a quoin stands at x or beside it: ties there lie on top of quoins. */
function isAtQuoin(draft: Draft, panel: PanelDraft, course: number, x: Mm): boolean {
  if (course > quoinCourses(draft, panel)) return false;
  const reach = quoinReach(draft);
  return x <= reach || x >= lengthOf(draft, panel.modules) - reach;
}

/** Whether a row of the field lies on a course. Under a rake the last ties follow the slope, so the rows count up from the foot. */
export function isFieldRow(
  rules: RuleSetId,
  { courses, gableFrom }: Pick<PanelDraft, 'courses' | 'gableFrom'>,
  course: number,
): boolean {
  const { rowCourses, topRow } = FIELDS[rules];
  const from = topRow === null || gableFrom !== null ? 0 : courses - topRow;
  return (course - from) % rowCourses === 0;
}

function insideHeight(opening: Opening, y: Mm): boolean {
  return y > opening.y && y < opening.y + opening.height;
}

/** The next course up has no room for a tie at x: a raking end is tied along its slope, a course or two below it. */
function isLastUnderRake(draft: Draft, panel: PanelDraft, course: number, x: Mm): boolean {
  const stepIn = steppedIn(draft, panel, course + 2);
  const over = lengthOf(draft, panel.modules) - stepIn;
  return course === panel.courses - 1 || x < stepIn + EDGE - 1 || x > over - EDGE + 1;
}

/** From `from` in equal steps, and a last one at `to`. */
function marching(from: Mm, to: Mm, step: Mm): readonly Mm[] {
  const places: Mm[] = [];
  for (let place = from; place < to - SMALLEST_GAP; place += step) places.push(snap(place));
  places.push(to);
  return places;
}
