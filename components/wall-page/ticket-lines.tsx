import { ticketName } from '../../lib/views/tickets/words';
import type { Batch } from '../../lib/wall/model';
import styles from './ticket-lines.module.css';

/** The mixing tickets on paper: one line for each, as the drawing would come out too small to read. */
export function TicketLines({ batches }: { readonly batches: readonly Batch[] }) {
  return (
    <>
      <p className={styles.title}>Mixing tickets</p>
      <ul className={styles.lines}>
        {batches.map((batch) => (
          <li key={batch.id}>{ticketName(batch)}</li>
        ))}
      </ul>
    </>
  );
}
