export const UK = { rules: 'united-kingdom', kind: 'standard tolerance', howSure: 'read' } as const;
export const NHBC_2019 = { ...UK, source: 'nhbc-2019', edition: 'NHBC Standards 2019' } as const;
export const NHBC_2020 = { ...UK, source: 'nhbc-2020', edition: 'NHBC Standards 2020' } as const;
export const LABC = {
  ...UK,
  source: 'labc-v8',
  edition: 'LABC Warranty Technical Manual, version 8',
} as const;
export const TRAYS = {
  ...UK,
  source: 'labc-trays',
  edition: 'LABC Warranty guide to weep holes and cavity trays',
} as const;
export const LAYING = {
  ...UK,
  source: 'labc-laying',
  edition: 'LABC Warranty guide to laying bricks and blocks',
} as const;
