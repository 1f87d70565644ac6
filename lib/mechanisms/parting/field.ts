import type { Mm } from '../../units';

/** How far a rigid part has gone at a place, mm. */
export interface Gone {
  readonly u: Mm;
  readonly v: Mm;
}

/** A part that moves as one: where each place of it goes, and its turn, mm per m against the clock. */
export interface Field {
  readonly at: (x: Mm, y: Mm) => Gone;
  readonly turn: number;
}

export const AT_REST: Field = { at: () => ({ u: 0, v: 0 }), turn: 0 };

/** A small turn about a point: u = −θ(y − py), v = θ(x − px). */
export function turnedAbout(px: Mm, py: Mm, angle: number): Field {
  return {
    at: (x, y) => ({ u: -angle * (y - py), v: angle * (x - px) }),
    turn: angle * 1000,
  };
}

/** Along only, the same everywhere. */
export function pushedAlong(u: Mm): Field {
  return { at: () => ({ u, v: 0 }), turn: 0 };
}
