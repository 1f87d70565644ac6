import { When } from '../../../components/time/when';
import { PostForm } from '../../../components/ui/post-form';
import type { OwnSession } from '../../accounts/own-sessions';
import styles from './account.module.css';

/** Where somebody is signed in, each to be ended. */
export function Sessions({ sessions }: { readonly sessions: readonly OwnSession[] }) {
  return (
    <>
      <ul className={styles.sessions}>
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
                then="reload"
                send="Sign out there"
                name={`Sign out: ${device}`}
                also={{ session: id }}
                plain
              />
            )}
          </li>
        ))}
      </ul>
      {sessions.length > 1 && (
        <PostForm
          action="/api/account/end-sessions"
          then="reload"
          send="Sign out everywhere but here"
          name="Sign out everywhere but here"
          plain
        />
      )}
    </>
  );
}
