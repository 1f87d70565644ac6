import { hasFields, isRecord } from '../../lib/json/read-json';

/** What a handler under app/api answers to a form: it was done, or what is wrong and with which field. */
export type Answer =
  | ({ readonly ok: true; readonly go?: string } & Readonly<Record<string, unknown>>)
  | {
      readonly ok: false;
      readonly problem: string;
      readonly fields: Readonly<Record<string, string>>;
    };

/**
 * The fields as JSON: a text a name; `name[]` (several boxes) a list under `name`; `name?` (one box) true or false. Files are left
 * out. The names of all boxes are asked of the form itself, since a browser does not send a box without a tick.
 */
export function fieldsOf(form: HTMLFormElement): Record<string, unknown> {
  const data = new FormData(form);
  const fields: Record<string, unknown> = {};
  for (const element of form.elements) {
    const name = element.getAttribute('name');
    if (!name) continue;
    if (name.endsWith('?')) fields[name.slice(0, -1)] = data.has(name);
    else if (name.endsWith('[]')) fields[name.slice(0, -2)] = data.getAll(name);
    else if (typeof data.get(name) === 'string') fields[name] = data.get(name);
  }
  return fields;
}

/** Sends JSON and reads the answer. Never throws: no network and an answer that is no JSON are problems like others. */
export async function sendJson(address: string, body: unknown): Promise<Answer> {
  try {
    const response = await fetch(address, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    });
    const answer: unknown = await response.json().catch(() => null);
    return response.ok && isRecord(answer) ? { ...answer, ok: true } : refusal(answer);
  } catch {
    return refusal({ problem: 'The site could not be reached. What you typed is still here. Try again.' });
  }
}

/** What a form says of an answer that is no success, or that it cannot read. */
export function refusal(answer: unknown): Extract<Answer, { ok: false }> {
  const problem = hasFields(answer, { problem: 'string' }) ? answer.problem : undefined;
  const fields = isRecord(answer) && isRecord(answer.fields) ? answer.fields : {};
  return {
    ok: false,
    problem: problem ?? 'Something went wrong on our side. What you typed is still here. Try again.',
    fields: Object.fromEntries(
      Object.entries(fields).filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
    ),
  };
}
