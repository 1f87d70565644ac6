'use client';

import { useMemo } from 'react';
import { InstrumentTray } from '../../../components/instruments/instrument-tray';
import { leftWords } from '../../../components/wall-page/lifted-back';
import { MarkForm } from '../../../components/wall-page/marking/mark-form';
import { PartCard } from '../../../components/wall-page/part-card';
import type { HalfMade, Mark, Work } from '../../../components/wall-page/work-state';
import { findFaults } from '../../../lib/inspect/find-fault';
import { readAt } from '../../../lib/instruments/read';
import type { Reading } from '../../../lib/instruments/reading';
import { MOST_MARKS, MOST_NAMES_A_PART } from '../../../lib/marking/mark';
import type { LengthSystem } from '../../../lib/units';
import type { Aim } from '../../../lib/views/pointing/pick';
import { isOfKind } from '../../../lib/wall/part-id';
import { FAULT_CHOICES } from '../../../lib/wall-page/fault-choices';
import { pickedPart } from '../../../lib/wall-page/nearby-parts';
import type { OpenWall } from '../../../lib/wall-page/open-wall';
import type { SiteAnswers } from './site-answers';

/** The card of the part picked: what instruments read there, and the form that marks it or changes a mark on it. */
export function PickedCard(props: {
  readonly open: OpenWall;
  /** Where the site answers the instruments. */
  readonly site: SiteAnswers | undefined;
  readonly work: Work;
  readonly part: string;
  readonly aim: Aim | null;
  /** The mark that is changed, by its place in the list; null for a new one. */
  readonly changing: number | null;
  readonly system: LengthSystem;
  /** Name of the rule set in use. */
  readonly rules: string;
  readonly lifting: { readonly left: number; readonly most: number };
  readonly viewKey: string;
  readonly measuring: boolean;
  readonly attached: { readonly reading: Reading } | null;
  readonly onPick: (part: string) => void;
  readonly onClose: () => void;
  readonly onLift: (unit: string) => void;
  readonly onMeasure: (open: boolean) => void;
  readonly onNote: (reading: Reading) => void;
  readonly onFill: (half: HalfMade) => void;
  readonly onMark: (mark: Mark) => void;
}) {
  const { open, work, part: id, aim, changing, system } = props;
  const picked = useMemo(() => pickedPart(open, id, aim), [open, id, aim]);
  const part = open.parts.get(id);
  if (!picked || !part) return null;
  const lifted = work.opened.includes(id);
  const { half } = work;
  return (
    <PartCard
      picked={picked}
      title={changing === null ? undefined : `Change mark ${changing + 1}:`}
      tools={
        <>
          {picked.kind === 'unit' && !(lifted && props.viewKey === 'behind') && (
            <Lift lifting={props.lifting} lifted={lifted} onLift={() => props.onLift(id)} />
          )}
          <details open={props.measuring} onToggle={(event) => props.onMeasure(event.currentTarget.open)}>
            <summary>Measure here</summary>
            <InstrumentTray
              part={id}
              partKind={picked.kind}
              partName={picked.name}
              read={
                props.site?.readings(lifted) ??
                ((instrument, { turned, from }) =>
                  readAt(open, instrument, part, {
                    turned,
                    lifted,
                    from: from === null ? null : (open.parts.get(from) ?? null),
                  }))
              }
              notebook={work.readings}
              onNote={props.onNote}
              system={system}
            />
          </details>
        </>
      }
      onPick={props.onPick}
      onClose={props.onClose}
    >
      <MarkForm
        key={`${id} ${changing ?? 'new'}`}
        picked={picked}
        faults={FAULT_CHOICES}
        find={findFaults}
        before={changing === null ? undefined : work.marks[changing]}
        kept={half?.part === id && half.changing === changing ? half : null}
        system={system}
        rules={props.rules}
        notebook={work.readings}
        attached={props.attached}
        onFill={(filled) => props.onFill({ ...filled, part: id, changing })}
        onMark={(mark) => {
          const others = work.marks.filter((_, index) => index !== changing);
          const objection = objectionTo(mark, others);
          if (objection === null) props.onMark(mark);
          return objection;
        }}
      />
    </PartCard>
  );
}

function Lift(props: {
  readonly lifting: { readonly left: number; readonly most: number };
  readonly lifted: boolean;
  readonly onLift: () => void;
}) {
  const { lifting, lifted, onLift } = props;
  const words = leftWords(lifting.left, lifting.most);
  if (!lifted && lifting.left === 0) return <p>{words}</p>;
  return (
    <p>
      <button type="button" onClick={onLift}>
        {lifted ? 'Look behind it again' : 'Lift it and look behind'}
      </button>{' '}
      {!lifted && words}
    </p>
  );
}

/** Why a mark cannot be taken, in a sentence; null when it can. The same rules as at hand-in, told in time. */
function objectionTo(mark: Mark, others: readonly Mark[]): string | null {
  const here = others.filter(({ part }) => part === mark.part);
  if (here.some(({ fault }) => fault === mark.fault)) return 'You have marked this fault here already.';
  if (!isOfKind(mark.part, 'panel') && new Set(here.map(({ fault }) => fault)).size >= MOST_NAMES_A_PART) {
    return 'This part has two marks already. Change or remove one of them first.';
  }
  return others.length >= MOST_MARKS
    ? `A wall takes ${MOST_MARKS} marks at most, and you have made them all. Your marks are kept. Remove one to make another.`
    : null;
}
