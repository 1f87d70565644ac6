import { Options } from '../../components/ui/options';
import type { Theme } from './theme';

const NAMES: Readonly<Record<Theme, string>> = {
  light: 'Light',
  dark: 'Dark',
  daylight: 'Daylight: for strong sun',
};

/** Lets the reader choose the colours. The script of the frame keeps the choice in this browser. */
export function ThemeChoice() {
  return (
    <label className="theme-choice">
      Colours{' '}
      <select name="site-theme" autoComplete="off">
        <option value="">Like my device</option>
        <Options of={Object.entries(NAMES)} />
      </select>
    </label>
  );
}

/** For work gloves: larger buttons, and the wall comes closer before a tap picks. */
export function TargetsChoice() {
  return (
    <label className="theme-choice">
      <input type="checkbox" name="site-targets" autoComplete="off" /> Large buttons, for gloves
    </label>
  );
}
