import { mirrored } from '../wall/mirror';
import type { Wall } from '../wall/model';
import type { Brief } from './brief';
import { chanceOf } from './chance';
import { FAULTS } from './faults';
import { laySound } from './lay';
import type { Plan, Spoil } from './plan';
import { planOf } from './planner';
import { NoRoom, type Spot } from './spoil-input';

/** The wall of a brief: the same everywhere, byte for byte. */
export function layWall(brief: Brief): Wall {
  return layPlan(planOf(brief));
}

interface Departed {
  readonly wall: Wall;
  readonly taken: readonly Spot[];
}

/** Streams of chance: each departure has its own, so that one more or less moves no other. */
const FACE_STREAM = 50;
const FAULT_STREAM = 100;
const TOLERATED_STREAM = 200;

/**
 * Lays a sound wall, spoils it as the plan says, and lets it depart within its limits elsewhere. A spare comes in for a fault that finds no room; the
 * key is measured, so it does not matter which. Without its faults, the wall departs within its limits where it would have with them.
 */
export function layPlan(plan: Plan, faults: 'with' | 'without' = 'with'): Wall {
  const { spoils, spares, tolerated } = plan;
  const [faces, others] = [true, false].map((wanted) =>
    tolerated.filter(({ fault }) => (FAULTS[fault].ofFace ?? false) === wanted),
  ) as [Spoil[], Spoil[]];
  const sound = departed({ wall: laySound(plan), taken: [] }, faces, faces.length, FACE_STREAM, plan);
  const spoiled = departed(sound, [...spoils, ...spares], spoils.length, FAULT_STREAM, plan);
  const start = faults === 'with' ? spoiled : { ...spoiled, wall: sound.wall };
  const { wall } = departed(start, others, others.length, TOLERATED_STREAM, plan);
  return plan.mirrored ? mirrored(wall) : wall;
}

/** The first `most` of these departures that find room, one after the other. */
function departed(
  start: Departed,
  spoils: readonly Spoil[],
  most: number,
  stream: number,
  { rules, seed }: Plan,
): Departed {
  let { wall } = start;
  const taken = [...start.taken];
  let left = most;
  for (const [index, { fault, severity }] of spoils.entries()) {
    if (left === 0) break;
    try {
      const chance = chanceOf(seed, stream + index);
      const spoiled = FAULTS[fault].spoil({ wall, rules, severity, chance, taken });
      wall = spoiled.wall;
      taken.push(spoiled.taken);
      left -= 1;
    } catch (error) {
      if (!(error instanceof NoRoom)) throw error;
    }
  }
  return { wall, taken };
}
