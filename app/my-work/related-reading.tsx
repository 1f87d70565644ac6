import Link from 'next/link';
import type { SetWorkSpec } from '../../lib/classes/set-work';
import { QUESTION_TOPIC_TITLES, QUESTION_TOPICS } from '../../lib/questions/topics';
import type { Lesson } from '../lessons/parse-lesson';
import styles from './my-work.module.css';

/** Lessons and question sets that go with a set work. A lesson that is gone from the site is left out. */
export function RelatedReading(props: {
  readonly spec: Pick<SetWorkSpec, 'lessons' | 'questionTopics'>;
  readonly lessons: readonly Lesson[];
}) {
  const { spec, lessons } = props;
  const read = lessons.filter(({ slug }) => spec.lessons.includes(slug));
  const asked = QUESTION_TOPICS.filter((topic) => spec.questionTopics.includes(topic));
  if (read.length + asked.length === 0) return null;
  return (
    <section aria-labelledby="before-heading">
      <h2 id="before-heading">Before you begin</h2>
      <ul className={styles.before}>
        {read.map(({ slug, meta }) => (
          <li key={slug}>
            <Link prefetch={false} className="link" href={`/lessons/${slug}`}>
              Lesson: {meta.title}
            </Link>
          </li>
        ))}
        {asked.map((topic) => (
          <li key={topic}>
            <Link prefetch={false} className="link" href={`/questions/${topic}`}>
              Questions: {QUESTION_TOPIC_TITLES[topic]}
            </Link>
          </li>
        ))}
      </ul>
    </section>
  );
}
