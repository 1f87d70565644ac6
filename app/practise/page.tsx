import type { Metadata } from 'next';
import Link from 'next/link';
import { CodeBox } from '../../components/forms/code-box';
import { TodayButton } from '../../components/today/today-button';
import { Caution } from '../../components/ui/caution';
import { DRAWING_CAUTIONS } from '../../lib/inspect/make-safe';
import styles from './practise.module.css';

export const metadata: Metadata = {
  title: 'Ways to practise',
  description:
    'A full wall, a pair of walls, ten quick looks, a guided wall, a visit to a failing wall, or a wall of your own to spoil.',
};

/** The ways in the order in which a beginner may take them. */
const WAYS = [
  {
    href: '/practise/guided',
    name: 'Guided wall',
    what: 'First a wall with its faults shown and measured, then one where you do half, then one on your own.',
    goodFor: 'a fault is new to you and you want to see how it is read.',
    takes: 'About ten minutes',
  },
  {
    href: '/practise/pair',
    name: 'Pair',
    what: 'The same wall twice, side by side. One is sound and the other has been spoiled. Say which, where and how.',
    goodFor: 'you know what a fault is called and want to learn to see it.',
    takes: 'About three minutes a pair',
  },
  {
    href: '/practise/quick',
    name: 'Quick look',
    what: 'Ten walls with a few seconds for each: sound, or is something wrong? Choose the time, or no clock at all.',
    goodFor: 'you want a quick eye, and to know whether you call too many faults or too few.',
    takes: 'Two to six minutes',
  },
  {
    href: '/walls',
    name: 'Full wall',
    what: 'Look, measure, mark and hand in. Everything on the wall counts, and some walls are sound.',
    goodFor: 'you want to do the whole job.',
    takes: 'Five to fifteen minutes',
  },
  {
    href: '/practise/visit',
    name: 'Visit',
    what: 'You are called to a wall that is failing. Make safe from the street, read the face, say what may come down next, why, and what is to be done today.',
    goodFor: 'you want to learn what cracks and loose units tell, and in which order to act.',
    takes: 'About fifteen minutes',
  },
  {
    href: '/practise/build',
    name: 'Build your own',
    what: 'Start from a sound wall, spoil it with sliders, and see where each limit is crossed.',
    goodFor: 'you want to know what a limit looks like on a wall, or to show somebody else.',
    takes: 'As long as you like',
  },
] as const;

export default function PractisePage() {
  return (
    <>
      <h1>Ways to practise</h1>
      <TodayButton />
      <p className="column">
        Here are six ways to train your eye. You need no account, and you can start with any of them.
      </p>
      <ul className="cards">
        {WAYS.map(({ href, name, what, goodFor, takes }) => (
          <li key={href} className={`panel ${styles.way}`}>
            <h2>
              <Link href={href} prefetch={false}>
                {name}
              </Link>
            </h2>
            <p>{what}</p>
            <p>
              <strong>Good when</strong> {goodFor}
            </p>
            <p className={styles.takes}>{takes}</p>
          </li>
        ))}
      </ul>
      <p className="links">
        <Link href="/practise/where-you-stand" prefetch={false}>
          Where you stand
        </Link>
        <Link href="/practise/record" prefetch={false}>
          Your practice record
        </Link>
      </p>
      <section className="column" aria-labelledby="code">
        <h2 id="code">Have a wall code?</h2>
        <CodeBox />
      </section>
      <div className="column">
        <Caution lines={DRAWING_CAUTIONS} />
      </div>
    </>
  );
}
