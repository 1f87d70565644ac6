/** Standard gravity, m/s² (exact by definition). */
export const GRAVITY = 9.80665;
