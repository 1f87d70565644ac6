import { formatLength, type LengthSystem } from '../../lib/units';
import { finestSeen, SUN_REACH } from '../../lib/views/viewing-conditions';
import type { Panel } from '../../lib/wall/model';
import { type Choice, ChoiceBar } from '../ui/choice-bar';
import { Stepper } from './stepper';
import styles from './view-controls.module.css';

export type Afar = 'six metres' | 'ten metres';

const DISTANCES: readonly Choice<Afar>[] = [
  { value: 'six metres', label: '6 m' },
  { value: 'ten metres', label: '10 m' },
];
const SUN_STEP = 10;
/** A cut is moved by this much, mm. */
const CUT_STEP = 25;

/** How far off one stands, and what the eye tells apart from there. */
export function DistanceControl(props: {
  readonly distance: Afar;
  readonly system: LengthSystem;
  readonly onChange: (distance: Afar) => void;
}) {
  const { distance, system, onChange } = props;
  return (
    <div className={`stack tight ${styles.controls}`}>
      <ChoiceBar legend="Stand off" options={DISTANCES} value={distance} onChoose={onChange} />
      <p>From here a good eye tells apart lines {formatLength(finestSeen(distance), system)} apart.</p>
    </div>
  );
}

/** Where the sun stands: from far left to far right. */
export function SunControl(props: { readonly sun: number; readonly onChange: (sun: number) => void }) {
  const { sun, onChange } = props;
  return (
    <div className={`stack tight ${styles.controls}`}>
      <Stepper
        label="Sun"
        value={sun}
        least={-SUN_REACH}
        most={SUN_REACH}
        step={SUN_STEP}
        text={sunText(sun)}
        less="Sun further left"
        more="Sun further right"
        onChange={onChange}
      />
      <p>Low side light finds faces that stand out. It makes them look worse than they are: measure.</p>
    </div>
  );
}

function sunText(sun: number): string {
  if (sun === 0) return 'straight in front';
  return `${Math.abs(sun)}° to the ${sun < 0 ? 'left' : 'right'}`;
}

/** Where the wall is cut through. */
export function CutControl(props: {
  readonly panel: Panel;
  readonly x: number;
  readonly system: LengthSystem;
  readonly onChange: (x: number) => void;
}) {
  const { panel, x, system, onChange } = props;
  return (
    <div className={`stack tight ${styles.controls}`}>
      <Stepper
        label="Cut at"
        value={x}
        least={CUT_STEP}
        most={Math.floor(panel.length / CUT_STEP) * CUT_STEP}
        step={CUT_STEP}
        text={`${formatLength(Math.round(x), system)} from the left`}
        less="Cut further left"
        more="Cut further right"
        onChange={onChange}
      />
    </div>
  );
}

/** Which course is looked down on. */
export function CourseControl(props: {
  readonly panel: Panel;
  readonly course: number;
  readonly onChange: (course: number) => void;
}) {
  const { panel, course, onChange } = props;
  return (
    <div className={`stack tight ${styles.controls}`}>
      <Stepper
        label="Course"
        value={course}
        least={1}
        most={panel.courses}
        step={1}
        text={`course ${course} of ${panel.courses}`}
        less="A course lower"
        more="A course higher"
        onChange={onChange}
      />
    </div>
  );
}
