import { refuseNotPositive } from './refusals';

// How far a wall may be bent by the ground before its greatest strain reaches a limit: a deep beam, after Burland and Wroth (1974).
// Δ/L = ε (L/12t + 3IE/2tLHG) in bending, ε (1 + HL²G/18IE) on the diagonal.

/** Young’s modulus over shear modulus of a wall that is alike every way, Poisson’s ratio 0.3. */
const E_OVER_G = 2.6;

/** Which way it is bent: hogging turns about its foot, sagging about its middle. */
export type Bending = 'hogging' | 'sagging';

/** Deflection ratio Δ/L for each unit of strain in bending; `slenderness`: length over height. @throws RangeError for one not above zero */
export function bendingFactor(slenderness: number, bending: Bending): number {
  refuseNotPositive('slenderness', slenderness);
  const { arm, inertia } = sectionOf(bending);
  return slenderness / (12 * arm) + (3 * inertia * E_OVER_G) / (2 * arm * slenderness);
}

/** The same for strain on the diagonal. @throws RangeError for a slenderness not above zero */
export function diagonalFactor(slenderness: number, bending: Bending): number {
  refuseNotPositive('slenderness', slenderness);
  const { inertia } = sectionOf(bending);
  return 1 + (slenderness * slenderness) / (18 * inertia * E_OVER_G);
}

/** Δ/L at which the first of the two strains reaches `strain`. */
export function deflectionRatio(slenderness: number, bending: Bending, strain: number): number {
  return strain * Math.min(bendingFactor(slenderness, bending), diagonalFactor(slenderness, bending));
}

/** Farthest fibre over the height, and second moment of area over the height cubed. */
function sectionOf(bending: Bending): { readonly arm: number; readonly inertia: number } {
  return bending === 'hogging' ? { arm: 1, inertia: 1 / 3 } : { arm: 1 / 2, inertia: 1 / 12 };
}
