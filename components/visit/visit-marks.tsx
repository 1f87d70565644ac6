import type { VisitMark } from '../../lib/visit/grade-visit';
import { CONDITION_WORDS } from './visit-words';

/** The marks so far, numbered as on the wall. */
export function VisitMarks(props: {
  readonly marks: readonly VisitMark[];
  readonly nameOf: (part: string) => string;
}) {
  const { marks, nameOf } = props;
  if (marks.length === 0) return null;
  return (
    <section aria-labelledby="marks-heading">
      <h3 id="marks-heading">Your marks</h3>
      <ol>
        {marks.map(({ condition, part }) => (
          <li key={`${condition} ${part}`}>
            {CONDITION_WORDS[condition]}. {nameOf(part)}
          </li>
        ))}
      </ol>
    </section>
  );
}
