import { fireEvent, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import type { ComponentType } from 'react';
import { beforeEach, describe, expect, test } from 'vitest';
import { FallingBrick } from '../../../components/trade/falling-brick';
import { GaugeRod } from '../../../components/trade/gauge-rod';
import { Level } from '../../../components/trade/level';
import { Lintel } from '../../../components/trade/lintel';
import { MortarBox } from '../../../components/trade/mortar-box';
import { MortarSpread } from '../../../components/trade/mortar-spread';
import { OnTheLedge } from '../../../components/trade/on-the-ledge';
import { StringLine } from '../../../components/trade/string-line';
import { TieMap } from '../../../components/trade/tie-map';

beforeEach(() => localStorage.clear());

function box(label: string): HTMLInputElement {
  return screen.getByRole('spinbutton', { name: label });
}

function type(label: string, value: string): void {
  fireEvent.change(box(label), { target: { value } });
}

function answer(): string {
  return screen.getByRole('status').textContent ?? '';
}

/** Shows a drawing and chooses inches as a reader does. */
async function inInches(Drawing: ComponentType): Promise<void> {
  render(<Drawing />);
  await userEvent.click(screen.getByRole('radio', { name: 'inches' }));
}

describe('drawings follow the choice of inches', () => {
  // 6.35 mm in 3.048 m is 2.08 mm a metre.
  test('the level is typed and told in inches in 10 ft', async () => {
    await inInches(Level);
    type('The bed really slopes, in 10 ft', '1/4');
    type('The level is wrong by, in 10 ft', '0');
    expect(answer()).toContain('It reads 1/4 in in 10 ft (2.1 mm in 1 m).');
    await userEvent.click(screen.getByRole('radio', { name: 'mm' }));
    expect(box('The bed really slopes').value).toBe('2.08');
  });

  // 20 °C and 30 °C are 68 °F and 86 °F; 16.09344 km/h are 10 mph.
  test('air in °F and wind in mph; what was typed in one comes back in the other', async () => {
    await inInches(MortarBox);
    expect(box('Air').value).toBe('68');
    type('Air', '86');
    type('Wind', '10');
    expect(answer()).toContain('At 86 °F cement hardens at');
    expect(answer()).toContain('its pace at 68 °F');
    expect(answer()).toMatch(/lose [\d.]+ lb per sq ft of water/);
    await userEvent.click(screen.getByRole('radio', { name: 'mm' }));
    expect(box('Air').value).toBe('30');
    expect(box('Wind').value).toBe('16.09');
  });

  // 90 mm × 20 kN/m³ × 1.9² m² ÷ 4 = 1.6245 kN, and 1624.5 N ÷ 4.448222 = 365.2 lbf.
  test('the lintel carries pounds, and bends by thousandths of an inch', async () => {
    render(<Lintel />);
    expect(answer()).toContain('carries 1.62 kN of wall');
    await userEvent.click(screen.getByRole('radio', { name: 'inches' }));
    expect(answer()).toContain('carries 365 lbf of wall');
    expect(answer()).toMatch(/Moment \d+ lbf·ft, stress [\d]+ psi/);
    expect(answer()).toMatch(/It bends 0\.\d{3} in, 1\//);
    expect(answer()).not.toMatch(/kN|MPa|\d mm/);
  });

  // 200 × 100 × 12.7 mm = 254 cm³, and 254 ÷ 16.38706 = 15.5 cu in.
  test('mortar in cubic inches', async () => {
    await inInches(MortarSpread);
    type('Thickness when pressed', '1/2');
    expect(answer()).toContain('A full joint needs 15.5 cu in.');
  });

  // 1 lb from 10 ft: 10 ft·lbf, and √(2 × 32.174 × 10) = 25.4 ft/s or 17.3 mph.
  test('a pound that falls 10 ft lands with 10 foot-pounds', async () => {
    await inInches(FallingBrick);
    type('Mass of the unit', '1');
    type('Height of the fall', '120');
    expect(answer()).toContain('10 ft·lbf on landing, at 25.4 ft/s (17.3 mph).');
  });

  // 100 N ÷ 4.448222 = 22.48 lbf; 6.86 mm is 0.270 in, nearest 1/4.
  test('the string is pulled in pounds', async () => {
    await inInches(StringLine);
    expect(box('Pull').value).toBe('22.48');
    expect(answer()).toContain('The line sags 1/4 in in the middle.');
    expect(answer()).not.toMatch(/\d mm/);
  });

  // 16 in × 24 in is 2.667 sq ft, so 37.5 ties in 100 sq ft.
  test('ties are counted in 100 square feet', async () => {
    await inInches(TieMap);
    type('Stud spacing', '16');
    type('Spacing up', '24');
    expect(answer()).toContain('37.5 in 100 square feet');
    expect(answer()).toContain('In the field each tie holds 2.67 sq ft.');
  });

  // 1.915 kPa of face × 2400 mm ÷ 90 mm = 0.0511 MPa, and 0.05107 ÷ 0.006894757 = 7.41 psi.
  test('the ledge is pressed in psi', async () => {
    await inInches(OnTheLedge);
    expect(answer()).toContain('against 7.41 psi');
  });

  test('the rod tells inches first', async () => {
    await inInches(GaugeRod);
    expect(answer()).toContain('Gauge 3 7/16 in (86.842 mm)');
  });
});
