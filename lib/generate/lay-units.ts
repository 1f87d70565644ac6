import { type Mm, snap } from '../units';
import {
  type Cut,
  type HeadFill,
  type Opening,
  TALL_COURSES,
  type Texture,
  type Unit,
  type UnitKind,
} from '../wall/model';
import { courseId, courseOf, headId, unitId } from '../wall/part-id';
import { type Draft, endOf, lengthOf, levelOf, type PanelDraft, showsEnd, stepOf, steppedIn } from './draft';
import { soundBack } from './lay-backs';
import { type Piece, quoinAt, quoinPhase, soldiersOver } from './tall-units';

/** Clear runs of a course between ends and openings. */
interface Run {
  readonly from: Mm;
  readonly to: Mm;
}

/** Natural scatter of good work, mm either way: well inside every limit (common practice). */
const SCATTER = {
  length: 0.25,
  place: 0.25,
  height: 0.25,
  level: 0.375,
  fall: 0.375,
  face: 0.5,
  twist: 0.5,
  lean: 0.375,
};
/** Handmade units vary more in size; still inside every limit. */
const HANDMADE = { ...SCATTER, length: 0.75, place: 0.5, height: 0.375, face: 0.75, twist: 0.75 };

/** Lays a sound panel course by course, bottom up. */
export function layUnits(draft: Draft, panel: PanelDraft, opening: Opening | null): readonly Unit[] {
  const units: Unit[] = [];
  const scatter = draft.plan.lookAlikes.includes('handmade-size-range') ? HANDMADE : SCATTER;
  const texture: Texture = draft.plan.lookAlikes.includes('textured-units')
    ? draft.chance.pick(['rough', 'rock-face'] as const)
    : draft.plan.lookAlikes.includes('handmade-size-range')
      ? 'rough'
      : 'smooth';
  const { chance, out } = draft;
  const { length, depth } = out.family;
  const coverBack = draft.plan.masonry === 'adhered';
  for (let course = 1; course <= panel.courses; course++) {
    const row = rowOf(draft, panel, opening, course);
    for (const [index, piece] of row.entries()) {
      const position = index + 1;
      const long = snap(piece.to - piece.from) + chance.scatter(scatter.length);
      const high = heightOf(draft, piece) + chance.scatter(scatter.height);
      const cut = cutToRake(draft, panel, course, high, [index === 0, index === row.length - 1]);
      units.push({
        id: unitId(panel.id, course, position),
        panel: panel.id,
        course,
        position,
        kind: cut ? 'cut' : (piece.tall ?? kindOf(piece.to - piece.from, length)),
        x: snap(piece.from) + chance.scatter(scatter.place),
        y: levelOf(draft, course) + chance.scatter(scatter.level),
        length: long,
        height: high,
        depth,
        fall: chance.scatter(scatter.fall),
        twist: chance.scatter(scatter.twist),
        lean: chance.scatter(scatter.lean),
        set: chance.scatter(scatter.face),
        texture,
        condition: 'sound',
        shade: chance.whole(0, 7),
        ...(cut ? { cut } : {}),
        ...(coverBack ? { back: soundBack(long, high, soundBare(draft, long, cut), chance) } : {}),
      });
    }
  }
  return units;
}

/** The end units of a course under a rake are cut along it, so that their feet and tops stand in line from course to course. */
function cutToRake(
  draft: Draft,
  { gableFrom }: PanelDraft,
  course: number,
  high: Mm,
  [isFirst, isLast]: readonly [boolean, boolean],
): Cut | null {
  if (gableFrom === null || course < gableFrom || !(isFirst || isLast)) return null;
  const away = snap((high * stepOf(draft)) / draft.out.gauge);
  return { left: isFirst ? away : 0, right: isLast ? away : 0 };
}

/** How much of its limit a sound back may be bare: of a cut one less, since it is smaller than its box. */
function soundBare({ plan }: Draft, length: Mm, cut: Cut | null): number {
  return cut === null ? plan.soundUpTo : plan.soundUpTo * (1 - (cut.left + cut.right) / 2 / length);
}

/** A soldier is a unit on end; a quoin ends level with the top course it stands through. */
function heightOf({ out }: Draft, { tall }: Piece): Mm {
  const { length, height } = out.family;
  if (tall === 'soldier') return length;
  return tall === 'quoin' ? (TALL_COURSES - 1) * out.gauge + height : height;
}

/**
 * How far from the left end a course's first whole unit begins. Its first and third courses end in halves beside a quoin, so that the edge of
 * no quoin runs on in the courses under and over it. At a corner each face shows a whole unit and the end of one in turn, and the bond follows:
 * third bond goes back and forth.
 */
function offsetOf(draft: Draft, panel: PanelDraft, course: number): Mm {
  const { plan, module, out } = draft;
  if (plan.quoins) return snap(((course + quoinPhase(draft, panel)) % 2) * (module / 2));
  const parts = plan.bond === 'running' ? 2 : 3;
  if (panel.corner === null) return snap((((course - 1) % parts) * module) / parts);
  if (!showsEnd(panel, course)) return 0;
  const lap = plan.bond === 'running' ? endOf(draft) + out.joint : module / 3;
  return snap(panel.corner === 'left' ? lap : module - lap);
}

/** What is laid in a course, from the left: quoins where one starts and ends at a corner, the pieces of the bond between, soldiers over an opening. */
function rowOf(draft: Draft, panel: PanelDraft, opening: Opening | null, course: number): readonly Piece[] {
  const offset = offsetOf(draft, panel, course);
  const left = quoinAt(draft, panel, course, 'left') ?? cornerEnd(draft, panel, course, 'left');
  const right = quoinAt(draft, panel, course, 'right') ?? cornerEnd(draft, panel, course, 'right');
  const [first, ...others] = runsOf(draft, panel, opening, course).map(({ from, to }) => ({
    from: left === null ? from : Math.max(from, left.piece.to + draft.out.joint),
    to: right === null ? to : Math.min(to, right.piece.from - draft.out.joint),
  }));
  const startsOver = opening !== null && course === courseOver(draft, opening);
  return [
    ...(left?.starts ? [left.piece] : []),
    ...(first ? piecesOf(draft, first, offset) : []),
    ...(draft.plan.soldiers && startsOver ? soldiersOver(draft, opening) : []),
    ...others.flatMap((run) => piecesOf(draft, run, offset)),
    ...(right?.starts ? [right.piece] : []),
  ];
}

/** The end of the return's unit where a course shows it. */
function cornerEnd(
  draft: Draft,
  panel: PanelDraft,
  course: number,
  end: 'left' | 'right',
): { readonly piece: Piece; readonly starts: true } | null {
  if (panel.corner !== end || !showsEnd(panel, course)) return null;
  const [size, length] = [endOf(draft), lengthOf(draft, panel.modules)];
  return {
    piece: end === 'left' ? { from: 0, to: size } : { from: length - size, to: length },
    starts: true,
  };
}

/** Head joints that were probed and found full, or as good as full: how many, and how full at least, %. */
const PROBED = [3, 7] as const;
const LEAST_FULL = 98;

/** Some joints of a panel on which no weep stands: nothing is to be listed of bad joints alone. */
export function layProbed(
  { chance }: Draft,
  units: readonly Unit[],
  weeps: readonly HeadFill[],
): readonly HeadFill[] {
  const drained = new Set(weeps.map(({ joint }) => courseOf(joint)));
  const probed = new Map<HeadFill['joint'], HeadFill>();
  for (let left = chance.whole(...PROBED); left > 0; left--) {
    const at = chance.whole(0, units.length - 2);
    const [unit, right] = [units[at], units[at + 1]];
    const filled = chance.whole(LEAST_FULL, 100);
    if (unit?.kind !== 'stretcher' || right?.kind !== 'stretcher' || right.course !== unit.course) continue;
    const gap = right.x - unit.x - unit.length;
    if (gap > unit.length / 2 || drained.has(courseId(unit.panel, unit.course))) continue;
    const joint = headId(unit.id, right.position);
    probed.set(joint, { joint, filled });
  }
  return [...probed.values()];
}

function runsOf(draft: Draft, panel: PanelDraft, opening: Opening | null, course: number): readonly Run[] {
  const stepIn = steppedIn(draft, panel, course);
  const whole: Run = { from: stepIn, to: lengthOf(draft, panel.modules) - stepIn };
  if (opening === null) return [whole];
  const middle = levelOf(draft, course) + draft.out.family.height / 2;
  const high = opening.height + (draft.plan.soldiers ? TALL_COURSES * draft.out.gauge : 0);
  if (middle < opening.y || middle > opening.y + high) return [whole];
  return [
    { from: whole.from, to: opening.x },
    { from: opening.x + opening.width, to: whole.to },
  ];
}

/** The course that stands on the head of an opening. */
function courseOver(draft: Draft, { y, height }: Opening): number {
  return Math.round((y + height - draft.firstBed) / draft.out.gauge) + 1;
}

/** Cuts a run by the bond's lattice: units of one course end where those above and below are crossed. */
function piecesOf(draft: Draft, run: Run, offset: Mm): readonly Piece[] {
  const pieces: Piece[] = [];
  const { module, out } = draft;
  const first = Math.floor((run.from + out.joint - offset) / module) - 1;
  for (let cell = first; cell * module + offset < run.to; cell++) {
    const from = Math.max(run.from, cell * module + offset);
    const to = Math.min(run.to, (cell + 1) * module + offset - out.joint);
    if (to - from > out.joint) pieces.push({ from, to });
  }
  return pieces;
}

function kindOf(length: Mm, whole: Mm): UnitKind {
  if (length > whole * 0.95) return 'stretcher';
  return length > whole * 0.4 ? 'bat' : 'closer';
}
