export const OBC = {
  rules: 'ontario',
  kind: 'code minimum',
  source: 'obc-2024',
  edition: 'Ontario Building Code 2024',
  howSure: 'read',
} as const;
