'use client';

import { formatLength, inches, type LengthSystem, type Mm } from '../../../lib/units';
import { inchText } from '../../wall-page/reading-text';
import { NumberField } from './number-field';

/** A length in mm, shown and typed in the reader's system. Inches go by sixteenths. */
export function LengthField(props: {
  readonly label: string;
  readonly system: LengthSystem;
  readonly value: Mm;
  readonly least: Mm;
  readonly most: Mm;
  readonly step: Mm;
  readonly onChange: (value: Mm) => void;
}) {
  const { system, value, least, most, step, onChange, label } = props;
  if (system === 'mm') {
    return (
      <NumberField
        // What was typed in one unit is not left standing in the other.
        key="mm"
        {...{ label, value, least, most, step, onChange }}
        unit="mm"
        spoken={formatLength(value, 'mm')}
      />
    );
  }
  return (
    <NumberField
      key="in"
      label={label}
      unit="in"
      spoken={formatLength(value, 'inches')}
      value={sixteenth(value, Math.round)}
      least={sixteenth(least, Math.ceil)}
      most={sixteenth(most, Math.floor)}
      step={1 / 16}
      written={writtenInches}
      onChange={(inch) => onChange(inches(inch))}
    />
  );
}

/** 39.375 -> "39 3/8", as a tape is read. */
function writtenInches(inch: number): string {
  return inch < 0 ? `−${inchText(inches(-inch))}` : inchText(inches(inch));
}

function sixteenth(mm: Mm, round: (value: number) => number): number {
  return round((mm / inches(1)) * 16) / 16;
}
