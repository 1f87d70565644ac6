import type { Box } from '../../geometry/box';
import type { Mm } from '../../units';
import type { PanelId, PartId, SupportId, UnitId } from '../../wall/part-id';
import type { Survey } from '../../wall/survey';

export const SEASONS = ['spring', 'summer', 'autumn', 'winter'] as const;
export type Season = (typeof SEASONS)[number];

/** How far the middle of a unit has gone from where it was laid: along, up and out, mm; and its turn in the face (+ against the clock) and the lean of its face (+ top out), mm per m. */
export interface Move {
  readonly u: Mm;
  readonly v: Mm;
  readonly w: Mm;
  readonly turn: number;
  readonly lean: number;
}

export const STILL: Move = { u: 0, v: 0, w: 0, turn: 0, lean: 0 };

/** What touches what: a unit and what lies under it, beside it or behind it. */
export interface Contact {
  readonly kind: 'bed' | 'head' | 'back' | 'tie' | 'bearing';
  readonly unit: UnitId;
  /** The unit below or to the right, the tie, or the support; of a back, the unit itself. */
  readonly other: PartId;
  /** Area that touches, mm²; of a tie, its width by its embedment. */
  readonly area: number;
  readonly state: 'bonded' | 'cracked' | 'gone';
  /** Share of the area whose bond is sound, 0 to 1. */
  readonly sound: number;
  /** Of a back: the mortar that still holds, from the unit's lower left corner as seen from the front. */
  readonly held?: readonly Box[];
}

/** A unit that is cracked through from bed to bed; its own move is that of the piece on the left. */
export interface Split {
  readonly x: Mm;
  readonly right: Move;
}

/** How far a support has gone up at its left end, its middle and its right end, mm. */
export interface SupportMove {
  readonly left: Mm;
  readonly middle: Mm;
  readonly right: Mm;
}

/** Seen on a unit; the box is on the face of its panel. */
export interface Damage {
  readonly unit: UnitId;
  readonly kind: 'spall' | 'crushed' | 'soft-joint' | 'white-mortar';
  readonly depth: Mm;
  readonly box: Box;
}

/** What is seen on a stretch of wall. */
export interface Zone {
  readonly kind: 'wet' | 'bloom' | 'rust' | 'lime-streak' | 'scuff' | 'patched';
  readonly panel: PanelId;
  readonly box: Box;
}

/** What a unit that came away has left on the wall. */
export type Leaves = 'bed-print' | 'bare-back' | 'mortar-ring' | 'mortar-on-wall';

/** What years have made of a wall, kept beside it: the wall is as it was laid. Nothing here says why. */
export interface WallState {
  readonly years: number;
  readonly season: Season;
  /** What the units are made of, as anybody can see. */
  readonly stuff: 'clay' | 'concrete';
  /** Far ends of runs that butt against something that does not give. */
  readonly held: readonly PartId[];
  readonly contacts: readonly Contact[];
  readonly moves: ReadonlyMap<UnitId, Move>;
  readonly splits: ReadonlyMap<UnitId, Split>;
  readonly supports: ReadonlyMap<SupportId, SupportMove>;
  readonly missing: ReadonlyMap<UnitId, Leaves>;
  readonly damage: readonly Damage[];
  readonly zones: readonly Zone[];
}

/** A wall and what has become of it. */
export interface FailingWall {
  readonly survey: Survey;
  readonly state: WallState;
}
