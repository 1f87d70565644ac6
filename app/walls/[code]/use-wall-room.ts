'use client';

import { startTransition, useCallback, useMemo, useState } from 'react';
import { useLengthSystem } from '../../../components/forms/length-choice';
import { knowWalls, useFirstWall } from '../../../components/wall-page/first-wall-hints';
import { leftWords } from '../../../components/wall-page/lifted-back';
import { useKeptWork } from '../../../components/wall-page/use-kept-work';
import { useTimeSpent } from '../../../components/wall-page/use-time-spent';
import type { HalfMade, Mark } from '../../../components/wall-page/work-state';
import type { Reading } from '../../../lib/instruments/reading';
import type { Aim } from '../../../lib/views/pointing/pick';
import { openingsUpOf, openWallOf } from '../../../lib/wall-page/open-wall';
import { viewKeyFor } from '../../../lib/wall-page/view-choices';
import type { WallToRead } from '../../../lib/wall-page/wall-to-read';
import { drawnMarks, drawnResult, measuredAt } from '../drawn-marks';
import { useFirstInteraction } from '../use-first-interaction';
import { loadViews } from '../use-later-views';
import { useLazy } from '../use-lazy';
import type { SetWork } from './set-work';
import { useFocusMoves } from './use-focus-moves';
import { useLifting } from './use-lifting';
import { useRecordedWall } from './use-recorded-wall';

// What the page fetches once it stands, each when it is wanted.
const loadTools = () => import('./tools').then(({ TOOLS }) => TOOLS);
const loadGrading = () => import('./graded-work').then(({ gradedWork }) => gradedWork);
const loadResultView = () =>
  import('../../../components/result/result-view').then(({ ResultView }) => ResultView);

/** Fetches all that reading a wall of set work needs of the page; what draws the views only where the walls are drawn here. */
export async function fetchForReading(offline: boolean): Promise<void> {
  await Promise.all([loadTools(), ...(offline ? [loadViews()] : [])]);
}

/** Everything the wall page knows and can do: the wall, the work on it, the view, and each step of the reader. */
export function useWallRoom(laid: WallToRead, setWork: SetWork | null) {
  const open = useMemo(() => openWallOf(laid.wall), [laid.wall]);
  const { wall, parts, nameOf } = open;
  const isPart = useCallback((id: string) => parts.has(id), [parts]);
  const keptAs = setWork?.keptAs ?? laid.code;
  const [work, dispatch, ready] = useKeptWork(keptAs, isPart);
  const timeSpent = useTimeSpent(keptAs);
  const system = useLengthSystem(laid.rules === 'united-states' ? 'inches' : 'mm');
  const isLooking = work.phase === 'looking';
  const { picked, aim, changing, select } = useSelection(isLooking ? work.half : null);
  const [viewKey, setViewKey] = useState('front');
  const lifting = useLifting(open, work.opened, setWork?.openingsUp ?? openingsUpOf(wall));
  const [shown, setShown] = useState<number | null>(null);
  const [announcement, announce] = useState('');
  const [measuring, measure] = useState(false);
  const [attached, setAttached] = useState<{ readonly reading: Reading } | null>(null);
  const focus = useFocusMoves();
  const isBegun = !isLooking || work.marks.length > 0 || work.readings.length > 0 || picked !== null;
  const tools = useLazy(loadTools, useFirstInteraction() || isBegun);
  const grading = useLazy(loadGrading, !setWork && !isLooking);
  const resultView = useLazy(loadResultView, !isLooking);
  // Until the catalogue is here its own short names will do.
  const faultName = tools.loaded?.faultName ?? ((fault: string) => fault.replaceAll('-', ' '));
  const { phase, marks } = work;
  const gradedWork = grading.loaded;
  const graded = useMemo(
    () => (phase === 'handed in' && gradedWork ? gradedWork(open, laid.rules, marks) : null),
    [phase, marks, open, laid.rules, gradedWork],
  );
  const recorded = useRecordedWall(laid, marks, graded?.met ?? null);
  const rows = setWork ? (work.phase === 'handed in' ? setWork.rows : null) : (graded?.rows ?? null);

  const take = (part: string | null, change: number | null = null, at: Aim | null = null) => {
    select({ part, aim: at, changing: change });
    setAttached(null);
    if (part !== null && parts.get(part)?.kind === 'unit') lifting.aim(part);
  };
  const pick = (part: string, at: Aim | null = null) => {
    take(part, null, at);
    focus.toCard();
  };
  // Typing comes first: saving what is typed can wait.
  const fillIn = (half: HalfMade | null) => startTransition(() => dispatch({ kind: 'fill in', half }));
  const close = () => {
    fillIn(null);
    take(null);
    focus.backToWall();
  };
  const lift = (unit: string) => {
    // No card opens by itself: on a phone it would cover the back of the unit.
    take(null);
    lifting.aim(unit);
    setViewKey('behind');
    if (work.opened.includes(unit)) return;
    dispatch({ kind: 'open up', unit, most: lifting.most });
    // In the view behind, what stands beside the wall tells it.
    if (viewKey !== 'behind') {
      announce(`Lifted: ${nameOf(unit)}. ${leftWords(lifting.left - 1, lifting.most)}`);
    }
  };
  const liftHere = (unit: string) => {
    lift(unit);
    focus.to('stage');
  };
  const mark = (made: Mark) => {
    dispatch(
      changing === null ? { kind: 'mark', mark: made } : { kind: 'change', index: changing, mark: made },
    );
    knowWalls();
    announce(`Mark ${(changing ?? work.marks.length) + 1}: ${faultName(made.fault)}, ${nameOf(made.part)}.`);
    close();
  };
  const change = (index: number) => {
    const before = work.marks[index];
    if (!before) return;
    dispatch({ kind: 'back to the wall' });
    take(before.part, index);
    focus.toCard();
  };
  const remove = (index: number) => {
    dispatch({ kind: 'remove', index });
    select({ part: picked, aim, changing: null });
    announce(`Mark ${index + 1} removed.`);
    focus.to(isLooking ? 'marks' : 'review');
  };
  const undo = () => {
    dispatch({ kind: 'undo' });
    select({ part: picked, aim, changing: null });
    announce('The last step is undone.');
    // The button goes when there is nothing left to undo.
    if (work.past.length === 1) focus.to('marks');
  };
  const note = (reading: Reading) => {
    dispatch({ kind: 'note', reading });
    announce('Noted.');
  };
  const attach = (reading: Reading) => setAttached({ reading });
  const forget = (index: number) => dispatch({ kind: 'forget', index });
  const saySound = () => {
    take(null);
    dispatch({ kind: 'say sound' });
    focus.to('review');
  };
  const review = () => {
    take(null);
    dispatch({ kind: 'look once more' });
    focus.to('review');
  };
  const look = (key: string) => {
    dispatch({ kind: 'back to the wall' });
    setViewKey(key);
    focus.to('stage');
  };
  const handIn = () => {
    knowWalls();
    dispatch({ kind: 'hand in' });
    const { saysSound, opened, readings } = work;
    const spentMs = timeSpent();
    if (setWork) setWork.onHandIn({ marks, saysSound, opened, readings, spentMs });
    else recorded.handedIn(spentMs);
    announce('Handed in.');
    focus.to('result');
  };
  const show = (number: number) => {
    const row = rows?.findings.find((each) => each.number === number);
    const part =
      row?.finding.parts[0] ?? rows?.falseMarks.find((each) => each.number === number)?.part ?? null;
    setShown(number);
    take(part);
    const isMixing = part !== null && parts.get(part)?.kind === 'batch';
    setViewKey(row ? viewKeyFor(row.finding, wall) : isMixing ? 'tickets' : 'front');
    announce(`Number ${number} is shown on the wall.`);
    focus.scrollToWall();
  };
  const startAgain = () => {
    dispatch({ kind: 'start again' });
    take(null);
    setShown(null);
    setViewKey('front');
    announce('The wall is laid again. Your marks are gone.');
    focus.to('stage');
  };

  const dimensions = useMemo(() => (rows ? measuredAt(rows, shown) : []), [rows, shown]);
  // Once the result is out, every unit may be looked behind.
  const seesBehind = lifting.isOpen || rows !== null;
  // On the first wall of all: come nearer, tap it, name it.
  const isFirst = useFirstWall() && ready && isLooking && viewKey === 'front';
  return {
    ...{ laid, open, work, ready, system, picked, aim, changing, viewKey, lifting, seesBehind },
    ...{ shown, announcement, rows, problem: graded?.problem ?? setWork?.problem ?? null },
    room: focus.room,
    ...{ tools, resultView, grading, isLooking },
    dimensions,
    drawn: rows ? drawnResult(rows, parts) : drawnMarks(work.marks, parts),
    named: work.marks.map((each) => ({
      mark: each,
      faultName: faultName(each.fault),
      partName: nameOf(each.part),
      details: tools.loaded?.detailsText(each, system) ?? '',
    })),
    ...{ pick, close, view: setViewKey, lift, liftHere, fillIn },
    ...{ mark, change, remove, undo, note, forget, attach },
    ...{ measuring, measure, attached },
    ...{ saySound, review, look, handIn, show, startAgain },
    hint: isFirst ? (picked === null ? (1 as const) : (3 as const)) : null,
  };
}

/** The part picked, the place pointed at on it, and the mark that is changed there, by its place in the list. */
interface Selection extends Pick<HalfMade, 'changing'> {
  readonly part: string | null;
  readonly aim: Aim | null;
}

const NOTHING: Selection = { part: null, aim: null, changing: null };

/** What the reader picked last. A page just opened goes on with a half-made mark, if there is one. */
function useSelection(half: HalfMade | null) {
  const [selection, select] = useState<Selection | null>(null);
  const { part, aim, changing } = selection ?? (half && { ...half, aim: null }) ?? NOTHING;
  return { picked: part, aim, changing, select };
}
