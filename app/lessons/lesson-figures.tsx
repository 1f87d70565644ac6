import type { ReactNode } from 'react';
import styles from '../../components/lesson/lesson.module.css';
import { PictureFigure } from '../../components/lesson/picture-figure';
import { sizeOfSvg } from '../../lib/drawing/svg-nodes';
import { COULD_FALL_CAUTIONS } from '../../lib/inspect/make-safe';
import { ruleSetTitle } from '../../lib/limits/limits';
import { pairOf } from './check-lesson';
import { drawPicture, hasLengths } from './draw-picture';
import {
  fileOf,
  LESSON_RULES,
  type LessonPicture,
  lessonFindings,
  parsePicture,
  wordsFileOf,
} from './lesson-pictures';
import { altOf, findingLine, keyOf } from './picture-words';

/** <Wall of="ties" state="spoiled" view="before-cover" ringed close>What to see</Wall> */
export function Wall({ children, ...attributes }: { readonly children?: ReactNode; readonly of: string }) {
  const picture = parsePicture(texts(attributes));
  if (typeof picture === 'string') throw new RangeError(picture);
  return (
    <Figure picture={picture} telling={picture.ringed} keyed={picture.ringed ? keyOf(picture) : []}>
      {children}
    </Figure>
  );
}

/** A sound and a spoiled wall from one seed. `faulty` says which is shown spoiled; the answer is folded away. */
export function Pair({ faulty, ...attributes }: { readonly of: string; readonly faulty: string }) {
  const [sound, spoiled] = pairOf(texts(attributes));
  if (sound === undefined || spoiled === undefined) throw new RangeError(`${attributes.of}: no pair`);
  const [first, second] = faulty === 'first' ? [spoiled, sound] : [sound, spoiled];
  const findings = lessonFindings(spoiled.family);
  return (
    <>
      <div className={styles.pair}>
        <Figure picture={first} name="First wall" telling={false} keyed={[]}>
          First wall
        </Figure>
        <Figure picture={second} name="Second wall" telling={false} keyed={[]}>
          Second wall
        </Figure>
      </div>
      <details className={styles.answer}>
        <summary>Which one has the fault?</summary>
        <p>
          It is the {faulty} wall, checked against {ruleSetTitle(LESSON_RULES)}:
        </p>
        <ul>
          {findings.map((finding) => (
            <li key={findingLine(finding)}>{findingLine(finding)}</li>
          ))}
        </ul>
        {findings.some(({ hazard }) => hazard === 'could fall') && (
          <p>If this were a real wall: {COULD_FALL_CAUTIONS.slice(0, 3).join(' ')}</p>
        )}
      </details>
    </>
  );
}

function Figure(props: {
  readonly picture: LessonPicture;
  /** What the text calls it, where there are two to compare. */
  readonly name?: string;
  readonly telling: boolean;
  readonly keyed: readonly string[];
  readonly children?: ReactNode;
}) {
  const { picture, name = '', telling, keyed, children } = props;
  return (
    <PictureFigure
      src={`/lessons/pictures/${fileOf(picture)}`}
      alt={altOf(picture, telling, name)}
      {...sizeOfSvg(drawPicture(picture))}
      keyed={keyed}
      srcInInches={hasLengths(picture) ? `/lessons/pictures/${fileOf(picture, 'inches')}` : undefined}
      words={
        picture.ringed
          ? undefined
          : {
              mm: `/lessons/pictures/${wordsFileOf(picture)}`,
              inches: `/lessons/pictures/${wordsFileOf(picture, 'inches')}`,
            }
      }
    >
      {children}
    </PictureFigure>
  );
}

/** A bare attribute arrives as `true`; to the checks it is an empty text. */
function texts(attributes: Readonly<Record<string, unknown>>): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(attributes).map(([name, value]) => [name, value === true ? '' : String(value)]),
  );
}
