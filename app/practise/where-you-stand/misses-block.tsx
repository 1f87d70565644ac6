import { CATALOGUE } from '../../../lib/inspect/catalogue';
import type { Hazard } from '../../../lib/inspect/finding';
import type { WhereYouStand } from '../../../lib/learning/where-you-stand';
import styles from './stand.module.css';

const WORDS: Readonly<Record<Hazard, string>> = {
  'could fall': 'Could fall',
  'lets water in': 'Lets water in',
  looks: 'Looks only',
};
/** More would not be read. */
const MOST_NAMES = 3;

/** Faults missed, by what they can do; and what was found under another name. */
export function MissesBlock({ misses, misnamed }: Pick<WhereYouStand, 'misses' | 'misnamed'>) {
  return (
    <section>
      <h2>What you miss</h2>
      <dl className={styles.bars}>
        {misses.map(({ hazard, count, of }) => (
          <div key={hazard}>
            <dt>{WORDS[hazard]}</dt>
            <dd>
              {of === 0 ? 'none met yet' : `${count} of ${of} missed`}
              {of > 0 && (
                <svg className={styles.bar} viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">
                  <rect className={styles.whole} width={100} height={8} />
                  <rect className={styles.part} width={(100 * count) / of} height={8} />
                </svg>
              )}
            </dd>
          </div>
        ))}
      </dl>
      {misnamed.length > 0 && (
        <>
          <h3>Found, but called something else</h3>
          <ul>
            {misnamed.slice(0, MOST_NAMES).map(({ fault, named, times }) => (
              <li key={`${fault} ${named}`}>
                {CATALOGUE[fault].name}, called “{CATALOGUE[named].name.toLowerCase()}”:{' '}
                {times === 1 ? 'once' : `${times} times`}
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
