'use client';

import Link from 'next/link';
import { lazy, Suspense } from 'react';
import { useWho } from './who-cookie';

/** Fetched only where somebody is signed in: every page has this footer, and a form is heavy. */
const SignOut = lazy(async () => ({ default: (await import('../../components/desk/sign-out')).SignOut }));

/** On every page: a device may be shared. */
export function FooterSignOut() {
  const who = useWho();
  if (who === 'nobody') return null;
  return (
    <>
      <p>
        <Link prefetch={false} className="own-page" href={who === 'desk' ? '/desk/account' : '/my-data'}>
          {who === 'desk' ? 'Your account' : 'Your data'}
        </Link>
      </p>
      <Suspense>
        <SignOut />
      </Suspense>
    </>
  );
}
