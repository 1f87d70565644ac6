/** What all rows from the International Residential Code share. */
export const IRC = {
  rules: 'united-states',
  kind: 'code minimum',
  source: 'irc-2021',
  edition: 'IRC 2021',
  howSure: 'read',
} as const;

/** What all rows from the International Building Code share. */
export const IBC = { ...IRC, source: 'ibc-2021', edition: 'IBC 2021' } as const;
