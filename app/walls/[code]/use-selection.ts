'use client';

import { useState } from 'react';
import type { HalfMade } from '../../../components/wall-page/practice-state';
import type { Aim } from '../../../lib/views/pointing/pick';

/** The part picked, the place pointed at on it, and the mark that is changed there, by its place in the list. */
interface Selection extends Pick<HalfMade, 'changing'> {
  readonly part: string | null;
  readonly aim: Aim | null;
}

const NOTHING: Selection = { part: null, aim: null, changing: null };

/** What the reader took up last. A page just opened goes on with the mark half made there, if there is one. */
export function useSelection(half: HalfMade | null) {
  const [selection, select] = useState<Selection | null>(null);
  const { part, aim, changing } = selection ?? (half && { ...half, aim: null }) ?? NOTHING;
  return { picked: part, aim, changing, select };
}
