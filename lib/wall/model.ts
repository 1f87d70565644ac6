import type { Box } from '../geometry/box';
import type { Mm } from '../units';
import type { Droppings, Flashing } from './flashing';
import type { BatchId, HeadId, OpeningId, PanelId, SupportId, TieId, UnitId } from './part-id';

/**
 * The wall: plain data, millimetres on a grid of eighths. Every panel is a plane seen from outside with its own frame: x from its left end to the
 * right, y up from the top of its ledge, z out of the wall (face line z = 0, proud is +). Joints are not stored: they are the space between units.
 * Nothing here says what is right or wrong.
 */
export const WALL_VERSION = 2;

export const WALL_KINDS = ['plain-panel', 'window-panel', 'door-corner', 'gable-end'] as const;
export type WallKind = (typeof WALL_KINDS)[number];

export type Bond = 'running' | 'third';
/** A soldier stands on end; a quoin is a squared stone at an end of a panel. Both are TALL_COURSES high; their beds are as wide as they are long. */
export const UNIT_KINDS = ['stretcher', 'bat', 'closer', 'cut', 'soldier', 'quoin'] as const;
export type UnitKind = (typeof UNIT_KINDS)[number];
/** Courses that a soldier or a quoin stands through. */
export const TALL_COURSES = 3;
/** What the wall is built of but for its quoins; looks only. */
export const FINISHES = ['brick', 'squared stone'] as const;
export type Finish = (typeof FINISHES)[number];
export type Texture = 'smooth' | 'rough' | 'rock-face';
/** What is seen on the face of a unit. Looks only: no check reads it. The generator lays the first three. */
export const CONDITIONS = [
  'sound',
  'hairline',
  'bloom',
  'chip',
  'flake',
  'crumbling',
  'smear',
  'stain',
] as const;
export type Condition = (typeof CONDITIONS)[number];
export type JointProfile = 'concave' | 'flush' | 'raked';

/** The kind of unit the whole wall is built of: work sizes (nominal, before scatter), mm. */
export interface UnitFamily {
  readonly name: string;
  readonly length: Mm;
  readonly height: Mm;
  /** Bed depth: front face to back. */
  readonly depth: Mm;
}

/** Mortar on the back of an adhered unit, pressed flat. x, y from the unit's lower left corner as seen from the FRONT. May run past the unit. */
export type Pat = Box;

/** Ends that are cut to a slope: how far the top stops short of the foot at each, mm. Beside a cut end stands nothing. */
export interface Cut {
  readonly left: Mm;
  readonly right: Mm;
}

export interface Unit {
  /** `A12.5`: panel A, course 12 from the bottom, fifth from the left. */
  readonly id: UnitId;
  readonly panel: PanelId;
  /** From 1, counted from the bottom; of a unit that stands through several, the lowest. */
  readonly course: number;
  /** From 1, counted from the left within its course (openings, and what stands through from a course below, are jumped). */
  readonly position: number;
  readonly kind: UnitKind;
  /** Left end of the face. */
  readonly x: Mm;
  /** Underside at the left end. */
  readonly y: Mm;
  readonly length: Mm;
  readonly height: Mm;
  readonly depth: Mm;
  /** How much lower the right end is than the left (ends stay upright; top and underside slope together). */
  readonly fall: Mm;
  /** How far the right end stands proud of the left. */
  readonly twist: Mm;
  /** How far the top stands proud of the bottom. */
  readonly lean: Mm;
  /** How far the middle of the face stands proud (+) or back (−) of the face line. */
  readonly set: Mm;
  readonly texture: Texture;
  readonly condition: Condition;
  /** 0..7: place in the firing range, for drawing only. */
  readonly shade: number;
  /** Of a unit that is no box; its `length` is that of its foot. */
  readonly cut?: Cut;
  /** Adhered walls only. */
  readonly back?: readonly Pat[];
}

/** How a head joint is filled, where it is not full. Id `A12.4/5`: between units 4 and 5 of course 12. */
export interface HeadFill {
  readonly joint: HeadId;
  /** Share of the joint's area filled with mortar, %. */
  readonly filled: number;
}

export interface Opening {
  /** `A-window1`, `A-door1`. */
  readonly id: OpeningId;
  readonly panel: PanelId;
  readonly kind: 'window' | 'door';
  readonly x: Mm;
  readonly y: Mm;
  readonly width: Mm;
  readonly height: Mm;
}

/** Legs and thickness of a steel angle, long leg upright. */
export interface Angle {
  readonly vertical: Mm;
  readonly horizontal: Mm;
  readonly thickness: Mm;
}

/** Something masonry stands on. Plan outline: x from–to, z back–front; `y` is its top surface. */
export interface Support {
  /** `A-ledge`, `A-lintel1`. */
  readonly id: SupportId;
  readonly panel: PanelId;
  readonly kind: 'ledge' | 'lintel';
  readonly material: 'concrete' | 'steel' | 'wood';
  readonly fromX: Mm;
  readonly toX: Mm;
  readonly y: Mm;
  readonly back: Mm;
  readonly front: Mm;
  /** Lintels of steel. */
  readonly angle?: Angle;
  /** The opening a lintel spans. */
  readonly opening?: OpeningId;
}

export interface Tie {
  /** `A-tie12.3`: in the bed on top of course 12, third from the left. */
  readonly id: TieId;
  readonly panel: PanelId;
  /** The course it lies on top of. */
  readonly course: number;
  readonly x: Mm;
  readonly y: Mm;
  readonly kind: 'strap';
  readonly thickness: Mm;
  readonly width: Mm;
  /** Length of strap lying in the bed, from the back of the veneer. */
  readonly embedment: Mm;
}

/** One mixing of mortar, and the courses laid with it. Volumes as batched; sand damp and loose. */
export interface Batch {
  /** `batch-1`. */
  readonly id: BatchId;
  readonly fromCourse: number;
  readonly toCourse: number;
  readonly portland: number;
  readonly lime: number;
  readonly sand: number;
  /** Air temperature when used, °C. */
  readonly air: number;
  /** Minutes from first mixing to final position of the last unit laid with it. */
  readonly minutes: number;
}

/** Units that the drawing wants proud, and by how much. */
export interface Projection {
  readonly units: readonly UnitId[];
  readonly by: Mm;
}

export interface Panel {
  /** `A`, `B`. */
  readonly id: PanelId;
  /** Clear length of the face. */
  readonly length: Mm;
  readonly courses: number;
  /** The two ends in plan (seen from above, x to the right, z out): the left end and the right end of the face line. */
  readonly plan: { readonly leftX: Mm; readonly leftZ: Mm; readonly rightX: Mm; readonly rightZ: Mm };
  /** An end that is free (stopped), or joined to another panel at a corner. */
  readonly leftEnd: 'free' | 'corner';
  readonly rightEnd: 'free' | 'corner';
  readonly profile: JointProfile;
  /** How far the mortar face lies behind the unit face, when raked. */
  readonly recess: Mm;
  /**
   * Courses from which each end goes in by `step` a course (gable); null = upright. Cut to the rake, the first of them has its feet at the ends; in
   * steps (as earlier engines laid gables) it stands a step in.
   */
  readonly gable: { readonly fromCourse: number; readonly step: Mm } | null;
  /** Centre lines of the studs behind, anchored walls. */
  readonly studs: readonly Mm[];
}

export interface Wall {
  readonly version: typeof WALL_VERSION;
  readonly kind: WallKind;
  readonly masonry: 'anchored' | 'adhered';
  readonly finish: Finish;
  readonly family: UnitFamily;
  readonly bond: Bond;
  /** Design thickness of head joints; the gauge (one course and one bed) is `gauge`. */
  readonly joint: Mm;
  readonly gauge: Mm;
  /** Storeys of masonry carried above this wall by its lintels, for tables that ask. */
  readonly storeysAbove: number;
  /** Clear air space between backing and back of veneer. 0 for adhered. */
  readonly cavity: Mm;
  readonly panels: readonly Panel[];
  readonly units: readonly Unit[];
  readonly heads: readonly HeadFill[];
  readonly openings: readonly Opening[];
  readonly supports: readonly Support[];
  readonly ties: readonly Tie[];
  readonly flashings: readonly Flashing[];
  /** Mortar on the flashings. A wall that tells nothing of it is not asked how it drains. */
  readonly droppings?: readonly Droppings[];
  readonly batches: readonly Batch[];
  readonly projections: readonly Projection[];
  /** Mortar tone 0 (far from the units' colour) to 3 (close to it), and the colour lot; drawing only. */
  readonly tone: { readonly mortar: number; readonly lot: number };
}

/** Whether a unit stands through TALL_COURSES courses. */
export function isTall({ kind }: Pick<Unit, 'kind'>): boolean {
  return kind === 'soldier' || kind === 'quoin';
}

/** The highest course that a unit stands in. */
export function topCourseOf(unit: Pick<Unit, 'kind' | 'course'>): number {
  return isTall(unit) ? unit.course + TALL_COURSES - 1 : unit.course;
}

/** A wall that cannot be: the message says where and what. */
export class WallError extends Error {
  override name = 'WallError';
}
