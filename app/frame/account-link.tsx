'use client';

import Link from 'next/link';
import { usePathname } from 'next/navigation';
import { isWithin } from './site-nav';

/** Which of them shows depends on who is there: html[data-who], which the script of the frame sets from a cookie that is a hint only. */
const PLACES = [
  { who: 'nobody', href: '/sign-in', label: 'Sign in' },
  { who: 'desk', href: '/desk', label: 'Desk' },
  { who: 'learner', href: '/my-work', label: 'My work' },
] as const;

/** The one link of the header that depends on who is there. */
export function AccountLink() {
  const here = usePathname();
  return PLACES.map(({ who, href, label }) => (
    <Link
      key={who}
      prefetch={false}
      data-of={who}
      href={href}
      aria-current={isWithin(here, href) ? 'page' : undefined}
    >
      {label}
    </Link>
  ));
}
