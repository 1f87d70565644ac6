import type { Hazard } from '../../lib/inspect/finding';
import styles from './signs.module.css';

type Outcome = 'found' | 'wrong name' | 'one joint off' | 'missed' | 'false';

const OUTCOME_WORDS: Readonly<Record<Outcome, string>> = {
  found: 'Found',
  'wrong name': 'Found, other name',
  'one joint off': 'One joint off',
  missed: 'Missed',
  false: 'False mark',
};

/** The ring that stands for it on the wall. */
const SIGN_OF = {
  found: 'found',
  'wrong name': 'found',
  'one joint off': 'missed',
  missed: 'missed',
  false: 'false',
} as const satisfies Readonly<Record<Outcome, string>>;

const HAZARD_WORDS: Readonly<Record<Hazard, string>> = {
  'could fall': 'Could fall',
  'lets water in': 'Lets water in',
  looks: 'Looks only',
};

/** What became of a fault or a mark: the same ring as on the wall, and a word. */
export function OutcomeSign({ outcome }: { readonly outcome: Outcome }) {
  const sign = SIGN_OF[outcome];
  return (
    <span className={`${styles.sign} ${styles[sign] ?? ''}`}>
      <svg viewBox="0 0 24 24" width="24" height="24" aria-hidden="true">
        {outcome === 'false' ? (
          <>
            <path className={styles.hatch} d="M2 10 10 2M2 18 18 2M6 22 22 6M14 22 22 14" />
            <path className={styles.stroke} d="m6 6 12 12M18 6 6 18" />
          </>
        ) : (
          <circle className={sign === 'missed' ? styles.dashed : styles.stroke} cx="12" cy="12" r="10" />
        )}
        {outcome === 'found' && <path className={styles.stroke} d="m7 12.5 3.5 3.5L17 8.5" />}
        {outcome === 'wrong name' && <path className={styles.stroke} d="M7.5 10h9M7.5 14.5h9" />}
        {sign === 'missed' && <circle className={styles.thin} cx="12" cy="12" r="3.5" />}
      </svg>
      {OUTCOME_WORDS[outcome]}
    </span>
  );
}

/** What a fault can lead to: a sign and a word. */
export function HazardSign({ hazard }: { readonly hazard: Hazard }) {
  return (
    <span className={`${styles.sign} ${hazard === 'could fall' ? styles.danger : ''}`}>
      <svg viewBox="0 0 24 24" width="20" height="20" aria-hidden="true">
        {hazard === 'could fall' && <path className={styles.stroke} d="M12 3 22 21H2ZM12 10v5M12 17.5v1" />}
        {hazard === 'lets water in' && (
          <path
            className={styles.stroke}
            d="M12 3c4 5.5 6 8.2 6 11.5a6 6 0 0 1-12 0C6 11.200 8 8.500 12 3Z"
          />
        )}
        {hazard === 'looks' && (
          <>
            <path className={styles.thin} d="M2 12c5-8 15-8 20 0-5 8-15 8-20 0Z" />
            <circle className={styles.thin} cx="12" cy="12" r="3" />
          </>
        )}
      </svg>
      {HAZARD_WORDS[hazard]}
    </span>
  );
}
