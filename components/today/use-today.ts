import { usePathname } from 'next/navigation';
import { useEffect, useState } from 'react';
import { readToday } from './kept-today';

/** Where today's practice goes on, or ends after ten minutes. */
export const GO_ON = { href: '/practise/today?go=on', words: 'Go on with today’s practice' } as const;

/** Why the exercise of this page is part of today's practice, in a line; null where it is not. */
export function useToday(): string | null {
  const path = usePathname();
  const [why, setWhy] = useState<string | null>(null);
  useEffect(() => {
    const today = readToday();
    // A round of quick looks is named behind the question mark; a guided wall has its steps there.
    const isHere = today?.address === path || today?.address === path + window.location.search;
    setWhy(today !== null && isHere ? today.why : null);
  }, [path]);
  return why;
}
