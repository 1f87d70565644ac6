import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { KeyFigures } from '../../../components/lesson/key-figures';
import { SourceList } from '../../../components/limits/source-list';
import { SOURCES } from '../../../lib/limits/bibliography';
import { LinkedData, SITE_PART } from '../../frame/linked-data';
import { sharedAs } from '../../frame/shared-as';
import { entryOf } from '../../glossary/glossary';
import { STEPS } from '../check-lesson';
import { LessonText, stepAnchor } from '../lesson-text';
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
  const { slug, meta } = (await lessonAt((await params).slug)).lesson;
  const { title, summary } = meta;
  return { title, description: summary, openGraph: sharedAs(slug, title, summary) };
}

export default async function LessonPage({ params }: Props) {
  const { lesson, before, after } = await lessonAt((await params).slug);
  const { meta, code, terms, limits, minutes } = lesson;
  const sources = SOURCES.filter(({ key }) => meta.sources.includes(key));
  return (
    <div className={styles.lesson}>
      <article className="column">
        <LinkedData
          of={{
            '@type': 'LearningResource',
            name: meta.title,
            description: meta.summary,
            learningResourceType: 'Lesson',
            position: meta.order,
            timeRequired: `PT${minutes}M`,
            teaches: meta.able,
            inLanguage: 'en',
            isAccessibleForFree: true,
            ...SITE_PART,
          }}
        />
        <h1>{meta.title}</h1>
        <p className={styles.head}>
          Lesson {meta.order} · about {minutes} minutes
        </p>
        <LessonText code={code} />
        <section className={`panel ${styles.able}`} aria-label="What you can do now">
          <p>Now you can</p>
          <ul>
            {meta.able.map((each) => (
              <li key={each}>{each}</li>
            ))}
          </ul>
        </section>
        <h2>Words of this lesson</h2>
        {/* Folded: each word is explained where its link leads, and the list is as long as a step of the lesson. */}
        <details className="disclosure">
          <summary>Show all {terms.length} words</summary>
          <dl className={styles.words}>
            {terms
              .flatMap((id) => entryOf(id) ?? [])
              .map(({ id, american, british, means }) => (
                <div key={id}>
                  <dt>
                    <Link href={`/glossary/${id}`} prefetch={false}>
                      {american === british ? american : `${american} / ${british}`}
                    </Link>
                  </dt>
                  <dd>{means}</dd>
                </div>
              ))}
          </dl>
        </details>
        <h2>Sources</h2>
        <details className="disclosure">
          <summary>Show all {sources.length} sources</summary>
          <SourceList sources={sources} />
        </details>
        <p>
          Every limit above names its own source, and the rest is common practice in the trade, told in our
          own words. Where you build, the local code decides, and so does the authority having jurisdiction:
          the office, most often the building department, that gives the permit and sends the inspector.
        </p>
        <nav className={styles.onward} aria-label="Lessons">
          {before !== undefined && (
            <Link href={`/lessons/${before.slug}`} prefetch={false}>
              Previous: {before.meta.title}
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
      <Aside limits={limits} />
    </div>
  );
}

/** Beside the text, where there is room: its steps and its figures at a glance. */
function Aside({ limits }: { readonly limits: readonly string[] }) {
  return (
    <aside className={styles.aside} aria-label="This lesson at a glance">
      <nav aria-label="Steps of this lesson">
        <p className={styles.asideTitle}>In this lesson</p>
        <ol>
          {STEPS.map((step) => (
            <li key={step}>
              <a href={`#${stepAnchor(step)}`}>{step}</a>
            </li>
          ))}
        </ol>
      </nav>
      {limits.length > 0 && (
        <KeyFigures ids={limits} title={<p className={styles.asideTitle}>Key figures</p>} />
      )}
    </aside>
  );
}
