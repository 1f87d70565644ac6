'use client';

import { type CSSProperties, type KeyboardEvent, useId, useMemo, useRef, useState } from 'react';
import type { Drawing } from '../../lib/drawing/shape';
import { svgBox } from '../../lib/drawing/svg-nodes';
import type { FindingDimension } from '../../lib/views/pointing/finding-dimension';
import { type GridPlace, gridPlaceOf, placeAfterKey } from '../../lib/views/pointing/keyboard-navigation';
import { type Target, targetAt, targetRows } from '../../lib/views/pointing/targets';
import type { View } from '../../lib/views/view';
import type { ViewingConditions } from '../../lib/views/viewing-conditions';
import { courseOf } from '../../lib/wall/part-id';
import { coreOf } from './core-of';
import { middleOf, sheetOf } from './gestures/seen-box';
import { isNear } from './gestures/tap';
import { useGestures } from './gestures/use-gestures';
import { useSeenBox } from './gestures/use-seen-box';
import { useTaps } from './gestures/use-taps';
import { LightOver } from './light-over';
import { useGridPlace } from './use-grid-place';
import { useShownPlace } from './use-shown-place';
import styles from './wall-drawing.module.css';
import type { WallDrawingProps } from './wall-drawing-props';
import { facesOf, GridHelp, WallGrid } from './wall-grid';
import { LiftedUnits, Measured, Ring, WallLabels, WallMarks } from './wall-overlays';
import { WallFills, WallPicture } from './wall-picture';
import { ZoomButtons } from './zoom-buttons';

const NONE: readonly FindingDimension[] = [];
const NOBODY: readonly string[] = [];

const STEP = 1.5;

/** A drawing of a wall with its marks, the grid of its parts for the keyboard, and zoom. */
export function DrawnWall(
  props: Omit<WallDrawingProps, 'view' | 'viewing'> & {
    readonly drawing: Drawing;
    readonly view: View;
    readonly viewing: ViewingConditions;
    /** Whether parts have measures to be told. */
    readonly tells: boolean;
  },
) {
  const { surveyed, drawing, view: shown, viewing, tells, marks, selected, layer, onPick } = props;
  const { system, label, dimensions = NONE, fills = false, note } = props;
  const { lifted = NOBODY, unitsAlone = false } = props;
  const { wall, parts } = surveyed;
  const prefix = `${useId()}-`;
  const svg = useRef<SVGSVGElement>(null);
  const { distance } = viewing;
  const rows = useMemo(
    () => targetRows(surveyed, shown, drawing, layer, system, tells ? distance : 'nothing'),
    [surveyed, shown, drawing, layer, system, distance, tells],
  );
  const faces = useMemo(
    () => (layer === 'units' ? facesOf(drawing, prefix) : null),
    [layer, drawing, prefix],
  );
  // From afar one sees the whole, and no nearer for having been near before.
  const isNearBy = distance === 'near';
  const isFilled = fills && isNearBy && (shown.kind === 'front' || shown.kind === 'before-cover');
  const core = useMemo(() => (isFilled ? coreOf(drawing, parts) : null), [isFilled, drawing, parts]);
  const seen = useSeenBox(isNearBy ? sheetOf(shown) : distance, drawing.box, core, svg);
  const gestures = useGestures(svg, seen);
  const [place, moveTo] = useGridPlace(rows, selected);
  const [focusSeen, setFocusSeen] = useState(false);
  // The cell that the focus was last sent to, or found at.
  const headed = useRef<string | null>(null);
  const active = rows[place.row]?.targets[place.index] ?? null;
  const selectedBox = useMemo(
    () => drawing.spots.find(({ part }) => part === selected) ?? null,
    [drawing, selected],
  );

  useShownPlace(onPick !== undefined, selectedBox, seen);

  const focusAt = (next: GridPlace): Target | undefined => {
    moveTo(next);
    const target = rows[next.row]?.targets[next.index];
    if (target) {
      headed.current = target.part;
      focusOn(svg.current, target);
    }
    return target;
  };
  const go = (next: GridPlace) => {
    const target = focusAt(next);
    if (target) seen.bring(target.box);
  };
  const taps = useTaps(
    svg,
    { wall, parts, unitsAlone, drawing, seen, gestures },
    onPick !== undefined,
    (picked, [x, y]) => {
      const { part, spot, aim } = picked;
      // The keyboard goes on from there, or from what it can reach next to it.
      const cell = targetAt(rows, x, y, Number.POSITIVE_INFINITY)?.part ?? '';
      const next = gridPlaceOf(rows, part) ?? gridPlaceOf(rows, cell);
      if (next) focusAt(next);
      if (spot.width <= seen.box.width && spot.height <= seen.box.height) seen.bring(spot);
      onPick?.(part, aim);
    },
  );
  const press = (event: KeyboardEvent) => {
    if (event.altKey) return;
    if (zoomKey(event.key)) {
      event.preventDefault();
      return;
    }
    if ((event.key === 'Enter' || event.key === ' ') && active) {
      event.preventDefault();
      onPick?.(event.shiftKey ? (courseOf(active.part) ?? active.part) : active.part, null);
      return;
    }
    const next = placeAfterKey(rows, place, event.key, event.ctrlKey || event.metaKey);
    if (next === null) return;
    event.preventDefault();
    go(next);
  };
  const focused = (cell: Element) => {
    setFocusSeen(cell.matches(':focus-visible'));
    // A screen reader may go to a cell by itself: Enter then means that one.
    const part = cell.getAttribute('data-part');
    const there = part === null || part === headed.current ? null : gridPlaceOf(rows, part);
    headed.current = part;
    if (there !== null) moveTo(there);
  };
  const middle = () => middleOf(active?.box ?? seen.box);
  function zoomKey(key: string): boolean {
    if (key === '+' || key === '=') seen.zoom(STEP, middle());
    else if (key === '-') seen.zoom(1 / STEP, middle());
    else if (key === '0') seen.showWhole();
    else return false;
    return true;
  }

  const whole = seen.isWhole;
  const { width, height } = drawing.box;
  const held = [whole ? '' : styles.zoomedIn, seen.isAllHigh ? '' : styles.held];
  const classes = [styles.window, ...held, onPick ? styles.pickable : ''].join(' ');
  return (
    <div className={styles.frame}>
      <GridHelp id={`${prefix}help`} />
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the grid inside has the roles; clicks are told apart by arithmetic. */}
      <div
        role="presentation"
        className={classes}
        onClick={taps.click}
        onKeyDown={press}
        onFocus={({ target }) => focused(target)}
        onBlur={() => setFocusSeen(false)}
        onPointerDown={gestures.onPointerDown}
        onPointerMove={gestures.onPointerMove}
        onPointerUp={gestures.onPointerUp}
        onPointerCancel={gestures.onPointerCancel}
      >
        <svg
          ref={svg}
          role="presentation"
          viewBox={svgBox(seen.drawn).join(' ')}
          preserveAspectRatio={isFilled && !seen.measured ? 'xMidYMid slice' : undefined}
          className={seen.shift === undefined ? styles.drawing : `${styles.drawing} ${styles.gliding}`}
          style={
            {
              aspectRatio: `${Math.round(width)} / ${Math.round(height)}`,
              '--sheet': width,
              transform: seen.shift,
            } as CSSProperties
          }
          data-measured={seen.measured}
        >
          <WallFills wall={wall} drawing={drawing} prefix={prefix} />
          <WallPicture drawing={drawing} prefix={prefix} part={faces ? 'under' : 'all'} />
          <WallGrid
            rows={rows}
            label={label}
            help={`${prefix}help`}
            active={active?.part ?? null}
            selected={selected}
            faces={faces}
          />
          {faces && <WallPicture drawing={drawing} prefix={prefix} part="over" />}
          <LightOver box={drawing.box} viewing={viewing} prefix={prefix} />
          <LiftedUnits drawing={drawing} lifted={lifted} />
          {selectedBox ? <Ring box={selectedBox} mmPerPx={seen.mmPerPx} kind="selected" /> : null}
          {focusSeen && active ? <Ring box={active.box} mmPerPx={seen.mmPerPx} kind="focus" /> : null}
          <WallMarks drawing={drawing} marks={marks} mmPerPx={seen.mmPerPx} prefix={prefix} />
          <WallLabels drawing={drawing} mmPerPx={seen.mmPerPx} prefix={prefix} />
          <Measured {...{ surveyed, drawing, dimensions, system, prefix }} mmPerPx={seen.mmPerPx} />
        </svg>
      </div>
      <ZoomButtons
        whole={whole}
        onNearer={() => seen.zoom(STEP, middleOf(seen.box))}
        onFurther={() => seen.zoom(1 / STEP, middleOf(seen.box))}
        onWhole={() => {
          taps.hush();
          seen.showWhole();
        }}
        onPan={(x, y) => seen.pan(x * seen.box.width, y * seen.box.height)}
        notice={taps.notice}
      />
      {note?.(isNear(wall.gauge, seen.mmPerPx))}
    </div>
  );
}

function focusOn(svg: SVGSVGElement | null, { part }: Target): void {
  svg?.querySelector<SVGElement>(`[data-part="${part}"]`)?.focus({ preventScroll: true });
}
