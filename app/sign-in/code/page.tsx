import type { Metadata } from 'next';
import { headers } from 'next/headers';
import Link from 'next/link';
import { Disclosure } from '../../../components/ui/disclosure';
import { TextField } from '../../../components/ui/fields';
import { PostForm } from '../../../components/ui/post-form';
import { waitingForCode } from '../../accounts/second-step';

export const metadata: Metadata = { title: 'Second step' };

interface Props {
  readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>>;
}

export default async function SignInCodePage({ searchParams }: Props) {
  const { then } = await searchParams;
  const also = typeof then === 'string' ? { onward: then } : {};
  if ((await waitingForCode(await headers())) === undefined) {
    return (
      <div className="column">
        <h1>Sign in again</h1>
        <p>
          There is no sign-in to finish in this browser, or it took too long.{' '}
          <Link href="/sign-in">Sign in</Link>
        </p>
      </div>
    );
  }
  return (
    <div className="column">
      <h1>Second step</h1>
      <p>Your password is right. Now open the app for sign-in codes on your phone.</p>
      <PostForm action="/api/people/sign-in-code" then="/desk" send="Sign in" name="Code" also={also}>
        <TextField
          name="code"
          label="Code from the app"
          help="Six digits. Each code works once."
          fills="one-time-code"
          digits
        />
      </PostForm>
      <h2>Lost your phone?</h2>
      <Disclosure title="Use a recovery code" now="" names={[]}>
        <PostForm
          action="/api/people/sign-in-code"
          then="/desk"
          send="Sign in with it"
          name="Recovery code"
          also={also}
        >
          <TextField name="code" label="Recovery code" help="Two groups of four, like 7KQ2-M9TX." />
        </PostForm>
      </Disclosure>
      <p>
        No recovery code left? The owner of this site can turn the second step off for you. Are you the owner?
        Whoever runs the server makes you a new owner link.
      </p>
    </div>
  );
}
