import type { UnitSize } from '../../lib/photo/bounds';
import type { Corners } from '../../lib/photo/homography';
import type { Reference } from '../../lib/photo/reference';
import type { LengthSystem } from '../../lib/units';
import { ChoiceBar } from '../ui/choice-bar';
import { LengthField, lengthOf } from './length-field';

const KINDS = [
  { value: 'rectangle', label: 'I measured it' },
  { value: 'counts', label: 'I counted bricks' },
] as const;

/** What the person typed of the rectangle and of the unit. */
export interface Sizes {
  readonly kind: (typeof KINDS)[number]['value'];
  readonly width: string;
  readonly height: string;
  readonly units: string;
  readonly courses: string;
  readonly unitLength: string;
  readonly unitHeight: string;
  readonly joint: string;
  readonly isLevelled: boolean;
}

export const NO_SIZES: Sizes = {
  kind: 'rectangle',
  width: '',
  height: '',
  units: '',
  courses: '',
  unitLength: '',
  unitHeight: '',
  joint: '',
  isLevelled: false,
};

/** How large the rectangle of the four corners is, and how large a unit. */
export function SizeFields(props: {
  readonly sizes: Sizes;
  readonly system: LengthSystem;
  readonly onChange: (sizes: Sizes) => void;
}) {
  const { sizes, system, onChange } = props;
  const field = (name: 'width' | 'height' | 'unitLength' | 'unitHeight' | 'joint', label: string) => (
    <LengthField
      {...{ label, system }}
      typed={sizes[name]}
      onType={(typed) => onChange({ ...sizes, [name]: typed })}
    />
  );
  const count = (name: 'units' | 'courses', label: string) => (
    <p>
      <label>
        {label}
        <br />
        <input
          type="text"
          inputMode="decimal"
          autoComplete="off"
          size={6}
          value={sizes[name]}
          onChange={({ target }) => onChange({ ...sizes, [name]: target.value })}
        />
      </label>
    </p>
  );
  return (
    <>
      <ChoiceBar
        legend="How do you know its size?"
        options={KINDS}
        value={sizes.kind}
        onChoose={(kind) => onChange({ ...sizes, kind })}
      />
      {sizes.kind === 'rectangle' ? (
        <>
          <p className="fine">
            Measure along the wall and up it, on the face of the bricks. One length alone does not fix the
            other.
          </p>
          {field('width', 'Width between the corners')}
          {field('height', 'Height between the corners')}
        </>
      ) : (
        <>
          <p className="fine">
            Count from corner to corner, each with its joint. Course heights can then not be checked: they
            were taken for granted.
          </p>
          {count('units', 'Bricks along the top')}
          {count('courses', 'Courses up the side')}
          {field('joint', 'Joint, as it was meant to be')}
        </>
      )}
      <p className="fine">
        {sizes.kind === 'rectangle'
          ? 'If you know the size of a brick, the height of the courses can be compared with it.'
          : 'Measure one brick, or look it up.'}
      </p>
      {field('unitLength', 'Length of a brick')}
      {field('unitHeight', 'Height of a brick')}
      <p>
        <label>
          <input
            type="checkbox"
            checked={sizes.isLevelled}
            onChange={({ target }) => onChange({ ...sizes, isLevelled: target.checked })}
          />{' '}
          I marked the corners with a spirit level, not by the bricks
        </label>
      </p>
    </>
  );
}

/** The brick as typed; undefined unless both sides are there. */
export function unitOf(sizes: Sizes, system: LengthSystem): UnitSize | undefined {
  const [length, height] = [lengthOf(sizes.unitLength, system), lengthOf(sizes.unitHeight, system)];
  return length === undefined || height === undefined ? undefined : { length, height };
}

/** What the corners and the sizes say together; undefined while something is missing. */
export function referenceOf(sizes: Sizes, system: LengthSystem, corners: Corners): Reference | undefined {
  if (sizes.kind === 'rectangle') {
    const [width, height] = [lengthOf(sizes.width, system), lengthOf(sizes.height, system)];
    return width === undefined || height === undefined
      ? undefined
      : { kind: 'rectangle', corners, width, height };
  }
  const [units, courses] = [Number(sizes.units.replace(',', '.')), Number(sizes.courses.replace(',', '.'))];
  const [unit, joint] = [unitOf(sizes, system), lengthOf(sizes.joint, system)];
  if (!(units > 0 && courses > 0) || unit === undefined || joint === undefined) return undefined;
  return { kind: 'counts', corners, units, courses, unit, joint };
}
