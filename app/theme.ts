/** The colours a reader can choose in place of those of the device. globals.css has one rule for each. */
export const THEMES = ['light', 'dark', 'daylight'] as const;
export type Theme = (typeof THEMES)[number];

/** Where the browser keeps the choice. */
export const THEME_KEY = 'theme';

export function isTheme(value: unknown): value is Theme {
  return THEMES.some((theme) => theme === value);
}

/** Runs before the first paint, so that a page chosen dark does not flash light. Storage may be forbidden: then nothing is chosen. */
export const THEME_SCRIPT = `try{const t=localStorage.getItem(${JSON.stringify(THEME_KEY)});if(${JSON.stringify(THEMES)}.includes(t))document.documentElement.dataset.theme=t}catch{}`;
