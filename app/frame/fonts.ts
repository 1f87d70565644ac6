import localFont from 'next/font/local';

// Self-hosted out of the packages: no request leaves the site, and nothing is fetched while building.
export const textFont = localFont({
  src: [
    {
      path: '../../node_modules/@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2',
      style: 'normal',
    },
  ],
  weight: '200 800',
  variable: '--font-text',
  display: 'swap',
  fallback: ['Verdana', 'sans-serif'],
});

export const headingFont = localFont({
  src: '../../node_modules/@fontsource-variable/bricolage-grotesque/files/bricolage-grotesque-latin-wght-normal.woff2',
  weight: '200 800',
  variable: '--font-heading',
  display: 'swap',
  fallback: ['Georgia', 'serif'],
});
