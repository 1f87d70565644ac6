'use client';

import Link from 'next/link';
import { usePathname } from 'next/navigation';
import { isWithin } from './site-nav';
import { useWho, type Who } from './who-cookie';

const PLACES: Readonly<Record<Who, { readonly href: string; readonly label: string }>> = {
  nobody: { href: '/sign-in', label: 'Sign in' },
  desk: { href: '/desk', label: 'Desk' },
  learner: { href: '/my-work', label: 'My work' },
};

/** The one link of the header that depends on who is there. */
export function AccountLink() {
  const here = usePathname();
  const { href, label } = PLACES[useWho()];
  return (
    <Link
      prefetch={false}
      className="account-link"
      href={href}
      aria-current={isWithin(here, href) ? 'page' : undefined}
    >
      {label}
    </Link>
  );
}
