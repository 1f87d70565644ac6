/** The people of the matrix, in the order of its signs. */
export const ROLES = [
  'nobody',
  'owner',
  'lead',
  'co-instructor',
  'other instructor',
  'learner',
  'class-mate',
  'learner of another group',
] as const;
export type RoleName = (typeof ROLES)[number];

export const RULES = ['anyone', 'owner', 'instructor', 'lead', 'learner'] as const;
export type RuleName = (typeof RULES)[number];

export type Outcome = 'pass' | 'sign in' | 'not theirs';

const SIGNS: Readonly<Record<string, Outcome>> = { p: 'pass', s: 'sign in', '–': 'not theirs' };

/**
 * Who passes which rule when a request names these records: p passes, s has to sign in, – is told that there is no such thing.
 * Worked out by hand from the rules as they stand above ACCESS; one sign a role.
 */
const MATRIX = {
  nothing: {
    anyone: 'pppppppp',
    owner: 'sp––––––',
    instructor: 'spppp–––',
    lead: 'spppp–––',
    learner: 's––––ppp',
  },
  'their group': {
    anyone: 'pppppppp',
    owner: 'sp––––––',
    instructor: 'sppp––––',
    lead: 'spp–––––',
    learner: 's––––pp–',
  },
  'their set work': {
    anyone: 'pppppppp',
    owner: 'sp––––––',
    instructor: 'sppp––––',
    lead: 'spp–––––',
    learner: 's––––pp–',
  },
  'their learner': {
    anyone: 'pppppppp',
    owner: 'sp––––––',
    instructor: 'sppp––––',
    lead: 'spp–––––',
    learner: 's––––p––',
  },
  'their attempt': {
    anyone: 'pppppppp',
    owner: 'sp––––––',
    instructor: 'sppp––––',
    lead: 'spp–––––',
    learner: 's––––p––',
  },
  'their group, and an attempt of another': {
    anyone: 'pppppppp',
    owner: 's–––––––',
    instructor: 's–––––––',
    lead: 's–––––––',
    learner: 's–––––––',
  },
  'a group that is not there': {
    anyone: 'pppppppp',
    owner: 's–––––––',
    instructor: 's–––––––',
    lead: 's–––––––',
    learner: 's–––––––',
  },
} as const satisfies Readonly<Record<string, Readonly<Record<RuleName, string>>>>;

export type NamedName = keyof typeof MATRIX;
export const NAMED = Object.keys(MATRIX) as readonly NamedName[];

export function expectedOutcome(named: NamedName, rule: RuleName, role: RoleName): Outcome {
  const sign = MATRIX[named][rule][ROLES.indexOf(role)] ?? '';
  const outcome = SIGNS[sign];
  if (!outcome) throw new Error(`${named}, ${rule}: no sign for ${role}`);
  return outcome;
}
