'use client';

import { useEffect, useId, useState } from 'react';
import { type Corners, cornersOf } from '../../lib/photo/homography';
import type { Joints } from '../../lib/photo/joint';
import type { Known } from '../../lib/photo/measure';
import { PhotoError } from '../../lib/photo/photo-error';
import { QUANTITY_WORDS } from '../../lib/photo/words';
import { LengthChoice } from '../forms/length-choice';
import { chooseRules, useLengthsHere, useOneRuleSet } from '../forms/rules-in-use';
import { PlaceChoice } from '../household/place-choice';
import { CORNER_NAMES, cornersWithin } from './corners';
import { JointLines } from './joint-lines';
import { MeasuredList } from './measured-list';
import { OneThingMore } from './one-thing-more';
import { openPhotograph, type Photograph } from './open-photograph';
import { PointPicker } from './point-picker';
import { NO_SIZES, referenceOf, SizeFields, type Sizes, unitOf } from './size-fields';
import { useMeasuring } from './use-measuring';

/** How far from the edge of the picture the corners begin, as a share of it. */
const IN = 0.12;
/** A mark beside a level of a metre, mm per m (judged). */
const LEVEL_SD = 0.75;

/** A photograph is chosen, four corners are set, their size is told; the joints are found, shown and measured. All of it on the device. */
export function MeasurePhotograph() {
  const [photograph, setPhotograph] = useState<Photograph | null>(null);
  const [corners, setCorners] = useState<Corners | null>(null);
  const [sizes, setSizes] = useState<Sizes>(NO_SIZES);
  const [problem, setProblem] = useState<string | null>(null);
  const { outcome, find, measure } = useMeasuring(photograph?.picture ?? null);
  const rules = useOneRuleSet();
  const system = useLengthsHere();
  const id = useId();

  useEffect(() => () => (photograph ? URL.revokeObjectURL(photograph.url) : undefined), [photograph]);

  const unit = unitOf(sizes, system);
  const known: Known = { rules, ...(unit && { unit }), ...(sizes.isLevelled && { level: LEVEL_SD }) };

  async function choose(file: File | undefined): Promise<void> {
    if (file === undefined) return;
    setProblem(null);
    try {
      const opened = await openPhotograph(file);
      const { width, height } = opened.picture;
      setPhotograph(opened);
      setCorners(cornersWithin(width, height, IN));
    } catch {
      setPhotograph(null);
      setProblem('This file cannot be read as a picture. Choose a JPEG or a PNG.');
    }
  }

  function findIn(four: Corners): void {
    setProblem(null);
    try {
      const reference = referenceOf(sizes, system, cornersOf(four));
      if (reference === undefined) setProblem('Fill in the size first, in step 3.');
      else find(reference, known);
    } catch (error) {
      if (!(error instanceof PhotoError)) throw error;
      setProblem(sentence(error.message));
    }
  }

  const measured =
    outcome.state === 'measured' ? outcome.measured : outcome.state === 'busy' ? outcome.before : null;
  return (
    <>
      <h2>1. The photograph</h2>
      <p>
        <label htmlFor={`${id}-file`}>Choose or take a photograph</label>
        <br />
        <input
          id={`${id}-file`}
          type="file"
          accept="image/jpeg,image/png,image/*"
          onChange={({ target }) => void choose(target.files?.[0])}
        />
      </p>
      <p className="fine">
        It stays on this device. Nothing is sent, and nothing is kept when you leave the page.
      </p>
      {photograph && corners && (
        <>
          <h2>2. Four corners of a rectangle on the wall</h2>
          <PointPicker
            photograph={photograph}
            names={CORNER_NAMES}
            noun="corner"
            spots={corners}
            onMove={(spots) => setCorners(spots as unknown as Corners)}
          />
          <h2>3. How large it is</h2>
          <LengthChoice system={system} />
          <SizeFields {...{ sizes, system }} onChange={setSizes} />
          <PlaceChoice rules={rules} onChoose={chooseRules} />
          <p>
            <button type="button" className="button" onClick={() => findIn(corners)}>
              Find the joints
            </button>
          </p>
        </>
      )}
      <div role="status">
        {outcome.state === 'busy' && <p>Measuring …</p>}
        {problem !== null && <p className="problem">{problem}</p>}
        {outcome.state === 'refused' && <p className="problem">{sentence(outcome.problem)}</p>}
      </div>
      {photograph && measured && (
        <>
          <h2>4. Do the lines lie on the joints?</h2>
          <p>
            Go through them. Only joints that you can see count: move a line that lies beside its joint, and
            take out one that lies on none.
          </p>
          <JointLines
            photograph={photograph}
            reference={measured.reference}
            joints={measured.joints}
            onChange={(joints: Joints) => measure(measured.reference, joints, known)}
          />
          <h2>5. What the photograph says</h2>
          <p>Joints are told as they look at the face. “Give or take” covers 95 of 100 such photographs.</p>
          <MeasuredList
            measures={measured.quantities.map((each) => ({ ...each, what: QUANTITY_WORDS[each.name] }))}
            system={system}
          />
          <OneThingMore {...{ photograph, known, system }} reference={measured.reference} />
        </>
      )}
    </>
  );
}

function sentence(message: string): string {
  return `${message.charAt(0).toUpperCase()}${message.slice(1)}.`;
}
