import { TextField } from '../../../../components/ui/fields';
import { PostForm } from '../../../../components/ui/post-form';
import type { RosterLearner } from '../../../../lib/store/groups';
import styles from '../../desk.module.css';

/** Who is in the group; behind each name what can be done for them. */
export function Roster({ learners }: { readonly learners: readonly RosterLearner[] }) {
  if (learners.length === 0) return <p>Nobody yet. Add names below, or let learners join by themselves.</p>;
  return (
    <ul className={styles.people}>
      {learners.map(({ id, name, hasPin, timeFactor }) => (
        <li key={id}>
          <details className="disclosure">
            <summary>
              <strong>{name}</strong>
              <span className={styles.soft}>
                {hasPin ? 'has a PIN' : 'no PIN yet'}
                {timeFactor !== 100 && ` · time ${timeFactor} %`}
              </span>
            </summary>
            <div className={styles.more}>
              <a className={styles.link} href={`/desk/learners/${id}`}>
                What {name} sees and misses
              </a>
              {hasPin && (
                <PostForm
                  action="/api/people/reset-pin"
                  then="reload"
                  send="Let them choose a new PIN"
                  name={`New PIN for ${name}`}
                  also={{ learner: id }}
                  done="They choose a new PIN when they next join. Let them do it now."
                  plain
                />
              )}
              <PostForm
                action="/api/groups/time"
                then="reload"
                send="Set the time"
                name={`Time for ${name}`}
                also={{ learner: id }}
                plain
              >
                <TextField
                  name="timeFactor"
                  label="Time in percent of what others get"
                  kind="number"
                  value={String(timeFactor)}
                />
              </PostForm>
              <PostForm
                action="/api/groups/remove-learner"
                then="reload"
                send="Take off the roster"
                name={`Take ${name} off the roster`}
                also={{ learner: id }}
                plain
              />
            </div>
          </details>
        </li>
      ))}
    </ul>
  );
}
