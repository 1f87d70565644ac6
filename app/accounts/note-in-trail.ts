import { type AuditEntry, appendAudit } from '../../lib/store/audit';
import type { Store } from '../../lib/store/database';
import { log } from '../server/log';

/** Writes down who changed what right, in the audit trail and as one line of the log. */
export async function noteInTrail({ db, kind }: Store, entry: Omit<AuditEntry, 'detail'>): Promise<void> {
  await db.transaction().execute((trx) => appendAudit(trx, kind, { ...entry, detail: {} }));
  logChange(entry);
}

export function logChange({
  actor,
  action,
  subject,
}: Pick<AuditEntry, 'actor' | 'action' | 'subject'>): void {
  log.info({ actor, subject }, action);
}
