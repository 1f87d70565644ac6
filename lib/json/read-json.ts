interface Kinds {
  readonly string: string;
  readonly number: number;
  readonly boolean: boolean;
}

/** What a text says as JSON; undefined for one that is none. */
export function readJson(text: string | null): unknown {
  try {
    return text === null ? undefined : JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** Whether it has fields, whatever they hold. */
export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Whether it has these fields, each of its kind. */
export function hasFields<T extends Readonly<Record<string, keyof Kinds>>>(
  value: unknown,
  fields: T,
): value is Readonly<Record<string, unknown>> & { readonly [F in keyof T]: Kinds[T[F]] } {
  return isRecord(value) && Object.entries(fields).every(([name, kind]) => typeof value[name] === kind);
}
