import type { Metadata, Viewport } from 'next';
import Link from 'next/link';
import type { ReactNode } from 'react';
import { figureFont, headingFont, textFont } from './frame/fonts';
import './globals.css';
import '../components/ui/elements.css';
import { AccountLink } from './frame/account-link';
import { FooterSignOut } from './frame/footer-sign-out';
import { FRAME_SCRIPT } from './frame/frame-script';
import { SearchLink, SiteNav } from './frame/site-nav';
import { TargetsChoice, ThemeChoice } from './frame/theme-choice';

export const metadata: Metadata = {
  title: { default: 'Read the Wall', template: '%s – Read the Wall' },
  description: 'Learn to read masonry: look at a wall, measure it, and say what is wrong with it.',
  manifest: '/manifest.webmanifest',
  openGraph: { siteName: 'Read the Wall', type: 'website', locale: 'en' },
};

export const viewport: Viewport = {
  width: 'device-width',
  initialScale: 1,
  themeColor: [
    { media: '(prefers-color-scheme: light)', color: '#f4f0e8' },
    { media: '(prefers-color-scheme: dark)', color: '#191d20' },
  ],
};

export default function RootLayout({ children }: { readonly children: ReactNode }) {
  return (
    // The script sets data-theme and data-targets before React looks: those differences are wanted.
    <html
      lang="en"
      className={`${textFont.variable} ${figureFont.variable} ${headingFont.variable}`}
      suppressHydrationWarning
    >
      <head>
        {/* biome-ignore lint/security/noDangerouslySetInnerHtml: a constant of ours, which has to run before the first paint */}
        <script dangerouslySetInnerHTML={{ __html: FRAME_SCRIPT }} />
      </head>
      <body>
        <a className="skip-link" href="#main">
          Skip to the page
        </a>
        <header className="site-header">
          <Link prefetch={false} className="brand" href="/">
            Read the Wall
          </Link>
          <SiteNav />
          <p className="site-tools">
            <SearchLink />
            <AccountLink />
          </p>
        </header>
        <main id="main" tabIndex={-1}>
          {children}
        </main>
        <footer className="site-footer">
          <p>
            Drawn walls for learning. They do not judge a real wall. Your local code, and the authority that
            applies it, decide. If masonry looks loose,{' '}
            <Link prefetch={false} href="/safety">
              keep people away
            </Link>
            .
          </p>
          <p>
            <ThemeChoice /> <TargetsChoice />
          </p>
          <p>
            <Link prefetch={false} className="own-page" data-of="desk" href="/desk/account">
              Your account
            </Link>
            <Link prefetch={false} className="own-page" data-of="learner" href="/my-data">
              Your data
            </Link>
          </p>
          <FooterSignOut />
        </footer>
      </body>
    </html>
  );
}
