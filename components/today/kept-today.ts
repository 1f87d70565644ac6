import { hasFields, readJson } from '../../lib/json/read-json';
import { keepText, readKept } from '../wall-page/kept-text';

/** The exercise of today's practice that is open in this tab. */
export interface Today {
  /** When the ten minutes began, ms since 1970. */
  readonly began: number;
  /** The address of the exercise. */
  readonly address: string;
  /** The kind of exercise, and how many of it the record held when it was chosen: one more or less, and it is done. */
  readonly kind: string;
  readonly count: number;
  /** Why it was chosen, in a line. */
  readonly why: string;
}

const KEY = 'today';

export function readToday(): Today | null {
  const loose = readJson(readKept(KEY));
  const fields = {
    began: 'number',
    address: 'string',
    kind: 'string',
    count: 'number',
    why: 'string',
  } as const;
  if (!hasFields(loose, fields)) return null;
  const { began, address, kind, count, why } = loose;
  return { began, address, kind, count, why };
}

export function keepToday(today: Today | null): void {
  keepText(KEY, today === null ? '' : JSON.stringify(today));
}
