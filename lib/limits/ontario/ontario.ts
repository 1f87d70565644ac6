import { NATIONAL_AND_ONTARIO } from '../canada/canada';
import type { Limit } from '../limit';
import { ONTARIO_DECIDING } from './deciding';
import { OBC } from './obc';
import { ONTARIO_SHOWN } from './shown';

const OWN: readonly Limit[] = [...ONTARIO_DECIDING, ...ONTARIO_SHOWN];
const CHANGED = new Set(OWN.map(({ id }) => id));

/** Ontario: the national rules in its own code, but for the rows that differ. Where both are silent, good practice answers, as for Canada. */
export const ONTARIO: readonly Limit[] = [
  ...OWN,
  ...NATIONAL_AND_ONTARIO.filter(({ id }) => !CHANGED.has(id)).map((limit) => ({
    ...limit,
    rules: OBC.rules,
    source: OBC.source,
    edition: OBC.edition,
  })),
];
