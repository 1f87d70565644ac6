// What mortar, friction and wind do, as others have measured or printed it. Means where a mean was published. No value from memory is here.

/** Mean flexural bond of clay brick in cement-lime mortar, MPa: batch mean of Gooch and others 2023, at second hand. */
export const FLEXURAL_BOND = 0.57;
/** Flexural bond to direct tension 2.06, shear bond to flexural 1.34: Gooch, Masia, Stewart and Lam, Constr. Build. Mater. 386:131578 (2023), abstract. */
const FLEXURAL_TO_TENSION = 2.06;
const SHEAR_TO_FLEXURAL = 1.34;
export const TENSION_BOND = FLEXURAL_BOND / FLEXURAL_TO_TENSION;
export const SHEAR_BOND = FLEXURAL_BOND * SHEAR_TO_FLEXURAL;
/** Shear bond that adhered veneer must have, MPa: 50 psi, NCMA TEK 79 as Masonry Magazine printed it (September 1976, p. 15). No mean was published. */
export const ADHERED_SHEAR = 0.345;
/** Brick on mortar, between the measured 0.64 and 1.11 (Gooch 2025, at second hand). */
export const FRICTION = 0.75;
/** Suction at the corner of a wall of 10 m in open country at 24 m/s, MPa: 847 Pa by 1.4 (EN 1991-1-4, 4.5 and 7.1, as a façade engineer prints them). */
export const SUCTION = 1186e-6;
/** Clay brick, concrete and stone, kg/m³: common practice. */
export const DENSITY = 1900;
/** Mortar behind an adhered unit, mm: common practice. */
export const BACK_BED = 10;
