import { useEffect, useRef } from 'react';
import { doneAt } from '../../../components/record/done-at';
import type { CheckId, Finding } from '../../../lib/inspect/finding';
import type { BuildAttempt } from '../../../lib/learning/attempt';
import type { RuleSetId } from '../../../lib/limits/limit';

/** Puts each fault that the reader makes into the practice record, once a visit, as its limit is crossed. */
export function useRecordedSpoils(
  rules: RuleSetId,
  findings: readonly { readonly finding: Pick<Finding, 'check'> }[],
): void {
  const known = useRef(new Set<CheckId>());
  useEffect(() => {
    const spoiled = [...new Set(findings.map(({ finding }) => finding.check))].filter(
      (check) => !known.current.has(check),
    );
    if (spoiled.length === 0) return;
    for (const check of spoiled) known.current.add(check);
    const attempt: BuildAttempt = { ...doneAt(null), kind: 'build', rules, spoiled };
    import('../../../components/record/add-attempt').then(
      ({ addAttempt }) => addAttempt(attempt),
      () => undefined,
    );
  }, [rules, findings]);
}
