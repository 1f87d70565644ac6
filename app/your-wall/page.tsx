import type { Metadata } from 'next';
import Link from 'next/link';
import { PictureFigure } from '../../components/lesson/picture-figure';
import { Caution } from '../../components/ui/caution';
import { DO_NOT, FIRST_WORDS } from '../../lib/household/first-words';
import { LIMIT_OF_LOOKING } from '../../lib/household/note';
import { figureOf, SOUND_WALL } from '../lessons/stop-pictures';
import styles from './your-wall.module.css';

export const dynamic = 'error';

export const metadata: Metadata = {
  title: 'Your brick wall',
  description:
    'Look round the brick or stone wall of your own house: what is urgent, what to ask, whom to call, and one sheet to take along.',
};

export default function YourWallPage() {
  const { says, ...wall } = figureOf(SOUND_WALL, 'A sound wall, and what its parts are called.');
  return (
    <div className="column">
      <h1>Your brick wall</h1>
      <p>
        Is the brick or stone on your house good? Choose what fits. You need no tools to begin and no words of
        the trade.
      </p>
      <ul className={styles.ways}>
        <li>
          <Link className={styles.way} href="/your-wall/look-round#wrong" prefetch={false}>
            Something is wrong with it
          </Link>
          <p>
            It leans, it is cracked, or a piece came down. If it looks as if it could fall, go away from it
            first: <Link href="/safety">what to do now</Link>.
          </p>
        </li>
        <li>
          <Link className={styles.way} href="/your-wall/look-round#finished" prefetch={false}>
            It is finished
          </Link>
          <p>{FIRST_WORDS}</p>
        </li>
        <li>
          <Link className={styles.way} href="/your-wall/papers#while" prefetch={false}>
            It is being built
          </Link>
          <p>
            Now everything can still be seen. Find out what to ask, and what to photograph before it is
            covered. You have not hired anyone yet? <Link href="/your-wall/papers">Ask these first</Link>.
          </p>
        </li>
      </ul>
      <h2>What a sound wall looks like</h2>
      <PictureFigure {...wall}>{says}</PictureFigure>
      <p>
        {LIMIT_OF_LOOKING} <Link href="/your-wall/papers#finished">What to ask for</Link>
      </p>
      <h2>More</h2>
      <ul className={styles.links}>
        <li>
          <Link href="/your-wall/papers">Questions and papers</Link>
        </li>
        <li>
          <Link href="/your-wall/photograph">Measure a wall from a photograph</Link>
        </li>
        <li>
          <Link href="/your-wall/limits">Ten limits you can check from the ground</Link>
        </li>
        <li>
          <Link href="/lessons">Lessons, in the order in which a wall is read</Link>
        </li>
        <li>
          <Link href="/glossary">The words masons use, with pictures</Link>
        </li>
      </ul>
      <h2>Leave it alone</h2>
      <ul>
        {DO_NOT.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <Caution
        toSafety
        lines={[
          'These pages help you look and ask. They are not an inspection, and they do not judge your wall.',
          'Your local code and a licensed engineer come first.',
        ]}
      />
    </div>
  );
}
