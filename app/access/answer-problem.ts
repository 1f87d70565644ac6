import {
  asStoreProblem,
  RefusedChange,
  StoreProblem,
  type StoreTrouble,
} from '../../lib/store/store-problem';
import { BusyError } from '../accounts/passwords';
import { Refusal } from '../request/refusal';
import { log } from '../server/log';

/** How long to wait before another try when the site is too busy or its database does not answer, seconds. */
const COME_BACK_SECONDS = 5;

const STORE_WORDS: Readonly<Record<StoreTrouble, string>> = {
  full: 'The disk of the site is full.',
  'read-only': 'The site may not write to its disk.',
  busy: 'Too much is being stored at once.',
  unreachable: 'The place where work is kept does not answer.',
  damaged: 'The place where work is kept is damaged: tell whoever runs the site.',
};

/** What a handler answers when something was thrown: the refusal's words, or no more than that it went wrong. */
export function answerProblem(route: string, error: unknown): Response {
  const refusal = refusalOf(route, error);
  if (!refusal) {
    return Response.json(
      { problem: 'Something went wrong on our side. Nothing was changed. Try again.' },
      { status: 500, headers: { 'cache-control': 'no-store' } },
    );
  }
  const { status, problem, fields, retryAfter } = refusal;
  return Response.json(
    { problem, fields },
    {
      status,
      headers: {
        'cache-control': 'no-store',
        ...(retryAfter === undefined ? {} : { 'retry-after': String(retryAfter) }),
      },
    },
  );
}

function refusalOf(route: string, error: unknown): Refusal | undefined {
  if (error instanceof Refusal) return error;
  if (error instanceof RefusedChange) return new Refusal(409, error.message);
  if (error instanceof BusyError) return notNow('Many people are signing in at once.');
  log.error({ route, ...tellingOf(error) }, 'a request failed');
  const problem = asStoreProblem(error);
  return problem instanceof StoreProblem ? notNow(STORE_WORDS[problem.trouble]) : undefined;
}

function notNow(why: string): Refusal {
  return new Refusal(503, `${why} Nothing was changed. Try again in a few seconds.`, {}, COME_BACK_SECONDS);
}

/** What helps to mend it. A database's error may also quote what was written: that stays out. */
function tellingOf(error: unknown) {
  if (!(error instanceof Error)) return { error: String(error) };
  return {
    error: error.name,
    message: error.message,
    code: 'code' in error ? String(error.code) : undefined,
    stack: error.stack,
  };
}
