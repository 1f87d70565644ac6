import type { Instrument } from '../../lib/instruments/instrument';
import type { Reading } from '../../lib/instruments/reading';
import type { ReadingUnit } from '../../lib/instruments/reading-unit';
import { formatInches } from '../../lib/units';
import { formatWhole } from './format-reading';
import styles from './instrument-article.module.css';
import { InstrumentPicture } from './instrument-picture';
import { joined, KIND_WORDS } from './instrument-words';

/** What an instrument reads, how closely, where the figure is from, and how it lies. */
export function InstrumentArticle(props: {
  readonly instrument: Instrument;
  /** A reading to draw it on, and where it was taken. */
  readonly sample: { readonly reading: Reading; readonly place: string } | null;
}) {
  const { instrument, sample } = props;
  const { id, name, reads, resolution, error, unit, source, lies, on } = instrument;
  return (
    <article className={styles.article} aria-labelledby={id}>
      <h2 id={id}>{name}</h2>
      <figure>
        <InstrumentPicture instrument={id} reading={sample?.reading ?? null} system="mm" />
        {sample && (
          <figcaption>
            {sample.place}: {sample.reading.what.toLowerCase()}, {formatWhole(sample.reading, 'mm')}
          </figcaption>
        )}
      </figure>
      <p>{reads}</p>
      <dl>
        <dt>Held to</dt>
        <dd>{joined(on.map((kind) => KIND_WORDS[kind]))}</dd>
        {unit !== '' && unit !== 'there or not' && (
          <>
            <dt>Steps of</dt>
            <dd>{sizeOf(resolution, unit)}</dd>
            <dt>Within</dt>
            <dd>
              {sizeOf(error, unit)}, either way <span className={styles.source}>({source})</span>
            </dd>
          </>
        )}
        <dt>How it lies</dt>
        <dd>{lies}</dd>
      </dl>
    </article>
  );
}

/** '1 mm (1/16 in)'; in millimetres alone where a sixteenth is too coarse to say it. */
function sizeOf(size: number, unit: ReadingUnit): string {
  const sixteenths = unit === 'mm' ? formatInches(size) : '0 in';
  return sixteenths === '0 in' ? `${size} ${unit}` : `${size} ${unit} (${sixteenths})`;
}
