import type { Working } from './drawing-frame';

/** How the mortar box reckons. */
export const MORTAR_WORKING: readonly Working[] = [
  {
    what: 'Class',
    formula:
      'Parts by volume looked up in the proportion table. Both tables count sand damp and loose: dry sand is first brought to its damp volume.',
    source: 'ASTM C270 as the IRC prints it; NBC Table 9.20.3.2.-B',
  },
  {
    what: 'Bulking',
    formula: 'Dry = damp ÷ (1 + bulking). By jar: bulking = (damp − flooded) ÷ flooded height.',
    source: 'teaching pages on sand; a cement maker gives 15 to 30 %',
  },
  {
    what: 'Yield',
    formula:
      '(solids without pores + water) ÷ (1 − air), with 8 % of air taken. Loose weights 94, 40 and 80 lb/cu ft (1506, 641 and 1281 kg/m³); 3.15, 2.3 and 2.65 times as heavy as water.',
    source: 'absolute volumes; weights as ASTM C270 is widely quoted',
  },
  {
    what: 'Pace of hardening',
    formula:
      'exp(−(E ÷ R)(1 ÷ T − 1 ÷ T₂₀)), E = 38.2 kJ/mol, T in kelvin. It does not say how long mortar may be used: the limit does.',
    source: 'Arrhenius; energy from NIST',
  },
  {
    what: 'Drying',
    formula:
      '5((t + 18)^2.5 − r(t + 18)^2.5)(V + 4) × 10⁻⁶ kg/(m²·h), with t in °C and V in km/h. Made for slabs: it ranks days. Crews shield slabs from 1.0 up (0.2 lb per sq ft).',
    source: 'Uno, ACI Materials Journal 95-M34, 1998',
  },
];
