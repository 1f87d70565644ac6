'use client';

import { useState } from 'react';
import type { HalfMade } from '../../../components/practice/practice-state';

/** The part picked, and the mark that is changed there, by its place in the list. */
type Taken = Pick<HalfMade, 'changing'> & { readonly part: string | null };

const NOTHING: Taken = { part: null, changing: null };

/** What the reader took up last. A page just opened goes on with the mark half made there, if there is one. */
export function useTaken(half: HalfMade | null) {
  const [taken, setTaken] = useState<Taken | null>(null);
  const { part, changing } = taken ?? half ?? NOTHING;
  return { picked: part, changing, setTaken };
}
