import Link from 'next/link';
import type { Look } from '../../lib/household/look';
import { isAlarm, noteOf } from '../../lib/household/note';
import type { Answer, Question } from '../../lib/household/question';
import type { LookStop, QuestionId } from '../../lib/household/stops';
import type { LengthSystem, Mm } from '../../lib/units';
import { type FigurePicture, PictureFigure } from '../lesson/picture-figure';
import styles from './household.module.css';
import { hashOf } from './look-place';
import { MeasureField } from './measure-field';
import { QuestionField } from './question-field';

/** A drawing of good work and one of work that is not, made by the server. */
export interface StopPicture extends FigurePicture {
  readonly says: string;
}

/** One place to stand: what to look at, drawn and asked. */
export function StopQuestions(props: {
  readonly stop: LookStop;
  readonly pictures: readonly StopPicture[];
  readonly look: Look;
  readonly system: LengthSystem;
  readonly onChange: (look: Look) => void;
}) {
  const { stop, pictures, look, system, onChange } = props;
  const alarm = isAlarm(look);
  const away = new Set(
    noteOf(look, system)
      .findings.filter(({ drawer }) => drawer === 'go away now')
      .map(({ about }) => about),
  );
  const answer = (id: QuestionId, given: Answer | undefined) => {
    const { [id]: _, ...others } = look.answers;
    onChange({ ...look, answers: given === undefined ? others : { ...others, [id]: given } });
  };
  const questions: readonly (Question & { readonly id: QuestionId })[] = stop.questions;
  return (
    <>
      <p>{stop.stand}</p>
      <div className={styles.pictures}>
        {pictures.map(({ says, ...picture }) => (
          <PictureFigure key={picture.src} {...picture}>
            {says}
          </PictureFigure>
        ))}
      </div>
      {questions.map((question) =>
        isMeasured(question) ? (
          <MeasureField
            key={`${look.id} ${question.id} ${system}`}
            {...{ question, system, isAlarm: alarm }}
            answer={look.answers[question.id]}
            onAnswer={(given) => answer(question.id, given)}
          />
        ) : (
          <QuestionField
            key={question.id}
            {...{ question, system }}
            answer={look.answers[question.id]}
            onAnswer={(given) => answer(question.id, given)}
          >
            {away.has(question.id) && <Alarm id={look.id} />}
          </QuestionField>
        ),
      )}
    </>
  );
}

function Alarm({ id }: { readonly id: string }) {
  return (
    <div role="alert" className={styles.alarm}>
      <p>
        <span aria-hidden="true">⚠ </span>
        <strong>Stop here. Go away from the wall now.</strong> Take people and animals with you. Do not touch
        it.
      </p>
      <p>
        <a href={hashOf({ id, step: 'note' })}>What to do now</a>{' '}
        <Link href="/safety" prefetch={false}>
          If masonry looks loose
        </Link>
      </p>
    </div>
  );
}

function isMeasured<Q extends Question>(question: Q): question is Q & { readonly most: Mm } {
  return question.most !== undefined;
}
