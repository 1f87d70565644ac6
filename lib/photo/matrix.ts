/** A 3 × 3 matrix, row by row. */
export type Matrix = readonly [number, number, number, number, number, number, number, number, number];

/** A point of the picture in pixels, or of the wall in mm: x to the right, y down, as pixels are counted. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

export function times(a: Matrix, b: Matrix): Matrix {
  const [a0, a1, a2, a3, a4, a5, a6, a7, a8] = a;
  const [b0, b1, b2, b3, b4, b5, b6, b7, b8] = b;
  return [
    a0 * b0 + a1 * b3 + a2 * b6,
    a0 * b1 + a1 * b4 + a2 * b7,
    a0 * b2 + a1 * b5 + a2 * b8,
    a3 * b0 + a4 * b3 + a5 * b6,
    a3 * b1 + a4 * b4 + a5 * b7,
    a3 * b2 + a4 * b5 + a5 * b8,
    a6 * b0 + a7 * b3 + a8 * b6,
    a6 * b1 + a7 * b4 + a8 * b7,
    a6 * b2 + a7 * b5 + a8 * b8,
  ];
}

/** The inverse, by cofactors. The caller knows that there is one. */
export function inverse([a, b, c, d, e, f, g, h, i]: Matrix): Matrix {
  const [ca, cb, cc] = [e * i - f * h, f * g - d * i, d * h - e * g];
  const by = 1 / (a * ca + b * cb + c * cc);
  return [
    ca * by,
    (c * h - b * i) * by,
    (b * f - c * e) * by,
    cb * by,
    (a * i - c * g) * by,
    (c * d - a * f) * by,
    cc * by,
    (b * g - a * h) * by,
    (a * e - b * d) * by,
  ];
}

/** Where a projective mapping sends a point. */
export function mapped([a, b, c, d, e, f, g, h, i]: Matrix, { x, y }: Spot): Spot {
  const w = g * x + h * y + i;
  return { x: (a * x + b * y + c) / w, y: (d * x + e * y + f) / w };
}

/** Solves as many linear equations as unknowns, each row with its right side last; undefined where they do not settle them. Gauss, with pivots. */
export function solved(rows: number[][]): readonly number[] | undefined {
  const count = rows.length;
  for (let column = 0; column < count; column++) {
    let best = column;
    for (let row = column + 1; row < count; row++) {
      if (Math.abs(rows[row]?.[column] ?? 0) > Math.abs(rows[best]?.[column] ?? 0)) best = row;
    }
    const pivot = rows[best];
    const lead = pivot?.[column] ?? 0;
    if (pivot === undefined || Math.abs(lead) < 1e-12) return undefined;
    rows[best] = rows[column] ?? pivot;
    rows[column] = pivot;
    for (const row of rows) {
      if (row === pivot) continue;
      const by = (row[column] ?? 0) / lead;
      if (by === 0) continue;
      for (let at = column; at <= count; at++) row[at] = (row[at] ?? 0) - by * (pivot[at] ?? 0);
    }
  }
  return rows.map((row, at) => (row[count] ?? 0) / (row[at] ?? 1));
}
