import { headers } from 'next/headers';
import { notFound, redirect } from 'next/navigation';
import type { Store } from '../../lib/store/database';
import { whoIs } from '../accounts/people';
import { store } from '../server/store';
import { ACCESS, type PageRoute } from './access-table';
import { authorize, namedIn, type Passed } from './authorize';
import { noteRefused, type Params, textsOf } from './guard';

/**
 * Lets a page go on only for those whom ACCESS names for it: sends others to sign in, or says that there is no such page.
 *
 *     const { person, params, store } = await requirePage('/desk/groups/[group]', props.params);
 */
export async function requirePage<R extends PageRoute>(
  route: R,
  params: Promise<Params | undefined> = Promise.resolve({}),
): Promise<{
  readonly person: Passed<(typeof ACCESS)[R]>;
  readonly params: Readonly<Record<string, string>>;
  readonly store: Store;
}> {
  const sent = await headers();
  const texts = textsOf(await params);
  const opened = await store();
  const person = await whoIs(sent);
  const named = namedIn(texts);
  const verdict = await authorize(opened.db, ACCESS[route], person, named);
  if (verdict !== 'pass') noteRefused(route, person, named);
  if (verdict === 'sign in') redirect(signInPage(route, sent.get('x-path')));
  if (verdict === 'not theirs') notFound();
  return { person: person as Passed<(typeof ACCESS)[R]>, params: texts, store: opened };
}

function signInPage(route: PageRoute, path: string | null): string {
  if (ACCESS[route] === 'learner') return '/join';
  return path ? `/sign-in?then=${encodeURIComponent(path)}` : '/sign-in';
}
