import { keptChoice } from '../ui/kept-choice';

/** Whether somebody has practised here before: only so that the front page knows which button to show. The record itself says what was done. */
const kept = keptChoice('practised', (value): value is 'yes' | 'no' => value === 'yes' || value === 'no');

export function markPractised(): void {
  kept.choose('yes');
}

export function forgetPractised(): void {
  kept.choose('no');
}

export function useHasPractised(): boolean {
  return kept.useChosen('no') === 'yes';
}
