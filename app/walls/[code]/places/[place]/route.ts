import { placePicture } from '../../../place-picture';
import { readCode } from '../../../read-code';

/** The place of a fault, as laid or sound: beside one another in the result. A code and its faults never change. */
export async function GET(
  _: Request,
  { params }: { readonly params: Promise<{ readonly code: string; readonly place: string }> },
) {
  const { code, place } = await params;
  const brief = readCode(code);
  const svg = typeof brief === 'string' ? null : placePicture(brief, place);
  return svg === null
    ? new Response('There is no such picture.', { status: 404 })
    : new Response(svg, {
        headers: {
          'content-type': 'image/svg+xml; charset=utf-8',
          'cache-control': 'public, max-age=86400',
        },
      });
}
