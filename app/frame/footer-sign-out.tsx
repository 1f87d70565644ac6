'use client';

import { lazy, Suspense } from 'react';
import { useWho } from './who-cookie';

/** Fetched only where somebody is signed in: every page has this footer, and a form is heavy. */
const SignOut = lazy(async () => ({ default: (await import('../../components/desk/sign-out')).SignOut }));

/** A device may be shared: on every page, but for those to read, which lead to the page that has it. */
export function FooterSignOut() {
  if (useWho() === 'nobody') return null;
  return (
    <Suspense>
      <SignOut />
    </Suspense>
  );
}
