import { refuseNegative, refuseNotPositive } from './refusals';

// What weather does to mortar: for teaching and for ranking days. How long mortar may be used, the limits say.

const ZERO_CELSIUS = 273.15;
/** J/(mol·K) */
const GAS_CONSTANT = 8.314;

/** Activation energy of cement with water, J/mol: mean of 35 to 42 kJ/mol. Source: NIST, Garboczi and others, American Ceramic Society paper. */
export const CEMENT_ACTIVATION = 38_200;

/**
 * How fast cement hardens against its pace at a reference temperature, °C: exp(−(Ea/R)(1/T − 1/Tref)), kelvin (Arrhenius).
 * @throws RangeError at or below absolute zero, or for an energy not above zero.
 */
export function hydrationPace(air: number, reference: number, activation = CEMENT_ACTIVATION): number {
  refuseNotPositive('activation energy', activation);
  const here = kelvin('air', air);
  const there = kelvin('reference', reference);
  return Math.exp((-activation / GAS_CONSTANT) * (1 / here - 1 / there));
}

/** Evaporation at which concrete crews begin to shield a slab, kg/(m²·h); 0.2 lb/(ft²·h). For concrete slabs: a yardstick here, no rule for mortar. */
export const EVAPORATION_OF_CONCERN = 1;

/** What dries a wet surface: surface and air in °C, humidity as a share from 0 to 1, wind in km/h. */
export interface Drying {
  readonly surface: number;
  readonly air: number;
  readonly humidity: number;
  readonly wind: number;
}

/**
 * Water a wet surface loses, kg/(m²·h): 5((Tc + 18)^2.5 − r(Ta + 18)^2.5)(V + 4)·10⁻⁶. Never below 0, when dew falls instead. Source: Uno,
 * ACI Materials Journal 95-M34, 1998, after Menzel. Made for concrete slabs.
 * @throws RangeError below −18 °C, for a humidity outside 0 to 1, or a negative wind.
 */
export function evaporationOf({ surface, air, humidity, wind }: Drying): number {
  refuseNegative('surface above −18 °C', surface + 18);
  refuseNegative('air above −18 °C', air + 18);
  refuseNegative('humidity', humidity);
  if (humidity > 1) throw new RangeError(`humidity: ${humidity} is above 1`);
  refuseNegative('wind', wind);
  return Math.max(0, 5e-6 * ((surface + 18) ** 2.5 - humidity * (air + 18) ** 2.5) * (wind + 4));
}

function kelvin(name: string, celsius: number): number {
  refuseNotPositive(`${name}, kelvin`, celsius + ZERO_CELSIUS);
  return celsius + ZERO_CELSIUS;
}
