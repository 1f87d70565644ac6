import type { Point, Ring } from '../geometry/polygon';
import type { Mm } from '../units';

/** Points written one after another: x, y, x, y. */
export function ring(...at: readonly Mm[]): Ring {
  return Array.from(
    { length: at.length / 2 },
    (_, index): Point => [at[2 * index] ?? 0, at[2 * index + 1] ?? 0],
  );
}

/** A round thing, as a ring of points. */
export function round(x: Mm, y: Mm, across: Mm, up: Mm = across): Ring {
  return arc(x, y, across, 0, 2 * Math.PI, up).slice(1);
}

/** Points on a circle or an ellipse round (x, y), from one turn to another, against the clock from the right. */
export function arc(x: Mm, y: Mm, across: Mm, from: number, to: number, up: Mm = across): Ring {
  const steps = 24;
  return Array.from({ length: steps + 1 }, (_, index): Point => {
    const turn = from + ((to - from) * index) / steps;
    return [x + across * Math.cos(turn), y + up * Math.sin(turn)];
  });
}

/** A rectangle with round corners. */
export function rounded(x: Mm, y: Mm, width: Mm, height: Mm, radius: Mm): Ring {
  const [right, top, quarter] = [x + width - radius, y + height - radius, Math.PI / 2];
  return [
    ...arc(right, y + radius, radius, -quarter, 0),
    ...arc(right, top, radius, 0, quarter),
    ...arc(x + radius, top, radius, quarter, 2 * quarter),
    ...arc(x + radius, y + radius, radius, 2 * quarter, 3 * quarter),
  ];
}

/** Turns points about another, in degrees against the clock. */
export function turnAbout([cx, cy]: Point, degrees: number): (x: Mm, y: Mm) => Point {
  const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  return (x, y) => [cx + (x - cx) * cos - (y - cy) * sin, cy + (x - cx) * sin + (y - cy) * cos];
}

export function turnedAbout(about: Point, degrees: number, points: Ring): Ring {
  const turn = turnAbout(about, degrees);
  return points.map(([x, y]) => turn(x, y));
}
