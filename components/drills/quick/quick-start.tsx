import { LOOKING_TIMES, type LookingTime, WALLS_A_ROUND } from '../../../lib/drills/quick/quick-round';
import { ChoiceBar } from '../../ui/choice-bar';

const OPTIONS = LOOKING_TIMES.map((time) => ({
  value: String(time),
  label: time === null ? 'No clock' : `${time} seconds`,
}));

/** Before a round: how long each wall is to be seen. */
export function QuickStart(props: {
  readonly time: LookingTime;
  /** Walls already answered before a reload. */
  readonly begun: number;
  readonly onTime: (time: LookingTime) => void;
  readonly onStart: () => void;
}) {
  const { time, begun, onTime, onStart } = props;
  return (
    <section aria-labelledby="start-heading">
      <h2 id="start-heading">Before you start</h2>
      <p>
        {WALLS_A_ROUND} walls come one after another. About half are sound, by chance. When the time is up the
        wall is covered, and you may still take as long as you like to answer.
      </p>
      <ChoiceBar
        legend="See each wall for"
        options={OPTIONS}
        value={String(time)}
        onChoose={(value) => onTime(LOOKING_TIMES.find((each) => String(each) === value) ?? null)}
      />
      <p>
        <button type="button" className="button" onClick={onStart}>
          {begun === 0 ? 'Show the first wall' : `Go on with wall ${begun + 1}`}
        </button>
      </p>
    </section>
  );
}
