'use client';

import type { ReviewQuestion } from '../../lib/wall-page/review-questions';
import { COULD_FALL_RULE } from '../result/score-words';
import { Caution } from '../ui/caution';
import { MarkList, type NamedMark } from './marking/mark-list';
import styles from './review.module.css';

/** The last look before handing in. Nothing is handed in without coming through here. */
export function Review(props: {
  readonly marks: readonly NamedMark[];
  readonly saysSound: boolean;
  readonly looks: readonly ReviewQuestion[];
  readonly cautions: readonly string[];
  /** One wall of several that are handed in together: it is done here, and can still be changed. */
  readonly isOneOfSeveral?: boolean;
  readonly onChange: (index: number) => void;
  readonly onRemove: (index: number) => void;
  readonly onLook: (view: string) => void;
  readonly onBack: () => void;
  readonly onSaySound: () => void;
  readonly onHandIn: () => void;
}) {
  const { marks, saysSound, looks, cautions, isOneOfSeveral = false } = props;
  const { onChange, onRemove, onLook, onBack, onSaySound, onHandIn } = props;
  const answered = marks.length > 0 || saysSound;
  return (
    <section className={styles.review} aria-labelledby="review-heading">
      <h2 id="review-heading" tabIndex={-1}>
        Check once more
      </h2>
      <p>
        {marks.length > 0
          ? `You have marked ${marks.length === 1 ? 'one place' : `${marks.length} places`}. Nothing is handed in yet.`
          : saysSound
            ? 'Your answer: this wall is sound. Nothing is handed in yet.'
            : 'You have marked nothing. Is this wall sound?'}
      </p>
      {marks.length > 0 && <MarkList marks={marks} onChange={onChange} onRemove={onRemove} />}
      <h3>Did you look at …</h3>
      <ul className={styles.looks}>
        {looks.map(({ family, question, view }) => (
          <li key={family}>
            <span>
              <strong>{family}.</strong> {question}
            </span>
            <button
              type="button"
              aria-label={`Look at ${family.toLowerCase()} again`}
              onClick={() => onLook(view)}
            >
              Look
            </button>
          </li>
        ))}
      </ul>
      <div className={`stack tight ${styles.steps}`}>
        {answered ? (
          <button type="button" className="button" onClick={onHandIn}>
            {isOneOfSeveral ? 'Done' : 'Hand in'}
            {saysSound
              ? ': the wall is sound'
              : ` ${isOneOfSeveral ? 'with ' : ''}${marks.length === 1 ? '1 mark' : `${marks.length} marks`}`}
          </button>
        ) : (
          <button type="button" className="button" onClick={onSaySound}>
            This wall is sound
          </button>
        )}
        <button type="button" className="button button-plain" onClick={onBack}>
          Back to the wall
        </button>
      </div>
      <p className={styles.note}>
        {isOneOfSeveral
          ? 'You can change your marks until you hand in the whole work.'
          : 'After you hand in, you cannot change your marks.'}
      </p>
      <p className={styles.note}>{COULD_FALL_RULE}</p>
      <Caution lines={cautions} />
    </section>
  );
}
