import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { RulesChoice } from '../../../components/lesson/rules-choice';
import { SourceList } from '../../../components/limits/source-list';
import { SOURCES } from '../../../lib/limits/bibliography';
import { RULE_SETS } from '../../../lib/limits/limit';
import { ruleSetTitle } from '../../../lib/limits/limits';
import { entryOf } from '../../glossary/glossary';
import { LessonText } from '../lesson-text';
import styles from '../lessons.module.css';
import { readLessons } from '../read-lessons';

export const dynamic = 'error';
export const dynamicParams = false;

interface Props {
  readonly params: Promise<{ readonly slug: string }>;
}

export async function generateStaticParams() {
  return (await readLessons()).map(({ slug }) => ({ slug }));
}

async function lessonAt(slug: string) {
  const lessons = await readLessons();
  const index = lessons.findIndex((each) => each.slug === slug);
  return { lesson: lessons[index] ?? notFound(), before: lessons[index - 1], after: lessons[index + 1] };
}

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { meta } = (await lessonAt((await params).slug)).lesson;
  return { title: meta.title, description: meta.summary };
}

const RULE_TITLES = RULE_SETS.map((id) => [id, ruleSetTitle(id)] as const);

export default async function LessonPage({ params }: Props) {
  const { lesson, before, after } = await lessonAt((await params).slug);
  const { meta, code, terms } = lesson;
  return (
    <article className="column">
      <h1>{meta.title}</h1>
      <p className={styles.head}>
        Lesson {meta.order} · {meta.minutes} minutes
      </p>
      <RulesChoice titles={RULE_TITLES} />
      <LessonText code={code} />
      <section className={styles.able} aria-label="What you can do now">
        <p>After this lesson you can</p>
        <ul>
          {meta.able.map((each) => (
            <li key={each}>{each}</li>
          ))}
        </ul>
      </section>
      <h2>Words of this lesson</h2>
      <dl className={styles.words}>
        {terms
          .flatMap((id) => entryOf(id) ?? [])
          .map(({ id, american, british, means }) => (
            <div key={id}>
              <dt>
                <Link href={`/glossary#${id}`} prefetch={false}>
                  {american === british ? american : `${american} / ${british}`}
                </Link>
              </dt>
              <dd>{means}</dd>
            </div>
          ))}
      </dl>
      <h2>Sources</h2>
      <SourceList sources={SOURCES.filter(({ key }) => meta.sources.includes(key))} />
      <p>
        Each limit above names its own source. The rest is common practice of the trade, in our own words.
        Local code and the authority having jurisdiction decide.
      </p>
      <nav className={styles.onward} aria-label="Lessons">
        {before !== undefined && (
          <Link href={`/lessons/${before.slug}`} prefetch={false}>
            Before: {before.meta.title}
          </Link>
        )}
        {after !== undefined && (
          <Link href={`/lessons/${after.slug}`} prefetch={false}>
            Next: {after.meta.title}
          </Link>
        )}
        <Link href="/lessons">All lessons</Link>
      </nav>
    </article>
  );
}
