import type { RuleSetId } from '../limits/limit';
import { type Bounds, boundsOf, type UnitSize } from './bounds';
import { findJoints, nominal } from './find';
import type { Joints } from './joint';
import { type Judged, judge } from './judge';
import { type Edges, laidOf } from './laid';
import type { Frame } from './lens';
import { scatterOf } from './noise';
import { densityOf, type Picture } from './picture';
import { type Parameter, propagated } from './propagate';
import { QUANTITIES, type QuantityName, valuesOf } from './quantities';
import { mappingAt, type Reference } from './reference';

/** One thing measured: the value, its standard deviation, from how many courses, joints or pieces, and how it stands to its limit. */
export interface Quantity extends Judged {
  readonly name: QuantityName;
  readonly value: number;
  readonly sd: number;
  readonly unit: 'mm' | 'mm per m';
  readonly n: number;
  readonly limit: Bounds | undefined;
}

/** What is known beside the picture and its reference. */
export interface Known {
  readonly rules: RuleSetId;
  readonly unit?: UnitSize;
  /** The standard deviation (mm per m) of what set the reference level or plumb, where that was not the wall itself. */
  readonly level?: number;
}

/** What a photograph showed: which way it was read, where the joints are, and all that was measured. */
export interface Measured {
  readonly reference: Reference;
  readonly joints: Joints;
  readonly pixelsPerMm: number;
  readonly quantities: readonly Quantity[];
}

/** Joints as seen may be so much wider or narrower than from arris to arris, and lie so deep (standard deviations, mm): judged, not measured. */
const EDGES_SD: Edges = { wider: 0.5, recess: 3 };
const FLUSH: Edges = { wider: 0, recess: 0 };

/**
 * Finds the joints between the four corners and measures the wall by them. Throws a PhotoError where the corners or the lengths
 * make no sense, and where the picture shows no masonry.
 */
export function measurePhotograph(picture: Picture, reference: Reference, known: Known): Measured {
  const found = findJoints(picture, reference);
  return measureJoints(picture, found.reference, found.joints, known);
}

/** Measures the wall by joints that were found, or confirmed and moved by a person. */
export function measureJoints(frame: Frame, reference: Reference, joints: Joints, known: Known): Measured {
  const { mapping, camera, parameters } = nominal(frame, reference);
  const laid = laidOf(joints, mapping, camera, FLUSH);
  const values = valuesOf(laid);
  const scatter = scatterOf(laid, joints, mapping, camera, FLUSH);
  const names = QUANTITIES.filter((name) => values[name] !== undefined && scatter[name] !== undefined);
  const all: readonly Parameter[] = [
    ...parameters,
    { value: 0, sd: EDGES_SD.wider },
    { value: 0, sd: EDGES_SD.recess },
    { value: 0, sd: known.level ?? 0 },
  ];
  const chain = (numbers: readonly number[]) => {
    const [wider = 0, recess = 0, level = 0] = numbers.slice(parameters.length);
    const shifted = mappingAt(reference.kind, frame, camera.distance, numbers);
    const here = valuesOf(laidOf(joints, shifted, camera, { wider, recess }));
    return names.map((name) => (here[name]?.value ?? Number.NaN) + (name === 'course-level' ? level : 0));
  };
  const common = propagated(chain, all);
  const grounds = {
    pixelsPerMm: densityOf(frame, mapping).fewest,
    softness: joints.softness,
    reference: reference.kind,
    isLevelled: known.level !== undefined,
    run: mapping.width,
  };
  const quantities = names.map((name, index): Quantity => {
    const { value: seen, n } = values[name] ?? { value: 0, n: 0 };
    const own = scatter[name] ?? { bias: 0, sd: 0 };
    const sd = Math.hypot(common[index] ?? 0, own.sd);
    const value = name.endsWith('spread') ? Math.max(seen - own.bias, own.sd) : seen - own.bias;
    const limit = boundsOf(name, values, known.rules, mapping.width, known.unit);
    const unit = name === 'course-level' ? 'mm per m' : 'mm';
    return { name, value, sd, unit, n, limit, ...judge(name, value, sd, limit, grounds) };
  });
  return { reference, joints, pixelsPerMm: grounds.pixelsPerMm, quantities };
}
