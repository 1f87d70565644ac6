'use client';

import { SignOut } from '../components/desk/sign-out';
import { useWho } from './who-cookie';

/** On every page: a device may be shared. */
export function FooterSignOut() {
  return useWho() === 'nobody' ? null : <SignOut />;
}
