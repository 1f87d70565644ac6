import { dropForEnergy, fallEnergy, impactSpeed } from '../trade/falling';
import { formatLength, fromSystem, inches, inSystem, type LengthSystem, type Mm } from '../units';
import { citeFormula } from './cite';
import { numberDraft } from './drafts';
import { type Family, familyOf } from './family';
import { formatNumber, formatQuantity, pickUsual, usualLengths } from './measure';

const TOPIC = 'cracks';
const NO_SAFE = 'No height and no energy is a safe one. Keep out from under it.';

/** Heights of a fall, in inches: whole feet. */
const FEET_OF_FALL = [72, 96, 120, 144, 192, 240];

/** In metres or in feet, as the formula takes it. */
function shownFall(height: Mm, system: LengthSystem): string {
  return system === 'mm'
    ? `${formatNumber(height / 1000, 1)} m`
    : `${formatNumber(height / inches(0, 1), 1)} ft`;
}

/** As it is measured, with the metres it has to be brought to. */
function told(height: Mm, system: LengthSystem): string {
  const metres = shownFall(height, system);
  return system === 'mm' ? `${formatLength(height, system)} (${metres})` : metres;
}

/** What a unit that falls lands with: in joules and metres, or in foot-pounds and feet. */
export const FALLS: readonly Family[] = [
  familyOf(TOPIC, 'energy', (ask) => {
    const { system } = ask;
    const isMetric = system === 'mm';
    const mass = pickUsual(ask, 'kg', [1.8, 2, 2.3, 2.7, 3, 4], [4, 4.5, 5, 6, 6.5, 9]);
    const height = ask.chance.pick(usualLengths(ask, [2000, 3000, 4000, 5000, 6000, 8000], FEET_OF_FALL));
    const { value: answer, unit } = inSystem(fallEnergy(mass, height), 'J', system);
    const [brick, high] = [formatQuantity(mass, 'kg', system, 1), shownFall(height, system)];
    return numberDraft({
      prompt: `A brick of ${brick} falls ${told(height, system)}. With how much energy does it land, in ${isMetric ? 'joules? Take 9.81 m/s² for gravity.' : 'foot-pounds?'}`,
      unit: isMetric ? 'J' : 'ft·lbf',
      answer,
      tolerance: Math.max(1, answer * 0.02),
      mistakes: isMetric
        ? {
            'You left out gravity.': (mass * height) / 1000,
            'No half here: mass × gravity × height.': answer / 2,
            'You took millimetres. The height goes in metres.': answer * 1000,
          }
        : {
            'Pounds already hold gravity. Do not count it twice.': answer * 32.2,
            'No half here: weight × height.': answer / 2,
            'You took inches. The height goes in feet.': answer * 12,
          },
      explanation: `${brick}${isMetric ? ' × 9.81' : ''} × ${high} = ${formatNumber(answer, 0)} ${unit}. ${NO_SAFE}`,
      source: citeFormula(isMetric ? 'energy = mass × gravity × height' : 'energy = weight × height'),
    });
  }),

  familyOf(TOPIC, 'speed', (ask) => {
    const { system } = ask;
    const isMetric = system === 'mm';
    const height = ask.chance.pick(usualLengths(ask, [2000, 3000, 4000, 5000, 6000, 9000], FEET_OF_FALL));
    const { value: answer, unit } = inSystem(impactSpeed(height), 'm/s', system);
    const [high, gravity] = [shownFall(height, system), isMetric ? '9.81' : '32.2'];
    return numberDraft({
      prompt: `A brick falls ${told(height, system)}. How fast does it land, in ${isMetric ? 'metres' : 'feet'} a second? Take ${gravity} ${unit}² for gravity.`,
      unit: isMetric ? 'm/s' : 'ft/s',
      answer,
      tolerance: isMetric ? 0.15 : 0.5,
      mistakes: {
        'You left out the square root.': answer ** 2,
        'You left out the 2 under the root.': answer / Math.sqrt(2),
        [isMetric ? 'That is in kilometres an hour.' : 'That is in miles an hour.']:
          answer * (isMetric ? 3.6 : 3600 / 5280),
      },
      explanation: `√(2 × ${gravity} × ${high}) = ${formatNumber(answer, 1)} ${unit}. How heavy it is does not matter for the speed. ${NO_SAFE}`,
      source: citeFormula('speed = √(2 × gravity × height)'),
    });
  }),

  familyOf(TOPIC, 'twice-the-height', (ask) => {
    const { system, chance } = ask;
    const mass = pickUsual(ask, 'kg', [2, 2.5, 3], [4, 5, 6]);
    const energy = chance.whole(40, 90);
    const times = chance.pick([2, 3, 4]);
    const drop = dropForEnergy(mass, fromSystem(energy, 'J', system));
    const unit = system === 'mm' ? 'J' : 'ft·lbf';
    return numberDraft({
      prompt: `A brick of ${formatQuantity(mass, 'kg', system, 1)} that falls ${shownFall(drop, system)} lands with ${energy} ${unit}. How many ${system === 'mm' ? 'joules' : 'foot-pounds'} when it falls from ${times} times the height?`,
      unit,
      answer: energy * times,
      tolerance: 1,
      mistakes: {
        'Energy grows with the height, not with its square.': energy * times * times,
        'The speed grows like that. The energy grows with the height.': energy * Math.sqrt(times),
        'More height is more energy.': energy,
      },
      explanation: `${times} × ${energy} = ${energy * times} ${unit}. ${NO_SAFE}`,
      source: citeFormula('energy = mass × gravity × height'),
    });
  }),
];
