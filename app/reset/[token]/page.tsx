import type { Metadata } from 'next';
import { TextField } from '../../../components/ui/fields';
import { PostForm } from '../../../components/ui/post-form';
import { FEWEST_PASSWORD_SIGNS } from '../../accounts/accounts';
import { holderOf } from '../../accounts/password-links';

export const metadata: Metadata = {
  title: 'Choose a password',
  // The address is the secret.
  referrer: 'no-referrer',
  robots: { index: false },
};

interface Props {
  readonly params: Promise<{ readonly token: string }>;
}

export default async function NewPasswordPage({ params }: Props) {
  const { token } = await params;
  const holder = await holderOf(token);
  if (!holder) {
    return (
      <div className="column">
        <h1>This link does not work any more</h1>
        <p>It was used, or it is too old. Ask the owner of this site for a new one.</p>
      </div>
    );
  }
  return (
    <div className="column">
      <h1>Choose a password</h1>
      <p>
        For <strong>{holder.name}</strong>. You sign in with <strong>{holder.email}</strong> and this
        password. Where you are signed in now, you will be signed out.
      </p>
      <PostForm action="/api/people/new-password" then="/desk" send="Use this password" also={{ token }}>
        {/* So that a password manager knows whose password it keeps. */}
        <input type="hidden" autoComplete="username" value={holder.email} />
        <TextField
          name="password"
          label="New password"
          help={`At least ${FEWEST_PASSWORD_SIGNS} characters. A few words in a row are easy to remember.`}
          kind="password"
          fills="new-password"
        />
      </PostForm>
    </div>
  );
}
