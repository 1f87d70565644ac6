import { When } from '../../../../components/time/when';
import { AreaField, TextField } from '../../../../components/ui/fields';
import { PostForm } from '../../../../components/ui/post-form';
import type { HandInRecord } from '../../../../lib/store/hand-in-record';
import { percentText } from '../../book-numbers';
import styles from '../../mark-book.module.css';

/** One hand-in with everything that was ever said of it, and the forms to add to it. */
export function HandInCard({
  record,
  title,
  shown: isSeen,
  walls,
}: {
  readonly record: HandInRecord;
  readonly title: string;
  /** The learner may see it. */
  readonly shown: boolean;
  /** Score of each wall in order; empty while it is not marked. */
  readonly walls: readonly number[];
}) {
  const { attempt, number, late, handedInAt, markings, ownMarks, comments } = record;
  const shown = ownMarks[ownMarks.length - 1] ?? markings[markings.length - 1];
  return (
    <section className={styles.record} aria-label={`${title}, try ${number}`}>
      <h3>
        {title}
        {number > 1 && `, try ${number}`}: {shown ? `${percentText(shown.score)} %` : 'not marked'}
      </h3>
      <p>
        {handedInAt !== null && (
          <>
            Handed in <When at={handedInAt} />
          </>
        )}
        {late && ', late'}.{' '}
        {isSeen ? 'The learner sees the result.' : 'The learner does not see the result yet.'}{' '}
        <a href={`/desk/work/${record.work}/book`}>All marks of this work</a>
      </p>
      {walls.length > 0 && (
        <ul className="links" aria-label="Walls of this hand-in">
          {walls.map((score, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the place is what a wall is here
            <li key={index}>
              <a href={`/desk/work/${record.work}/walls/${index + 1}?attempt=${attempt}`}>
                Wall {index + 1}: {percentText(score)} %
              </a>
            </li>
          ))}
        </ul>
      )}
      {(markings.length > 1 || ownMarks.length > 0) && (
        <ul aria-label="Marks, the oldest first">
          {markings.map(({ version, score, reason, by, at, engine }) => (
            <li key={version}>
              <span className={version < markings.length || ownMarks.length > 0 ? styles.struck : undefined}>
                {percentText(score)} %
              </span>{' '}
              marked <When at={at} /> by {by} (engine {engine}): {reason}
            </li>
          ))}
          {ownMarks.map(({ score, reason, by, at }, index) => (
            <li key={at}>
              <span className={index < ownMarks.length - 1 ? styles.struck : undefined}>
                {percentText(score)} %
              </span>{' '}
              set <When at={at} /> by {by}: {reason}
            </li>
          ))}
        </ul>
      )}
      {comments.length > 0 && (
        <ul aria-label="Comments">
          {comments.map(({ id, text, by, at }) => (
            <li key={id}>
              {by}, <When at={at} />: {text}
            </li>
          ))}
        </ul>
      )}
      <details>
        <summary>Set another mark, or comment</summary>
        <PostForm
          action="/api/book/override"
          also={{ attempt }}
          send="Set this mark"
          done="The mark is set."
          plain
          name={`Mark for ${title}`}
        >
          <TextField name="score" label="Mark, percent" help="From 0 to 100. The marking stays beside it." />
          <TextField
            name="reason"
            label="Reason"
            help="The learner will read it, and so will the next instructor."
          />
        </PostForm>
        <PostForm
          action="/api/book/comment"
          also={{ attempt }}
          send="Add the comment"
          done="The comment is added."
          plain
          name={`Comment on ${title}`}
        >
          <AreaField name="text" label="Comment for the learner" rows={3} />
        </PostForm>
      </details>
    </section>
  );
}
