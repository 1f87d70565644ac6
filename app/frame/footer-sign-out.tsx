'use client';

import { lazy, Suspense } from 'react';
import { useWho } from './who-cookie';

/** Fetched only where somebody is signed in: every page has this footer, and a form is heavy. */
const SignOut = lazy(async () => ({ default: (await import('../../components/desk/sign-out')).SignOut }));

/** On every page: a device may be shared. */
export function FooterSignOut() {
  if (useWho() === 'nobody') return null;
  return (
    <Suspense>
      <SignOut />
    </Suspense>
  );
}
