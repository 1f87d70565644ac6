import type { Box } from '../../geometry/box';
import type { Mm } from '../../units';
import type { UnitId } from '../../wall/part-id';
import { laidPats } from '../state/contacts';
import type { Damage, FailingWall, Zone } from '../state/model';
import { STILL } from '../state/model';

/**
 * What is seen on the faces.
 * - A unit lies in a zone when its face lies wholly in one box of that kind on its panel, by a millimetre at least.
 * - A unit is hollow when what is left of the mortar on its back is less than four fifths, by area, of what covered it when it was laid.
 */
export interface FaceSigns {
  readonly flaked: readonly UnitId[];
  readonly crushed: number;
  readonly softJoints: number;
  readonly whiteMortar: number;
  /** Shares of the flaked units that lie in a wet zone, in bloom, and between patched joints. */
  readonly flakedInWet: number;
  readonly flakedInBloom: number;
  readonly flakedInPatch: number;
  /** Flakes only in the top so many courses; 0 without any. */
  readonly flakedFromTop: number;
  readonly limeStreaks: number;
  readonly scuffed: boolean;
  readonly rustAtLintel: boolean;
  readonly rustAtTies: boolean;
  readonly hollow: number;
  readonly fallen: number;
  /** How far the unit that is driven in deepest has gone in, mm. */
  readonly drivenIn: Mm;
}

const FOUR_FIFTHS = 0.8;

export function faceSignsOf({ survey, state }: FailingWall): FaceSigns {
  const seen = (kind: Damage['kind']) => state.damage.filter((damage) => damage.kind === kind);
  const flaked = [...new Set(seen('spall').map(({ unit }) => unit))];
  const faces = new Map(
    survey.panels.flatMap(({ placed, panel }) =>
      placed.map(({ unit }) => [unit.id, { unit, courses: panel.courses }] as const),
    ),
  );
  const share = (kind: Zone['kind']) => {
    const zones = state.zones.filter((zone) => zone.kind === kind);
    const inside = flaked.filter((id) => {
      const unit = faces.get(id)?.unit;
      if (unit === undefined) return false;
      const face = { x: unit.x, y: unit.y, width: unit.length, height: unit.height };
      return zones.some(({ box, panel }) => panel === unit.panel && isIn(face, box));
    });
    return flaked.length === 0 ? 0 : inside.length / flaked.length;
  };
  const has = (kind: Zone['kind']) => state.zones.some((zone) => zone.kind === kind);
  const rust = state.zones.filter(({ kind }) => kind === 'rust');
  const moved = [...state.moves.values()];
  return {
    flaked,
    crushed: seen('crushed').length,
    softJoints: seen('soft-joint').length,
    whiteMortar: seen('white-mortar').length,
    flakedInWet: share('wet'),
    flakedInBloom: share('bloom'),
    flakedInPatch: share('patched'),
    flakedFromTop: flaked.reduce((most, id) => {
      const face = faces.get(id);
      return face === undefined ? most : Math.max(most, face.courses - face.unit.course + 1);
    }, 0),
    limeStreaks: state.zones.filter(({ kind }) => kind === 'lime-streak').length,
    scuffed: has('scuff'),
    rustAtLintel: survey.wall.supports.some(
      ({ kind, y }) => kind === 'lintel' && rust.some(({ box }) => isAbout(box, y)),
    ),
    rustAtTies: survey.wall.ties.some(({ x, y }) =>
      rust.some(({ box }) => isAbout(box, y) && box.x <= x && x <= box.x + box.width),
    ),
    hollow: hollowIn({ survey, state }),
    fallen: state.missing.size,
    drivenIn: moved.reduce((deepest, move) => Math.max(deepest, -(move ?? STILL).w), 0),
  };
}

function hollowIn({ survey, state }: FailingWall): number {
  const laid = new Map(
    survey.panels.flatMap(({ placed }) =>
      placed.map(({ unit }) => [unit.id, coveredBy(laidPats(unit))] as const),
    ),
  );
  return state.contacts.filter(({ kind, unit, held }) => {
    if (kind !== 'back' || state.missing.has(unit)) return false;
    return coveredBy(held ?? []) < FOUR_FIFTHS * (laid.get(unit) ?? 0);
  }).length;
}

/** Area under boxes that may overlap, mm². */
function coveredBy(boxes: readonly Box[]): number {
  const levels = [...new Set(boxes.flatMap(({ y, height }) => [y, y + height]))].sort((a, b) => a - b);
  return levels.slice(1).reduce((sum, top, index) => {
    const foot = levels[index] ?? top;
    const across = boxes.filter(({ y, height }) => y <= foot && y + height >= top).sort((a, b) => a.x - b.x);
    let reached = Number.NEGATIVE_INFINITY;
    let long = 0;
    for (const { x, width } of across) {
      long += Math.max(0, x + width - Math.max(reached, x));
      reached = Math.max(reached, x + width);
    }
    return sum + long * (top - foot);
  }, 0);
}

function isIn(inner: Box, outer: Box): boolean {
  const SLACK = 1;
  return (
    inner.x >= outer.x - SLACK &&
    inner.y >= outer.y - SLACK &&
    inner.x + inner.width <= outer.x + outer.width + SLACK &&
    inner.y + inner.height <= outer.y + outer.height + SLACK
  );
}

function isAbout({ y, height }: Box, level: Mm): boolean {
  return y <= level && level <= y + height;
}
