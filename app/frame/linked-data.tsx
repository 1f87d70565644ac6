/** Which site a thing is part of, in the words of schema.org. */
export const SITE_PART = { isPartOf: { '@type': 'WebSite', name: 'Read the Wall' } } as const;

/** What a page is about, for search engines, as schema.org names it: JSON in a script that no browser runs. */
export function LinkedData({ of }: { readonly of: Readonly<Record<string, unknown>> }) {
  // A "<" could end the script.
  const json = JSON.stringify({ '@context': 'https://schema.org', ...of }).replaceAll('<', '\\u003c');
  // biome-ignore lint/security/noDangerouslySetInnerHtml: data of ours, with what could end the script written otherwise
  return <script type="application/ld+json" dangerouslySetInnerHTML={{ __html: json }} />;
}
