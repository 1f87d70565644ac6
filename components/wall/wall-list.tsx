'use client';

import { type KeyboardEvent, useId, useMemo, useState } from 'react';
import type { LengthSystem } from '../../lib/units';
import { unitMeasures } from '../../lib/views/pointing/part-measures';
import { type Layer, type TargetRow, targetRows } from '../../lib/views/pointing/targets';
import type { View } from '../../lib/views/view';
import { type Distance, UP_CLOSE } from '../../lib/views/viewing-conditions';
import type { SurveyedWall } from '../../lib/wall/surveyed';
import { AskedNotice } from '../asked/asked-notice';
import { useLook } from './looks/use-look';
import type { DrawnMark } from './wall-drawing-props';
import styles from './wall-list.module.css';

/** The same parts as the drawing of a view, row by row: each with what a rule laid on it reads, each a button. */
export function WallList(props: {
  readonly surveyed: SurveyedWall;
  readonly view: View;
  readonly marks: readonly DrawnMark[];
  readonly selected: string | null;
  readonly layer: Layer;
  readonly system: LengthSystem;
  readonly label: string;
  readonly distance: Distance;
  /** Left out after hand-in: then the list is read only. */
  readonly onPick: ((part: string) => void) | undefined;
}) {
  const { surveyed, view, marks, selected, layer, system, label, distance, onPick } = props;
  const { seen, tells, missing } = useLook(surveyed, view, system, UP_CLOSE);
  const rows = useMemo(
    () =>
      seen === null
        ? []
        : targetRows(surveyed, seen.view, seen.drawing, layer, system, tells ? distance : 'nothing'),
    [seen, surveyed, layer, system, distance, tells],
  );
  // Nobody lays a rule on a unit from six metres.
  const measures = useMemo(
    () => (tells && distance === 'near' ? unitMeasures(surveyed, system) : new Map<string, string>()),
    [tells, surveyed, system, distance],
  );
  const [kept, keep] = useState({ row: '', selected });
  const [reached, reach] = useState<string | null>(null);
  const id = useId();
  // The row last gone to, until something else is selected: then the row of that.
  const ofSelected = rows.findIndex(({ targets }) => targets.some(({ part }) => part === selected));
  const goneTo = rows.findIndex(({ key }) => key === kept.row);
  const at = Math.max(0, ofSelected >= 0 && (kept.selected !== selected || goneTo < 0) ? ofSelected : goneTo);
  const row = rows[at];
  const go = (key: string | undefined) => keep({ row: key ?? '', selected });
  if (missing) return <AskedNotice what="This look" failed={missing.failed} onAgain={missing.again} />;
  if (row === undefined) return <p>Nothing to list here.</p>;
  // One stop of the keyboard for the row, as for the wall as a drawing; arrows move along it.
  const places = row.targets.map(({ part }) => part);
  const stop = [reached, selected].find((part) => part !== null && places.includes(part)) ?? places[0];
  const travel = (event: KeyboardEvent<HTMLOListElement>) => {
    const next = nextOf(places, places.indexOf(stop ?? ''), event.key);
    if (next === undefined) return;
    event.preventDefault();
    event.currentTarget.querySelector<HTMLElement>(`[data-part="${next}"]`)?.focus();
  };
  return (
    <section className={`stack ${styles.list}`} aria-label={`${label}, as a list`}>
      <div className={`bar ${styles.rows}`}>
        <label htmlFor={id}>Row</label>
        <button
          type="button"
          aria-label="Row below"
          disabled={at === 0}
          onClick={() => go(rows[at - 1]?.key)}
        >
          −
        </button>
        <select id={id} value={row.key} onChange={(event) => go(event.target.value)}>
          {rows.map((each) => (
            <option key={each.key} value={each.key}>
              {rowTitle(each)}
            </option>
          ))}
        </select>
        <button
          type="button"
          aria-label="Row above"
          disabled={at === rows.length - 1}
          onClick={() => go(rows[at + 1]?.key)}
        >
          +
        </button>
      </div>
      {onPick && (
        <p id={`${id}-help`} className={styles.help}>
          Arrow keys move along the row, Enter picks.
        </p>
      )}
      <ol
        className={`stack tight ${styles.parts}`}
        onKeyDown={travel}
        aria-describedby={onPick ? `${id}-help` : undefined}
      >
        {row.targets.map(({ part, name }) => {
          const marked = marks.filter((mark) => mark.part === part).map(({ number }) => number);
          const text = [name, measures.get(part), marked.length > 0 ? `mark ${marked.join(', ')}` : null]
            .filter(Boolean)
            .join(' · ');
          return (
            <li key={part}>
              {onPick ? (
                <button
                  type="button"
                  data-part={part}
                  aria-pressed={part === selected}
                  tabIndex={part === stop ? 0 : -1}
                  onFocus={() => reach(part)}
                  onClick={() => onPick(part)}
                >
                  {text}
                </button>
              ) : (
                <p data-part={part} aria-current={part === selected}>
                  {text}
                </p>
              )}
            </li>
          );
        })}
      </ol>
    </section>
  );
}

/** Where a key leads along a row; undefined for a key that does not travel. */
function nextOf(places: readonly string[], at: number, key: string): string | undefined {
  if (key === 'ArrowRight' || key === 'ArrowDown') return places[Math.min(at + 1, places.length - 1)];
  if (key === 'ArrowLeft' || key === 'ArrowUp') return places[Math.max(at - 1, 0)];
  return key === 'Home' ? places[0] : key === 'End' ? places.at(-1) : undefined;
}

/** 'unit 3' -> 'Course 3: 12 units'. */
function rowTitle({ key, targets }: TargetRow): string {
  const [kind = '', course] = key.split(' ');
  const count = targets.length;
  const things = count === 1 ? NAMES[kind]?.[0] : NAMES[kind]?.[1];
  const what = `${count} ${things ?? kind}`;
  return course === undefined || kind === 'support' ? what : `Course ${course}: ${what}`;
}

const NAMES: Readonly<Record<string, readonly [one: string, many: string]>> = {
  unit: ['unit', 'units'],
  bed: ['bed joint', 'bed joints'],
  head: ['head joint', 'head joints'],
  tie: ['tie over it', 'ties over it'],
  support: ['support', 'supports'],
  opening: ['opening', 'openings'],
  edge: ['free end', 'free ends'],
  corner: ['corner', 'corners'],
  batch: ['mixing', 'mixings'],
};
