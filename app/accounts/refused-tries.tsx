import type { ReactNode } from 'react';
import { When } from '../../components/time/when';
import type { Store } from '../../lib/store/database';
import { refusedTries } from '../../lib/store/throttle';

/** Tells somebody that wrong passwords, codes or PINs were tried in their name, and what to do about it. */
export async function RefusedTries(props: {
  readonly db: Store['db'];
  /** As rateLimited counts them. */
  readonly of: string;
  readonly children: ReactNode;
}) {
  const refused = await refusedTries(props.db, props.of);
  if (!refused) return null;
  return (
    <p>
      <strong>
        There {refused.count === 1 ? 'was 1 failed try' : `were ${refused.count} failed tries`} to sign in as
        you since you last signed in
      </strong>
      , the latest on <When at={refused.last} />. {props.children}
    </p>
  );
}
