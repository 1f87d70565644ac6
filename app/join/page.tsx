import type { Metadata } from 'next';
import { headers } from 'next/headers';
import Link from 'next/link';
import { redirect } from 'next/navigation';
import { TextField } from '../../components/ui/fields';
import { GetForm } from '../../components/ui/get-form';
import { tidyCode } from '../accounts/codes';
import { openGroup } from '../accounts/enter-group';
import { whoIs } from '../accounts/people';
import { Refusal } from '../request/refusal';
import { store } from '../server/store';

interface Props {
  readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>>;
}

export async function generateMetadata({ searchParams }: Props): Promise<Metadata> {
  const { code } = await searchParams;
  return {
    title: `${code === undefined ? '' : 'Error: '}Your group`,
    description: 'Enter your group with the code your instructor gave you.',
  };
}

export default async function JoinPage({ searchParams }: Props) {
  const { code, deleted } = await searchParams;
  const typed = typeof code === 'string' ? code : '';
  const problem = code === undefined ? undefined : await problemWith(tidyCode(typed));
  const person = await whoIs(await headers());
  return (
    <div className="column">
      <h1>Go to your group</h1>
      {deleted !== undefined && <p role="status">Your data is deleted.</p>}
      {person.kind === 'learner' && (
        <p>
          You are signed in as <strong>{person.name}</strong>. <Link href="/my-work">Go to your work</Link>.
        </p>
      )}
      <GetForm action="/join" send="Go on" problems={problem ? { code: problem } : {}}>
        <TextField
          name="code"
          label="Code of your group"
          help="Your instructor has it. Two groups of four, like 7KQ2-M9TX."
          value={typed}
          most={40}
        />
      </GetForm>
      <p>
        Do you teach? <Link href="/sign-in">Sign in here</Link>.
      </p>
    </div>
  );
}

/** Leads on when the code is right. */
async function problemWith(code: string): Promise<string> {
  if (code === '') return 'Type the code of your group.';
  try {
    if (!(await openGroup(await store(), await headers(), code, Date.now()))) {
      return 'No open group has this code. Look at it again, or ask your instructor.';
    }
  } catch (error) {
    if (error instanceof Refusal) return error.problem;
    throw error;
  }
  return redirect(`/join/${code}`);
}
