/** Refusal of input that cannot be marked. The message says where, and what is wrong there. */
export class MarkingError extends Error {
  override readonly name = 'MarkingError';
}

/** Throws MarkingError unless `value` is a finite number. `where` names the place, for example `marks.3.x`. */
export function requireFinite(where: string, value: number): void {
  if (!Number.isFinite(value)) throw new MarkingError(`${where}: ${value} is not a finite number`);
}

/** Throws MarkingError unless `value` is finite and not below zero. */
export function requireNotNegative(where: string, value: number): void {
  requireFinite(where, value);
  if (value < 0) throw new MarkingError(`${where}: ${value} is negative`);
}

/** Throws MarkingError unless `value` is a whole number and not below zero. */
export function requireCount(where: string, value: number): void {
  requireNotNegative(where, value);
  if (!Number.isSafeInteger(value)) throw new MarkingError(`${where}: ${value} is not a whole number`);
}
