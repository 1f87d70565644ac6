import type { FiveMark, FiveMarks } from '../../lib/marking/five-marks';
import styles from './five-marks.module.css';

const ROWS: readonly (readonly [mark: FiveMark, word: string, means: string])[] = [
  ['found', 'Found', 'the place'],
  ['named', 'Named', 'the fault'],
  ['measured', 'Measured', 'how much'],
  ['judged', 'Judged', 'which requirement'],
  ['acted', 'Acted', 'what to do'],
];

/** The five marks, each apart: none is hidden in a sum. What was not asked or not answered is left out. */
export function FiveMarksTable({ parts }: { readonly parts: FiveMarks }) {
  if (ROWS.every(([mark]) => parts[mark].of === 0)) return null;
  return (
    <dl className={styles.marks} aria-label="Five marks, each apart">
      {ROWS.filter(([mark]) => parts[mark].of > 0).map(([mark, word, means]) => (
        <div key={mark}>
          <dt>
            {word} <span>{means}</span>
          </dt>
          <dd>
            {parts[mark].got} of {parts[mark].of}
          </dd>
        </div>
      ))}
    </dl>
  );
}
