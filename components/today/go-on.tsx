'use client';

import type { ReactNode } from 'react';
import { GO_ON, useToday } from './use-today';

/** After an exercise: on with today's practice, where it belongs to that; else what the page offers. */
export function GoOn({ otherwise }: { readonly otherwise: ReactNode }) {
  return useToday() === null ? (
    otherwise
  ) : (
    <a className="button" href={GO_ON.href}>
      {GO_ON.words}
    </a>
  );
}
