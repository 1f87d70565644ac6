import { measuredInBoth } from '../../components/result/finding-measure';
import { isFine, measureInBoth } from '../../components/result/format-measure';
import { CATALOGUE } from '../../lib/inspect/catalogue';
import type { Finding } from '../../lib/inspect/finding';
import { KIND_TITLES } from '../../lib/wall-page/brief-words';
import { LESSON_FAMILIES } from './lesson-families';
import type { LessonFamily } from './lesson-family';
import { type LessonPicture, lessonFindings } from './lesson-pictures';

const SEEN: Readonly<Record<LessonPicture['view'], string>> = {
  front: 'from the front',
  section: 'cut through, at what carries it',
  behind: 'at the back of one lifted unit',
  'before-cover': 'before the brick covers the ties',
};

/** What a reader who cannot see the drawing hears. `telling`: whether it says if the wall is sound; `name`: what the text calls it. */
export function altOf(picture: LessonPicture, telling: boolean, name = ''): string {
  const { kind, masonry, marks }: LessonFamily = LESSON_FAMILIES[picture.family];
  const wall = `${KIND_TITLES[kind].toLowerCase()} of ${masonry === 'adhered' ? 'thin units stuck to the wall' : 'brick veneer'}`;
  const state = marks
    ? 'Wall with marks on its face: '
    : telling
      ? picture.state === 'sound'
        ? 'Sound wall: '
        : 'Wall with a fault: '
      : `${name || 'Drawing'}: `;
  return `${state}${wall}, seen ${SEEN[picture.view]}${picture.close ? ', close up' : ''}.`;
}

/** The key to the rings: what is good about a sound wall, what is wrong with a spoiled one, measured. */
export function keyOf(picture: LessonPicture): readonly string[] {
  if (picture.state === 'spoiled') return lessonFindings(picture.family).map(findingLine);
  const { good }: LessonFamily = LESSON_FAMILIES[picture.family];
  return good.map(([, says]) => says);
}

/** "Joint too thick. A band of … It measures 20.4 mm, and the limit is at most 15 mm (NBC 2020, 9.20.4.1.)." */
export function findingLine(finding: Finding): string {
  const { check, measured, unit, limit, source } = finding;
  const { name, looksLike } = CATALOGUE[check];
  if (unit === 'there or not') return `${name}. ${looksLike} ${source.edition}, ${source.clause}.`;
  const fine = isFine(limit, unit);
  const value = measuredInBoth(finding);
  const bound = measureInBoth(limit, unit, fine);
  const end = measured < limit ? 'at least' : 'at most';
  return `${name}. ${looksLike} It measures ${value}, and the limit is ${end} ${bound} (${source.edition}, ${source.clause}).`;
}
