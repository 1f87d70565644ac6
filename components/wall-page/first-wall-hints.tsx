'use client';

import { keptChoice } from '../ui/kept-choice';
import styles from './first-wall-hints.module.css';

const kept = keptChoice<'new' | 'known'>('first-wall', (value) => value === 'known');

/** Whether this browser has had its first wall, and a way to say that it has. */
export const useFirstWall = () => kept.useChosen('new') === 'new';
export const knowWalls = () => kept.choose('known');

const STEPS = [
  'Come nearer: pinch, tap the wall, or turn the wheel.',
  'Now tap what looks wrong: a joint, a unit, a tie.',
  'Choose what is wrong with it, then press “Mark it”.',
] as const;

/** Three hints in turn on somebody's first wall. Any of them can be skipped, and so can all. */
export function FirstWallHints({ step, onSkip }: { readonly step: 1 | 2 | 3; readonly onSkip: () => void }) {
  return (
    <div className={styles.hints}>
      <p role="status">
        <span>{step} of 3</span> {STEPS[step - 1]}
      </p>
      <button type="button" onClick={onSkip}>
        Skip
      </button>
    </div>
  );
}
