'use client';

import type { Instrument, ReadingUnit } from '../../lib/instruments/instrument';
import type { Reading } from '../../lib/instruments/reading';
import { inches, type LengthSystem } from '../../lib/units';
import { LengthChoice, useLengthSystem } from '../forms/length-choice';
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
  const system = useLengthSystem('mm');
  const { id, name, reads, resolution, error, unit, source, lies, on } = instrument;
  return (
    <article className={styles.article} aria-labelledby={id}>
      <h2 id={id}>{name}</h2>
      <figure>
        <InstrumentPicture instrument={id} reading={sample?.reading ?? null} system={system} />
        {sample && (
          <figcaption className="fine">
            {sample.place}: {sample.reading.what.toLowerCase()}, {formatWhole(sample.reading, system)}
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
            <dd>{sizeOf(resolution, unit, system)}</dd>
            <dt>Within</dt>
            <dd>
              {sizeOf(error, unit, system)}, either way <span className="fine">({source})</span>
            </dd>
          </>
        )}
        <dt>How it lies</dt>
        <dd>{lies}</dd>
      </dl>
    </article>
  );
}

/** The reader's units, for all the instruments of a page. */
export function InstrumentUnits() {
  return <LengthChoice system={useLengthSystem('mm')} />;
}

/** A step or an error, as the reader's lengths go: '0.1 mm', '0.004 in'. Of degrees a difference, so no 32 is added. */
function sizeOf(size: number, unit: ReadingUnit, system: LengthSystem): string {
  if (system === 'mm') return `${size} ${unit}`;
  if (unit === 'mm') return `${inInches(size)} in`;
  if (unit === 'mm per m') return `${inInches((size * inches(0, 10)) / 1000)} in per 10 ft`;
  return unit === '°C' ? `${(size * 9) / 5} °F` : `${size} ${unit}`;
}

/** To a thousandth. */
function inInches(mm: number): number {
  return Math.round((mm / inches(1)) * 1000) / 1000;
}
