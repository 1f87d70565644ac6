import { distanceTo } from '../geometry/box';
import type { CheckId } from '../inspect/finding';
import { MOST_NAMES_A_PART, type RawMark } from '../marking/mark';
import type { Mm } from '../units';
import { bedId, headId, isOfKind, parsePartId, unitId } from '../wall/part-id';
import type { Part } from '../wall/parts';
import type { SurveyedWall } from '../wall/surveyed';

/** A tie is the one meant when it lies no farther off than this, mm: half of what ties are ever apart. */
const TIE_REACH: Mm = 120;

/**
 * The parts of the wall that are meant by a part of its bare wall, from the left: nearly always the one of the same name. Two pieces that
 * stand in the place of one unit are both meant; what is wanting is told by what it would serve, a tie by its panel, a lintel by its
 * opening. Empty for no part of the bare wall.
 */
export function meantParts(bare: SurveyedWall, { parts }: SurveyedWall, id: string): readonly Part[] {
  const asked = bare.parts.get(id);
  const name = parsePartId(id);
  if (asked === undefined || name === null) return [];
  const known = (...ids: readonly string[]) => ids.flatMap((each) => parts.get(each) ?? []).slice(0, 1);
  const unitsAt = (place: Part | undefined): readonly Part[] => {
    if (place === undefined) return [];
    const room = bare.wall.joint / 2;
    return [...parts.values()].filter(
      ({ kind, panel, course, x, width }) =>
        kind === 'unit' &&
        panel === place.panel &&
        course === place.course &&
        x + width / 2 >= place.x - room &&
        x + width / 2 <= place.x + place.width + room,
    );
  };
  switch (name.kind) {
    case 'unit':
      return unitsAt(asked);
    case 'bed':
      return unitsAt(bare.parts.get(unitId(name.panel, name.course, name.position))).flatMap((unit) =>
        isOfKind(unit.id, 'unit') ? known(bedId(unit.id), unit.id) : [],
      );
    case 'head': {
      const left = unitsAt(bare.parts.get(unitId(name.panel, name.course, name.position))).at(-1);
      const right = parsePartId(
        unitsAt(bare.parts.get(unitId(name.panel, name.course, name.right)))[0]?.id ?? '',
      );
      if (left === undefined || !isOfKind(left.id, 'unit') || right?.kind !== 'unit') return [];
      return known(headId(left.id, right.position), left.id);
    }
    case 'tie': {
      const near = [...parts.values()]
        .filter(({ kind, panel }) => kind === 'tie' && panel === asked.panel)
        .map((tie) => ({ tie, away: awayOf(tie, asked) }))
        .filter(({ away }) => away <= TIE_REACH)
        .sort((a, b) => a.away - b.away);
      return near[0] ? [near[0].tie] : known(asked.panel);
    }
    case 'support': {
      const opening = bare.wall.supports.find((each) => each.id === id)?.opening ?? '';
      return known(id, opening);
    }
    default:
      return known(id);
  }
}

function awayOf(tie: Part, asked: Part): Mm {
  return distanceTo({ ...asked, width: 0, height: 0 }, tie.x, tie.y);
}

/** Who names a small piece means the smaller of two, else the larger. */
function oneOf(parts: readonly Part[], fault: CheckId): Part | undefined {
  const bySize = parts.toSorted((a, b) => a.width - b.width);
  return fault === 'sliver-piece' ? bySize[0] : bySize.at(-1);
}

/** Marks made on a bare wall, on the parts of the wall that are meant. A part that it does not have stays, for the grading to refuse. */
export function meantMarks(
  bare: SurveyedWall,
  wall: SurveyedWall,
  marks: readonly RawMark[],
): readonly RawMark[] {
  const names = new Map<string, Set<CheckId>>();
  return marks.map((mark) => {
    const part = oneOf(meantParts(bare, wall, mark.part), mark.fault);
    if (part === undefined) return mark;
    // What is wanting and what it would serve are one part of the wall: of too many names there the last are the panel's.
    const given = names.get(part.id) ?? new Set();
    const isFull = given.size >= MOST_NAMES_A_PART && !given.has(mark.fault);
    names.set(part.id, isFull ? given : given.add(mark.fault));
    return { ...mark, part: isFull ? part.panel : part.id };
  });
}
