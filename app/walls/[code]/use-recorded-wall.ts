import { useEffect } from 'react';
import { type Done, doneAt } from '../../../components/record/done-at';
import { keepText, readKept } from '../../../components/wall-page/kept-text';
import type { Mark } from '../../../components/wall-page/work-state';
import type { MetOnWall } from '../../../lib/exercise/met-on-wall';
import { hasFields, readJson } from '../../../lib/json/read-json';
import type { WallToRead } from '../../../lib/wall-page/wall-to-read';

/**
 * Puts a wall that is handed in into the practice record, once it is graded. When it was handed in is kept in this tab until then, under the
 * id of the attempt: a reload in between loses nothing, and one after it adds nothing.
 */
export function useRecordedWall(
  { code, topic, difficulty }: WallToRead,
  marks: readonly Mark[],
  met: MetOnWall | null,
): { readonly handedIn: (spentMs: number) => void } {
  const key = `wall-handed-in:${code}`;
  useEffect(() => {
    const done = met && parseDone(readKept(key));
    if (met === null || !done) return;
    const attempt = { ...done, kind: 'full wall', wall: code, topic, difficulty, marks, ...met } as const;
    import('../../../components/record/add-attempt')
      .then(({ addAttempt }) => addAttempt(attempt))
      .then(
        () => keepText(key, ''),
        () => undefined,
      );
  }, [key, code, topic, difficulty, marks, met]);
  return { handedIn: (spentMs) => keepText(key, JSON.stringify(doneAt(spentMs))) };
}

function parseDone(text: string | null): Done | null {
  const loose = readJson(text);
  if (!hasFields(loose, { id: 'string', at: 'number', zone: 'number', spentMs: 'number' })) return null;
  const { id, at, zone, spentMs } = loose;
  return { version: 1, id, at, zone, spentMs };
}
