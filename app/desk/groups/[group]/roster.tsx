import { ResetPin } from '../../../../components/desk/reset-pin';
import { When } from '../../../../components/time/when';
import { TextField } from '../../../../components/ui/fields';
import { PostForm } from '../../../../components/ui/post-form';
import type { RosterLearner } from '../../../../lib/store/groups/roster';
import styles from '../../desk.module.css';

/** Who is in the group; behind each name what can be done for them. */
export function Roster({ learners }: { readonly learners: readonly RosterLearner[] }) {
  if (learners.length === 0) return <p>Nobody yet. Add names below, or let learners join by themselves.</p>;
  return (
    <ul className={styles.people}>
      {learners.map((learner) => {
        const { id, name, hasPin, timeFactor } = learner;
        return (
          <li key={id}>
            <details className="disclosure">
              <summary>
                <strong>{name}</strong>
                <span className={styles.soft}>
                  <SignInState {...learner} />
                </span>
              </summary>
              <div className={styles.more}>
                <a className="link" href={`/desk/learners/${id}`}>
                  Results of {name}
                </a>
                <ResetPin learner={id} name={name} hasPin={hasPin} />
                <PostForm
                  action="/api/groups/time"
                  send="Save"
                  name={`Time for ${name}`}
                  also={{ learner: id }}
                  plain
                >
                  <TextField
                    name="timeFactor"
                    label="Time allowed, in percent of the usual (125 is a quarter more)"
                    kind="number"
                    value={String(timeFactor)}
                  />
                </PostForm>
                <PostForm
                  action="/api/groups/remove-learner"
                  send="Remove from the group"
                  name={`Remove ${name} from the group`}
                  also={{ learner: id }}
                  plain
                />
                <p className={styles.soft}>Their work and marks are kept. You can put them back.</p>
              </div>
            </details>
          </li>
        );
      })}
    </ul>
  );
}

function SignInState({ hasPin, hasWord, lockedUntil, devices, timeFactor }: RosterLearner) {
  return (
    <>
      {hasPin ? 'has a PIN' : hasWord ? 'one-time word not used yet' : 'no PIN yet'}
      {devices > 0 && ` · signed in on ${devices} ${devices === 1 ? 'device' : 'devices'}`}
      {lockedUntil !== null && (
        <>
          {' '}
          · too many wrong PINs: locked until <When at={lockedUntil} />
        </>
      )}
      {timeFactor !== 100 && ` · time ${timeFactor} %`}
    </>
  );
}
