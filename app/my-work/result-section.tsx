import { scoreOf100 } from '../../components/result/score-words';
import { type PassOutcome, passOutcome } from '../../lib/classes/pass-outcome';
import { briefOfCode } from '../../lib/exercise/brief-of-code';
import { metOnWall } from '../../lib/exercise/met-on-wall';
import type { WorkRow } from '../../lib/store/set-work';
import { surveyedWall } from '../../lib/wall/surveyed';
import { KIND_TITLES } from '../../lib/wall-page/brief-words';
import { rowsOf } from '../../lib/wall-page/rows-of-result';
import { layForSetWork } from '../../lib/wall-page/wall-to-read';
import { GivenScores } from './given-scores';
import type { ShownResult } from './learner-work';
import styles from './my-work.module.css';
import { ResultRoom } from './result-room';

/** The result of a set work: the score in words, each wall, and one wall with its key. A practice result, and no more. */
export function ResultSection(props: {
  readonly work: WorkRow;
  readonly result: ShownResult;
  readonly place: number | null;
}) {
  const { work, result, place } = props;
  const wall = result.walls.find((each) => each.place === place);
  const brief = wall ? briefOfCode(wall.code) : null;
  if (wall && brief === null) {
    return (
      <>
        <p>
          <a href={`/my-work/${work.id}`}>All walls</a>
        </p>
        <p>
          This wall was laid by a newer version of this site than the one that runs now, and cannot be drawn.
          Its score stays.
        </p>
      </>
    );
  }
  const graded = wall ? result.results[wall.place - 1] : undefined;
  if (wall && brief && graded) {
    const laid = layForSetWork(brief);
    return (
      <>
        <p>
          <a href={`/my-work/${work.id}`}>All walls</a>
        </p>
        <ResultRoom
          attempt={result.attempt.id}
          handedIn={wall}
          laid={laid}
          label={`Wall ${wall.place} of ${result.walls.length}: ${KIND_TITLES[brief.kind]}`}
          openingsUp={work.spec.openingsUp}
          rows={rowsOf(graded, surveyedWall(laid.wall), brief.rules)}
          places={`/api/work/${work.id}/places/${wall.place}`}
          met={metOnWall(graded)}
          handedInAt={result.attempt.handedInAt}
        />
      </>
    );
  }
  return (
    <section aria-labelledby="practice-result">
      <h2 id="practice-result">Practice result</h2>
      <p>
        <span className={styles.score}>{scoreOf100(result.score)}</span> of 100
      </p>
      <GivenScores score={result.score} walls={result.walls.length} marks={result.marks} />
      {work.spec.passMark && (
        <PassWords
          passMark={work.spec.passMark}
          score={result.score}
          walls={result.walls.length}
          isDecided={result.marks.at(-1)?.kind === 'set by hand'}
        />
      )}
      <ol>
        {result.walls.map((each) => (
          <li key={each.place}>
            <a href={`/my-work/${work.id}/${each.place}`}>{wallTitle(each)}</a>:{' '}
            {scoreOf100(result.results[each.place - 1]?.score ?? 0)} of 100
          </li>
        ))}
      </ol>
      {result.comments.map((comment, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: comments are only added, and one may be written twice
        <blockquote key={index}>{comment}</blockquote>
      ))}
    </section>
  );
}

function wallTitle({ place, code }: ShownResult['walls'][number]): string {
  const brief = briefOfCode(code);
  return brief ? `Wall ${place} · ${KIND_TITLES[brief.kind]}` : `Wall ${place}`;
}

/** Three outcomes: near the mark, a few walls cannot tell. */
const OUTCOME_WORDS: Readonly<Record<PassOutcome, string>> = {
  reached: 'Reached.',
  'more walls needed': 'Too close to call: more walls are needed.',
  'not reached yet': 'Not reached yet.',
};

function PassWords(props: {
  readonly passMark: NonNullable<WorkRow['spec']['passMark']>;
  readonly score: number;
  readonly walls: number;
  /** By an instructor. */
  readonly isDecided: boolean;
}) {
  const { passMark, score, walls, isDecided } = props;
  return (
    <p>
      Pass mark {scoreOf100(passMark.share)}:{' '}
      {OUTCOME_WORDS[passOutcome(score, walls, passMark.share, isDecided)]} Set by {passMark.person} on{' '}
      {passMark.date}: {passMark.method}. This is a practice result. It says nothing about work on a real
      wall.
    </p>
  );
}
