import Link from 'next/link';
import { CodeBox } from '../components/forms/code-box';
import { TodayButton } from '../components/today/today-button';
import { Caution } from '../components/ui/caution';
import { TOPIC_TITLES, TOPICS } from '../lib/generate/topics';
import { FIRST_WORDS } from '../lib/household/first-words';
import { DRAWING_CAUTIONS } from '../lib/inspect/make-safe';
import { ruleSetTitle } from '../lib/limits/limits';
import styles from './home.module.css';
import { HOME_WALL } from './home-wall';

export default function StartPage() {
  return (
    <div className={styles.home}>
      <div className={styles.lead}>
        <div>
          <h1>Read the wall</h1>
          <p className={styles.what}>
            Learn to tell good brickwork from bad. Each wall is a new drawing, made for you: look it over,
            measure it, and mark anything that is out of tolerance. Then see what you found, what you missed,
            how far out it was and why it matters. Some walls are sound.
          </p>
          <TodayButton
            otherwise={
              <p>
                <Link
                  className="button"
                  href="/walls?topic=joints&kind=plain-panel&difficulty=1&rules=canada"
                  prefetch={false}
                >
                  Read a first wall
                </Link>
              </p>
            }
          />
          <nav className={`links ${styles.readers}`} aria-label="Who it is for">
            <a href="#apprentice">For apprentices</a>
            <a href="#instructor">For instructors</a>
            <a href="#homeowner">For homeowners</a>
          </nav>
        </div>
        <figure className={styles.picture}>
          {/* biome-ignore lint/performance/noImgElement: a drawing made at build time; there is nothing to resize */}
          <img
            // Not eager: every page that links here would otherwise fetch it ahead.
            loading="lazy"
            src="/sound-wall.svg"
            alt="Drawing of a sound brick wall with a window, seen from in front"
            width={1200}
            height={840}
          />
          <figcaption className="fine">
            This wall is sound. Every measurement on it is within the limits of{' '}
            {ruleSetTitle(HOME_WALL.rules)}.
          </figcaption>
        </figure>
      </div>

      <div className={styles.ways}>
        <section aria-labelledby="apprentice">
          <h2 id="apprentice">For apprentices</h2>
          <p>
            Read a <Link href="/lessons">lesson</Link>, choose a <Link href="/practise">way to practise</Link>
            , or start with one topic. The first walls have one fault at most, and it is easy to see.
          </p>
          <ul className={styles.topics}>
            {TOPICS.map((topic) => (
              <li key={topic}>
                <Link
                  href={`/walls?topic=${topic}&kind=plain-panel&difficulty=1&rules=canada`}
                  prefetch={false}
                >
                  {TOPIC_TITLES[topic]}
                </Link>
              </li>
            ))}
          </ul>
        </section>
        <section aria-labelledby="instructor">
          <h2 id="instructor">For instructors</h2>
          <p>
            Choose a topic, a kind of wall, how hard it should be and the rules to check it against. Every
            wall has a short code: read it out, and everyone gets the same wall.
          </p>
          <ul className={styles.links}>
            <li>
              <Link href="/walls">Set up a wall for a group</Link>
            </li>
            <li>
              <Link href="/limits">See every limit with its source</Link>
            </li>
          </ul>
        </section>
        <section aria-labelledby="homeowner">
          <h2 id="homeowner">For homeowners</h2>
          <p>{FIRST_WORDS}</p>
          <ul className={styles.links}>
            <li>
              <Link href="/your-wall">Look round your own wall</Link>
            </li>
            <li>
              <Link href="/your-wall/papers">What to ask the mason</Link>
            </li>
            <li>
              <Link href="/safety">If masonry looks loose</Link>
            </li>
          </ul>
        </section>
      </div>

      <section className={styles.known} aria-labelledby="known">
        <h2 id="known">Have a wall code?</h2>
        <CodeBox />
      </section>
      <Caution lines={DRAWING_CAUTIONS} />
    </div>
  );
}
