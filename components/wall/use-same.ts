import { useMemo } from 'react';

/** The same object for as long as its contents are equal: a caller may make a new one at each render. */
export function useSame<T>(value: T): T {
  const key = JSON.stringify(value);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key says all that the value does
  return useMemo(() => value, [key]);
}
