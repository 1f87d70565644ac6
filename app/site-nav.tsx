'use client';

import Link from 'next/link';
import { usePathname } from 'next/navigation';

/** The rooms of the site, in the order of the header. A new part of the site adds one row. */
const PLACES = [
  { href: '/lessons', label: 'Lessons' },
  { href: '/walls', label: 'Walls' },
  { href: '/practise', label: 'Practise' },
  { href: '/limits', label: 'Limits' },
  { href: '/safety', label: 'Safety' },
] as const;

export function SiteNav() {
  const here = usePathname();
  return (
    <nav className="site-nav" aria-label="Main">
      <ul>
        {PLACES.map(({ href, label }) => (
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

export function isWithin(path: string, place: string): boolean {
  return path === place || path.startsWith(`${place}/`);
}
