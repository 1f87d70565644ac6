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

/**
 * The figures of the heading font, in the text as well: the text font draws every zero with a stroke through it, which some
 * readers take for another sign. The file is the heading font's, so nothing more is fetched.
 */
export const figureFont = localFont({
  src: '../../node_modules/@fontsource-variable/bricolage-grotesque/files/bricolage-grotesque-latin-wght-normal.woff2',
  weight: '200 800',
  variable: '--font-figures',
  display: 'swap',
  declarations: [{ prop: 'unicode-range', value: 'U+30-39' }],
  // The letters are to come from the text font, not from a fallback of this one.
  adjustFontFallback: false,
  preload: false,
});

export const headingFont = localFont({
  src: '../../node_modules/@fontsource-variable/bricolage-grotesque/files/bricolage-grotesque-latin-wght-normal.woff2',
  weight: '200 800',
  variable: '--font-heading',
  display: 'swap',
  fallback: ['Georgia', 'serif'],
});
