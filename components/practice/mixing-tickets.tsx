'use client';

import type { Batch } from '../../lib/wall/model';
import styles from './mixing-tickets.module.css';

const FREEZING_F = 32;

/** What was written down at the mixer, one row a mixing. A row can be marked. */
export function MixingTickets(props: {
  readonly batches: readonly Batch[];
  readonly open: boolean;
  readonly onToggle: (open: boolean) => void;
  /** Id of the part picked: its row is shown as such. */
  readonly picked: string | null;
  readonly onPick: ((batch: string) => void) | null;
}) {
  const { batches, open, onToggle, picked, onPick } = props;
  return (
    <details
      id="tickets"
      className={styles.tickets}
      open={open}
      onToggle={(event) => onToggle(event.currentTarget.open)}
    >
      <summary>Mixing tickets: what went into the mortar, and when it was used</summary>
      {/* Wider than a small phone: the keyboard has to get to its end, by its buttons or by itself. No landmark: a sheet has many. */}
      {/* biome-ignore lint/a11y/useSemanticElements: these are no fields */}
      <div
        className={styles.scroll}
        role="group"
        tabIndex={onPick ? undefined : 0}
        aria-label="Mixing tickets"
      >
        <table>
          <caption className="visually-hidden">
            Mixings of mortar, volumes as batched, sand damp and loose
          </caption>
          <thead>
            <tr>
              <th scope="col">Mixing</th>
              <th scope="col">Courses</th>
              <th scope="col">Cement : lime : sand</th>
              <th scope="col">Air</th>
              <th scope="col">Mixed to laid</th>
            </tr>
          </thead>
          <tbody>
            {batches.map((batch, index) => (
              <tr key={batch.id} data-picked={batch.id === picked}>
                <th scope="row">
                  {onPick ? (
                    <button type="button" onClick={() => onPick(batch.id)}>
                      Pick {index + 1}
                    </button>
                  ) : (
                    index + 1
                  )}
                </th>
                <td className={styles.tight}>
                  {batch.fromCourse}–{batch.toCourse}
                </td>
                <td>
                  {shortNumber(batch.portland)} : {shortNumber(batch.lime)} : {shortNumber(batch.sand)}
                </td>
                <td className={styles.tight}>
                  {batch.air} °C
                  <br />
                  {Math.round(batch.air * 1.8 + FREEZING_F)} °F
                </td>
                <td className={styles.tight}>{batch.minutes} min</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p>
        Volumes as batched, sand damp and loose. “Mixed to laid” is from the first mixing to the last unit
        laid with it.
      </p>
    </details>
  );
}

function shortNumber(value: number): string {
  return String(Math.round(value * 100) / 100);
}
