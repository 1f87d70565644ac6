import { TOPIC_TITLES } from '../../../lib/generate/topics';
import type { FamilyLine } from '../../../lib/learning/where-you-stand';
import { SharePlot } from '../../desk/plots/share-plot';
import styles from './stand.module.css';

const DAY = 86_400_000;

/** Family by family: what is found, what is called and is sound, and when it is due. */
export function FamiliesBlock({
  families,
  now,
}: {
  readonly families: readonly FamilyLine[];
  readonly now: number;
}) {
  return (
    <section>
      <h2>Family by family</h2>
      <p className="fine">The last 30 walls of each kind. The bars run from 0 to 100 %, with 95 % limits.</p>
      <ul className="plain">
        {families.map(({ family, hits, falseAlarms, isMastered, dueAt }) => (
          <li key={family} className={styles.family}>
            <h3>{TOPIC_TITLES[family]}</h3>
            <Share name="Found and named" of={hits} />
            <Share name="Called on sound walls" of={falseAlarms} />
            <p>
              {isMastered && <strong>Mastered. </strong>}
              {dueWords(dueAt, now)}
            </p>
          </li>
        ))}
      </ul>
      <p className="fine">
        Mastered means at least four in five found, and at least four in five sound walls left alone, both as
        good as certain, over ten walls or more on two days.
      </p>
    </section>
  );
}

function Share({ name, of }: { readonly name: string; readonly of: FamilyLine['hits'] }) {
  return (
    <div>
      <p>
        {name}: {of === null ? 'no wall yet' : `${of.count} of ${of.of}`}
      </p>
      {of && <SharePlot limits={of.limits} />}
    </div>
  );
}

function dueWords(dueAt: number | null, now: number): string {
  if (dueAt === null) return 'Still to be met on a faulty wall.';
  const days = Math.ceil((dueAt - now) / DAY);
  if (days <= 0) return 'Due now.';
  return days === 1 ? 'Due tomorrow.' : `Due in ${days} days.`;
}
