import type { ReactNode } from 'react';
import { ColumnHeads } from '../ui/column-heads';
import styles from './trade.module.css';

/** A table under a drawing; it slides sideways where the screen is narrower. */
export function TradeTable(props: {
  readonly caption: string;
  readonly heads: readonly string[];
  readonly children: ReactNode;
}) {
  const { caption, heads, children } = props;
  return (
    <div className={styles.table}>
      <table>
        <caption>{caption}</caption>
        <ColumnHeads of={heads} />
        <tbody>{children}</tbody>
      </table>
    </div>
  );
}
