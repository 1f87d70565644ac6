'use client';

import type { Lazy } from './use-lazy';

/** In place of what is still being fetched. */
export function LoadingNotice({ of }: { readonly of: readonly Lazy<unknown>[] }) {
  const failed = of.filter((each) => each.failed);
  return (
    <p role="status">
      {failed.length > 0 ? 'Part of this page did not arrive. Your work is kept. ' : 'One moment …'}
      {failed.length > 0 && (
        <button
          type="button"
          className="button button-plain"
          onClick={() => {
            for (const each of failed) each.fetchAgain();
          }}
        >
          Fetch it again
        </button>
      )}
    </p>
  );
}
