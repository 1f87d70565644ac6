import { type KeyboardEvent, type MouseEvent, type PointerEvent, useRef, useState } from 'react';
import type { Spot } from '../../lib/photo/matrix';
import { ChoiceBar } from '../ui/choice-bar';
import { Loupe } from './loupe';
import type { Photograph } from './open-photograph';
import styles from './photograph.module.css';

/** Pixels of the picture for an arrow key, and with Shift held. */
const STEP = 1;
const LONG_STEP = 20;
const ARROWS: Readonly<Record<string, Spot>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

/** Points on the photograph: dragged, tapped to their place, moved by arrow keys, and set exactly under the loupe. */
export function PointPicker(props: {
  readonly photograph: Photograph;
  /** What each point is: "Top left", of the noun "corner". */
  readonly names: readonly string[];
  readonly noun: string;
  readonly spots: readonly Spot[];
  readonly onMove: (spots: readonly Spot[]) => void;
}) {
  const { photograph, names, noun, spots, onMove } = props;
  const { width, height } = photograph.picture;
  const [at, choose] = useState(0);
  const box = useRef<HTMLDivElement>(null);
  const held = useRef<{ readonly from: Spot; readonly at: Spot } | null>(null);
  const chosen = spots[at];

  function put(index: number, { x, y }: Spot): void {
    const spot = { x: Math.min(Math.max(x, 0), width), y: Math.min(Math.max(y, 0), height) };
    onMove(spots.map((other, each) => (each === index ? spot : other)));
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
    choose(index);
    held.current = { from: { x: event.clientX, y: event.clientY }, at: spots[index] ?? { x: 0, y: 0 } };
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
    const spot = spots[index];
    if (way === undefined || spot === undefined) return;
    event.preventDefault();
    const by = event.shiftKey ? LONG_STEP : STEP;
    put(index, { x: spot.x + way.x * by, y: spot.y + way.y * by });
  }

  return (
    <>
      <ChoiceBar
        legend={`Set this ${noun}`}
        options={names.map((name) => ({ value: name, label: name }))}
        value={names[at] ?? null}
        onChoose={(name) => choose(names.indexOf(name))}
      />
      <p className="fine">
        Tap the picture to put the {noun} there, or drag it. With a keyboard, go to the {noun} and use the
        arrow keys; hold Shift for long steps. Then drag the picture in the loupe until the cross lies exactly
        on the {noun}.
      </p>
      <div className={styles.work}>
        <div className={styles.picture} ref={box}>
          <button type="button" className={styles.ground} tabIndex={-1} aria-hidden="true" onClick={tap}>
            {/* biome-ignore lint/performance/noImgElement: a picture in memory, which no server can resize */}
            <img src={photograph.url} alt="" width={width} height={height} />
          </button>
          <svg viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
            <polygon points={spots.map(({ x, y }) => `${x},${y}`).join(' ')} className={styles.frame} />
          </svg>
          {spots.map((spot, index) => (
            <button
              key={names[index]}
              type="button"
              className={styles.handle}
              data-chosen={index === at}
              style={{ left: `${(100 * spot.x) / width}%`, top: `${(100 * spot.y) / height}%` }}
              aria-label={`${names[index]} ${noun}: ${Math.round(spot.x)} across, ${Math.round(spot.y)} down`}
              onFocus={() => choose(index)}
              onPointerDown={(event) => grab(event, index)}
              onPointerMove={(event) => drag(event, index)}
              onPointerUp={() => {
                held.current = null;
              }}
              onKeyDown={(event) => press(event, index)}
            />
          ))}
        </div>
        {chosen && (
          <Loupe
            canvas={photograph.canvas}
            spot={chosen}
            name={`${names[at]} ${noun}`}
            onMove={(spot) => put(at, spot)}
          />
        )}
      </div>
    </>
  );
}
