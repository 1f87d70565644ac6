import { type Mm, snap } from '../units';
import type { Opening, Unit, Wall } from '../wall/model';
import { openingId, type PanelId } from '../wall/part-id';
import type { Chance } from './chance';
import type { SettingOut } from './families';
import type { Plan } from './plan';

/** Everything the laying steps share: the plan, the units it is built of, and where things come. Levels are undersides of courses. */
export interface Draft {
  readonly plan: Plan;
  readonly out: SettingOut;
  readonly chance: Chance;
  /** Thickness of the first bed, on the ledge. */
  readonly firstBed: Mm;
  readonly module: Mm;
}

/** Underside of a course (from 1), without scatter. */
export function levelOf(draft: Draft, course: number): Mm {
  return draft.firstBed + (course - 1) * draft.out.gauge;
}

/** Top of a course, without scatter; course 0 is the ledge. */
export function topOf(draft: Draft, course: number): Mm {
  return course === 0 ? 0 : levelOf(draft, course) + draft.out.family.height;
}

/** Clear length of a panel of n whole units. */
export function lengthOf(draft: Draft, modules: number): Mm {
  return modules * draft.module - draft.out.joint;
}

/** A panel before it is laid. Openings are given by whole units and courses, so that the bond works at both jambs. */
export interface PanelDraft {
  readonly id: PanelId;
  readonly modules: number;
  readonly courses: number;
  readonly opening: OpeningDraft | null;
  /** The first course that is cut to the rake of a gable. */
  readonly gableFrom: number | null;
  /** The end that meets another panel. */
  readonly corner: 'left' | 'right' | null;
}

export interface OpeningDraft {
  readonly kind: 'window' | 'door';
  /** Whole units left of the opening, and in its width. */
  readonly leftModules: number;
  readonly widthModules: number;
  /** The course whose top is the sill (0 = the ledge) and the course whose top is the head. */
  readonly sillCourse: number;
  readonly headCourse: number;
}

/** The opening's clear rectangle: from the last unit of the left part to the first of the right, or a quarter of a unit on, so that closers come at the jambs. */
export function openingOf(draft: Draft, panel: PanelDraft, opening: OpeningDraft): Opening {
  const closers = draft.plan.lookAlikes.includes('closers-at-reveal');
  const x = snap(lengthOf(draft, opening.leftModules) + (closers ? draft.module / 4 : 0));
  const y = topOf(draft, opening.sillCourse);
  return {
    id: openingId(panel.id, opening.kind),
    panel: panel.id,
    kind: opening.kind,
    x,
    y,
    width: opening.widthModules * draft.module + draft.out.joint,
    height: topOf(draft, opening.headCourse) - y,
  };
}

/** How much further in each end of a panel rises from one course to the next under a rake. */
export function stepOf({ plan, module }: Draft): Mm {
  return plan.bond === 'running' ? module / 2 : module / 3;
}

/** How far in from the ends of the panel the foot of a course begins: the first course under a rake begins at the ends, and is cut. */
export function steppedIn(draft: Draft, { gableFrom }: PanelDraft, course: number): Mm {
  return gableFrom === null || course < gableFrom ? 0 : snap((course - gableFrom) * stepOf(draft));
}

/** What a unit shows on the return of a corner: its end; a slip is a piece cut round the corner of a whole brick, which is half a unit wide. */
export function endOf({ plan, out, module }: Draft): Mm {
  return plan.masonry === 'adhered' ? snap(module / 2 - out.joint) : out.family.depth;
}

/** Whether a course shows the end of the return's unit at a panel's corner: the faces of a corner take turns, A with a whole unit first. */
export function showsEnd({ corner }: PanelDraft, course: number): boolean {
  return corner !== null && course % 2 === (corner === 'left' ? 1 : 0);
}

/** Replaces units by id; the others stay as they are. */
export function withUnits(wall: Wall, changed: ReadonlyMap<string, Unit>): Wall {
  return { ...wall, units: wall.units.map((unit) => changed.get(unit.id) ?? unit) };
}

/**
 * Moves whole courses of a panel up or down: units, the ties in the beds between them, and with the courses that end there sills and heads, lintels
 * and flashings. `shift` gives mm for a course at x; what it gives is snapped.
 */
export function shiftCourses(wall: Wall, panel: string, shift: (course: number, x: Mm) => Mm): Wall {
  const moved = ({ y, fromX, toX }: { y: Mm; fromX: Mm; toX: Mm }) => {
    const course = Math.round(y / wall.gauge);
    return course === 0 ? y : y + snap(shift(course, (fromX + toX) / 2));
  };
  return {
    ...wall,
    openings: wall.openings.map((opening) => {
      if (opening.panel !== panel) return opening;
      const ends = { fromX: opening.x, toX: opening.x + opening.width };
      const y = moved({ y: opening.y, ...ends });
      return { ...opening, y, height: moved({ y: opening.y + opening.height, ...ends }) - y };
    }),
    supports: wall.supports.map((support) =>
      support.panel === panel ? { ...support, y: moved(support) } : support,
    ),
    flashings: wall.flashings.map((flashing) =>
      flashing.panel === panel ? { ...flashing, y: moved(flashing) } : flashing,
    ),
    ...(wall.droppings
      ? {
          droppings: wall.droppings.map((heap) =>
            heap.panel === panel ? { ...heap, y: moved(heap) } : heap,
          ),
        }
      : {}),
    units: wall.units.map((unit) => {
      if (unit.panel !== panel) return unit;
      const left = snap(shift(unit.course, unit.x));
      const right = snap(shift(unit.course, unit.x + unit.length));
      return { ...unit, y: unit.y + left, fall: unit.fall - (right - left) };
    }),
    ties: wall.ties.map((tie) =>
      tie.panel === panel
        ? { ...tie, y: tie.y + snap((shift(tie.course, tie.x) + shift(tie.course + 1, tie.x)) / 2) }
        : tie,
    ),
  };
}
