import type { Metadata } from 'next';
import { When } from '../../components/time/when';
import { TickField } from '../../components/ui/fields';
import { PostForm } from '../../components/ui/post-form';
import { SignOutElsewhere } from '../../components/ui/sign-out-elsewhere';
import { learnerData } from '../../lib/store/learner-data';
import { learnerSessions } from '../../lib/store/learner-sessions';
import { requirePage } from '../access/require-page';
import { RefusedTries } from '../accounts/refused-tries';

export const metadata: Metadata = { title: 'My data' };

export default async function MyDataPage() {
  const { person, store } = await requirePage('/my-data');
  const at = Date.now();
  const data = await learnerData(store.db, person.learnerId, at, (time) => new Date(time).toISOString());
  const sessions = await learnerSessions(store.db, person.learnerId, at);
  return (
    <div className="column">
      <h1>My data</h1>
      <RefusedTries db={store.db} of={person.learnerId}>
        If that was not you, ask your instructor to reset your PIN.
      </RefusedTries>
      <p>This is all that is kept about you:</p>
      <ul>
        <li>your name: {data.name}</li>
        <li>your group: {data.group}</li>
        <li>your PIN, scrambled, so that nobody can read it</li>
        <li>when you joined: {data.joined.slice(0, 10)}</li>
        <li>where you are signed in: see below</li>
        <li>
          your work: {data.attempts.length === 1 ? '1 try' : `${data.attempts.length} tries`}, with your
          marks, readings and results
        </li>
      </ul>
      <p>
        Your instructors and the owner of this site see it. Others of your group see your name. Practice
        outside set work stays on your device.
      </p>

      <h2>Take it away</h2>
      <p>A file with all of it. Results are in it once you can see them here.</p>
      <p>
        <a className="button" href="/api/join/my-data" download="my-data.json">
          Download my data
        </a>
      </p>

      <h2>Delete it</h2>
      <p>
        Your name, your work and your results are deleted for good, for your instructor too. If you have
        handed work in, one line about it stays: your name, which work it was, and when you handed it in and
        deleted it. If you still have to show your results to somebody, download them first.
      </p>
      <PostForm
        action="/api/join/delete-my-data"
        then="/join"
        send="Delete my data"
        plain
        name="Delete my data"
      >
        <TickField name="sure" label="I am sure. It cannot be brought back." />
      </PostForm>

      <h2>Leave this device</h2>
      <p>
        Do others use this device too? Sign out when you are done: the button is at the foot of every page.
      </p>

      <h2>Where you are signed in</h2>
      <ul>
        {sessions.map(({ tokenHash, device, begun }) => (
          <li key={tokenHash}>
            {device || 'A browser'}, since <When at={begun} />
            {tokenHash === person.tokenHash && ', this one'}
          </li>
        ))}
      </ul>
      {sessions.length > 1 && <SignOutElsewhere action="/api/join/end-sessions" />}
    </div>
  );
}
