import Link from 'next/link';
import { DRAWERS, type Drawer } from '../../lib/household/drawers';
import { CALLS, dialOf, type Look } from '../../lib/household/look';
import { type Finding, LIMIT_OF_LOOKING, type Measured, type Note, noteOf } from '../../lib/household/note';
import { questionOf, STOPS } from '../../lib/household/stops';
import { ruleSetTitle } from '../../lib/limits/limits';
import type { LengthSystem } from '../../lib/units';
import { LengthChoice } from '../forms/length-choice';
import { KIND_WORDS } from '../limits/limit-words';
import { PrintButton } from '../ui/print-button';
import { CALL_WORDS, DRAWER_WORDS } from './answer-words';
import { DayWords } from './day-words';
import styles from './household.module.css';
import { PlaceChoice } from './place-choice';

/** What the look round comes to: read on the phone, printed as one sheet, signed by whoever was shown it. */
export function NoteSheet(props: {
  readonly look: Look;
  readonly system: LengthSystem;
  readonly onChange: (look: Look) => void;
}) {
  const { look, system, onChange } = props;
  const note = noteOf(look, system);
  const [sign] = DRAWER_WORDS[note.top ?? 'harmless'];
  return (
    <div className={styles.note}>
      <p className={styles.headline} data-drawer={note.top ?? 'none'}>
        <span aria-hidden="true">{note.top === null ? '' : `${sign} `}</span>
        {note.headline}
      </p>
      <p className={styles.about}>
        {look.name && <strong>{look.name}. </strong>}
        Looked at on <DayWords at={look.begun} />. Figures from: {ruleSetTitle(look.rules)}.
      </p>
      <StepList title="Now" lines={note.now} />
      <Numbers look={look} />
      <StepList title="Soon" lines={note.soon} />
      <StepList title="Later" lines={note.later} />
      {DRAWERS.map((drawer) => (
        <DrawerOf
          key={drawer}
          drawer={drawer}
          findings={note.findings.filter((each) => each.drawer === drawer)}
        />
      ))}
      <NotSeen note={note} />
      <p className={styles.limit}>{LIMIT_OF_LOOKING}</p>
      <div className={styles.signatures} aria-hidden="true">
        <span>Looked at by</span>
        <span>Shown to</span>
        <span>Date and signature</span>
      </div>
      <div className={styles.screen}>
        <PlaceChoice rules={look.rules} onChoose={(rules) => onChange({ ...look, rules })} />
        <LengthChoice system={system} />
        <p className="row">
          <PrintButton />
          <Link className="button button-plain" href="/your-wall/papers" prefetch={false}>
            What to ask
          </Link>
          <a className="button button-plain" href="#kept">
            All looks on this device
          </a>
        </p>
      </div>
    </div>
  );
}

function StepList({ title, lines }: { readonly title: string; readonly lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <section>
      <h3>{title}</h3>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}

/** The numbers the reader wrote down, to be tapped. */
function Numbers({ look: { calls } }: { readonly look: Look }) {
  const given = CALLS.flatMap((call) => {
    const typed = calls[call] ?? '';
    const dialled = dialOf(typed);
    return dialled === undefined ? [] : [{ call, typed, dialled }];
  });
  if (given.length === 0) return null;
  return (
    <ul className={`${styles.numbers} row`}>
      {given.map(({ call, typed, dialled }) => (
        <li key={call}>
          <a className="chip" href={`tel:${dialled}`}>
            {CALL_WORDS[call]}: {typed}
          </a>
        </li>
      ))}
    </ul>
  );
}

function DrawerOf({ drawer, findings }: { readonly drawer: Drawer; readonly findings: readonly Finding[] }) {
  if (findings.length === 0) return null;
  const [sign, title] = DRAWER_WORDS[drawer];
  return (
    <section className={styles.drawer} data-drawer={drawer}>
      <h3>
        <span aria-hidden="true">{sign} </span>
        {title}
      </h3>
      <ul>
        {findings.map(({ about, stop, saw, measured, maybe, ask }) => (
          <li key={about}>
            <strong>{saw}</strong> <span className="fine">{titleOf(stop)}.</span>{' '}
            {measured && <MeasuredLine measured={measured} />}{' '}
            {maybe.length > 0 && <span className={styles.line}>It may also be: {maybe.join(' ')}</span>}{' '}
            <span className={styles.line}>{ask}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}

function MeasuredLine({ measured }: { readonly measured: Measured }) {
  const { value, limit, kind, source, sourceKey, softer } = measured;
  return (
    <span className={styles.line}>
      {value}. Limit: {limit}. <span className="tag">{KIND_WORDS[kind]}</span>{' '}
      <Link href={`/sources#${sourceKey}`} prefetch={false}>
        {source}
      </Link>
      . {softer.join(' ')}
    </span>
  );
}

/** Nobody is sent back to a wall that could fall to look at the rest. */
function NotSeen({ note: { notSeen, top } }: { readonly note: Note }) {
  if (notSeen.length === 0) return null;
  return (
    <section>
      <h3>Not seen</h3>
      {top === 'go away now' ? (
        <p>You did not see all of it. Do not go back to look. Tell the engineer.</p>
      ) : (
        <>
          <p>Nobody answered these. Ask someone who can, and take none of them for good.</p>
          <ul className={styles.unseen}>
            {notSeen.map((id) => (
              <li key={id}>{questionOf(id).ask}</li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

function titleOf(stop: Finding['stop']): string {
  return STOPS.find(({ id }) => id === stop)?.title ?? stop;
}
