'use client';

import { useDeferredValue, useMemo, useState } from 'react';
import { BlemishField } from '../../../components/drills/build/blemish-choice';
import styles from '../../../components/drills/build/build.module.css';
import { BuildFound } from '../../../components/drills/build/build-found';
import { BuildSlider } from '../../../components/drills/build/build-slider';
import { LiftSteps } from '../../../components/drills/build/lift-steps';
import { LengthChoice, useLengthSystem } from '../../../components/forms/length-choice';
import { Caution } from '../../../components/ui/caution';
import { DrawContext } from '../../../components/wall/looks/draw-context';
import { useViewSettings } from '../../../components/wall/use-view-settings';
import { WallDrawing } from '../../../components/wall/wall-drawing';
import { Controls, Places } from '../../../components/wall-page/wall-stage';
import type { LaidBuild, ShownSlider } from '../../../lib/drills/build/laid-build';
import { viewOfSlider } from '../../../lib/drills/build/slider-view';
import { withBlemish } from '../../../lib/generate/adjustable/blemished-wall';
import type { Values } from '../../../lib/generate/adjustable/sliders';
import { COULD_FALL_CAUTIONS } from '../../../lib/inspect/make-safe';
import type { RuleSetId } from '../../../lib/limits/limit';
import type { Condition } from '../../../lib/wall/model';
import { surveyedWall } from '../../../lib/wall/surveyed';
import { openWallOf } from '../../../lib/wall-page/open-wall';
import { viewChoices } from '../../../lib/wall-page/view-choices';
import { LoadingNotice } from '../../walls/loading-notice';
import { useFirstInteraction } from '../../walls/use-first-interaction';
import { useLaterViews } from '../../walls/use-later-views';
import { useLazy } from '../../walls/use-lazy';
import { useStage } from '../use-stage';
import { useRecordedSpoils } from './use-recorded-spoils';

/** A wall to spoil, with sliders beside it and the verdict of each limit as they move. */
export function BuildPractice({ laid, rules }: { readonly laid: LaidBuild; readonly rules: RuleSetId }) {
  const { base, sliders, blemishes } = laid;
  const build = useBuild(laid, rules);
  const { wall, values, loading } = build;
  const { findings, verdicts } = build.measures;
  const open = useMemo(() => openWallOf(base), [base]);
  const stage = useStage(open);
  const views = useLaterViews(stage.view);
  const settings = useViewSettings(stage.viewKey, views.view);
  const system = useLengthSystem(rules === 'united-states' ? 'inches' : 'mm');
  const [ringed, setRinged] = useState(true);
  const [blemish, setBlemish] = useState<Condition>('sound');
  const drawn = useMemo(() => surveyedWall(withBlemish(wall, blemish)), [wall, blemish]);
  const shown = ringed ? findings.map(({ finding, number }) => ({ ...finding, number })) : [];
  const families = [...new Set(sliders.map(({ family }) => family))];
  const look = (slider: ShownSlider) => {
    const { view, unit } = viewOfSlider(slider, base);
    stage.choose(view);
    if (unit) stage.lift(unit);
  };
  const putBlemish = (condition: Condition) => {
    setBlemish(condition);
    // Only the face shows them.
    if (stage.view.kind !== 'front') stage.choose('front');
  };
  useRecordedSpoils(rules, findings);
  const reset = () => {
    build.reset();
    setBlemish('sound');
  };
  const couldFall =
    blemishes[system].some(
      ({ condition, tells }) => condition === blemish && tells.startsWith('could be loose'),
    ) || findings.some(({ finding }) => finding.hazard === 'could fall');
  return (
    <div className={styles.room}>
      <section aria-labelledby="built-heading">
        <h2 id="built-heading" className="visually-hidden">
          The wall
        </h2>
        <Places views={viewChoices(base)} viewKey={stage.viewKey} onView={stage.choose} />
        <Controls wall={wall} viewKey={stage.viewKey} settings={settings} system={system} />
        {views.loading ? (
          <LoadingNotice of={[views.loading]} />
        ) : (
          stage.viewKey === 'behind' && <LiftSteps name={stage.liftedName} onStep={stage.step} />
        )}
        <div className="bar">
          <label className="tick">
            <input type="checkbox" checked={ringed} onChange={(event) => setRinged(event.target.checked)} />
            Ring what is beyond a limit
          </label>
          <LengthChoice system={system} />
        </div>
      </section>
      <div className={styles.stage}>
        <DrawContext value={views.draw}>
          <WallDrawing
            surveyed={drawn}
            view={settings.view}
            viewing={settings.viewing}
            marks={shown.map((each) => ({
              ...each.region,
              part: each.parts[0] ?? each.region.panel,
              number: each.number,
              state: 'mark',
            }))}
            dimensions={shown}
            selected={null}
            layer="units"
            system={system}
            label="The wall you build"
          />
        </DrawContext>
      </div>
      <section aria-labelledby="sliders-heading" className={styles.sliders}>
        <h2 id="sliders-heading">Spoil it</h2>
        {loading ? <LoadingNotice of={[loading]} /> : <BuildFound findings={findings} system={system} />}
        {build.problem && !sliders.some(({ id }) => build.refusalOf(id)) && (
          <p role="alert" className={styles.refusal}>
            ⚠ {build.problem} The wall is shown as it last stood.
          </p>
        )}
        {families.map((family) => (
          <details key={family} className={styles.family} open={family === families[0]}>
            <summary>
              <h3>{family}</h3>
            </summary>
            <div className="stack">
              {sliders
                .filter((slider) => slider.family === family)
                .map((slider) => (
                  <BuildSlider
                    key={slider.id}
                    name={slider.name}
                    unit={slider.unit}
                    value={values[slider.id] ?? slider.fitted.sound}
                    least={slider.fitted.least ?? 0}
                    most={slider.fitted.most}
                    step={slider.fitted.step}
                    system={system}
                    verdicts={verdicts[slider.id] ?? []}
                    refusal={build.refusalOf(slider.id)}
                    compare={() => build.compare(slider.id)}
                    onChange={(value) => build.set(slider.id, value)}
                    onLook={() => look(slider)}
                  />
                ))}
            </div>
          </details>
        ))}
        <details className={styles.family}>
          <summary>
            <h3>Marks on the faces</h3>
          </summary>
          <BlemishField choices={blemishes[system]} value={blemish} onChange={putBlemish} />
        </details>
        <p>
          <button type="button" className="button button-plain" onClick={reset}>
            Make it all sound again
          </button>
        </p>
        {couldFall && <Caution word="Danger, on a real wall" lines={COULD_FALL_CAUTIONS} toSafety />}
      </section>
    </div>
  );
}

const ALL_SOUND: Values = {};

const loadAdjuster = () => import('../../../lib/drills/build/adjuster').then(({ adjusterOf }) => adjusterOf);

/** A wall laid true and what was done to it. The wall shown is the last one that stood. */
function useBuild({ base, measures: atFirst }: LaidBuild, rules: RuleSetId) {
  const [values, setValues] = useState(ALL_SOUND);
  /** The last values with which the wall stood. */
  const [lastStood, setLastStood] = useState(values);
  const fetched = useLazy(loadAdjuster, useFirstInteraction());
  const adjuster = useMemo(() => fetched.loaded?.(base, rules) ?? null, [fetched.loaded, base, rules]);
  const problem = useMemo(() => adjuster?.problemOf(values) ?? null, [adjuster, values]);
  if (adjuster && problem === null && lastStood !== values) setLastStood(values);
  const shown = useDeferredValue(lastStood);
  const wall = useMemo(() => adjuster?.spoil(shown) ?? base, [adjuster, shown, base]);
  const measures = useMemo(
    () => (adjuster && wall !== base ? adjuster.measure(wall) : atFirst),
    [adjuster, wall, base, atFirst],
  );
  return {
    wall,
    values,
    /** Why the wall does not stand with the values set, or null. */
    problem,
    measures,
    /** The adjuster, while a slider waits for it or after it failed to arrive. */
    loading: adjuster === null && (fetched.failed || values !== lastStood) ? fetched : null,
    compare: (slider: string) => adjuster?.compare(wall, slider) ?? null,
    refusalOf: (slider: string) => adjuster?.refusalOf(slider, values[slider]) ?? null,
    set: (slider: string, value: number) => setValues((old) => ({ ...old, [slider]: value })),
    reset: () => setValues(ALL_SOUND),
  };
}
