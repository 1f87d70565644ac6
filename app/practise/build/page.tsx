import type { Metadata } from 'next';
import Link from 'next/link';
import styles from '../../../components/drills/build/build.module.css';
import { Caution } from '../../../components/ui/caution';
import { Options } from '../../../components/ui/options';
import { BASES, layBuild } from '../../../lib/drills/build/laid-build';
import { LIMIT_CAUTIONS } from '../../../lib/inspect/make-safe';
import { RULE_SETS } from '../../../lib/limits/limit';
import { ruleSetTitle } from '../../../lib/limits/limits';
import type { Asked } from '../../walls/asked-brief';
import { BuildPractice } from './build-practice';

export const metadata: Metadata = {
  title: 'Build your own wall',
  description: 'Spoil a sound wall with sliders and see where each limit is crossed.',
};

/** The address holds the kind of wall and the rules; anything else in it is taken for the first of each. */
export default async function BuildPage({ searchParams }: { readonly searchParams: Promise<Asked> }) {
  const asked = await searchParams;
  const base = BASES.find(({ id }) => id === asked.wall) ?? BASES[0];
  const rules = RULE_SETS.find((each) => each === asked.rules) ?? 'canada';
  return (
    <>
      <h1>Build your own wall</h1>
      <p className="column">
        This wall is laid true, and every measure is as drawn. Move a slider and that measure alone goes
        wrong. Watch the wall change, and see where each limit is crossed.
      </p>
      <form method="get" action="/practise/build" className={styles.ask}>
        <label>
          Kind of wall
          <select name="wall" defaultValue={base.id}>
            <Options of={BASES.map(({ id, title }) => [id, title])} />
          </select>
        </label>
        <label>
          Checked against
          <select name="rules" defaultValue={rules}>
            <Options of={RULE_SETS.map((each) => [each, ruleSetTitle(each)])} />
          </select>
        </label>
        <button type="submit" className="button">
          Lay it
        </button>
      </form>
      <p>
        {base.title} · checked against{' '}
        <Link href={`/limits/${rules}`} prefetch={false}>
          {ruleSetTitle(rules)}
        </Link>
      </p>
      <noscript>
        <p>The sliders need JavaScript. Without it you see only the wall and its limits.</p>
      </noscript>
      <BuildPractice key={`${base.id} ${rules}`} laid={layBuild(base, rules)} rules={rules} />
      <div className="column">
        <Caution lines={LIMIT_CAUTIONS} />
      </div>
    </>
  );
}
