'use client';

import styles from './today.module.css';
import { useToday } from './use-today';

/** Over an exercise of today's practice: why it comes now. */
export function TodayLine() {
  const why = useToday();
  return why === null ? null : (
    <p className={styles.line}>
      <strong>Today’s practice.</strong> {why}
    </p>
  );
}
