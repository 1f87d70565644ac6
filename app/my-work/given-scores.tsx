import { scoreOf100 } from '../../components/result/score-words';
import { scoreError } from '../../lib/classes/statistics/score-error';
import type { GivenMark } from '../../lib/store/book/given-marks';

const MARK_WORDS: Readonly<Record<GivenMark['kind'], string>> = {
  'handed in': 'from the walls, when you handed in',
  'marked again': 'from the walls, marked again',
  'set by hand': 'set by your instructor',
};

/** How exact a score is; where the first one was changed, every score with its reason, the one that counts last. */
export function GivenScores(props: {
  readonly score: number;
  readonly walls: number;
  readonly marks: readonly GivenMark[];
}) {
  const { score, walls, marks } = props;
  return (
    <>
      {marks.at(-1)?.kind !== 'set by hand' && (
        <p>A score from so few walls is not exact: give or take {scoreOf100(scoreError(score, walls))}.</p>
      )}
      {marks.length > 1 && (
        <>
          <p id="marks-given">The marks this work was given. The last one counts.</p>
          <ol aria-labelledby="marks-given">
            {marks.map(({ kind, score: given, reason }, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: marks are only added
              <li key={index}>
                {scoreOf100(given)} of 100, {MARK_WORDS[kind]}
                {kind !== 'handed in' && `: ${reason}`}
              </li>
            ))}
          </ol>
        </>
      )}
    </>
  );
}
