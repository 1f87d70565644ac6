import type { Metadata } from 'next';
import { When } from '../../../components/time/when';
import { Disclosure } from '../../../components/ui/disclosure';
import { TextField } from '../../../components/ui/fields';
import { PostForm } from '../../../components/ui/post-form';
import { SignOutElsewhere } from '../../../components/ui/sign-out-elsewhere';
import { staffById } from '../../../lib/store/staff';
import { requirePage } from '../../access/require-page';
import { FEWEST_PASSWORD_SIGNS } from '../../accounts/accounts';
import { type OwnSession, ownSessions } from '../../accounts/own-sessions';
import { RefusedTries } from '../../accounts/refused-tries';
import { recoveryCodesOf } from '../../accounts/second-step';
import { accountKey } from '../../accounts/sessions';
import styles from './account.module.css';
import { SecondStep } from './second-step';

export const metadata: Metadata = { title: 'Your account' };

const OLD_PASSWORD = (
  <TextField name="password" label="Your password" kind="password" fills="current-password" />
);

export default async function AccountPage() {
  const { person, store } = await requirePage('/desk/account');
  const { name, email } = person;
  const isOn = (await staffById(store.db, person.userId))?.hasSecondStep;
  const codesLeft = isOn ? (await recoveryCodesOf(person.userId)).length : undefined;
  return (
    <div className="column">
      <h1>Your account</h1>
      <RefusedTries db={store.db} of={accountKey(email)}>
        If that was not you, choose a new password below.
      </RefusedTries>
      <Disclosure title="Name" now={name} names={[]}>
        <PostForm action="/api/account/name" send="Change the name" name="Name">
          <TextField name="name" label="Your name" value={name} fills="name" most={60} />
        </PostForm>
      </Disclosure>
      <Disclosure title="E-mail" now={email} names={[]}>
        <PostForm action="/api/account/email" send="Change the e-mail" name="E-mail">
          <TextField
            name="email"
            label="New e-mail"
            help="From then on you sign in with it. No mail is sent."
            kind="email"
            fills="email"
          />
          {OLD_PASSWORD}
        </PostForm>
      </Disclosure>
      <Disclosure title="Password" now="" names={[]}>
        <PostForm
          action="/api/account/password"
          send="Change the password"
          done="Your password is changed. You are signed out on all other devices."
          name="Password"
        >
          {/* So that a password manager knows whose password it keeps. */}
          <input type="hidden" autoComplete="username" value={email} />
          {OLD_PASSWORD}
          <TextField
            name="chosen"
            label="New password"
            help={`At least ${FEWEST_PASSWORD_SIGNS} characters. You will be signed out on all other devices.`}
            kind="password"
            fills="new-password"
          />
        </PostForm>
      </Disclosure>

      <SecondStep codesLeft={codesLeft} isOwner={person.kind === 'owner'} />

      <h2>Where you are signed in</h2>
      <Sessions sessions={await ownSessions(person)} />
    </div>
  );
}

/** Where somebody is signed in, each to be ended. */
function Sessions({ sessions }: { readonly sessions: readonly OwnSession[] }) {
  return (
    <>
      <ul className={`cards ${styles.sessions}`}>
        {sessions.map(({ id, device, begun, used, isThis }) => (
          <li key={id}>
            <p>
              <strong>{device}</strong>
              {isThis && ', this one'}
              <br />
              Signed in <When at={begun} />
              <br />
              Last used {isThis ? 'now' : <When at={used} />}
            </p>
            {!isThis && (
              <PostForm
                action="/api/account/end-sessions"
                send="Sign out there"
                name={`Sign out: ${device}`}
                also={{ session: id }}
                plain
              />
            )}
          </li>
        ))}
      </ul>
      {sessions.length > 1 && <SignOutElsewhere action="/api/account/end-sessions" />}
    </>
  );
}
