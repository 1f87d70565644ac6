import { siteAddress } from '../request/address';

/** Walls, pairs and questions are drawn from a number: there is no end to them. The rest is behind a door. */
const KEEP_OUT = [
  '/walls/',
  '/walls?',
  '/practise/build',
  '/practise/guided/',
  '/practise/pair/',
  '/practise/quick?',
  '/practise/visit/',
  '/questions/*?',
  '/api/',
  '/desk',
  '/join',
  '/my-data',
  '/my-work',
  '/reset',
  '/set-up',
  '/sign-in',
];

export function GET({ headers }: Request): Response {
  const lines = ['User-agent: *', ...KEEP_OUT.map((path) => `Disallow: ${path}`)];
  return new Response(`${lines.join('\n')}\n\nSitemap: ${siteAddress(headers)}/sitemap.xml\n`, {
    headers: { 'content-type': 'text/plain; charset=utf-8' },
  });
}
