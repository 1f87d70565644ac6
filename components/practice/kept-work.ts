import { CHECKS } from '../../lib/inspect/finding';
import type { Mark, Phase, Work } from './practice-state';

const VERSION = 1;
const PHASES: readonly Phase[] = ['looking', 'review', 'handed in'];

/** The work on a wall as text for the browser to keep. */
export function formatWork({ marks, saysSound, phase }: Work): string {
  return JSON.stringify({ version: VERSION, marks, saysSound, phase });
}

/** Reads kept work back. Null for anything that is not work on a wall with these parts: it is then left alone. */
export function parseWork(text: string | null, isPart: (id: string) => boolean): Work | null {
  if (text === null) return null;
  let loose: unknown;
  try {
    loose = JSON.parse(text);
  } catch {
    return null;
  }
  if (!isRecord(loose) || loose.version !== VERSION || !Array.isArray(loose.marks)) return null;
  const marks = loose.marks.flatMap((mark: unknown) => parseMark(mark, isPart) ?? []);
  const phase = PHASES.find((each) => each === loose.phase);
  if (marks.length !== loose.marks.length || phase === undefined) return null;
  return { marks, saysSound: loose.saysSound === true && marks.length === 0, phase };
}

function parseMark(loose: unknown, isPart: (id: string) => boolean): Mark | null {
  if (!isRecord(loose) || typeof loose.part !== 'string' || !isPart(loose.part)) return null;
  const fault = CHECKS.find((check) => check === loose.fault);
  const { sure } = loose;
  if (fault === undefined || (sure !== 1 && sure !== 2 && sure !== 3)) return null;
  return { part: loose.part, fault, sure };
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}
