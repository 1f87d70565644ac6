import type { ReactNode } from 'react';
import type { QuestionDrawing } from '../../lib/questions/question';
import styles from './questions.module.css';

const WIDTH = 160;
const HEIGHT = 96;

/** A small drawing of an alternative. The words beside it say the same, so it is hidden from a screen reader. */
export function SmallDrawing({ drawing }: { readonly drawing: QuestionDrawing }) {
  return (
    <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} className={styles.drawing} aria-hidden="true" focusable="false">
      {shapesOf(drawing)}
    </svg>
  );
}

function shapesOf(drawing: QuestionDrawing): ReactNode {
  switch (drawing.kind) {
    case 'back':
      return backOf(drawing.spread);
    case 'bed':
      return bedOf(drawing.left, drawing.right);
    case 'ledge':
      return ledgeOf(drawing.overhang / drawing.depth);
    case 'lintel':
      return lintelOf(drawing.opening, drawing.left, drawing.right);
    case 'tie':
      return tieOf(drawing.fall);
    case 'lap':
      return lapOf(drawing.offset / drawing.length);
    case 'flashing':
      return flashingOf(drawing.lap === 'behind the barrier', drawing.reach === 'past the face');
  }
}

function backOf(spread: 'full' | 'ring' | 'dabs' | 'ridges') {
  const dabs = [
    [40, 30],
    [120, 30],
    [80, 48],
    [40, 66],
    [120, 66],
  ] as const;
  return (
    <>
      <rect x="15" y="10" width="130" height="76" className={styles.brick} />
      {spread === 'full' && <rect x="17" y="12" width="126" height="72" className={styles.mortar} />}
      {spread === 'ring' && (
        <path d="M17 12h126v72H17zM41 32v32h78V32z" fillRule="evenodd" className={styles.mortar} />
      )}
      {spread === 'dabs' &&
        dabs.map(([x, y]) => <circle key={`${x} ${y}`} cx={x} cy={y} r="11" className={styles.mortar} />)}
      {spread === 'ridges' &&
        [17, 35, 53, 71].map((y) => (
          <rect key={y} x="17" y={y} width="126" height="7" className={styles.mortar} />
        ))}
    </>
  );
}

function bedOf(left: number, right: number) {
  const top = (mm: number) => 62 - mm * 1.6;
  return (
    <>
      <rect x="10" y="62" width="140" height="24" className={styles.brick} />
      <polygon points={`10,62 150,62 150,${top(right)} 10,${top(left)}`} className={styles.mortar} />
      <polygon
        points={`10,${top(left)} 150,${top(right)} 150,${top(right) - 24} 10,${top(left) - 24}`}
        className={styles.brick}
      />
    </>
  );
}

function ledgeOf(share: number) {
  const edge = 100;
  return (
    <>
      <rect x="10" y="56" width={edge - 10} height="32" className={styles.concrete} />
      <rect x={edge - 80 * (1 - share)} y="24" width="80" height="32" className={styles.brick} />
      <path d={`M${edge} 14V92`} className={styles.thin} />
    </>
  );
}

function lintelOf(opening: number, left: number, right: number) {
  const scale = 84 / opening;
  return (
    <>
      <rect x="4" y="40" width="34" height="50" className={styles.brick} />
      <rect x="122" y="40" width="34" height="50" className={styles.brick} />
      <rect
        x={38 - Math.min(34, left * scale * 2)}
        y="32"
        width={84 + Math.min(34, left * scale * 2) + Math.min(34, right * scale * 2)}
        height="8"
        className={styles.steel}
      />
      <path d="M38 28V90M122 28V90" className={styles.thin} />
    </>
  );
}

function tieOf(fall: number) {
  const drop = fall * 1.6;
  return (
    <>
      <rect x="8" y="6" width="30" height="84" className={styles.wood} />
      <rect x="100" y="6" width="50" height="38" className={styles.brick} />
      <rect x="100" y="56" width="50" height="34" className={styles.brick} />
      <rect x="100" y="44" width="50" height="12" className={styles.mortar} />
      <path d={`M38 ${50 - drop}L100 50H136`} className={styles.line} />
    </>
  );
}

function lapOf(share: number) {
  const first = 70;
  const shift = 100 * share;
  return (
    <>
      <rect x="10" y="10" width="140" height="76" className={styles.brick} />
      <path d={`M10 48H150M${first} 48V86M${first + shift} 10V48`} className={styles.joint} />
      <path d={`M${first} 30V48`} className={styles.thin} strokeDasharray="3 3" />
    </>
  );
}

function flashingOf(behind: boolean, past: boolean) {
  return (
    <>
      <rect x="8" y="6" width="26" height="84" className={styles.wood} />
      <rect x="92" y="6" width="42" height="58" className={styles.brick} />
      <rect x="34" y="70" width="92" height="20" className={styles.concrete} />
      <path
        d={`M38 4V${behind ? 50 : 62}`}
        className={styles.barrier}
        transform={behind ? 'translate(4 0)' : ''}
      />
      <path d={`M${behind ? 38 : 44} 24V66H${past ? 142 : 104}`} className={styles.line} />
    </>
  );
}
