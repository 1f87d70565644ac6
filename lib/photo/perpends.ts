import type { Mm } from '../units';
import type { Head } from './laid';

/** A head goes on in the next course but one with a head whose middle is within this of its own: as on the walls that are laid here. */
const IN_LINE: Mm = 12;
const LEAST_HEADS = 4;

/** Of the lines of head joints up every second course, the one whose middles lie furthest apart; undefined where no line has four heads. */
export function longestDrift(
  courses: readonly (readonly Head[])[],
): { readonly drift: Mm; readonly heads: number } | undefined {
  let worst: { drift: Mm; heads: number } | undefined;
  for (const start of [0, 1]) {
    let open: { last: Mm; least: Mm; most: Mm; heads: number }[] = [];
    for (let index = start; index < courses.length; index += 2) {
      const taken = new Set<(typeof open)[number]>();
      open = (courses[index] ?? []).map(({ x }) => {
        const near = open
          .filter((line) => !taken.has(line) && Math.abs(line.last - x) <= IN_LINE)
          .sort((a, b) => Math.abs(a.last - x) - Math.abs(b.last - x))[0];
        if (near === undefined) return { last: x, least: x, most: x, heads: 1 };
        taken.add(near);
        return {
          last: x,
          least: Math.min(near.least, x),
          most: Math.max(near.most, x),
          heads: near.heads + 1,
        };
      });
      for (const { least, most, heads } of open) {
        if (heads >= LEAST_HEADS && (worst === undefined || most - least > worst.drift))
          worst = { drift: most - least, heads };
      }
    }
  }
  return worst;
}
