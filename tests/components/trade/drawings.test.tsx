import { cleanup, fireEvent, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import type { ComponentType } from 'react';
import { beforeEach, describe, expect, test } from 'vitest';
import { Corner } from '../../../components/trade/corner';
import { FallingBrick } from '../../../components/trade/falling-brick';
import { GaugeRod } from '../../../components/trade/gauge-rod';
import { Level } from '../../../components/trade/level';
import { Lintel } from '../../../components/trade/lintel';
import { MortarBox } from '../../../components/trade/mortar-box';
import { MortarSpread } from '../../../components/trade/mortar-spread';
import { OnTheLedge } from '../../../components/trade/on-the-ledge';
import { SetOutCourse } from '../../../components/trade/set-out-course';
import { StringLine } from '../../../components/trade/string-line';
import { TieMap } from '../../../components/trade/tie-map';

beforeEach(() => localStorage.clear());

/** Types numbers into boxes named by their labels. */
function type(...fields: readonly (readonly [label: string, value: string])[]): void {
  for (const [label, value] of fields) {
    fireEvent.change(screen.getByRole('spinbutton', { name: label }), { target: { value } });
  }
}

function answer(): string {
  return screen.getByRole('status').textContent ?? '';
}

/** The line of the list that begins with what was judged. */
function verdict(what: string): string {
  const found = screen.getAllByRole('listitem').find((item) => item.textContent?.includes(`${what}:`));
  return found?.textContent ?? '';
}

describe.each<[string, ComponentType]>([
  ['Mortar spread', MortarSpread],
  ['On the ledge', OnTheLedge],
  ['String line', StringLine],
  ['Gauge rod', GaugeRod],
  ['Tie map', TieMap],
  ['Mortar box', MortarBox],
  ['Lintel', Lintel],
  ['Set out a course', SetOutCourse],
  ['Falling brick', FallingBrick],
  ['Corner', Corner],
  ['Level and straightedge', Level],
])('%s', (title, Drawing) => {
  test('has a name, a described picture, sliders with a box each, and its working with sources', () => {
    render(<Drawing />);
    const region = within(screen.getByRole('region', { name: title }));
    expect(region.getByRole('img').getAttribute('aria-label')).toMatch(/\w{3}/);
    const sliders = region.getAllByRole('slider').map((slider) => slider.getAttribute('aria-label'));
    const boxes = region.getAllByRole('spinbutton').map((box) => box.closest('div')?.textContent);
    expect(sliders).toHaveLength(boxes.length);
    expect(region.getByText('How this is worked out').tagName).toBe('SUMMARY');
    expect(region.getAllByText(/^Source: /).length).toBeGreaterThan(0);
  });

  test('answers at both ends of every slider without failing', () => {
    render(<Drawing />);
    // Asked for once: finding by role walks the whole page each time.
    const sliders = screen.getAllByRole('slider');
    const status = screen.getByRole('status');
    for (const end of ['min', 'max']) {
      for (const slider of sliders) {
        fireEvent.change(slider, { target: { value: slider.getAttribute(end) } });
        expect(status.textContent).not.toMatch(/NaN|Infinity|undefined/);
      }
    }
  });
});

describe('worked by hand', () => {
  test('two half balls of 40 mm, 2 × 134 041 mm³, are 268 cm³; 200 × 100 × 25 mm are 500 cm³', () => {
    render(<MortarSpread />);
    type(['Dabs in each of two rows', '1'], ['Radius of a dab', '40'], ['Thickness when pressed', '25']);
    expect(answer()).toContain('Mortar put on: 268 cm³. A full joint needs 500 cm³.');
    expect(verdict('Contact')).toContain('outside the limit');
  });

  test('a ring shuts air in, and the answer says so', async () => {
    render(<MortarSpread />);
    await userEvent.selectOptions(
      screen.getByRole('combobox', { name: 'Put on as' }),
      'A ring round the edge',
    );
    expect(answer()).toContain('shut in');
  });

  test('90 mm with 28 mm over: 62 mm stand; a third is 30, Canada’s length is 25', () => {
    render(<OnTheLedge />);
    type(['Past the edge of the ledge', '28']);
    expect(answer()).toContain('62 mm stand on the ledge');
    expect(verdict('Overhang, by share of the depth')).toContain('within the limit. 28 mm, at most 30 mm.');
    expect(verdict('Overhang, by length')).toContain('outside the limit. 28 mm, at most 25 mm.');
  });

  test('half of 90 mm tips', () => {
    render(<OnTheLedge />);
    type(['Past the edge of the ledge', '45']);
    expect(answer()).toContain('It tips.');
  });

  test('20 m at 100 N sag 6.86 mm, and 1.72 mm with a support in the middle', async () => {
    render(<StringLine />);
    expect(answer()).toContain('The line sags 6.86 mm in the middle.');
    await userEvent.click(screen.getByRole('checkbox', { name: /support in the middle/ }));
    expect(answer()).toContain('The line sags 1.72 mm at the quarter points.');
  });

  // 3300 mm, unit 76 mm, joint 10 mm: the published example of the New Zealand trade federation.
  test('3300 mm: 38.37 courses; 38 at 86.842, 39 at 84.615 mm', () => {
    render(<GaugeRod />);
    expect(answer()).toContain('38.37 courses would fit');
    expect(answer()).toContain('bed joint 10.842 mm');
    expect(screen.getByRole('row', { name: /^39 84.615 mm \(3 5\/16 in\) 8.615 mm/ })).toBeInTheDocument();
    expect(answer()).toContain('0.5 mm too much in each course is 19 mm at the top.');
  });

  test('both greatest spacings at once are too much in Canada', async () => {
    render(<TieMap />);
    expect(verdict('Spacing, Canada (NBC 2020)')).toContain('within the limit');
    await userEvent.click(screen.getByRole('button', { name: 'Take both greatest spacings at once' }));
    expect(answer()).toContain('800 mm across and 600 mm up');
    expect(verdict('Spacing, Canada (NBC 2020)')).toContain(
      'outside the limit. 600 mm up at 800 mm across, at most 400 mm.',
    );
  });

  test('6 parts of dry sand are 7.5 damp: 1 : 1 : 7.5 is no type any more', async () => {
    render(<MortarBox />);
    expect(answer()).toContain('ASTM C270: type N. Canadian table: type N.');
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'The sand was measured' }), 'dry');
    expect(answer()).toContain('7.5 parts of damp sand hold 6 dry. Sand to binder: 3.75.');
    expect(answer()).toContain('ASTM C270: no type. Canadian table: no type.');
  });

  test('the clock: 91 minutes at 25 °C are over Canada’s 90, and 149 at 24 within 150', () => {
    render(<MortarBox />);
    type(['Air', '25'], ['Since mixing', '91']);
    expect(verdict('Time since mixing')).toContain('outside the limit. 91, at most 90 min.');
    type(['Air', '24'], ['Since mixing', '149']);
    expect(verdict('Time since mixing')).toContain('within the limit. 149, at most 150 min.');
  });

  // Canada, 90 mm, 2.47 m: 89 × 89 × 6.4 is the last that serves at 2470 and not at 2480.
  test('the table decides, row by row', () => {
    render(<Lintel />);
    const row = () => screen.getByRole('row', { name: /^89 mm 89 mm 6.4 mm/ }).textContent;
    type(['Clear opening', '2470']);
    expect(row()).toContain('✓ serves');
    type(['Clear opening', '2480']);
    expect(row()).toContain('✗ does not serve');
  });

  test('3000 mm of 215 mm units: 13 and a half at 7.9 mm', () => {
    render(<SetOutCourse />);
    const row = screen.getByRole('row', { name: /^half at the end 14 7.9 mm 102.5 mm ✓ within/ });
    expect(row).toBeInTheDocument();
    fireEvent.click(within(row).getByRole('button'));
    expect(answer()).toContain(
      'Half at the end: 14 pieces, joints of 7.9 mm. The smallest piece is 102.5 mm.',
    );
    expect(answer()).toContain('its joints lap by 110.4 mm');
  });

  test('1.9 kg from 2 m: 37.27 J at 6.263 m/s; stay 2000 + 1219.2 mm away', () => {
    render(<FallingBrick />);
    expect(answer()).toContain('37.27 J on landing, at 6.263 m/s');
    expect(answer()).toContain('Keep people 3219.2 mm away');
  });

  test('10 mm too long over 3-4-5 m: 90.24 degrees, 33.4 mm at 8 m', () => {
    render(<Corner />);
    expect(answer()).toContain(
      'The corner is 90.24 degrees, too open. At the end of 8000 mm the wall is 33.4 mm off',
    );
  });

  test('a level that is wrong by 1 on a bed that slopes by 2 reads 3, and turned 1', async () => {
    render(<Level />);
    type(['The bed really slopes', '2']);
    expect(answer()).toContain('It reads 3 mm in a metre. First 3 mm in a metre, turned 1 mm in a metre.');
    await userEvent.click(screen.getByRole('checkbox', { name: 'Turned end for end' }));
    expect(answer()).toContain('Turned, it reads 1 mm in a metre.');
  });
});

describe('fields', () => {
  test('a number out of range is refused in words and changes nothing', () => {
    render(<Corner />);
    const before = answer();
    type(['Length of the wall', '99999']);
    const box = screen.getByRole('spinbutton', { name: 'Length of the wall' });
    expect(box).toBeInvalid();
    expect(box).toHaveAccessibleDescription('Type a number from 500 to 20000 mm. Until then it is 8000.');
    expect(answer()).toBe(before);
  });

  test.each(['', 'abc', '-5', '1e12', '1/0', '1,500', '99999'])(
    '%j stays in the box when it is left',
    (typed) => {
      render(<Corner />);
      const box = screen.getByRole('spinbutton', { name: 'Length of the wall' });
      const before = answer();
      type(['Length of the wall', typed]);
      fireEvent.blur(box);
      expect(box).toHaveValue(typed);
      expect(box).toBeInvalid();
      expect(answer()).toBe(before);
    },
  );

  // Read as 15 and 34 they would be in range: a wrong answer that looks right.
  test.each([
    ['1,5', '29.42 J'],
    ['3/4', '14.71 J'],
    ['1½', '29.42 J'],
  ])('%s kg from 2 m: mass × 9.80665 × 2 = %s', (typed, energy) => {
    render(<FallingBrick />);
    type(['Mass of the unit', typed]);
    expect(answer()).toContain(energy);
  });

  test('a drawing judges by the rules the reader chose, in their lengths', () => {
    localStorage.setItem('rules', 'united-states');
    render(<OnTheLedge />);
    expect(screen.getByRole('combobox', { name: 'Checked against' })).toHaveValue('united-states');
    // 90 mm are 3 9/16 in.
    expect(screen.getByRole('spinbutton', { name: 'Depth of the unit' })).toHaveValue('3 9/16');
  });

  test('in inches a corner is measured by sides in feet, and a tie holds square feet', async () => {
    localStorage.setItem('lengths', 'inches');
    const { unmount } = render(<Corner />);
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Sides measured' }), '3, 4, 5 ft');
    expect(answer()).toContain('The diagonal of a square corner is 5 ft 0 in.');
    unmount();
    render(<TieMap />);
    // 400 × 600 mm: 0.24 m² × 10.764.
    expect(answer()).toContain('In the field each tie holds 2.58 sq ft.');
    cleanup();
    render(<Lintel />);
    expect(answer()).toContain('L3 1/2 × 3 1/2 × 1/4 in over 6 ft 2 13/16 in');
    cleanup();
    // 1 mm in a metre is 3.048 mm in 10 ft: 2/16 in.
    render(<Level />);
    expect(answer()).toContain('the bed slopes 1/8 in in 10 ft');
  });

  test('the arrow keys step a box and stop at its ends', async () => {
    render(<FallingBrick />);
    const box = screen.getByRole('spinbutton', { name: 'Mass of the unit' });
    await userEvent.type(box, '{ArrowUp}');
    expect(box).toHaveValue('2');
    await userEvent.clear(box);
    await userEvent.type(box, '0.2{ArrowDown}');
    expect(box).toHaveValue('0.2');
  });

  test('in inches: 3 5/8 in of depth may hang over 1 3/16 in, a third', async () => {
    render(<OnTheLedge />);
    await userEvent.click(screen.getByRole('radio', { name: 'inches' }));
    await userEvent.selectOptions(
      screen.getByRole('combobox', { name: 'Checked against' }),
      'United States (IRC 2021)',
    );
    type(['Depth of the unit', '3 5/8'], ['Past the edge of the ledge', '1.1875']);
    const box = screen.getByRole('spinbutton', { name: 'Past the edge of the ledge' });
    fireEvent.blur(box);
    expect(box).toHaveValue('1 3/16');
    expect(verdict('Overhang, by share of the depth')).toContain(
      'within the limit. 1 3/16 in, at most 1 3/16 in.',
    );
  });
});
