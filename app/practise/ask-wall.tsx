import Link from 'next/link';
import { redirect } from 'next/navigation';
import { WallForm } from '../../components/forms/wall-form';
import { Caution } from '../../components/ui/caution';
import { MAX_SEED } from '../../lib/generate/brief';
import { codeOf } from '../../lib/generate/wall-code';
import { LIMIT_CAUTIONS } from '../../lib/inspect/make-safe';
import { type Asked, askedBrief, BRIEF_FIELDS } from '../walls/asked-brief';
import styles from './practise.module.css';

/** The first page of a drill that needs a wall with a fault: a form for one. Its page leads on to the first wall that has one. */
export function AskWall(props: {
  readonly asked: Asked;
  /** The address of the way; the code of the wall comes after it. */
  readonly way: string;
  readonly title: string;
  readonly what: string;
  readonly send: string;
}) {
  const { asked, way, title, what, send } = props;
  const { typed, problems, brief } = askedBrief(asked);
  if (brief) redirect(`${way}/${codeOf(brief)}`);
  return (
    <div className="column">
      <h1>{title}</h1>
      <p>{what}</p>
      <WallForm
        action={way}
        send={send}
        fields={BRIEF_FIELDS}
        typed={typed}
        problems={problems}
        mostSeed={MAX_SEED}
      />
      <p>
        <Link href="/practise" prefetch={false} className={styles.others}>
          Other ways to practise
        </Link>
      </p>
      <Caution lines={LIMIT_CAUTIONS} />
    </div>
  );
}
