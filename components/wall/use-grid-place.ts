'use client';

import { useState } from 'react';
import { type GridPlace, gridPlaceOf } from '../../lib/views/pointing/keyboard-navigation';
import type { TargetRow } from '../../lib/views/pointing/targets';

/** The place of the keyboard in the rows; when the rows change, on what is selected, or at the start. */
export function useGridPlace(
  rows: readonly TargetRow[],
  selected: string | null,
): readonly [GridPlace, (place: GridPlace) => void] {
  const start = (): GridPlace =>
    (selected ? gridPlaceOf(rows, selected) : null) ?? { row: 0, index: 0, along: 0, wantedX: firstX(rows) };
  const [kept, keep] = useState(() => ({ rows, place: start() }));
  const current = kept.rows === rows ? kept : { rows, place: start() };
  if (current !== kept) keep(current);
  return [current.place, (place) => keep({ rows, place })];
}

function firstX(rows: readonly TargetRow[]): number {
  const box = rows[0]?.targets[0]?.box;
  return box ? box.x + box.width / 2 : 0;
}
