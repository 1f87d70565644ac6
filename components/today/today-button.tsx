'use client';

import Link from 'next/link';
import { type ReactNode, useSyncExternalStore } from 'react';
import { hasPractised } from '../record/has-practised';
import styles from './today.module.css';

/** One press to a wall, for whoever has practised on this device; anybody else is offered what the page begins with. */
export function TodayButton({ otherwise = null }: { readonly otherwise?: ReactNode }) {
  const isBack = useSyncExternalStore(unchanging, hasPractised, () => false);
  if (!isBack) return otherwise;
  return (
    <div className={styles.offer}>
      <Link className="button" href="/practise/today" prefetch={false}>
        Today’s practice
      </Link>
      <p>Ten minutes, chosen from what you miss and what you have not seen for a while.</p>
    </div>
  );
}

function unchanging(): () => void {
  return () => undefined;
}
