import type { DetectionFigures, Sensitivity } from '../../../lib/drills/quick/detection-figures';
import type { ShareLimits } from '../../../lib/marking/wilson';
import styles from './quick.module.css';

/** All rounds on this device together: plain counts at first, and how well sound and faulty are told apart once there are enough walls. */
export function QuickFigures({
  figures,
  rounds,
  of,
}: {
  readonly figures: DetectionFigures;
  readonly rounds: number;
  /** What the rounds look at, and how hard they are: "Up close, harder". */
  readonly of: string;
}) {
  const { counts, caught, wronglyCalled, sensitivity, soundToCome, faultyToCome } = figures;
  return (
    <section aria-labelledby="figures-heading" className={styles.figures}>
      <h2 id="figures-heading">
        {of}: all your rounds on this device, {rounds}
      </h2>
      <ul>
        {caught && (
          <li>
            Of {counts.hits + counts.misses} faulty walls you called {counts.hits} faulty.{' '}
            {shareWords(caught)}
          </li>
        )}
        {wronglyCalled && (
          <li>
            Of {counts.falseAlarms + counts.soundCalls} sound walls you called {counts.falseAlarms} faulty.{' '}
            {shareWords(wronglyCalled)}
          </li>
        )}
      </ul>
      {sensitivity ? (
        <SensitivityWords sensitivity={sensitivity} />
      ) : (
        <p>
          Too few walls yet to say how good your eye is. {toCome(soundToCome, 'sound')}
          {soundToCome > 0 && faultyToCome > 0 && ' and '}
          {toCome(faultyToCome, 'faulty')} still to come.
        </p>
      )}
    </section>
  );
}

function SensitivityWords({ sensitivity }: { readonly sensitivity: Sensitivity }) {
  const { dPrime, within, isBetterThanChance, pairsOf100, lean } = sensitivity;
  return (
    <>
      <p>
        <strong>
          How well you can tell them apart: d′ = {dPrime.toFixed(1)} (give or take {within.toFixed(1)}).
        </strong>{' '}
        {isBetterThanChance
          ? `Given one sound and one faulty wall, you would point to the faulty one about ${pairsOf100} times in 100. Guessing gives 50.`
          : 'So far it could just as well be guessing.'}
      </p>
      <p>
        <strong>Which way you lean:</strong> {LEANS[lean]}
      </p>
    </>
  );
}

const LEANS: Readonly<Record<Sensitivity['lean'], string>> = {
  'to sound':
    'to “sound”. You let faults pass rather than call a good wall bad. Look once more before you say sound.',
  'to faulty':
    'to “something is wrong”. You call good walls bad rather than let a fault pass. Measure before you say so.',
  'none to be seen': 'neither way, as far as these walls can tell.',
};

function shareWords({ share, low, high }: ShareLimits): string {
  const percent = (value: number) => Math.round(value * 100);
  return `That is ${percent(share)} %. With so few walls your true share may be anywhere from ${percent(low)} to ${percent(high)} %.`;
}

function toCome(count: number, sort: string): string {
  return count === 0 ? '' : `${count} ${sort} ${count === 1 ? 'wall' : 'walls'}`;
}
