import type { Metadata } from 'next';
import { connection } from 'next/server';
import { TextField } from '../../components/ui/fields';
import { PostForm } from '../../components/ui/post-form';
import { hasOwner } from '../../lib/store/staff';
import { FEWEST_PASSWORD_SIGNS } from '../accounts/accounts';
import { store } from '../server/store';

export const metadata: Metadata = { title: 'Set up this site' };

export default async function SetUpPage() {
  await connection();
  const { db } = await store();
  if (await hasOwner(db)) {
    return (
      <div className="column">
        <h1>This site is set up</h1>
        <p>
          It has its owner. <a href="/sign-in">Sign in</a>, or ask the owner to invite you.
        </p>
      </div>
    );
  }
  return (
    <div className="column">
      <h1>Set up this site</h1>
      <p>You make the owner’s account. The owner invites instructors. There is one owner.</p>
      <PostForm action="/api/people/set-up" then="/desk" send="Make the account">
        <TextField
          name="code"
          label="Start code"
          help="The server showed it when it started: four groups of four, like 7KQ2-M9TX-4RHB-0WCD."
        />
        <TextField name="name" label="Your name" help="Your co-instructors see it." fills="name" most={60} />
        <TextField
          name="email"
          label="E-mail"
          help="You sign in with it. No mail is sent."
          kind="email"
          fills="username"
        />
        <TextField
          name="password"
          label="Password"
          help={`At least ${FEWEST_PASSWORD_SIGNS} characters. A few words in a row are easy to remember.`}
          kind="password"
          fills="new-password"
        />
      </PostForm>
    </div>
  );
}
