// Exact definitions, typed apart from lib/units so that the outside figures do not lean on the code they test.
export const INCH = 25.4;
export const FOOT = 304.8;
/** Pound-force, N. */
export const POUND = 4.448_221_615_260_5;
/** Pound of mass, kg. */
export const POUND_MASS = 0.453_592_37;
/** Pounds a square inch, N/mm². */
export const PSI = POUND / INCH ** 2;
/** Pounds a square foot, N/mm². */
export const PSF = POUND / FOOT ** 2;
/** 29 000 ksi, N/mm². */
export const KSI_29000 = 29_000_000 * PSI;
