'use client';

import type { LengthSystem } from '../../lib/units';
import { ChoiceBar } from '../ui/choice-bar';
import { keptChoice } from '../ui/kept-choice';

const OPTIONS = [
  { value: 'mm', label: 'mm' },
  { value: 'inches', label: 'inches' },
] as const;

const kept = keptChoice<LengthSystem>('lengths', (value) => value === 'mm' || value === 'inches');

/** The system of lengths the reader has chosen in this browser; `usual` until then. */
export const useLengthSystem = kept.useChosen;

export function LengthChoice({ system }: { readonly system: LengthSystem }) {
  return <ChoiceBar legend="Measure in" options={OPTIONS} value={system} onChoose={kept.choose} />;
}
