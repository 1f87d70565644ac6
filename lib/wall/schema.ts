import * as z from 'zod';
import { isOnGrid } from '../units';
import { CONDITIONS, FINISHES, UNIT_KINDS, WALL_KINDS, WALL_VERSION, type Wall, WallError } from './model';
import { type IdOf, isOfKind, type PartKind } from './part-id';
import { refuseUnstandable } from './stands';

/** Nothing on a wall lies further out than this, mm: 100 m. */
const FARTHEST = 100_000;
const MOST_PARTS = 50_000;

const mm = z
  .number()
  .min(-FARTHEST)
  .max(FARTHEST)
  .refine(isOnGrid, { error: 'is not on the grid of eighths of a millimetre' });
const size = mm.refine((value) => value > 0, { error: 'is not over 0' });
const share = z.number().min(0).max(100);
const count = z.int().min(1).max(MOST_PARTS);
const name = z.string().min(1).max(40);
/** The name of a part of this kind. */
const idOf = <K extends PartKind>(kind: K) =>
  z.custom<IdOf[K]>((id) => typeof id === 'string' && isOfKind(id, kind), {
    error: `is not the name of a ${kind}`,
  });
const list = <T extends z.ZodType>(each: T) => z.array(each).max(MOST_PARTS).readonly();

const pat = z.strictObject({ x: mm, y: mm, width: size, height: size }).readonly();

const notNegative = mm.refine((value) => value >= 0, { error: 'is under 0' });

const unit = z
  .strictObject({
    id: idOf('unit'),
    panel: idOf('panel'),
    course: count,
    position: count,
    kind: z.enum(UNIT_KINDS),
    x: mm,
    y: mm,
    length: size,
    height: size,
    depth: size,
    fall: mm,
    twist: mm,
    lean: mm,
    set: mm,
    texture: z.enum(['smooth', 'rough', 'rock-face']),
    condition: z.enum(CONDITIONS),
    shade: z.int().min(0).max(7),
    cut: z.strictObject({ left: notNegative, right: notNegative }).readonly().exactOptional(),
    back: list(pat).exactOptional(),
  })
  .readonly();

const panel = z
  .strictObject({
    id: idOf('panel'),
    length: size,
    courses: count,
    plan: z.strictObject({ leftX: mm, leftZ: mm, rightX: mm, rightZ: mm }).readonly(),
    leftEnd: z.enum(['free', 'corner']),
    rightEnd: z.enum(['free', 'corner']),
    profile: z.enum(['concave', 'flush', 'raked']),
    recess: mm,
    gable: z
      .strictObject({ fromCourse: count, step: z.number().min(0).max(FARTHEST) })
      .readonly()
      .nullable(),
    studs: list(mm),
  })
  .readonly();

const angle = z
  .strictObject({
    vertical: z.number().positive(),
    horizontal: z.number().positive(),
    thickness: z.number().positive(),
  })
  .readonly();

const support = z
  .strictObject({
    id: idOf('support'),
    panel: idOf('panel'),
    kind: z.enum(['ledge', 'lintel']),
    material: z.enum(['concrete', 'steel', 'wood']),
    fromX: mm,
    toX: mm,
    y: mm,
    back: mm,
    front: mm,
    angle: angle.exactOptional(),
    opening: idOf('opening').exactOptional(),
  })
  .readonly();

const opening = z
  .strictObject({
    id: idOf('opening'),
    panel: idOf('panel'),
    kind: z.enum(['window', 'door']),
    x: mm,
    y: mm,
    width: size,
    height: size,
  })
  .readonly();

const tie = z
  .strictObject({
    id: idOf('tie'),
    panel: idOf('panel'),
    course: count,
    x: mm,
    y: mm,
    kind: z.literal('strap'),
    thickness: z.number().positive().max(20),
    width: z.number().positive().max(200),
    embedment: z.number().min(0).max(1000),
  })
  .readonly();

const flashing = z
  .strictObject({
    panel: idOf('panel'),
    y: mm,
    fromX: mm,
    toX: mm,
    shape: z
      .strictObject({ up: notNegative, front: mm, leftDam: notNegative, rightDam: notNegative })
      .readonly()
      .exactOptional(),
  })
  .readonly();

const droppings = z
  .strictObject({ panel: idOf('panel'), y: mm, height: size, fromX: mm, toX: mm })
  .readonly();

const batch = z
  .strictObject({
    id: idOf('batch'),
    fromCourse: count,
    toCourse: count,
    portland: z.number().positive().max(1000),
    lime: z.number().min(0).max(1000),
    sand: z.number().min(0).max(1000),
    air: z.number().min(-60).max(60),
    minutes: z.number().min(0).max(10_000),
  })
  .readonly();

/** The shape of a wall, for reading one and for its JSON Schema. */
export const wallSchema: z.ZodType<Wall> = z
  .strictObject({
    version: z.literal(WALL_VERSION),
    kind: z.enum(WALL_KINDS),
    masonry: z.enum(['anchored', 'adhered']),
    finish: z.enum(FINISHES),
    family: z.strictObject({ name, length: size, height: size, depth: size }).readonly(),
    bond: z.enum(['running', 'third']),
    joint: size,
    gauge: size,
    storeysAbove: z.int().min(0).max(4),
    cavity: mm,
    panels: list(panel),
    units: list(unit),
    heads: list(z.strictObject({ joint: idOf('head'), filled: share }).readonly()),
    openings: list(opening),
    supports: list(support),
    ties: list(tie),
    flashings: list(flashing),
    droppings: list(droppings).exactOptional(),
    batches: list(batch),
    projections: list(z.strictObject({ units: list(idOf('unit')), by: mm }).readonly()),
    tone: z.strictObject({ mortar: z.int().min(0).max(3), lot: z.int().min(0).max(7) }).readonly(),
  })
  .readonly();

/** Reads a wall from loose data. @throws WallError with the path and the reason, also for a wall that cannot stand; nothing is repaired. */
export function parseWall(loose: unknown): Wall {
  const read = wallSchema.safeParse(loose);
  if (!read.success) {
    const [first] = read.error.issues;
    throw new WallError(`${first?.path.join('.') || 'wall'}: ${first?.message ?? 'is not a wall'}`);
  }
  refuseUnstandable(read.data);
  return read.data;
}

/** JSON Schema (2020-12) of a wall. */
export function wallJsonSchema(): object {
  return z.toJSONSchema(wallSchema, { unrepresentable: 'any' });
}
