import { GLOSSARY } from '../../../glossary/glossary';
import { drawTerm, termFile, termOfFile } from '../../../glossary/term-pictures';
import { drawPicture, hasLengths } from '../../draw-picture';
import { fileOf, pictureOfFile, wordsFileOf } from '../../lesson-pictures';
import { inWords } from '../../picture-in-words';
import { readLessons } from '../../read-lessons';
import { SOUND_WALL, STOP_DRAWINGS } from '../../stop-pictures';

export const dynamic = 'force-static';
export const dynamicParams = false;

/** Every drawing that a lesson, the glossary or the look round shows, and those to judge in words too: made once at build time. */
export async function generateStaticParams() {
  const lessons = await readLessons();
  const files = [
    ...[...lessons.flatMap(({ pictures }) => pictures), ...STOP_DRAWINGS, SOUND_WALL].flatMap((picture) => [
      fileOf(picture),
      ...(hasLengths(picture) ? [fileOf(picture, 'inches')] : []),
      // Of a ringed one the key says what there is to see.
      ...(picture.ringed ? [] : [wordsFileOf(picture), wordsFileOf(picture, 'inches')]),
    ]),
    ...GLOSSARY.map(({ id }) => termFile(id)),
  ];
  return [...new Set(files)].map((picture) => ({ picture }));
}

export async function GET(
  _: Request,
  { params }: { readonly params: Promise<{ readonly picture: string }> },
) {
  const file = (await params).picture;
  const asked = pictureOfFile(file);
  if (asked && file.endsWith('.txt')) {
    return new Response(inWords(asked.picture, asked.system).join('\n'), {
      headers: { 'content-type': 'text/plain; charset=utf-8' },
    });
  }
  const svg = asked === undefined ? drawTerm(termOfFile(file)) : drawPicture(asked.picture, asked.system);
  return svg === undefined
    ? new Response('There is no such drawing.', { status: 404 })
    : new Response(svg, { headers: { 'content-type': 'image/svg+xml; charset=utf-8' } });
}
