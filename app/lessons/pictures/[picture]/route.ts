import { GLOSSARY } from '../../../glossary/glossary';
import { drawTerm, termFile, termOfFile } from '../../../glossary/term-pictures';
import { drawPicture } from '../../draw-picture';
import { fileOf, pictureOfFile } from '../../lesson-pictures';
import { readLessons } from '../../read-lessons';

export const dynamic = 'force-static';
export const dynamicParams = false;

/** Every drawing that a lesson or the glossary shows, made once at build time. */
export async function generateStaticParams() {
  const lessons = await readLessons();
  const files = [
    ...lessons.flatMap(({ pictures }) => pictures.map(fileOf)),
    ...GLOSSARY.map(({ id }) => termFile(id)),
  ];
  return [...new Set(files)].map((picture) => ({ picture }));
}

export async function GET(
  _: Request,
  { params }: { readonly params: Promise<{ readonly picture: string }> },
) {
  const file = (await params).picture;
  const picture = pictureOfFile(file);
  const svg = picture === undefined ? drawTerm(termOfFile(file)) : drawPicture(picture);
  return svg === undefined
    ? new Response('There is no such drawing.', { status: 404 })
    : new Response(svg, { headers: { 'content-type': 'image/svg+xml; charset=utf-8' } });
}
