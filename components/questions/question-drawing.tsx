import { brickFaces, brickwork } from '../../lib/drawing/brickwork';
import { cut } from '../../lib/drawing/cut';
import { ring } from '../../lib/drawing/rings';
import { lines, type Pen, rect, type Shape } from '../../lib/drawing/shape';
import { type Ring, rectRing } from '../../lib/geometry/polygon';
import type { QuestionDrawing } from '../../lib/questions/question';
import { KitDrawing } from '../drawing/kit-drawing';
import styles from './questions.module.css';

const SHEET = { x: 0, y: 0, width: 480, height: 288 };
const THIN: Pen = { paint: '--slate', width: 1.2, thin: true };
const METAL: Pen = { paint: '--chalk', width: 3, thin: true };

/** A small drawing of an alternative. */
export function SmallDrawing({ drawing }: { readonly drawing: QuestionDrawing }) {
  return <KitDrawing box={SHEET} shapes={shapesOf(drawing)} className={styles.drawing} />;
}

function shapesOf(drawing: QuestionDrawing): readonly Shape[] {
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

function line(pen: Pen, ...points: Ring): Shape {
  return lines([points], pen);
}

function mortar(...rings: readonly Ring[]): Shape {
  return { kind: 'area', rings, fill: 'url:mortar', pen: { paint: '#8a8474', width: 1, thin: true } };
}

const DABS = ring(120, 198, 360, 198, 240, 144, 120, 90, 360, 90);

function backOf(spread: 'full' | 'ring' | 'dabs' | 'ridges'): readonly Shape[] {
  const unit = brickFaces([{ x: 45, y: 30, width: 390, height: 228 }]);
  switch (spread) {
    case 'full':
      return [...unit, mortar(rectRing(51, 36, 378, 216))];
    case 'ring':
      // The bare middle runs the other way round, so that it stays open.
      return [...unit, mortar(rectRing(51, 36, 378, 216), [...rectRing(123, 96, 234, 96)].reverse())];
    case 'dabs':
      return [...unit, ...DABS.map((at): Shape => ({ kind: 'dot', at, radius: 33, fill: 'url:mortar' }))];
    case 'ridges':
      return [...unit, ...[51, 105, 159, 213].map((y) => mortar(rectRing(51, y, 378, 21)))];
  }
}

function bedOf(left: number, right: number): readonly Shape[] {
  const [foot, head] = [102 + left * 4.8, 102 + right * 4.8];
  return [
    cut(rectRing(30, 30, 420, 72), 'url:cut-brick'),
    mortar(ring(30, 102, 450, 102, 450, head, 30, foot)),
    cut(ring(30, foot, 450, head, 450, head + 72, 30, foot + 72), 'url:cut-brick'),
  ];
}

function ledgeOf(share: number): readonly Shape[] {
  const edge = 300;
  return [
    cut(rectRing(30, 24, edge - 30, 96), 'url:concrete'),
    cut(rectRing(edge - 240 * (1 - share), 120, 240, 96), 'url:cut-brick'),
    line(THIN, [edge, 12], [edge, 246]),
  ];
}

function lintelOf(opening: number, left: number, right: number): readonly Shape[] {
  const scale = 252 / opening;
  const [from, to] = [left, right].map((bearing) => Math.min(102, bearing * scale * 2));
  const courses = (x: number) =>
    [0, 1, 2].map((course) => ({ x, y: 12 + course * 52, width: 102, height: 42 }));
  return [
    ...brickwork(courses(12)),
    ...brickwork(courses(366)),
    cut(rectRing(114 - (from ?? 0), 168, 252 + (from ?? 0) + (to ?? 0), 24), 'url:cut-steel'),
    line(THIN, [114, 12], [114, 204]),
    line(THIN, [366, 12], [366, 204]),
  ];
}

function tieOf(fall: number): readonly Shape[] {
  return [
    cut(rectRing(24, 18, 90, 252), 'url:cut-wood'),
    mortar(rectRing(300, 120, 150, 36)),
    cut(rectRing(300, 156, 150, 114), 'url:cut-brick'),
    cut(rectRing(300, 18, 150, 102), 'url:cut-brick'),
    line(METAL, [114, 138 + fall * 4.8], [300, 138], [408, 138]),
  ];
}

function lapOf(share: number): readonly Shape[] {
  const [first, second] = [210, 210 + 300 * share];
  const course = (y: number, head: number) => [
    { x: 30, y, width: head - 30, height: 104 },
    { x: head + 10, y, width: 440 - head, height: 104 },
  ];
  return [
    ...brickwork([...course(40, first), ...course(154, second)]),
    line({ ...METAL, dash: [6, 5] }, [first + 5, 144], [first + 5, 258]),
  ];
}

function flashingOf(behind: boolean, past: boolean): readonly Shape[] {
  const upright = behind ? 114 : 132;
  const barrier = behind ? 126 : 114;
  return [
    cut(rectRing(24, 18, 78, 252), 'url:cut-wood'),
    rect({ x: 102, y: 78, width: 174, height: 192 }, '--air'),
    cut(rectRing(102, 18, 276, 60), 'url:concrete'),
    cut(rectRing(276, 96, 126, 174), 'url:cut-brick'),
    line({ ...THIN, width: 3, dash: [6, 3] }, [barrier, 276], [barrier, behind ? 138 : 102]),
    line(METAL, [upright, 216], [upright, 90], [past ? 426 : 312, 90]),
  ];
}
