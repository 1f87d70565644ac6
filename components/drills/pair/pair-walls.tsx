'use client';

import type { LengthSystem } from '../../../lib/units';
import type { FindingDimension } from '../../../lib/views/pointing/finding-dimension';
import type { Aim } from '../../../lib/views/pointing/pick';
import type { Layer } from '../../../lib/views/pointing/targets';
import type { View } from '../../../lib/views/view';
import type { ViewingConditions } from '../../../lib/views/viewing-conditions';
import type { SurveyedWall } from '../../../lib/wall/surveyed';
import { SeenTogether } from '../../wall/seen-together';
import { WallDrawing } from '../../wall/wall-drawing';
import type { DrawnMark } from '../../wall/wall-drawing-props';
import styles from './pair.module.css';

export interface PairWall {
  readonly number: 1 | 2;
  readonly surveyed: SurveyedWall;
  readonly view: View;
  readonly marks: readonly DrawnMark[];
  readonly dimensions: readonly FindingDimension[];
  readonly selected: string | null;
  readonly onPick?: (part: string, aim: Aim | null) => void;
}

/** Two walls side by side in the same look: zoom one, and the other follows. */
export function PairWalls(props: {
  readonly walls: readonly PairWall[];
  readonly chosen: 1 | 2 | null;
  readonly layer: Layer;
  readonly viewing: ViewingConditions;
  readonly system: LengthSystem;
  /** Names the look: another one shows both walls whole again. */
  readonly look: string;
}) {
  const { walls, chosen, layer, viewing, system, look } = props;
  return (
    <SeenTogether key={look}>
      <div className={styles.walls}>
        {walls.map(({ number, surveyed, view, marks, dimensions, selected, onPick }) => (
          <section
            key={number}
            aria-labelledby={`pair-wall-${number}`}
            className={`${styles.wall} ${chosen === number ? styles.chosen : ''}`}
          >
            <h2 id={`pair-wall-${number}`}>Wall {number}</h2>
            <WallDrawing
              surveyed={surveyed}
              view={view}
              marks={marks}
              dimensions={dimensions}
              viewing={viewing}
              selected={selected}
              layer={layer}
              system={system}
              label={`Wall ${number}`}
              {...(onPick ? { onPick } : {})}
            />
          </section>
        ))}
      </div>
    </SeenTogether>
  );
}
