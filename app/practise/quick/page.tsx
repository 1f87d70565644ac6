import { randomInt } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { redirect } from 'next/navigation';
import styles from '../../../components/drills/quick/quick.module.css';
import { GoOn } from '../../../components/today/go-on';
import { TodayLine } from '../../../components/today/today-line';
import { Caution } from '../../../components/ui/caution';
import { QUICK_LEVELS, QUICK_LOOKS, type QuickLevel } from '../../../lib/drills/quick/quick-look';
import { QUICK_LOOK_TABLE, seenIn } from '../../../lib/drills/quick/quick-look-table';
import type { QuickRoundName } from '../../../lib/drills/quick/quick-picture';
import { MOST_ROUND } from '../../../lib/drills/quick/quick-round';
import { roundAddress } from '../../../lib/drills/quick/round-address';
import { CATALOGUE } from '../../../lib/inspect/catalogue';
import { DRAWING_CAUTIONS } from '../../../lib/inspect/make-safe';
import { RULE_SETS } from '../../../lib/limits/limit';
import { ruleSetTitle } from '../../../lib/limits/limits';
import { QuickLooks } from './quick-looks';

export const metadata: Metadata = {
  title: 'Quick look',
  description: 'Ten walls, a few seconds each: sound, or is something wrong?',
};

interface Props {
  readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>>;
}

/** The address names the round, so that a group can look through the same one. */
export default async function QuickLookPage({ searchParams }: Props) {
  const asked = await searchParams;
  const rules = RULE_SETS.find((each) => each === asked.rules);
  const round = typeof asked.round === 'string' && /^\d{1,6}$/.test(asked.round) ? Number(asked.round) : null;
  const look = QUICK_LOOKS.find((each) => each === asked.look) ?? 'face';
  const level = QUICK_LEVELS.find((each) => String(each) === asked.level) ?? 1;
  if (rules === undefined || round === null)
    redirect(
      roundAddress({ rules: rules ?? 'canada', round: round ?? randomInt(MOST_ROUND + 1), look, level }),
    );
  const name = { rules, round, look, level };
  const { label, shows } = QUICK_LOOK_TABLE[look];
  return (
    <>
      <h1>Quick look</h1>
      <TodayLine />
      <div className="column">
        <p>Is the wall sound, or is something wrong? Say so at a glance.</p>
        <Choices
          legend="What to look at"
          choices={QUICK_LOOKS.map((each) => ({
            label: QUICK_LOOK_TABLE[each].label,
            to: { ...name, look: each },
            here: each === look,
          }))}
        />
        <Choices
          legend="How hard"
          choices={QUICK_LEVELS.map((each) => ({
            label: LEVELS[each],
            to: { ...name, level: each },
            here: each === level,
          }))}
        />
        <p>
          {shows} Only faults that you can see from there are included:{' '}
          {seenIn(name)
            .map((fault) => CATALOGUE[fault].name.toLowerCase())
            .join('; ')}
          . You can zoom.
        </p>
        <p>
          Round {round}. Checked against{' '}
          <Link href={`/limits/${rules}`} prefetch={false}>
            {ruleSetTitle(rules)}
          </Link>
          .
        </p>
        <noscript>
          <p>The walls of a round are laid in your browser, which needs JavaScript.</p>
        </noscript>
      </div>
      <QuickLooks
        key={`${rules} ${round} ${look} ${level}`}
        name={name}
        of={`${label}, ${LEVELS[level].toLowerCase()}`}
        next={
          <GoOn
            otherwise={
              <a
                className="button"
                href={roundAddress({ ...name, round: round === MOST_ROUND ? 0 : round + 1 })}
              >
                Another ten walls
              </a>
            }
          />
        }
      />
      <div className="column">
        <h2>Check against other rules</h2>
        <ul>
          {RULE_SETS.filter((each) => each !== rules).map((each) => (
            <li key={each}>
              <a href={roundAddress({ ...name, rules: each })}>{ruleSetTitle(each)}</a>
            </li>
          ))}
        </ul>
        <Caution lines={DRAWING_CAUTIONS} />
      </div>
    </>
  );
}

const LEVELS: Readonly<Record<QuickLevel, string>> = { 1: 'Easy', 3: 'Harder' };

/** Links that stand for a choice: each opens the round with that number in another way. */
function Choices(props: {
  readonly legend: string;
  readonly choices: readonly {
    readonly label: string;
    readonly to: QuickRoundName;
    readonly here: boolean;
  }[];
}) {
  return (
    <nav aria-label={props.legend} className={`bar ${styles.choices}`}>
      <span aria-hidden="true">{props.legend}</span>
      <ul className="plain">
        {props.choices.map(({ label, to, here }) => (
          <li key={label}>
            <a className="chip" href={roundAddress(to)} aria-current={here ? 'true' : undefined}>
              {label}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}
