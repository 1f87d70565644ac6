'use client';

import { useMemo } from 'react';
import { leftWords } from '../../../components/practice/lifted-bar';
import { MarkForm } from '../../../components/practice/mark-form';
import { PartCard } from '../../../components/practice/part-card';
import type { PickedPart } from '../../../components/practice/part-facts';
import type { Mark } from '../../../components/practice/practice-state';
import { findFaults } from '../../../lib/inspect/find-fault';
import type { LengthSystem } from '../../../lib/units';
import { MOST_MARKS } from '../../grading';
import { FAULT_CHOICES } from '../fault-choices';
import { nearbyParts } from '../nearby-parts';
import type { OpenWall } from '../open-wall';
import { readingsOf } from '../part-readings';
import type { useLifting } from './use-lifting';

const MOST_NAMES_A_PART = 2;

/** The card of the part picked, with the form that marks it or changes a mark on it. */
export function PickedCard(props: {
  readonly open: OpenWall;
  readonly part: string;
  readonly lifting: ReturnType<typeof useLifting>;
  /** The view behind a unit is chosen. */
  readonly looksBehind: boolean;
  /** Index of the mark being changed. */
  readonly changing: number | null;
  readonly marks: readonly Mark[];
  readonly system: LengthSystem;
  readonly onPick: (part: string) => void;
  readonly onLift: () => void;
  readonly onClose: () => void;
  readonly onMark: (mark: Mark) => void;
}) {
  const { open, part: id, lifting, looksBehind, changing, marks, system } = props;
  const { onPick, onLift, onClose, onMark } = props;
  const lifted = lifting.isOpen && lifting.unit === id;
  const picked = useMemo(() => pickedPart(open, id, lifted), [open, id, lifted]);
  if (!picked) return null;
  return (
    <PartCard
      picked={picked}
      system={system}
      title={changing === null ? undefined : `Change mark ${changing + 1}:`}
      tools={picked.kind === 'unit' && !(lifted && looksBehind) && <Lift {...{ lifting, lifted, onLift }} />}
      onPick={onPick}
      onClose={onClose}
    >
      <MarkForm
        picked={picked}
        faults={FAULT_CHOICES}
        find={findFaults}
        before={changing === null ? undefined : marks[changing]}
        onMark={(mark) => {
          const others = marks.filter((_, index) => index !== changing);
          const objection = objectionTo(mark, others);
          if (objection === null) onMark(mark);
          return objection;
        }}
      />
    </PartCard>
  );
}

function Lift(props: {
  readonly lifting: ReturnType<typeof useLifting>;
  readonly lifted: boolean;
  readonly onLift: () => void;
}) {
  const { lifting, lifted, onLift } = props;
  const words = leftWords(lifting.left, lifting.most);
  if (!lifted && lifting.left === 0) return <p>{words}</p>;
  return (
    <>
      <button type="button" onClick={onLift}>
        {lifted ? 'Look behind it again' : 'Lift it and look behind'}
      </button>{' '}
      {!lifted && words}
    </>
  );
}

function pickedPart({ survey, parts, nameOf }: OpenWall, id: string, lifted: boolean): PickedPart | null {
  const part = parts.get(id);
  if (!part) return null;
  return {
    id,
    kind: part.kind,
    name: nameOf(id),
    readings: readingsOf(part, survey, lifted),
    nearby: nearbyParts(part, survey, parts).map((each) => ({
      id: each.id,
      kind: each.kind,
      name: nameOf(each.id),
    })),
  };
}

/** Why a mark cannot be taken, in a sentence; null when it can. The same rules as at hand-in, told in time. */
function objectionTo(mark: Mark, others: readonly Mark[]): string | null {
  const here = others.filter(({ part }) => part === mark.part);
  if (here.some(({ fault }) => fault === mark.fault)) return 'You have marked this fault here already.';
  const isPanel = /^[A-Z]$/.test(mark.part);
  if (!isPanel && new Set(here.map(({ fault }) => fault)).size >= MOST_NAMES_A_PART) {
    return 'This part has two marks already. Change or remove one of them first.';
  }
  return others.length >= MOST_MARKS
    ? `A wall takes ${MOST_MARKS} marks at most, and you have made them all. Your marks are kept. Remove one to make another.`
    : null;
}
