import type { Metadata } from 'next';
import { headers } from 'next/headers';
import Link from 'next/link';
import { redirect } from 'next/navigation';
import { TextField } from '../../../components/ui/fields';
import { GetForm } from '../../../components/ui/get-form';
import { PostForm } from '../../../components/ui/post-form';
import { type LearnerRow, rosterOf } from '../../../lib/store/learners';
import { tidyCode } from '../../accounts/codes';
import { openGroup } from '../../accounts/enter-group';
import { personName } from '../../accounts/password-rules';
import { Refusal } from '../../request/refusal';
import { store } from '../../server/store';
import styles from './roster.module.css';

export const metadata: Metadata = { title: 'Your group', robots: { index: false } };

interface Props {
  readonly params: Promise<{ readonly code: string }>;
  readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>>;
}

/** First who, then the PIN. */
export default async function JoinGroupPage({ params, searchParams }: Props) {
  const code = tidyCode((await params).code);
  const asked = await searchParams;
  const opened = await store();
  const group = await groupOrBack(code);
  const roster = await rosterOf(opened.db, group.id);
  const typed = typeof asked.name === 'string' ? personName.safeParse(asked.name) : undefined;
  const known = roster.find(
    ({ id, name }) => id === asked.as || name.toLowerCase() === typed?.data?.toLowerCase(),
  );
  if (known) return <PinPage code={code} group={group.name} name={known.name} learner={known} />;
  if (typed?.success) return <PinPage code={code} group={group.name} name={typed.data} />;
  return (
    <div className="column">
      <h1>{group.name}</h1>
      {(roster.length > 0 || !group.takesNew) && (
        <>
          <h2>Who are you?</h2>
          <ul className={styles.names}>
            {roster.map(({ id, name }) => (
              <li key={id}>
                <Link prefetch={false} href={`/join/${code}?as=${id}`}>
                  {name}
                </Link>
              </li>
            ))}
          </ul>
          <h2>Your name is not here?</h2>
        </>
      )}
      {!group.takesNew && <p>Ask your instructor to add it: this group takes no new names just now.</p>}
      {group.takesNew && (
        <GetForm
          action={`/join/${code}`}
          send="Go on"
          plain={roster.length > 0}
          problems={
            typed?.success === false ? { name: typed.error.issues[0]?.message ?? 'Type a name.' } : {}
          }
        >
          <TextField
            name="name"
            label="Your name"
            help="Your instructor sees it, and the others of your group see it in this list. A first name is enough."
            value={typeof asked.name === 'string' ? asked.name : ''}
            most={60}
          />
        </GetForm>
      )}
    </div>
  );
}

function PinPage(props: {
  readonly code: string;
  readonly group: string;
  readonly name: string;
  readonly learner?: LearnerRow;
}) {
  const { code, group, name, learner } = props;
  const first = !learner || learner.pinHash === null;
  return (
    <div className="column">
      <h1>{first ? `Choose a PIN, ${name}` : `Your PIN, ${name}`}</h1>
      <p>
        {group}. <Link href={`/join/${code}`}>I am somebody else</Link>
      </p>
      <PostForm
        action="/api/join/enter"
        then="/my-work"
        send={first ? 'Join the group' : 'Sign in'}
        also={{ code, who: learner ? { id: learner.id } : { name } }}
      >
        <TextField
          name="pin"
          label="PIN"
          kind="password"
          digits
          most={6}
          {...(first
            ? { help: '4 to 6 digits that nobody would guess. You need them each time you sign in.' }
            : {})}
        />
        {first && <TextField name="again" label="The same PIN again" kind="password" digits most={6} />}
        {first && learner && learner.wordHash !== null && (
          <TextField
            name="word"
            label="One-time word"
            help="Your instructor has given it to you, and to nobody else."
            most={40}
          />
        )}
      </PostForm>
      {first && (
        <p>
          What is kept: your name, your PIN in scrambled form, and the work you do in this group. You can
          download it and delete it at any time. If you delete work that you have handed in, your instructor
          still sees that you did, and when.
        </p>
      )}
      {!first && <p>PIN forgotten? Your instructor can reset it.</p>}
    </div>
  );
}

/** The open group of this code; sends back to the page that asks for the code when there is none. */
async function groupOrBack(code: string) {
  try {
    const group = await openGroup(await store(), await headers(), code, Date.now());
    if (group) return group;
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
  }
  return redirect(`/join?code=${encodeURIComponent(code)}`);
}
