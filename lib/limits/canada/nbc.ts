/** What all rows from Part 9 of the National Building Code share. */
export const NBC = {
  rules: 'canada',
  kind: 'code minimum',
  source: 'nbc-2020',
  edition: 'NBC 2020, as printed in the 2023 Alberta Edition',
  howSure: 'read',
} as const;
