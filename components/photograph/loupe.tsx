import { type PointerEvent, useEffect, useRef } from 'react';
import type { Spot } from '../../lib/photo/matrix';
import styles from './photograph.module.css';

/** Eight times as large as the picture's own pixels. */
const TIMES = 8;
const SIDE = 176;

/** The picture round a spot, much enlarged, with a cross on the spot. Dragging the picture moves the spot the other way. */
export function Loupe(props: {
  readonly canvas: HTMLCanvasElement;
  readonly spot: Spot;
  readonly name: string;
  readonly onMove: (spot: Spot) => void;
}) {
  const { canvas, spot, name, onMove } = props;
  const glass = useRef<HTMLCanvasElement>(null);
  const held = useRef<{ readonly from: Spot; readonly at: Spot } | null>(null);

  useEffect(() => {
    const context = glass.current?.getContext('2d');
    if (!context) return;
    const seen = SIDE / TIMES;
    context.fillStyle = '#888888';
    context.fillRect(0, 0, SIDE, SIDE);
    context.imageSmoothingEnabled = false;
    context.drawImage(canvas, spot.x - seen / 2, spot.y - seen / 2, seen, seen, 0, 0, SIDE, SIDE);
    for (const [tone, wide] of [
      ['#ffffff', 3],
      ['#000000', 1],
    ] as const) {
      context.strokeStyle = tone;
      context.lineWidth = wide;
      context.beginPath();
      context.moveTo(SIDE / 2, 0);
      context.lineTo(SIDE / 2, SIDE);
      context.moveTo(0, SIDE / 2);
      context.lineTo(SIDE, SIDE / 2);
      context.stroke();
    }
  }, [canvas, spot]);

  function drag({ clientX, clientY }: PointerEvent): void {
    if (held.current === null) return;
    const { from, at } = held.current;
    onMove({ x: at.x - (clientX - from.x) / TIMES, y: at.y - (clientY - from.y) / TIMES });
  }

  return (
    <canvas
      ref={glass}
      width={SIDE}
      height={SIDE}
      className={styles.loupe}
      role="img"
      aria-label={`${name}, ${TIMES} times enlarged`}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        held.current = { from: { x: event.clientX, y: event.clientY }, at: spot };
      }}
      onPointerMove={drag}
      onPointerUp={() => {
        held.current = null;
      }}
    />
  );
}
