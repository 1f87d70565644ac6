'use client';

import { useCallback, useMemo, useState } from 'react';
import { useLengthSystem } from '../../../components/forms/length-choice';
import type { Step } from '../../../components/practice/lifted-bar';
import type { Mark } from '../../../components/practice/practice-state';
import { useKeptPractice } from '../../../components/practice/use-kept-practice';
import { parseCode } from '../../../lib/generate/wall-code';
import { drawnMarks, drawnResult } from '../drawn-marks';
import { openWall } from '../open-wall';
import { viewKeyFor } from '../view-choices';
import { useFocusMoves } from './use-focus-moves';
import { useLifting } from './use-lifting';
import { useResult } from './use-result';
import { useSecondPart } from './use-second-part';

/** Everything a practice page knows and can do: the wall of a code, the work on it, what is looked at, and each step of the reader. */
export function usePractice(code: string) {
  const brief = useMemo(() => parseCode(code), [code]);
  const open = useMemo(() => openWall(brief), [brief]);
  const { wall, parts, nameOf } = open;
  const isPart = useCallback((id: string) => parts.has(id), [parts]);
  const [work, dispatch, ready] = useKeptPractice(code, isPart);
  const system = useLengthSystem(brief.rules === 'united-states' ? 'inches' : 'mm');
  const [picked, setPicked] = useState<string | null>(null);
  const [changing, setChanging] = useState<number | null>(null);
  const [viewKey, setViewKey] = useState('front');
  const lifting = useLifting(open);
  const [ticketsOpen, setTicketsOpen] = useState(brief.topic === 'mortar');
  const [shown, setShown] = useState<number | null>(null);
  const [said, setSaid] = useState('');
  const focus = useFocusMoves();
  const second = useSecondPart();
  // Until the catalogue is here its own short names will do.
  const faultName = second.part?.faultName ?? ((fault: string) => fault.replaceAll('-', ' '));
  const result = useResult(work, open, brief.rules, second.part);
  const rows = result?.rows ?? null;
  const isLooking = work.phase === 'looking';

  const take = (part: string | null, change: number | null = null) => {
    setPicked(part);
    setChanging(change);
    if (part !== null && parts.get(part)?.kind === 'unit') {
      if (viewKey === 'behind') lifting.lift(part);
      else lifting.aim(part);
    }
  };
  const pick = (part: string) => {
    take(part);
    focus.toCard();
  };
  const close = () => {
    take(null);
    focus.backToWall();
  };
  const view = (key: string) => {
    setViewKey(key);
    if (key === 'behind') lift(lifting.lifted);
  };
  // No card opens by itself: on a phone it would lie over the back that is to be seen.
  const lift = (unit: string) => {
    lifting.lift(unit);
    take(null);
  };
  const liftHere = () => {
    view('behind');
    focus.to('stage');
  };
  const step = (to: Step) => {
    lifting.step(to);
    take(null);
  };
  const mark = (made: Mark) => {
    dispatch(
      changing === null ? { kind: 'mark', mark: made } : { kind: 'change', index: changing, mark: made },
    );
    setSaid(`Mark ${(changing ?? work.marks.length) + 1}: ${faultName(made.fault)}, ${nameOf(made.part)}.`);
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
    setChanging(null);
    setSaid(`Mark ${index + 1} removed.`);
    focus.to(isLooking ? 'marks' : 'review');
  };
  const undo = () => {
    dispatch({ kind: 'undo' });
    setChanging(null);
    setSaid('The last step is undone.');
    // The button goes when there is nothing left to undo.
    if (work.past.length === 1) focus.to('marks');
  };
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
    if (key === 'tickets') setTicketsOpen(true);
    else view(key);
    focus.to(key === 'tickets' ? 'tickets' : 'stage');
  };
  const handIn = () => {
    dispatch({ kind: 'hand in' });
    setSaid('Handed in.');
    focus.to('result');
  };
  const show = (number: number) => {
    const row = rows?.findings.find((each) => each.number === number);
    const part =
      row?.finding.parts[0] ?? rows?.falseMarks.find((each) => each.number === number)?.part ?? null;
    setShown(number);
    take(part);
    if (part !== null && parts.get(part)?.kind === 'batch') setTicketsOpen(true);
    const key = row ? viewKeyFor(row.finding, wall) : 'front';
    setViewKey(key);
    if (key === 'behind' && part !== null) lifting.lift(part);
    setSaid(`Number ${number} is shown on the wall.`);
    focus.scrollToWall();
  };
  const startAgain = () => {
    dispatch({ kind: 'start again' });
    lifting.forget();
    take(null);
    setShown(null);
    setViewKey('front');
    setSaid('The wall is laid again. Your marks are gone.');
    focus.to('stage');
  };

  return {
    ...{
      brief,
      open,
      work,
      ready,
      system,
      picked,
      changing,
      viewKey,
      lifting,
      ticketsOpen,
      shown,
      said,
      result,
    },
    room: focus.room,
    second,
    isLooking,
    drawn: rows ? drawnResult(rows, parts) : drawnMarks(work.marks, parts),
    named: work.marks.map((each) => ({
      mark: each,
      faultName: faultName(each.fault),
      partName: nameOf(each.part),
    })),
    ...{
      pick,
      close,
      view,
      step,
      lift,
      liftHere,
      mark,
      change,
      remove,
      undo,
      saySound,
      review,
      look,
      handIn,
      show,
      startAgain,
    },
    openTickets: setTicketsOpen,
  };
}
