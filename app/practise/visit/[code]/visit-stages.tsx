'use client';

import { useEffect, useMemo, useRef } from 'react';
import { LengthChoice, useLengthSystem } from '../../../../components/forms/length-choice';
import { Caution } from '../../../../components/ui/caution';
import { LetGo } from '../../../../components/visit/let-go';
import { SayCause } from '../../../../components/visit/say-cause';
import { SayNext } from '../../../../components/visit/say-next';
import { SayToday } from '../../../../components/visit/say-today';
import { StreetActs } from '../../../../components/visit/street-acts';
import { UnitPanel } from '../../../../components/visit/unit-panel';
import styles from '../../../../components/visit/visit.module.css';
import { VisitMarks } from '../../../../components/visit/visit-marks';
import { VisitReport } from '../../../../components/visit/visit-report';
import { VisitResultView } from '../../../../components/visit/visit-result';
import { DrawnWall } from '../../../../components/wall/drawn-wall';
import type { DrawnMark } from '../../../../components/wall/wall-drawing-props';
import { COULD_FALL_CAUTIONS } from '../../../../lib/inspect/make-safe';
import { failingView } from '../../../../lib/views/failing/failing-view';
import { withLoads } from '../../../../lib/views/failing/load-arrows';
import { UP_CLOSE } from '../../../../lib/views/viewing-conditions';
import type { OpenVisit } from '../../../../lib/visit/open-visit';
import { namesOf } from '../../../../lib/wall/part-names';
import { useLetGo } from './use-let-go';
import { useVisit } from './use-visit';

const FROM_STREET = { distance: 'ten metres', sun: null } as const;

/** A visit in the order of a real one: from the street, at the face, what one says, and what it comes to. */
export function VisitStages(props: {
  readonly visit: OpenVisit;
  readonly code: string;
  /** Address of the next visit. */
  readonly next: string;
}) {
  const { visit, code, next } = props;
  const work = useVisit(visit);
  const { stage, picked, marks, result } = work;
  const { failing, laid, causes } = visit;
  const system = useLengthSystem('mm');
  const viewing = stage === 'street' ? FROM_STREET : UP_CLOSE;
  const going = useLetGo(visit, stage === 'said');
  const drawing = useMemo(() => {
    if (going === null) return failingView(failing, system, viewing);
    const drawn = failingView(going.failing, system);
    return going.next === null ? drawn : withLoads(drawn, going.failing, going.next.part);
  }, [failing, going, system, viewing]);
  const nameOf = useMemo(() => namesOf(laid), [laid]);
  const room = useRef<HTMLDivElement>(null);

  useEffect(() => {
    if (stage !== 'street') room.current?.querySelector<HTMLElement>('[data-stage-heading]')?.focus();
  }, [stage]);

  const drawn = useMemo(
    () =>
      marks.flatMap(({ part }, index): readonly DrawnMark[] => {
        const at = laid.parts.get(part);
        if (at === undefined) return [];
        const { panel, x, y, width, height } = at;
        return [{ part, number: index + 1, state: 'mark', panel, x, y, width, height }];
      }),
    [marks, laid],
  );
  const said = causes.find(({ cause }) => cause === work.cause?.cause);
  const signs = said ? [...said.needs, ...said.fits, ...said.bars].map(({ sign }) => sign).sort() : [];
  return (
    <>
      <div ref={room} className={styles.room} data-visit={stage}>
        <section aria-label="The wall" className={styles.wall}>
          <DrawnWall
            surveyed={laid}
            drawing={drawing}
            view={{ kind: 'front' }}
            viewing={viewing}
            tells={false}
            marks={stage === 'street' ? [] : drawn}
            selected={stage === 'face' ? picked : (going?.next?.part ?? null)}
            layer="units"
            unitsAlone
            fills
            system={system}
            label="The wall"
            {...(stage === 'face' ? { onPick: work.pick } : {})}
          />
          <LengthChoice system={system} />
        </section>
        <div className="stack">
          {stage === 'street' && (
            <section aria-labelledby="street-heading" className="stack">
              <h2 id="street-heading">From the street</h2>
              <p>
                You stand across the street. Nobody has closed anything yet. What do you do first, second,
                third? Press in that order; leave out what you would not do.
              </p>
              <StreetActs done={work.street} onDone={work.setStreet} />
              <p>
                <button
                  type="button"
                  className="button"
                  disabled={work.street.length === 0}
                  onClick={() => work.goTo('face')}
                >
                  Do it, in this order
                </button>
              </p>
            </section>
          )}
          {stage === 'face' && (
            <section aria-labelledby="face-heading" className="stack">
              <h2 id="face-heading" tabIndex={-1} data-stage-heading>
                The face of the wall
              </h2>
              <p>Come nearer, pick units, and mark what is wrong. One mark finds a whole crack or patch.</p>
              {picked !== null && work.reading !== null && (
                <UnitPanel
                  part={picked}
                  name={nameOf(picked)}
                  reading={work.reading}
                  system={system}
                  marked={marks.filter(({ part }) => part === picked).map(({ condition }) => condition)}
                  touch={work.touchOf(picked)}
                  onMark={work.mark}
                  onTouch={work.touch}
                />
              )}
              <VisitMarks marks={marks} nameOf={nameOf} />
              <SayNext
                said={work.saidNext}
                name={work.next && nameOf(work.next)}
                picked={picked && nameOf(picked)}
                onSay={work.sayNext}
                onTake={work.takeNext}
              />
              <SayCause
                answer={work.cause}
                causes={causes.map(({ cause }) => cause)}
                signs={signs}
                onSay={work.sayCause}
              />
              <SayToday done={work.today} onDone={work.setToday} />
              {work.lacking !== null && <p>{work.lacking}</p>}
              <p>
                <button
                  type="button"
                  className="button"
                  disabled={work.lacking !== null}
                  onClick={() => work.goTo('said')}
                >
                  That is what I say
                </button>
              </p>
            </section>
          )}
          {result !== null && <VisitResultView {...{ result, visit, nameOf, system, code }} />}
          {going !== null && <LetGo {...going} {...{ system, nameOf }} />}
          {result !== null && (
            <p className="row">
              <a className="button" href={next}>
                Another visit
              </a>
            </p>
          )}
          <Caution word="Danger, on a real wall" lines={COULD_FALL_CAUTIONS} toSafety />
        </div>
      </div>
      {result !== null && <VisitReport measured={visit} {...{ code, nameOf, system }} />}
    </>
  );
}
