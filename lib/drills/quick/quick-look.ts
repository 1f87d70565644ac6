/** What a round looks at. Kept on devices and in addresses: append only. */
export const QUICK_LOOKS = ['face', 'close', 'ties', 'cut', 'back', 'tickets'] as const;
export type QuickLook = (typeof QUICK_LOOKS)[number];

/** How hard the walls of a round are to read: their difficulty. */
export const QUICK_LEVELS = [1, 3] as const;
export type QuickLevel = (typeof QUICK_LEVELS)[number];

/** What rounds can be counted together: an eye for ties is not an eye for joints. */
export interface QuickSort {
  readonly look: QuickLook;
  readonly level: QuickLevel;
}

/** A whole number for each sort; 0 is from in front and easy, which was the only one once. */
export function sortNumber({ look, level }: QuickSort): number {
  return QUICK_LOOKS.indexOf(look) * QUICK_LEVELS.length + QUICK_LEVELS.indexOf(level);
}

export function isSort(a: QuickSort, b: QuickSort): boolean {
  return a.look === b.look && a.level === b.level;
}
