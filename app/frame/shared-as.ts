import type { Metadata } from 'next';

/** The card that a link to a lesson shows where it is shared, by the lesson's name; that of a word, by 'word'. */
export function shareFile(name: string): string {
  return `${name}.png`;
}

/** What a page says of itself where it is shared. Its card has to be named by its whole address, so the site has to know its own while it is built. */
export function sharedAs(card: string, title: string, description: string): Metadata['openGraph'] {
  const { PUBLIC_ADDRESS: site } = process.env;
  const image = { url: `${site}/share/${shareFile(card)}`, width: 1200, height: 630, alt: title };
  return {
    siteName: 'Read the Wall',
    type: 'article',
    title,
    description,
    ...(site ? { images: [image] } : {}),
  };
}
