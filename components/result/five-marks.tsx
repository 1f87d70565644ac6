import type { Count, FiveMark, FiveMarks } from '../../lib/marking/five-marks';
import styles from './five-marks.module.css';

const ROWS: readonly (readonly [mark: FiveMark, word: string, means: string])[] = [
  ['found', 'Found', 'the place'],
  ['named', 'Named', 'the fault'],
  ['measured', 'Measured', 'how much'],
  ['judged', 'Judged', 'which requirement'],
  ['acted', 'Acted', 'what to do'],
];

/** The five marks, each apart: none is hidden in a sum. */
export function FiveMarksTable({ parts }: { readonly parts: FiveMarks }) {
  return (
    <dl className={styles.marks} aria-label="Five marks, each apart">
      {ROWS.map(([mark, word, means]) => (
        <div key={mark}>
          <dt>
            {word} <span>{means}</span>
          </dt>
          <dd>{countWords(mark, parts[mark])}</dd>
        </div>
      ))}
    </dl>
  );
}

/** Nothing asked or nothing answered is no nought. */
function countWords(mark: FiveMark, { got, of }: Count): string {
  if (of > 0) return `${got} of ${of}`;
  if (mark === 'found') return 'none to find';
  return mark === 'named' ? 'none found' : 'not given';
}
