'use client';

import { type ReactNode, useState } from 'react';
import type { LengthSystem } from '../../lib/units';
import type { View } from '../../lib/views/view';
import type { Wall } from '../../lib/wall/model';
import { type Choice, ChoiceBar } from '../forms/choice-bar';
import { type DrawnMark, WallDrawing } from '../wall/wall-drawing';
import styles from './wall-stage.module.css';

type Layer = 'units' | 'joints' | 'fixings';

const LAYERS: readonly Choice<Layer>[] = [
  { value: 'units', label: 'Units' },
  { value: 'joints', label: 'Joints' },
  { value: 'fixings', label: 'Ties and supports' },
];

/** The wall with the views to choose from, and what a tap takes hold of. */
export function WallStage(props: {
  readonly wall: Wall;
  readonly label: string;
  readonly views: readonly Choice<string>[];
  readonly viewKey: string;
  readonly view: View;
  /** What this view cannot show, in a sentence. */
  readonly hint: string | null;
  /** What goes with the view chosen, above the drawing. */
  readonly bar: ReactNode;
  readonly marks: readonly DrawnMark[];
  readonly selected: string | null;
  readonly system: LengthSystem;
  readonly lengths: ReactNode;
  readonly onView: (key: string) => void;
  readonly onPick: ((part: string) => void) | undefined;
}) {
  const { wall, label, views, viewKey, view, hint, bar, marks, selected, system, lengths } = props;
  const { onView, onPick } = props;
  const [layer, setLayer] = useState<Layer>('units');
  return (
    <section className={styles.stage} aria-labelledby="stage-heading">
      <h2 id="stage-heading" className="visually-hidden" tabIndex={-1}>
        The wall
      </h2>
      <ChoiceBar legend="Look at" options={views} value={viewKey} onChoose={onView} />
      {hint && <p className={styles.hint}>{hint}</p>}
      {bar}
      <div data-stage className={styles.drawing}>
        <WallDrawing
          wall={wall}
          view={view}
          marks={marks}
          selected={selected}
          layer={layer}
          system={system}
          label={label}
          {...(onPick ? { onPick } : {})}
        />
      </div>
      <div className={styles.bars}>
        {onPick && <ChoiceBar legend="Take hold of" options={LAYERS} value={layer} onChoose={setLayer} />}
        {lengths}
      </div>
    </section>
  );
}
