import type { LengthSystem } from '../../lib/units';
import type { Reading } from '../../lib/visit/readings';
import { CONDITIONS, type Condition } from '../../lib/visit/shown';
import { farWords } from './shown-words';
import { CONDITION_WORDS } from './visit-words';

/** A unit that was picked: what is read there, whether one touches it, and what is wrong with it. */
export function UnitPanel(props: {
  readonly part: string;
  readonly name: string;
  readonly reading: Reading;
  readonly system: LengthSystem;
  readonly marked: readonly Condition[];
  /** What a fingertip found; null where it was not tried. */
  readonly touch: 'firm' | 'never' | null;
  readonly onMark: (condition: Condition) => void;
  readonly onTouch: () => void;
}) {
  const { part, name, reading, system, marked, touch, onMark, onTouch } = props;
  const rows = readingRows(reading, system);
  return (
    <section className="panel" aria-labelledby="unit-name">
      <h3 id="unit-name" data-part-name={part}>
        {name}
      </h3>
      <p className="fine">Read from outside, by level and line and off a picture with a scale:</p>
      {rows.length > 0 ? (
        <ul>
          {rows.map((row) => (
            <li key={row}>{row}</li>
          ))}
        </ul>
      ) : (
        <p>{reading.isThere ? 'In its place; no crack beside it.' : 'No unit stands here.'}</p>
      )}
      <fieldset>
        <legend>What is wrong here?</legend>
        <div className="row">
          {CONDITIONS.map((condition) => (
            <button
              key={condition}
              type="button"
              aria-pressed={marked.includes(condition)}
              onClick={() => onMark(condition)}
            >
              {CONDITION_WORDS[condition]}
            </button>
          ))}
        </div>
      </fieldset>
      <p>
        <button type="button" onClick={onTouch}>
          Touch it with a fingertip
        </button>
      </p>
      <p role="status">
        {touch === 'firm' && 'Firm, and nothing above it hangs.'}
        {touch === 'never' &&
          'Hands off. It may come down, or something above it may. On a real wall you would be standing under it.'}
      </p>
    </section>
  );
}

/** The least that is read, mm. */
const READS = 0.1;

function readingRows(
  { up, out, along, crack, face, joint }: Reading,
  system: LengthSystem,
): readonly string[] {
  const row = (mm: number, more: string, less: string) =>
    Math.abs(mm) < READS ? [] : [`${farWords(mm, system)} ${mm > 0 ? more : less}`];
  return [
    ...row(up, 'higher than it was laid', 'lower than it was laid'),
    ...row(out, 'out from the face', 'in from the face'),
    ...row(along, 'to the right of its place', 'to the left of its place'),
    ...(crack < READS ? [] : [`Crack beside it or through it, ${farWords(crack, system)} wide`]),
    ...(face < READS ? [] : [`Face gone, ${farWords(face, system)} deep`]),
    ...(joint < READS ? [] : [`Mortar gone from the joint, ${farWords(joint, system)} deep`]),
  ];
}
