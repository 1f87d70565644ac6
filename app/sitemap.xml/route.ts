import { DRAWINGS } from '../../components/trade/drawings';
import { RULE_SETS } from '../../lib/limits/limit';
import { QUESTION_TOPICS } from '../../lib/questions/topics';
import { GLOSSARY } from '../glossary/glossary';
import { readLessons } from '../lessons/read-lessons';
import { siteAddress } from '../request/address';

const PAGES = [
  '/',
  '/lessons',
  '/glossary',
  '/limits',
  '/practise',
  '/walls',
  '/questions',
  '/drawings',
  '/instruments',
  '/safety',
  '/sources',
];

/** Every page that stays as it is: none of the walls, of which there is no end. */
export async function GET({ headers }: Request): Promise<Response> {
  const lessons = await readLessons();
  const site = siteAddress(headers);
  const paths = [
    ...PAGES,
    ...lessons.map(({ slug }) => `/lessons/${slug}`),
    ...GLOSSARY.map(({ id }) => `/glossary/${id}`),
    ...RULE_SETS.map((rules) => `/limits/${rules}`),
    ...DRAWINGS.map(({ name }) => `/drawings/${name}`),
    ...QUESTION_TOPICS.map((topic) => `/questions/${topic}`),
  ];
  const urls = paths.map((path) => `<url><loc>${escaped(`${site}${path}`)}</loc></url>`);
  return new Response(
    `<?xml version="1.0" encoding="UTF-8"?>\n<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">\n${urls.join('\n')}\n</urlset>\n`,
    { headers: { 'content-type': 'application/xml; charset=utf-8' } },
  );
}

/** Whoever asks says in the request which site this is. */
function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}
