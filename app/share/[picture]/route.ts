import { shareFile } from '../../frame/shared-as';
import { drawTerm } from '../../glossary/term-pictures';
import { drawPicture } from '../../lessons/draw-picture';
import { readLessons } from '../../lessons/read-lessons';
import { shareCard } from '../share-card';

export const dynamic = 'force-static';
export const dynamicParams = false;

/** The word whose picture stands for all. */
const OF_WORDS = 'arch';

interface Card {
  readonly file: string;
  readonly of: string;
  readonly title: string;
  readonly svg: () => string;
}

/** What a link shows where it is shared: a card for each lesson, and one for all words, for a card takes a second to draw. */
async function cards(): Promise<readonly Card[]> {
  const lessons = await readLessons();
  return [
    ...lessons.flatMap(({ slug, meta, pictures: [first] }) =>
      first
        ? [
            {
              file: shareFile(slug),
              of: 'Lesson',
              title: meta.title,
              svg: () => drawPicture({ ...first, ringed: false }),
            },
          ]
        : [],
    ),
    {
      file: shareFile('word'),
      of: 'Words of the trade',
      title: 'What masons call it, with pictures',
      svg: () => drawTerm(OF_WORDS) ?? '',
    },
  ];
}

export async function generateStaticParams() {
  return (await cards()).map(({ file }) => ({ picture: file }));
}

export async function GET(
  _: Request,
  { params }: { readonly params: Promise<{ readonly picture: string }> },
) {
  const { picture } = await params;
  const card = (await cards()).find(({ file }) => file === picture);
  if (card === undefined) return new Response('There is no such picture.', { status: 404 });
  return shareCard(card.of, card.title, card.svg());
}
