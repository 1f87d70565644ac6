import type * as z from 'zod';
import type { By } from '../../lib/store/audit';
import type { Store } from '../../lib/store/database';
import type { NamedRecords } from '../../lib/store/record-owner';
import { type Person, whoIs } from '../accounts/people';
import { isFromOwnPage } from '../request/address';
import { MOST_BYTES, readBody } from '../request/read-body';
import { parseFields, Refusal } from '../request/refusal';
import { log } from '../server/log';
import { store } from '../server/store';
import { ACCESS, type HandlerRoute, type PageRoute } from './access-table';
import { answerProblem } from './answer-problem';
import { authorize, namedIn, type Passed } from './authorize';

/** One request that passed the guard. */
export interface Call<P extends Person = Person> {
  readonly request: Request;
  readonly person: P;
  /** The parts of the address in square brackets. */
  readonly params: Readonly<Record<string, string>>;
  /** The JSON sent; undefined for GET. Not yet parsed. */
  readonly body: unknown;
  /** The body as a schema reads it. @throws Refusal naming each field that is wrong. */
  readonly read: <T>(schema: z.ZodType<T>) => T;
  readonly store: Store;
  readonly at: number;
  /** Who changes something, and when. */
  readonly by: By;
}

/** Of a UUID. */
const ID_SIGNS = 36;

export type Params = Readonly<Record<string, string | string[] | undefined>>;

interface Context {
  // Next gives none at run time to a route without square brackets, though its types say otherwise.
  readonly params: Promise<Params | undefined>;
}

/**
 * A route handler behind the rule that ACCESS has for it. The handler throws a Refusal for what it will not do; what else it
 * throws is logged, and the asker is told no more than that it went wrong. What it returns is answered as JSON with `ok: true`.
 *
 *     export const POST = guarded('POST /api/groups/[group]/close', async ({ by, params, store }) => closeGroup(store, params.group, by));
 */
export function guarded<R extends HandlerRoute>(
  route: R,
  handler: (call: Call<Passed<(typeof ACCESS)[R]>>) => Promise<Response | object | undefined>,
  { mostBytes = MOST_BYTES }: { readonly mostBytes?: number } = {},
): (request: Request, context: Context) => Promise<Response> {
  return async (request, context) => {
    try {
      const changes = request.method !== 'GET' && request.method !== 'HEAD';
      if (changes && !isFromOwnPage(request.headers)) {
        log.warn({ route }, 'refused: not sent from a page of this site');
        throw new Refusal(403, 'This was not sent from a page of this site.');
      }
      const params = textsOf(await context.params);
      const opened = await store();
      const person = await whoIs(request.headers);
      // Before the body is read: a stranger's megabyte is not worth reading.
      if (ACCESS[route] !== 'anyone' && person.kind === 'nobody') {
        noteRefused(route, person);
        throw signInFirst();
      }
      const body = changes ? await readBody(request, mostBytes) : undefined;
      const named = namedIn(params, body);
      if ((await authorize(opened.db, ACCESS[route], person, named)) !== 'pass') {
        noteRefused(route, person, named);
        throw new Refusal(404, 'There is no such thing here, or it is not yours.');
      }
      const passed = person as Passed<(typeof ACCESS)[R]>;
      const at = Date.now();
      const by = { actor: subjectOf(person), at };
      const read = <T>(schema: z.ZodType<T>) => parseFields(schema, body);
      const done = await handler({ request, person: passed, params, body, read, store: opened, at, by });
      const answer = done instanceof Response ? done : Response.json({ ok: true, ...done });
      if (!answer.headers.has('cache-control')) answer.headers.set('cache-control', 'no-store');
      return answer;
    } catch (error) {
      return answerProblem(route, error);
    }
  };
}

/** One line for each request that somebody was not let through with, by ids; whatever was sent as an id is cut to the length of one. */
export function noteRefused(route: HandlerRoute | PageRoute, person: Person, named: NamedRecords = {}): void {
  const records = Object.entries(named).map(([kind, id]) => `${kind} ${id.slice(0, ID_SIGNS)}`);
  log.warn({ route, subject: subjectOf(person), records }, 'refused: not let through');
}

function subjectOf(person: Person): string {
  if (person.kind === 'nobody') return 'nobody';
  return person.kind === 'learner' ? `learner ${person.learnerId}` : `user ${person.userId}`;
}

function signInFirst(): Refusal {
  return new Refusal(401, 'You are not signed in any more. Sign in, then try again.');
}

/** As Next hands them over a part may be encoded still. */
export function textsOf(params: Params = {}): Record<string, string> {
  return Object.fromEntries(
    Object.entries(params).flatMap(([name, value]) =>
      typeof value === 'string' ? [[name, decoded(value)]] : [],
    ),
  );
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text).replaceAll('\0', '');
  } catch {
    return text;
  }
}
