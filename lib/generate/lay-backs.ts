import { type Mm, snap } from '../units';
import type { Pat, Unit } from '../wall/model';
import type { Chance } from './chance';

/** Of a hundred backs, this many are covered from edge to edge. */
const FULL_PERCENT = 30;
/** The most that a sound back is bare, as a share: a limit of 5 % less what a grid over it tells. */
const MOST_BARE = 0.036;

/** The mortar on the back of a sound unit, as trowels leave it: full, bare along an edge or at a corner, with a slot between two pats, or round a small hollow. */
export function soundBack(length: Mm, height: Mm, soundUpTo: number, chance: Chance): readonly Pat[] {
  const full: Pat = { x: 0, y: 0, width: length, height };
  if (chance.happens(FULL_PERCENT)) return [full];
  const bare = (MOST_BARE * soundUpTo * chance.whole(25, 100)) / 100;
  switch (chance.whole(0, 9)) {
    case 0:
    case 1:
      return [onGrid({ ...full, y: bare * height, height: height * (1 - bare) })];
    case 2:
      return [onGrid({ ...full, height: height * (1 - bare) })];
    case 3:
    case 4:
      return [onGrid({ ...full, x: bare * length, width: length * (1 - bare) })];
    case 5:
      return [onGrid({ ...full, width: length * (1 - bare) })];
    case 6:
      return cornerBare(length, height, bare);
    case 7:
    case 8:
      return twoPats(length, height, bare, chance.whole(35, 65) / 100);
    default:
      return hollowIn(length, height, bare);
  }
}

export function onGrid(pat: Pat): Pat {
  return { x: snap(pat.x), y: snap(pat.y), width: snap(pat.width), height: snap(pat.height) };
}

/** A unit laid shorter or longer, with the mortar on its back as much of it as before. */
export function withLength(unit: Unit, x: Mm, length: Mm): Unit {
  const { back } = unit;
  if (back === undefined) return { ...unit, x, length };
  const share = length / unit.length;
  return {
    ...unit,
    x,
    length,
    back: back.map((pat) => onGrid({ ...pat, x: pat.x * share, width: pat.width * share })),
  };
}

/** Mortar round a bare middle of the back's own shape. */
export function hollowIn(length: Mm, height: Mm, bare: number): readonly Pat[] {
  const side = Math.sqrt(bare);
  const across = (length * (1 - side)) / 2;
  const up = (height * (1 - side)) / 2;
  return [
    onGrid({ x: 0, y: 0, width: length, height: up }),
    onGrid({ x: 0, y: height - up, width: length, height: up }),
    onGrid({ x: 0, y: 0, width: across, height }),
    onGrid({ x: length - across, y: 0, width: across, height }),
  ];
}

/** Bare at the lower left corner, where the trowel did not reach. */
function cornerBare(length: Mm, height: Mm, bare: number): readonly Pat[] {
  const side = Math.sqrt(bare);
  return [
    onGrid({ x: side * length, y: 0, width: length * (1 - side), height }),
    onGrid({ x: 0, y: side * height, width: length, height: height * (1 - side) }),
  ];
}

function twoPats(length: Mm, height: Mm, bare: number, at: number): readonly Pat[] {
  const width = (1 - bare) * length * at;
  const from = width + bare * length;
  return [onGrid({ x: 0, y: 0, width, height }), onGrid({ x: from, y: 0, width: length - from + 1, height })];
}
