import type { Margin } from '../../lib/failing/margins/margins';
import { formatLength, type LengthSystem } from '../../lib/units';
import { MAY_COME_DOWN } from '../../lib/visit/risk';
import { MODE_WORDS } from './visit-words';

/** The wall let go unit by unit: what held the one that went, and what is held least now. */
export function LetGo(props: {
  /** Units that have gone since, the first first. */
  readonly lost: readonly Margin[];
  /** Held least now; null where no unit is left. */
  readonly next: Margin | null;
  /** What it carries, N, how hard it lands, J, and how high it stands, mm. */
  readonly load: number;
  readonly energy: number;
  readonly height: number;
  readonly system: LengthSystem;
  readonly nameOf: (part: string) => string;
  readonly onGo: (losses: number) => void;
}) {
  const { lost, next, load, energy, height, system, nameOf, onGo } = props;
  const mayGo = next !== null && next.margin < MAY_COME_DOWN;
  return (
    <section aria-labelledby="let-go-heading" className="stack tight">
      <h3 id="let-go-heading">Let the wall go, unit by unit</h3>
      {lost.length > 0 && (
        <ol>
          {lost.map(({ part, mode, margin }) => (
            <li key={part}>
              {nameOf(part)}: it {MODE_WORDS[mode]}; what held it was {margin.toFixed(2)} times what drew on
              it.
            </li>
          ))}
        </ol>
      )}
      {next !== null && (
        <p role="status">
          {mayGo ? 'Ringed, and held least now' : 'What is left holds on this drawing. Held least is'}:{' '}
          {nameOf(next.part)}. It {MODE_WORDS[next.mode]}; what holds it is {next.margin.toFixed(2)} times
          what draws on it. {load > 0 ? `${Math.round(load)} N lie on it.` : 'Nothing lies on it.'} From{' '}
          {formatLength(Math.round(height), system)} it would land with {Math.round(energy)} J.
        </p>
      )}
      <p className="row">
        {mayGo && (
          <button type="button" className="button button-plain" onClick={() => onGo(lost.length + 1)}>
            Let it go
          </button>
        )}
        {lost.length > 0 && (
          <button type="button" onClick={() => onGo(lost.length - 1)}>
            Put the last one back
          </button>
        )}
      </p>
      <p className="fine">
        Arrows show what lies on it and where that goes, each as wide as its force; units stuck to a backing
        carry nothing, and have none. All of it is worked out on this drawing and says nothing of a real wall.
      </p>
    </section>
  );
}
