'use client';

import { LengthChoice, useLengthSystem } from '../forms/length-choice';

/** The reader's units, for all the instruments of a page. */
export function InstrumentUnits() {
  return <LengthChoice system={useLengthSystem('mm')} />;
}
