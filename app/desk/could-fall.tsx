import { Caution } from '../../components/ui/caution';
import type { Finding } from '../../lib/inspect/finding';
import { COULD_FALL_CAUTIONS } from '../../lib/inspect/make-safe';

/** What to do on a real wall, beside a fault that could make it fall; nothing beside others. */
export function CouldFall({ findings }: { readonly findings: readonly Finding[] }) {
  if (!findings.some(({ hazard }) => hazard === 'could fall')) return null;
  return <Caution word="Danger, on a real wall" lines={COULD_FALL_CAUTIONS} toSafety />;
}
