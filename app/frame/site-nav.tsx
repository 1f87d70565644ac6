'use client';

import Link from 'next/link';
import { usePathname } from 'next/navigation';

/**
 * The rooms of the site, in the order of the header, and what else lies in them. Each row is a stop for the keyboard on every page:
 * walls go with the other ways to practise, so that the way to handing in stays within fifteen.
 */
const PLACES = [
  {
    href: '/lessons',
    label: 'Lessons',
    holds: ['/lessons', '/glossary', '/drawings', '/questions', '/instruments'],
  },
  { href: '/practise', label: 'Practise', holds: ['/practise', '/walls'] },
  { href: '/limits', label: 'Limits', holds: ['/limits', '/sources'] },
  { href: '/your-wall', label: 'Your wall', holds: ['/your-wall'] },
  { href: '/safety', label: 'Safety', holds: ['/safety'] },
] as const;

export function SiteNav() {
  const here = usePathname();
  return (
    <nav className="site-nav" aria-label="Main">
      <ul className="plain">
        {PLACES.map(({ href, label, holds }) => (
          <li key={href}>
            <Link prefetch={false} href={href} aria-current={currentOf(here, href, holds)}>
              {label}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}

/** Where somebody reads a wall: each stop of the keyboard before it counts there, and nobody looks anything up by the header. */
const AT_WORK = ['/walls', '/practise', '/my-work'] as const;

export function SearchLink() {
  const here = usePathname();
  if (AT_WORK.some((place) => isWithin(here, place))) return null;
  return (
    <Link prefetch={false} href="/search" aria-current={here === '/search' ? 'page' : undefined}>
      Search
    </Link>
  );
}

/** The page itself, or one that lies in the same room. */
function currentOf(here: string, href: string, holds: readonly string[]): 'page' | 'true' | undefined {
  if (here === href) return 'page';
  return holds.some((place) => isWithin(here, place)) ? 'true' : undefined;
}

export function isWithin(path: string, place: string): boolean {
  return path === place || path.startsWith(`${place}/`);
}
