'use client';

import { useSyncExternalStore } from 'react';

const SHOWN = {
  weekday: 'short',
  day: 'numeric',
  month: 'short',
  hour: '2-digit',
  minute: '2-digit',
} as const;

/** A time by the reader's own clock and calendar. The server, which knows neither, sends it in UTC. */
export function When({ at }: { readonly at: number }) {
  const text = useSyncExternalStore(
    subscribeToNothing,
    () => new Intl.DateTimeFormat('en-GB', SHOWN).format(at),
    () => `${new Intl.DateTimeFormat('en-GB', { ...SHOWN, timeZone: 'UTC' }).format(at)} UTC`,
  );
  return <time dateTime={new Date(at).toISOString()}>{text}</time>;
}

function subscribeToNothing(): () => void {
  return () => undefined;
}
