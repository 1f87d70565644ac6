/** The colours a reader can choose in place of those of the device. globals.css has one rule for each. */
export const THEMES = ['light', 'dark', 'daylight'] as const;
export type Theme = (typeof THEMES)[number];

/** Where the browser keeps the choice. */
export const THEME_KEY = 'theme';

export function isTheme(value: unknown): value is Theme {
  return THEMES.some((theme) => theme === value);
}

/** How large buttons and the parts of a wall are to a finger: 44 px, or for a gloved hand 76 px (20 mm at 96 px to the inch). */
export const TARGETS_KEY = 'targets';
