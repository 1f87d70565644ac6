'use client';

import { useState } from 'react';
import type { TargetRow } from '../../lib/views/targets';
import { type Place, placeOf } from '../../lib/views/travel';

/** The place of the keyboard in the rows; when the rows change, on what is selected, or at the start. */
export function usePlace(
  rows: readonly TargetRow[],
  selected: string | null,
): readonly [Place, (place: Place) => void] {
  const start = (): Place =>
    (selected ? placeOf(rows, selected) : null) ?? { row: 0, index: 0, along: 0, wantedX: firstX(rows) };
  const [kept, keep] = useState(() => ({ rows, place: start() }));
  const current = kept.rows === rows ? kept : { rows, place: start() };
  if (current !== kept) keep(current);
  return [current.place, (place) => keep({ rows, place })];
}

function firstX(rows: readonly TargetRow[]): number {
  const box = rows[0]?.targets[0]?.box;
  return box ? box.x + box.width / 2 : 0;
}
