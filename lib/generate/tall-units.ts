import type { Mm } from '../units';
import type { Opening } from '../wall/model';
import { TALL_COURSES } from '../wall/model';
import { type Draft, lengthOf, type PanelDraft } from './draft';

/** A stretch of a course, and what stands in it where it is no piece of the bond. */
export interface Piece {
  readonly from: Mm;
  readonly to: Mm;
  readonly tall?: 'soldier' | 'quoin';
}

/** The quoin that stands in a course at one end of a panel, and whether the course is its lowest; null above the last quoin and without quoins. */
export function quoinAt(
  draft: Draft,
  panel: PanelDraft,
  course: number,
  end: 'left' | 'right',
): { readonly piece: Piece; readonly starts: boolean } | null {
  if (course > quoinCourses(draft, panel)) return null;
  const block = Math.floor((course - 1) / TALL_COURSES);
  const size = lengthOfQuoin(draft, (block + quoinPhase(draft, panel)) % 2 === 0);
  const length = lengthOf(draft, panel.modules);
  return {
    piece:
      end === 'left'
        ? { from: 0, to: size, tall: 'quoin' }
        : { from: length - size, to: length, tall: 'quoin' },
    starts: (course - 1) % TALL_COURSES === 0,
  };
}

/** Two stones meet at a corner as one, long on one face and short on the other: a return begins with a short one, and its bond half a unit back. */
export function quoinPhase({ plan }: Draft, { id }: PanelDraft): 0 | 1 {
  return plan.quoins && id !== 'A' ? 1 : 0;
}

/** A unit, or one and a half: in running bond the middle one of its courses then begins with a half. */
function lengthOfQuoin({ module, out }: Draft, long: boolean): Mm {
  return module + (long ? module / 2 : 0) - out.joint;
}

/** How far from an end of the panel quoins reach. */
export function quoinReach(draft: Draft): Mm {
  return lengthOfQuoin(draft, true);
}

/** The highest course in which a quoin stands: they stop under a raking end. */
export function quoinCourses({ plan }: Draft, panel: PanelDraft): number {
  if (!plan.quoins) return 0;
  return panel.gableFrom === null ? panel.courses : panel.gableFrom - 1;
}

/** Soldiers over an opening, from jamb to jamb: as many as make their joints nearest to the joint of the wall. */
export function soldiersOver({ out }: Draft, opening: Opening): readonly Piece[] {
  const wide = out.family.height;
  const count = Math.round((opening.width - out.joint) / (wide + out.joint));
  const joint = (opening.width - count * wide) / (count + 1);
  return Array.from({ length: count }, (_, index): Piece => {
    const from = opening.x + joint + index * (wide + joint);
    return { from, to: from + wide, tall: 'soldier' };
  });
}
