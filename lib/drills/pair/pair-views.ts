import type { Finding } from '../../inspect/finding';
import type { View } from '../../views/view';
import type { Wall } from '../../wall/model';
import { type ViewChoice, viewChoices, viewKeyFor, viewOf } from '../../wall-page/view-choices';

/** Looks go by the sound wall, so that the list of them gives nothing away. */
export function pairViews(sound: Wall): readonly ViewChoice[] {
  return viewChoices(sound);
}

/** A look of one wall on the other: a support that was moved or left out may be called otherwise there. */
function keyOn(from: Wall, to: Wall, key: string): string {
  const asked = viewChoices(from).find(({ value }) => value === key);
  const there = viewChoices(to);
  const same = there.find(({ value }) => value === key);
  const alike = there.find(({ look, label }) => look === asked?.look && label === asked.label);
  return (same ?? alike)?.value ?? 'front';
}

/** The view of a wall for a look of the sound wall. */
export function viewOn(wall: Wall, sound: Wall, key: string, unit: string): View {
  const lifted = wall.units.some(({ id }) => id === unit) ? unit : (wall.units[0]?.id ?? '');
  return viewOf(keyOn(sound, wall, key), lifted, wall);
}

/** The look of the sound wall in which a finding on the spoiled one shows best. */
export function pairViewFor(finding: Finding, spoiled: Wall, sound: Wall): string {
  return keyOn(spoiled, sound, viewKeyFor(finding, spoiled));
}
