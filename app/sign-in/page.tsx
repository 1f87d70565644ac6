import type { Metadata } from 'next';
import { headers } from 'next/headers';
import Link from 'next/link';
import { TextField } from '../../components/ui/fields';
import { PostForm } from '../../components/ui/post-form';
import { whoIs } from '../accounts/people';

export const metadata: Metadata = {
  title: 'Sign in',
  description: 'For instructors: groups, set work and the mark book.',
};

interface Props {
  readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>>;
}

export default async function SignInPage({ searchParams }: Props) {
  const { then } = await searchParams;
  const person = await whoIs(await headers());
  return (
    <div className="column">
      <h1>Sign in</h1>
      {person.kind === 'nobody' ? (
        <>
          <p>
            This is for instructors. Do you learn in a group? <Link href="/join">Go to your group</Link>.
          </p>
          <PostForm
            action="/api/people/sign-in"
            then="/desk"
            send="Sign in"
            also={typeof then === 'string' ? { onward: then } : {}}
          >
            <TextField name="email" label="E-mail" kind="email" fills="username" />
            <TextField name="password" label="Password" kind="password" fills="current-password" />
          </PostForm>
          <h2>Cannot sign in?</h2>
          <p>
            Ask the owner of this site for a new link. With it you choose a new password. No mail is sent from
            here.
          </p>
        </>
      ) : (
        <p>
          You are signed in as <strong>{person.name}</strong>.{' '}
          <Link href={person.kind === 'learner' ? '/my-work' : '/desk'}>
            {person.kind === 'learner' ? 'Go to your work' : 'Go to your desk'}
          </Link>
          , or sign out at the foot of this page.
        </p>
      )}
    </div>
  );
}
