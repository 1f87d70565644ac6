'use client';

import type { Fetched } from './use-part';

/** In place of what is still being fetched. */
export function Awaited({ parts }: { readonly parts: readonly Fetched<unknown>[] }) {
  const failed = parts.filter((each) => each.failed);
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
