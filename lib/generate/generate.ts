import { mirrored } from '../wall/mirror';
import type { Wall } from '../wall/model';
import type { Brief } from './brief';
import { chanceOf } from './chance';
import { FAULTS } from './faults';
import { laySound } from './lay';
import type { Plan } from './plan';
import { planOf } from './planner';
import { NoRoom, type Spot } from './spoil-input';

/** The wall of a brief: the same everywhere, byte for byte. */
export function layWall(brief: Brief): Wall {
  return layPlan(planOf(brief));
}

/** Lays a sound wall and spoils it as the plan says. A spare comes in for a fault that finds no room; the key is measured, so it does not matter which. */
export function layPlan(plan: Plan): Wall {
  const chance = chanceOf(plan.seed, 2);
  const taken: Spot[] = [];
  let wall = laySound(plan);
  let left = plan.spoils.length;
  for (const { fault, severity } of [...plan.spoils, ...plan.spares]) {
    if (left === 0) break;
    try {
      const spoiled = FAULTS[fault].spoil({ wall, rules: plan.rules, severity, chance, taken });
      wall = spoiled.wall;
      taken.push(spoiled.taken);
      left -= 1;
    } catch (error) {
      if (!(error instanceof NoRoom)) throw error;
    }
  }
  return plan.mirrored ? mirrored(wall) : wall;
}
