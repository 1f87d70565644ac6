'use client';

import Link from 'next/link';
import { usePathname } from 'next/navigation';
import { useWho, type Who } from './who-cookie';

/** The rooms of the site, in the order of the header. A new part of the site adds one row. */
const PLACES = [
  { href: '/lessons', label: 'Lessons' },
  { href: '/walls', label: 'Walls' },
  { href: '/practise', label: 'Practise' },
  { href: '/limits', label: 'Limits' },
  { href: '/safety', label: 'Safety' },
] as const;

/** Last in the header, by who is there. */
const OWN_PLACE: Readonly<Record<Who, { readonly href: string; readonly label: string }>> = {
  nobody: { href: '/sign-in', label: 'Sign in' },
  desk: { href: '/desk', label: 'Desk' },
  learner: { href: '/my-work', label: 'My work' },
};

export function SiteNav() {
  const here = usePathname();
  const who = useWho();
  return (
    <nav className="site-nav" aria-label="Main">
      <ul>
        {[...PLACES, OWN_PLACE[who]].map(({ href, label }) => (
          <li key={href}>
            <Link prefetch={false} href={href} aria-current={isWithin(here, href) ? 'page' : undefined}>
              {label}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}

function isWithin(path: string, place: string): boolean {
  return path === place || path.startsWith(`${place}/`);
}
