import { lighter } from '../../drawing/colours';
import { scatterOf, shareOf } from '../../drawing/drawn-chance';
import type { Area, Shape } from '../../drawing/shape';
import type { Damage, FailingWall, Leaves } from '../../failing/state/model';
import { type Box, grown } from '../../geometry/box';
import { type Point, type Ring, rectRing } from '../../geometry/polygon';
import type { Mm } from '../../units';
import type { Unit } from '../../wall/model';
import { faceOf } from '../unit-outline';
import { unitColours } from '../wall-colours';

const DARK = '#2a130b';
const CAVITY = '#17110d';
const BACKING = '#8f8a80';
const MORTAR = '#cfc8ba';
const WHITE = '#f3efe4';
/** Where weather has not been long, a unit is paler than its face. */
const PALER = 0.28;
/** The upper edge of what has gone lies in shade, mm for each mm of depth, and no more than so many. */
const SHADE = 0.35;
const MOST_SHADE: Mm = 5;

/** What has gone from the faces of a panel, and the places that units have left. */
export function faceShapes({ survey, state }: FailingWall, panel: string): readonly Shape[] {
  const { wall } = survey;
  const units = wall.units.filter((unit) => unit.panel === panel);
  const here = new Map(units.map((unit) => [unit.id, unit]));
  const fresh = lighter(unitColours(wall)[0] ?? '#9a8a7a', PALER);
  const damage = state.damage.filter(({ unit }) => here.has(unit) && !state.missing.has(unit));
  const moved = (box: Box, id: Damage['unit']): Box => {
    const move = state.moves.get(id);
    return { ...box, x: box.x + (move?.u ?? 0), y: box.y + (move?.v ?? 0) };
  };
  return [
    ...damage.flatMap(({ kind, box, depth, unit }) => {
      const at = moved(box, unit);
      if (kind === 'spall') return gone(raggedRing(at, unit), depth, fresh);
      if (kind === 'crushed') return gone(raggedRing(at, unit), depth, lighter(fresh, 0.25));
      if (kind === 'soft-joint')
        return [plain(rectRing(at.x, at.y, at.width, at.height), CAVITY, Math.min(0.5, depth * 0.04))];
      return [plain(rectRing(at.x, at.y + at.height * 0.35, at.width, at.height * 0.3), WHITE, 0.8)];
    }),
    ...units.flatMap((unit) => {
      const leaves = state.missing.get(unit.id);
      return leaves === undefined ? [] : place(unit, leaves, wall.joint);
    }),
  ];
}

function plain(ring: Ring, fill: string, opacity: number): Area {
  return { kind: 'area', rings: [ring], fill, opacity };
}

/** A patch of fresh break, its upper left edge in shade. */
function gone(ring: Ring, depth: Mm, fresh: string): readonly Area[] {
  const shade = Math.min(MOST_SHADE, depth * SHADE);
  const [right, foot] = [Math.max(...ring.map(([x]) => x)), Math.min(...ring.map(([, y]) => y))];
  const lit = ring.map(([x, y]): Point => [Math.min(right, x + shade / 2), Math.max(foot, y - shade)]);
  return [plain(ring, DARK, 0.8), plain(lit, fresh, 1), plain(lit, 'url:grain', 0.9)];
}

/** A box with its corners gone and its sides uneven. */
function raggedRing({ x, y, width, height }: Box, name: string): Ring {
  const points = 22;
  return Array.from({ length: points }, (_, index): Point => {
    const turn = (2 * Math.PI * index) / points;
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    // Between a circle and a box: flat sides, round corners.
    const reach = 0.86 / Math.max(Math.abs(cos), Math.abs(sin)) ** 0.6;
    const rough = Math.min(1, reach * (1 + scatterOf(name, 340 + index, 0.16)));
    return [x + (width / 2) * (1 + cos * rough), y + (height / 2) * (1 + sin * rough)];
  });
}

/** What a unit has left: a hole with its bed, or the backing with whatever mortar stayed on it. */
function place(unit: Unit, leaves: Leaves, joint: Mm): readonly Area[] {
  const face = faceOf(unit);
  const hole = grown(
    { x: unit.x, y: unit.y - unit.fall / 2, width: unit.length, height: unit.height },
    joint * 0.35,
  );
  const box = rectRing(hole.x, hole.y, hole.width, hole.height);
  if (leaves === 'bed-print') {
    const bed = rectRing(hole.x, hole.y, hole.width, joint);
    return [
      plain(unit.cut === undefined ? box : face, CAVITY, 1),
      plain(bed, MORTAR, 0.9),
      plain(bed, 'url:grain', 1),
    ];
  }
  const backing = [
    plain(box, BACKING, 1),
    plain(box, 'url:grain', 1),
    plain(shadeRing(hole, 7), CAVITY, 0.55),
  ];
  if (leaves === 'bare-back') return [...backing, ...scrapes(hole, unit.id)];
  const [wide, high] =
    leaves === 'mortar-ring' ? [hole.width * 0.14, hole.height * 0.2] : [hole.width / 2, hole.height / 2];
  const inner = grown(hole, -4);
  const rims: readonly Box[] = [
    { ...inner, height: high },
    { ...inner, y: inner.y + inner.height - high, height: high },
    { ...inner, width: wide },
    { ...inner, x: inner.x + inner.width - wide, width: wide },
  ];
  return [
    ...backing,
    ...rims.map((rim, index) => plain(raggedRing(rim, `${unit.id}${index}`), MORTAR, 0.95)),
  ];
}

/** The shade of the unit over a hole. */
function shadeRing({ x, y, width, height }: Box, deep: Mm): Ring {
  return rectRing(x, y + height - deep, width, deep);
}

/** Dabs that stayed on the backing. */
function scrapes(hole: Box, name: string): readonly Area[] {
  return [0, 1].map((dab) => {
    const width = hole.width * (0.16 + 0.12 * shareOf(name, 360 + dab));
    const x = hole.x + hole.width * (0.16 + 0.42 * dab + 0.08 * shareOf(name, 370 + dab));
    const box = { x, y: hole.y + hole.height * 0.28, width, height: hole.height * 0.46 };
    return plain(raggedRing(box, `${name}${dab}`), MORTAR, 0.9);
  });
}
