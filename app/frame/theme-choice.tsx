'use client';

import { type ChangeEvent, useSyncExternalStore } from 'react';
import { Options } from '../../components/ui/options';
import { isTheme, THEME_KEY, type Theme } from './theme';

const NAMES: Readonly<Record<Theme, string>> = {
  light: 'Light',
  dark: 'Dark',
  daylight: 'Daylight: for strong sun',
};

/** Lets the reader choose the colours. The choice stays in this browser. */
export function ThemeChoice() {
  const theme = useSyncExternalStore(subscribe, chosenTheme, () => undefined);
  const choose = (event: ChangeEvent<HTMLSelectElement>) => {
    const { value } = event.target;
    setTheme(isTheme(value) ? value : undefined);
  };
  return (
    <label className="theme-choice">
      Colours{' '}
      <select value={theme ?? ''} onChange={choose}>
        <option value="">Like my device</option>
        <Options of={Object.entries(NAMES)} />
      </select>
    </label>
  );
}

// The attribute on <html> is the one truth: the style sheet reads it, and the script in the head sets it first.
function chosenTheme(): Theme | undefined {
  const { theme } = document.documentElement.dataset;
  return isTheme(theme) ? theme : undefined;
}

function subscribe(onChange: () => void): () => void {
  const observer = new MutationObserver(onChange);
  observer.observe(document.documentElement, { attributeFilter: ['data-theme'] });
  return () => observer.disconnect();
}

function setTheme(theme: Theme | undefined): void {
  if (theme) document.documentElement.dataset.theme = theme;
  else delete document.documentElement.dataset.theme;
  try {
    if (theme) localStorage.setItem(THEME_KEY, theme);
    else localStorage.removeItem(THEME_KEY);
  } catch {
    // Storage is forbidden here: the choice holds for this visit.
  }
}
