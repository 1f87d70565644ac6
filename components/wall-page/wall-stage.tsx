'use client';

import { type ReactNode, useState } from 'react';
import type { LengthSystem } from '../../lib/units';
import type { FindingDimension } from '../../lib/views/pointing/finding-dimension';
import type { Aim } from '../../lib/views/pointing/pick';
import type { Layer } from '../../lib/views/pointing/targets';
import type { View } from '../../lib/views/view';
import type { Wall } from '../../lib/wall/model';
import type { SurveyedWall } from '../../lib/wall/surveyed';
import type { ViewChoice } from '../../lib/wall-page/view-choices';
import { type Choice, ChoiceBar } from '../ui/choice-bar';
import { useViewSettings, type ViewSettings } from '../wall/use-view-settings';
import { CourseControl, CutControl, DistanceControl, SunControl } from '../wall/view-controls';
import { WallDrawing } from '../wall/wall-drawing';
import type { DrawnMark } from '../wall/wall-drawing-props';
import { WallList } from '../wall/wall-list';
import styles from './wall-stage.module.css';

/** What the arrow keys move over. */
export const LAYER_CHOICES: readonly Choice<Layer>[] = [
  { value: 'units', label: 'Units' },
  { value: 'joints', label: 'Joints' },
  { value: 'fixings', label: 'Ties and supports' },
];

const FORMS = [
  { value: 'drawing', label: 'a drawing' },
  { value: 'list', label: 'a list' },
] as const;

/** The wall with its views to choose from, as a drawing or as a list. */
export function WallStage(props: {
  readonly surveyed: SurveyedWall;
  readonly label: string;
  readonly views: readonly ViewChoice[];
  readonly viewKey: string;
  readonly view: View;
  /** What this view shows, or where to look first. */
  readonly hint: string;
  /** What goes with the view chosen, above the drawing. */
  readonly bar: ReactNode;
  /** The same, beside the drawing where there is room, else under it. */
  readonly beside?: ReactNode;
  /** The same, below the drawing. */
  readonly below: ReactNode;
  /** Units that were lifted. */
  readonly lifted?: readonly string[];
  /** A tap means a unit, whatever lies nearer. */
  readonly unitsAlone?: boolean;
  /** What is told on the drawing, by whether one has come near. */
  readonly note?: ((isNear: boolean) => ReactNode) | undefined;
  readonly marks: readonly DrawnMark[];
  /** Paper shows the drawing, whatever the screen shows. */
  readonly onPaper?: boolean;
  readonly dimensions?: readonly FindingDimension[];
  readonly selected: string | null;
  readonly system: LengthSystem;
  readonly lengths: ReactNode;
  readonly onView: (key: string) => void;
  readonly onPick: ((part: string, aim: Aim | null) => void) | undefined;
}) {
  const { surveyed, label, views, viewKey, hint, bar, below, marks, dimensions, selected, system } = props;
  const { lengths, onView, onPick, onPaper = false, beside, lifted = [], unitsAlone = false, note } = props;
  const [layer, setLayer] = useState<Layer>('units');
  const [form, setForm] = useState<'drawing' | 'list'>('drawing');
  const settings = useViewSettings(viewKey, props.view);
  const shared = {
    ...{ surveyed, view: settings.view, marks, selected, system, label },
    layer: unitsAlone ? 'units' : layer,
  } as const;
  return (
    <section className="stack tight" aria-labelledby="stage-heading">
      <h2 id="stage-heading" className="visually-hidden" tabIndex={-1}>
        The wall
      </h2>
      <Places views={views} viewKey={viewKey} onView={onView} />
      <p className={styles.hint} role="status">
        {hint}
      </p>
      {bar}
      <Controls wall={surveyed.wall} viewKey={viewKey} settings={settings} system={system} />
      <div data-stage className={beside ? `${styles.drawing} ${styles.withBack}` : styles.drawing}>
        {form === 'list' && !onPaper ? (
          <WallList
            {...shared}
            distance={settings.viewing.distance}
            onPick={onPick && ((part) => onPick(part, null))}
          />
        ) : (
          <WallDrawing
            {...shared}
            viewing={settings.viewing}
            fills
            {...{ lifted, unitsAlone, note }}
            {...(dimensions ? { dimensions } : {})}
            {...(onPick ? { onPick } : {})}
          />
        )}
        {beside}
      </div>
      {below}
      <details className={styles.more}>
        <summary>Lengths and list</summary>
        <div className={styles.bars}>
          {lengths}
          {settings.view.kind !== 'tickets' && (
            <ChoiceBar
              legend="Arrow keys and list go by"
              options={LAYER_CHOICES}
              value={layer}
              onChoose={setLayer}
            />
          )}
          <ChoiceBar legend="Show the wall as" options={FORMS} value={form} onChoose={setForm} />
        </div>
      </details>
    </section>
  );
}

/** First how to look, then where, if that look has several places. */
export function Places(props: {
  readonly views: readonly ViewChoice[];
  readonly viewKey: string;
  readonly onView: (key: string) => void;
}) {
  const { views, viewKey, onView } = props;
  const look = views.find(({ value }) => value === viewKey)?.look ?? null;
  const firsts = views.filter(
    (each, index) => views.findIndex((other) => other.look === each.look) === index,
  );
  const places = views.filter((each) => each.look === look);
  const choose = (wanted: string) => {
    const first = firsts.find((each) => each.look === wanted);
    if (first) onView(first.value);
  };
  return (
    <>
      <div className={styles.looks}>
        <ChoiceBar
          legend="Look"
          options={firsts.map((each) => ({ value: each.look, label: each.look }))}
          value={look}
          onChoose={choose}
        />
      </div>
      {places.length > 1 && <ChoiceBar legend="At" options={places} value={viewKey} onChoose={onView} />}
    </>
  );
}

/** What can be set in the look chosen. */
export function Controls(props: {
  readonly wall: Wall;
  readonly viewKey: string;
  readonly settings: ViewSettings;
  readonly system: LengthSystem;
}) {
  const { wall, viewKey, settings, system } = props;
  const { view } = settings;
  if (viewKey === 'afar') {
    return <DistanceControl distance={settings.distance} system={system} onChange={settings.stand} />;
  }
  if (viewKey === 'side-light') return <SunControl sun={settings.sun} onChange={settings.shine} />;
  const panel = 'panel' in view && wall.panels.find(({ id }) => id === view.panel);
  if (!panel) return null;
  const move = (to: number) => settings.move(panel.id, to);
  if (view.kind === 'side-section') {
    return <CutControl panel={panel} x={view.x} system={system} onChange={move} />;
  }
  if (view.kind !== 'above') return null;
  return <CourseControl panel={panel} course={view.course} onChange={move} />;
}
