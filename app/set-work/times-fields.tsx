'use client';

import { useSyncExternalStore } from 'react';
import { TextField } from '../../components/ui/fields';
import { readingOf } from './zone-time';

const DAY_MS = 86_400_000;

/** When it opens and is due, by the clock of the person who types it. `days`: due at five in the afternoon so many days from now. */
export function TimesFields(props: {
  readonly opensAt: number | null;
  readonly dueAt: number | null;
  readonly days: number | null;
}) {
  const { opensAt, dueAt, days } = props;
  const zone = useZone();
  if (zone === null) return null;
  const reading = (at: number | null) => (at === null ? '' : readingOf(at, zone));
  const due =
    days === null ? reading(dueAt) : readingOf(Date.now() + days * DAY_MS, zone).replace(/T.*/, 'T17:00');
  return (
    <>
      <input type="hidden" name="zone" value={zone} />
      <TextField
        name="opensAt"
        label="Opens (empty: at once)"
        kind="datetime-local"
        value={reading(opensAt)}
      />
      <TextField name="dueAt" label="Due (empty: no date)" kind="datetime-local" value={due} />
    </>
  );
}

/** Another due date for work that is set. */
export function DueField({ dueAt }: { readonly dueAt: number | null }) {
  const zone = useZone();
  if (zone === null) return null;
  return (
    <>
      <input type="hidden" name="zone" value={zone} />
      <TextField
        name="dueAt"
        label="Due"
        kind="datetime-local"
        value={dueAt === null ? '' : readingOf(dueAt, zone)}
      />
    </>
  );
}

/** The browser's time zone; null on the server, which knows none: date fields come with the script that sends the form. */
function useZone(): string | null {
  return useSyncExternalStore(
    () => () => undefined,
    () => Intl.DateTimeFormat().resolvedOptions().timeZone,
    () => null,
  );
}
