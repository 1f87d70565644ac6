import { useMemo } from 'react';

/** The same object for as long as it says the same: a caller may make a new one each time it draws. */
export function useSame<T>(value: T): T {
  const key = JSON.stringify(value);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key says all that the value does
  return useMemo(() => value, [key]);
}
