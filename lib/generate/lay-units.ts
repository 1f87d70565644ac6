import { type Mm, snap } from '../units';
import { type HeadFill, headId, type Opening, type Texture, type Unit, type UnitKind } from '../wall/model';
import { type Draft, lengthOf, levelOf, type PanelDraft } from './draft';

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
  const parts = draft.plan.bond === 'running' ? 2 : 3;
  const scatter = draft.plan.lookAlikes.includes('handmade-size-range') ? HANDMADE : SCATTER;
  const texture: Texture = draft.plan.lookAlikes.includes('textured-units')
    ? draft.chance.pick(['rough', 'rock-face'] as const)
    : draft.plan.lookAlikes.includes('handmade-size-range')
      ? 'rough'
      : 'smooth';
  const { chance, out } = draft;
  const { length, height, depth } = out.family;
  const coverBack = draft.plan.masonry === 'adhered';
  for (let course = 1; course <= panel.courses; course++) {
    const offset = snap((((course - 1) % parts) * draft.module) / parts);
    let position = 0;
    for (const run of runsOf(draft, panel, opening, course)) {
      for (const piece of piecesOf(draft, run, offset)) {
        position += 1;
        const kind = kindOf(piece.to - piece.from, length);
        units.push({
          id: `${panel.id}${course}.${position}`,
          panel: panel.id,
          course,
          position,
          kind,
          x: piece.from + chance.scatter(scatter.place),
          y: levelOf(draft, course) + chance.scatter(scatter.level),
          length: piece.to - piece.from + chance.scatter(scatter.length),
          height: height + chance.scatter(scatter.height),
          depth,
          fall: chance.scatter(scatter.fall),
          twist: chance.scatter(scatter.twist),
          lean: chance.scatter(scatter.lean),
          set: chance.scatter(scatter.face),
          texture,
          condition: 'sound',
          shade: chance.whole(0, 7),
          ...(coverBack
            ? { back: [{ x: 0, y: snap(chance.whole(0, 3) / 4), width: snap(length + 2), height }] }
            : {}),
        });
      }
    }
  }
  return units;
}

/** Weeps: open head joints in the first course and over a lintel, two or three units apart. */
export function layWeeps(
  units: readonly Unit[],
  courses: readonly { course: number; from: Mm; to: Mm }[],
  every: number,
): readonly HeadFill[] {
  const weeps: HeadFill[] = [];
  for (const { course, from, to } of courses) {
    const row = units.filter(
      (unit) => unit.course === course && unit.x >= from && unit.x + unit.length <= to,
    );
    for (let index = every - 1; index < row.length - 1; index += every) {
      const left = row[index];
      const right = row[index + 1];
      if (left && right && right.x - left.x - left.length < left.length / 2) {
        weeps.push({ joint: headId(left.id, right.position), filled: 0 });
      }
    }
  }
  return weeps;
}

function runsOf(draft: Draft, panel: PanelDraft, opening: Opening | null, course: number): readonly Run[] {
  const steps = panel.gableFrom !== null && course >= panel.gableFrom ? course - panel.gableFrom + 1 : 0;
  const parts = draft.plan.bond === 'running' ? 2 : 3;
  const stepIn = snap((steps * draft.module) / parts);
  const whole: Run = { from: stepIn, to: lengthOf(draft, panel.modules) - stepIn };
  const middle = levelOf(draft, course) + draft.out.family.height / 2;
  if (opening === null || middle < opening.y || middle > opening.y + opening.height) return [whole];
  return [
    { from: whole.from, to: opening.x },
    { from: opening.x + opening.width, to: whole.to },
  ];
}

/** Cuts a run by the bond's lattice: units of one course end where those above and below are crossed. */
function piecesOf(draft: Draft, run: Run, offset: Mm): readonly Run[] {
  const pieces: Run[] = [];
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
