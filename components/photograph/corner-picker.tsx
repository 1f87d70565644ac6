import { type KeyboardEvent, type MouseEvent, type PointerEvent, useRef, useState } from 'react';
import type { Corners } from '../../lib/photo/homography';
import type { Spot } from '../../lib/photo/matrix';
import { ChoiceBar } from '../ui/choice-bar';
import { Loupe } from './loupe';
import type { Photograph } from './open-photograph';
import styles from './photograph.module.css';

const NAMES = ['Top left', 'Top right', 'Bottom right', 'Bottom left'] as const;
type Name = (typeof NAMES)[number];

/** Pixels of the picture for an arrow key, and with Shift held. */
const STEP = 1;
const LONG_STEP = 20;
const ARROWS: Readonly<Record<string, Spot>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

/** Four corners on the photograph: dragged, tapped to their place, moved by arrow keys, and set exactly under the loupe. */
export function CornerPicker(props: {
  readonly photograph: Photograph;
  readonly corners: Corners;
  readonly onMove: (corners: Corners) => void;
}) {
  const { photograph, corners, onMove } = props;
  const { width, height } = photograph.picture;
  const [chosen, choose] = useState<Name>('Top left');
  const box = useRef<HTMLDivElement>(null);
  const held = useRef<{ readonly from: Spot; readonly at: Spot } | null>(null);
  const at = NAMES.indexOf(chosen);

  function put(index: number, { x, y }: Spot): void {
    const spot = { x: Math.min(Math.max(x, 0), width), y: Math.min(Math.max(y, 0), height) };
    onMove(corners.map((corner, each) => (each === index ? spot : corner)) as unknown as Corners);
  }

  /** Pixels of the picture to one of the screen. */
  function fineness(): number {
    return width / (box.current?.getBoundingClientRect().width ?? width);
  }

  function tap({ clientX, clientY }: MouseEvent): void {
    const shown = box.current?.getBoundingClientRect();
    if (shown) put(at, { x: (clientX - shown.left) * fineness(), y: (clientY - shown.top) * fineness() });
  }

  function grab(event: PointerEvent<HTMLButtonElement>, index: number): void {
    event.currentTarget.setPointerCapture(event.pointerId);
    choose(NAMES[index] ?? chosen);
    held.current = { from: { x: event.clientX, y: event.clientY }, at: corners[index] ?? { x: 0, y: 0 } };
  }

  function drag({ clientX, clientY }: PointerEvent, index: number): void {
    if (held.current === null) return;
    const { from, at: start } = held.current;
    put(index, {
      x: start.x + (clientX - from.x) * fineness(),
      y: start.y + (clientY - from.y) * fineness(),
    });
  }

  function press(event: KeyboardEvent, index: number): void {
    const way = ARROWS[event.key];
    const corner = corners[index];
    if (way === undefined || corner === undefined) return;
    event.preventDefault();
    const by = event.shiftKey ? LONG_STEP : STEP;
    put(index, { x: corner.x + way.x * by, y: corner.y + way.y * by });
  }

  return (
    <>
      <ChoiceBar
        legend="Corner to set"
        options={NAMES.map((name) => ({ value: name, label: name }))}
        value={chosen}
        onChoose={choose}
      />
      <p className="fine">
        Tap the picture to put the corner there, or drag it. With a keyboard, go to a corner and use the arrow
        keys; hold Shift for long steps. Then drag the picture in the loupe until the cross lies exactly on
        the corner.
      </p>
      <div className={styles.work}>
        <div className={styles.picture} ref={box}>
          <button type="button" className={styles.ground} tabIndex={-1} aria-hidden="true" onClick={tap}>
            {/* biome-ignore lint/performance/noImgElement: a picture in memory, which no server can resize */}
            <img src={photograph.url} alt="" width={width} height={height} />
          </button>
          <svg viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
            <polygon points={corners.map(({ x, y }) => `${x},${y}`).join(' ')} className={styles.frame} />
          </svg>
          {corners.map((corner, index) => (
            <button
              key={NAMES[index]}
              type="button"
              className={styles.handle}
              data-chosen={index === at}
              style={{ left: `${(100 * corner.x) / width}%`, top: `${(100 * corner.y) / height}%` }}
              aria-label={`${NAMES[index]} corner: ${Math.round(corner.x)} across, ${Math.round(corner.y)} down`}
              onFocus={() => choose(NAMES[index] ?? chosen)}
              onPointerDown={(event) => grab(event, index)}
              onPointerMove={(event) => drag(event, index)}
              onPointerUp={() => {
                held.current = null;
              }}
              onKeyDown={(event) => press(event, index)}
            />
          ))}
        </div>
        <Loupe
          canvas={photograph.canvas}
          spot={corners[at] ?? corners[0]}
          name={`${chosen} corner`}
          onMove={(spot) => put(at, spot)}
        />
      </div>
    </>
  );
}
