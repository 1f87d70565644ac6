/** A number that was read, told or taken for granted, and its standard deviation. */
export interface Parameter {
  readonly value: number;
  readonly sd: number;
}

/**
 * Each quantity's standard deviation that comes from the parameters, which are taken as independent: √Σ(∂f/∂t · σ)², the
 * derivatives by differences through the whole chain (A. Criminisi, I. Reid, A. Zisserman, A Plane Measuring Device, 1997, to first
 * order). The step is one standard deviation, and both ways count alike: a greatest or a least may pass to another joint on the way.
 */
export function propagated(
  quantities: (values: readonly number[]) => readonly number[],
  parameters: readonly Parameter[],
): readonly number[] {
  const values = parameters.map(({ value }) => value);
  const here = quantities(values);
  const squares = here.map(() => 0);
  for (const [index, { sd }] of parameters.entries()) {
    if (sd === 0) continue;
    const [up, down] = [sd, -sd].map((step) =>
      quantities(values.map((value, at) => (at === index ? value + step : value))),
    );
    for (const [at, value] of here.entries()) {
      squares[at] =
        (squares[at] ?? 0) + (((up?.[at] ?? value) - value) ** 2 + ((down?.[at] ?? value) - value) ** 2) / 2;
    }
  }
  return squares.map(Math.sqrt);
}
