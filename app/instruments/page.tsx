import type { Metadata } from 'next';
import Link from 'next/link';
import { InstrumentArticle, InstrumentUnits } from '../../components/instruments/instrument-article';
import { Caution } from '../../components/ui/caution';
import type { Brief } from '../../lib/generate/brief';
import { layWall } from '../../lib/generate/generate';
import { INSTRUMENTS, type Instrument, type InstrumentId } from '../../lib/instruments/instrument';
import { INSTRUMENT } from '../../lib/instruments/instrument-list';
import { readAt } from '../../lib/instruments/read';
import type { Reading } from '../../lib/instruments/reading';
import { partName } from '../../lib/wall/part-names';
import { surveyedWall } from '../../lib/wall/surveyed';
import styles from './instruments.module.css';

export const dynamic = 'error';

export const metadata: Metadata = {
  title: 'Instruments',
  description: 'What each instrument reads on a wall, how closely, and how it can mislead you.',
};

/** The wall that the pictures are read from: it has a corner, a door and ties. */
const SAMPLE: Brief = { topic: 'ties', kind: 'door-corner', difficulty: 1, rules: 'canada', seed: 1 };

/** Common practice in touching a wall that is looked at for faults. */
const TOUCH = [
  'Tap and scratch lightly, from the side. Never stand or reach under loose units.',
  'Do not hammer, pry or pull.',
  'If anything moves, stop. Keep people away.',
];

export default function InstrumentsPage() {
  const samples = samplesOf(SAMPLE);
  return (
    <>
      <div className="column">
        <h1>Instruments</h1>
        <p>
          You can use these on every <Link href="/walls">wall</Link>. Pick a part, choose an instrument, and
          note what it reads. Each one is a little off, as real ones are, and never by more than it says here.
        </p>
        <p>
          Your own reading may be off by as much again. So a mark asks for what the instrument can tell, and
          not for more.
        </p>
        <Caution lines={TOUCH} toSafety />
        <InstrumentUnits />
      </div>
      <ul className={styles.instruments}>
        {INSTRUMENTS.map((id) => (
          <li key={id}>
            <InstrumentArticle instrument={INSTRUMENT[id]} sample={samples.get(id) ?? null} />
          </li>
        ))}
      </ul>
      <div className="column">
        <h2>What an error means</h2>
        <p>
          “Within 1 mm” (0.039 in) says: the truth lies no more than 1 mm to either side of what you read. So
          14 mm (0.551 in) on a tape may be 13, or 15 (0.512 or 0.591 in). If the limit lies between, read
          again with a finer instrument.
        </p>
        <p>
          Two readings make two errors. Where you take one from the other, add both errors. Where you take the
          mean of a reading and the same one reversed, the error of the instrument drops out.
        </p>
      </div>
    </>
  );
}

interface Sample {
  readonly reading: Reading;
  readonly place: string;
}

/** One reading of each instrument. @throws RangeError, which ends the build, when the sample wall gives one nothing to read. */
function samplesOf(brief: Brief): ReadonlyMap<InstrumentId, Sample> {
  const surveyed = surveyedWall(layWall(brief));
  const sampleOf = ({ id, on }: Instrument): Sample => {
    for (const part of surveyed.parts.values()) {
      if (part.kind !== on[0]) continue;
      const reading = readAt(surveyed, id, part).find(
        ({ value, words }) => value !== 0 && words !== 'none found',
      );
      if (reading !== undefined) return { reading, place: partName(part, surveyed.wall) };
    }
    throw new RangeError(`the sample wall gives the ${id} nothing to read: choose another seed`);
  };
  return new Map(INSTRUMENTS.map((id) => [id, sampleOf(INSTRUMENT[id])]));
}
