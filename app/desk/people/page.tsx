import type { Metadata } from 'next';
import { MakeLink } from '../../../components/desk/make-link';
import { TextField } from '../../../components/ui/fields';
import { PostForm } from '../../../components/ui/post-form';
import { type StaffRow, staffList } from '../../../lib/store/staff';
import { requirePage } from '../../access/require-page';
import styles from './people.module.css';

export const metadata: Metadata = { title: 'People' };

export default async function PeoplePage() {
  const { store } = await requirePage('/desk/people');
  const people = await staffList(store.db);
  return (
    <div className={styles.page}>
      <h1>People</h1>
      <section>
        <h2>Invite an instructor</h2>
        <p className="column">
          You get a link to hand over. With it they choose their own password. No mail is sent from here.
        </p>
        <MakeLink action="/api/people/invite" send="Make the link" name="Invite an instructor">
          <TextField name="name" label="Their name" most={60} />
          <TextField name="email" label="Their e-mail" help="They sign in with it." kind="email" />
        </MakeLink>
      </section>
      <h2>Instructors</h2>
      <p className="column">
        Has somebody left? Shut them out: password, links and sign-ins end at once. What they set stays, and
        so does their name at it. A new password link lets them in again. Has somebody lost phone and recovery
        codes? Make sure it really is them asking, then turn their second step off.
      </p>
      <ul className={`cards ${styles.people}`}>
        {people.map((member) => (
          <li key={member.userId}>
            <Member {...member} />
          </li>
        ))}
      </ul>
    </div>
  );
}

function Member(member: StaffRow) {
  const { userId, name, email, role, hasPassword, hasSecondStep, sessions, groups } = member;
  return (
    <>
      <h3>{name}</h3>
      <p>
        {role === 'owner' ? 'Owner' : 'Instructor'}, {email}
        <br />
        {groups.length === 0 ? 'No group yet' : `Groups: ${groups.join(', ')}`}
        <br />
        {hasPassword ? signedInWords(sessions) : 'Invited: has not used the link yet'}
        {hasSecondStep && ', with a second step'}
      </p>
      <div className="row">
        <MakeLink
          action="/api/people/reset-link"
          send="New password link"
          name={`New password link for ${name}`}
          also={{ user: userId }}
          plain
        />
        {sessions > 0 && (
          <PostForm
            action="/api/people/end-sessions"
            send="Sign out everywhere"
            name={`Sign ${name} out everywhere`}
            also={{ user: userId }}
            plain
          />
        )}
        {hasSecondStep && role !== 'owner' && (
          <PostForm
            action="/api/people/take-off-second-step"
            send="Turn off second step"
            name={`Turn off the second step of ${name}`}
            also={{ user: userId }}
            plain
          />
        )}
        {hasPassword && role !== 'owner' && (
          <PostForm
            action="/api/people/close-account"
            send="Shut out"
            name={`Shut ${name} out`}
            also={{ user: userId }}
            plain
          />
        )}
      </div>
    </>
  );
}

function signedInWords(sessions: number): string {
  if (sessions === 0) return 'Signed in nowhere';
  return sessions === 1 ? 'Signed in on 1 device' : `Signed in on ${sessions} devices`;
}
