'use client';

import { useSyncExternalStore } from 'react';
import { TextField } from '../../components/desk/fields';
import { readingOf } from './zone-time';

const DAY_MS = 86_400_000;

/** When it opens and is due, by the clock of the person who types it. `days`: due at five in the afternoon so many days from now. */
export function TimesFields(props: {
  readonly opensAt: number | null;
  readonly dueAt: number | null;
  readonly days: number | null;
}) {
  const { opensAt, dueAt, days } = props;
  // The server knows no zone: these fields come with the script that sends the form.
  const isHere = useSyncExternalStore(
    () => () => undefined,
    () => true,
    () => false,
  );
  if (!isHere) return null;
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
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
