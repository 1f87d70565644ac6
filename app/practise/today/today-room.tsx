'use client';

import { useRouter } from 'next/navigation';
import { useEffect, useState } from 'react';
import { chooseNext, type Next } from './choose-next';
import { LearntToday } from './learnt-today';

/** Leads on to the next exercise, or says what ten minutes were good for. */
export function TodayRoom({ goesOn }: { readonly goesOn: boolean }) {
  const router = useRouter();
  const [next, setNext] = useState<Next | null>(null);
  useEffect(() => {
    void chooseNext(goesOn).then((chosen) => {
      setNext(chosen);
      // In place of this page: going back from a wall leads to where the reader came from.
      if (chosen.kind === 'exercise') router.replace(chosen.address);
    });
  }, [goesOn, router]);
  if (next?.kind === 'over') return <LearntToday learnt={next.learnt} comesNext={next.comesNext} />;
  return (
    <p role="status">
      {next === null ? (
        'Looking up what comes next …'
      ) : (
        <a href={next.address}>Opening your next exercise …</a>
      )}
    </p>
  );
}
