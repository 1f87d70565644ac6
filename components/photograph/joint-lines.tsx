import { type MouseEvent, useRef, useState } from 'react';
import { type JointPlace, movedBy, without } from '../../lib/photo/by-hand';
import { nominal } from '../../lib/photo/find';
import type { Joint, Joints } from '../../lib/photo/joint';
import type { Spot } from '../../lib/photo/matrix';
import type { Reference } from '../../lib/photo/reference';
import type { Photograph } from './open-photograph';
import styles from './photograph.module.css';

interface Line {
  readonly name: string;
  readonly place: JointPlace;
  readonly spots: readonly Spot[];
}

/** The joints that were found, drawn on the photograph: the person goes through them, moves a line or takes one out. */
export function JointLines(props: {
  readonly photograph: Photograph;
  readonly reference: Reference;
  readonly joints: Joints;
  readonly onChange: (joints: Joints) => void;
}) {
  const { photograph, reference, joints, onChange } = props;
  const { width, height } = photograph.picture;
  const box = useRef<HTMLDivElement>(null);
  const lines = linesOf(joints);
  const [at, goTo] = useState(0);
  const chosen = lines[Math.min(at, lines.length - 1)];
  if (chosen === undefined) return null;
  const isBed = 'bed' in chosen.place;

  function move(by: number): void {
    if (chosen === undefined) return;
    const { mapping } = nominal(photograph.picture, reference);
    onChange(movedBy(joints, chosen.place, by, photograph.picture, mapping));
  }

  function tap({ clientX, clientY }: MouseEvent): void {
    const shown = box.current?.getBoundingClientRect();
    if (shown === undefined) return;
    const by = width / shown.width;
    const spot = { x: (clientX - shown.left) * by, y: (clientY - shown.top) * by };
    const away = lines.map(({ spots }) =>
      Math.min(...spots.map(({ x, y }) => Math.hypot(x - spot.x, y - spot.y))),
    );
    goTo(away.indexOf(Math.min(...away)));
  }

  return (
    <>
      <div className={styles.picture} ref={box}>
        <button type="button" className={styles.ground} tabIndex={-1} aria-hidden="true" onClick={tap}>
          {/* biome-ignore lint/performance/noImgElement: a picture in memory, which no server can resize */}
          <img src={photograph.url} alt="" width={width} height={height} />
        </button>
        <svg viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
          {lines.map(({ name, spots }) => {
            const points = spots.map(({ x, y }) => `${x},${y}`).join(' ');
            return (
              <g key={name} className={styles.line} data-chosen={name === chosen.name}>
                <polyline points={points} />
                <polyline points={points} />
              </g>
            );
          })}
        </svg>
      </div>
      <p>
        <span role="status">
          <strong>{chosen.name}</strong>, line {Math.min(at, lines.length - 1) + 1} of {lines.length}
        </span>
      </p>
      <p className={styles.buttons}>
        <button type="button" onClick={() => goTo((at + lines.length - 1) % lines.length)}>
          Line before
        </button>
        <button type="button" onClick={() => goTo((at + 1) % lines.length)}>
          Next line
        </button>
        <button type="button" onClick={() => move(-1)}>
          {isBed ? 'Up' : 'Left'} 1 mm
        </button>
        <button type="button" onClick={() => move(1)}>
          {isBed ? 'Down' : 'Right'} 1 mm
        </button>
        <button type="button" onClick={() => onChange(without(joints, chosen.place))}>
          No joint: take it out
        </button>
      </p>
    </>
  );
}

function linesOf(joints: Joints): readonly Line[] {
  return [
    ...joints.beds.map((joint, bed) => ({
      name: `Bed joint ${bed + 1} from the top`,
      place: { bed },
      spots: middleOf(joint),
    })),
    ...joints.heads.flatMap((heads, course) =>
      heads.map((joint, head) => ({
        name: `Head joint ${head + 1} from the left, course ${course + 1} from the top`,
        place: { course, head },
        spots: middleOf(joint),
      })),
    ),
  ];
}

function middleOf({ cuts }: Joint): readonly Spot[] {
  return cuts.map(({ from, to }) => ({ x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }));
}
