import { type AuditRow, audited, type By, type Change } from '../../lib/store/audit';
import type { Store } from '../../lib/store/database';
import { log } from '../server/log';

/** Changes who may do what, with an entry in the audit trail, and says so in one line of the log. */
export async function changeRights(store: Store, by: By, change: Change<AuditRow>): Promise<void> {
  const { actor, action, subject } = await audited(store, by, change);
  log.info({ actor, subject }, action);
}

/** The same for what was changed already, by the accounts' own library. */
export function noteInTrail(store: Store, by: By, action: string, subject: string): Promise<void> {
  return changeRights(store, by, (_, note) => note(action, subject));
}
