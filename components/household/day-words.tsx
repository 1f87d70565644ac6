const SHOWN = { day: 'numeric', month: 'long', year: 'numeric' } as const;

/** A day by the reader's own calendar. Only for what the server does not write. */
export function DayWords({ at }: { readonly at: number }) {
  return (
    <time dateTime={new Date(at).toISOString()}>{new Intl.DateTimeFormat('en-GB', SHOWN).format(at)}</time>
  );
}
