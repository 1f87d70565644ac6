import type { Store } from '../../lib/store/database';
import {
  type NamedRecords,
  partIn,
  RECORDS,
  type RecordOwner,
  recordOwnerOf,
} from '../../lib/store/record-owner';
import type { Learner, Person, Staff } from '../accounts/people';
import type { Rule } from './access-table';

/** Who comes through a rule. */
export type Passed<R extends Rule> = R extends 'learner' ? Learner : R extends 'anyone' ? Person : Staff;

/** 'not theirs' and a record that does not exist look the same from outside. */
export type Verdict = 'pass' | 'sign in' | 'not theirs';

/** Whether a person passes a rule, given the records that address and body name. */
export async function authorize(
  db: Store['db'],
  rule: Rule,
  person: Person,
  named: NamedRecords,
): Promise<Verdict> {
  if (rule === 'anyone') return 'pass';
  if (person.kind === 'nobody') return 'sign in';
  if (!isOfKind(rule, person)) return 'not theirs';
  if (Object.keys(named).length === 0) return 'pass';
  const owner = await recordOwnerOf(db, named);
  return owner && (await isTheirs(db, rule, person, owner)) ? 'pass' : 'not theirs';
}

function isOfKind(rule: Exclude<Rule, 'anyone'>, person: Exclude<Person, { kind: 'nobody' }>): boolean {
  if (rule === 'learner') return person.kind === 'learner';
  if (rule === 'owner') return person.kind === 'owner';
  return person.kind !== 'learner';
}

async function isTheirs(
  db: Store['db'],
  rule: Rule,
  person: Person,
  { groupId, learnerIds }: RecordOwner,
): Promise<boolean> {
  switch (person.kind) {
    case 'owner':
      return true;
    case 'instructor': {
      const part = await partIn(db, groupId, person.userId);
      return rule === 'lead' ? part === 'lead' : part !== undefined;
    }
    case 'learner':
      return person.groupId === groupId && learnerIds.every((id) => id === person.learnerId);
    default:
      return false;
  }
}

/**
 * The records that these sources name. One that is no text, or two that say different things, names a record nobody has: so the
 * handler can never be about another record than the one that was asked about.
 */
export function namedIn(...sources: readonly unknown[]): NamedRecords {
  const named: Partial<Record<(typeof RECORDS)[number], string>> = {};
  for (const source of sources) {
    if (typeof source !== 'object' || source === null) continue;
    for (const kind of RECORDS) {
      if (!Object.hasOwn(source, kind)) continue;
      const value: unknown = (source as Record<string, unknown>)[kind];
      const id = typeof value === 'string' ? value : '';
      named[kind] = named[kind] === undefined || named[kind] === id ? id : '';
    }
  }
  return named;
}
