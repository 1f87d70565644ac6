import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { describe, expect, test } from 'vitest';
import { InstrumentTray } from '../../../components/instruments/instrument-tray';
import { Notebook } from '../../../components/instruments/notebook';
import { readAt } from '../../../lib/instruments/read';
import type { Reading } from '../../../lib/instruments/reading';
import type { LengthSystem } from '../../../lib/units';
import { partsOf } from '../../../lib/wall/parts';
import { surveyOf } from '../../../lib/wall/survey';
import { HAND_TIE, handWall } from '../../lib/views/hand-wall';

const SECOND_TIE = { ...HAND_TIE, id: 'A-tie3.1' as const, course: 3, y: 215 };
const WALL = handWall({ ties: [HAND_TIE, SECOND_TIE] });
const SURVEY = surveyOf(WALL);
const PARTS = partsOf(surveyOf(WALL));

/** The tray beside a list of parts, as the wall page holds it: picking another part keeps the tray. */
function Harness({ first, system = 'mm' }: { readonly first: string; readonly system?: LengthSystem }) {
  const [id, setId] = useState(first);
  const [notes, setNotes] = useState<readonly Reading[]>([]);
  const [attached, setAttached] = useState<number | null>(null);
  const part = PARTS.get(id);
  if (part === undefined) return null;
  return (
    <>
      {['A2.2-bed', 'A2', 'A-tie2.1', 'A-tie3.1', 'A-left-end'].map((each) => (
        <button key={each} type="button" onClick={() => setId(each)}>
          pick {each}
        </button>
      ))}
      <InstrumentTray
        part={id}
        partKind={part.kind}
        partName={`Part ${id}`}
        read={(instrument, { turned, from }) =>
          readAt(SURVEY, instrument, part, { turned, from: from === null ? null : (PARTS.get(from) ?? null) })
        }
        notebook={notes}
        onNote={(reading) => setNotes([...notes, reading])}
        system={system}
      />
      <Notebook
        notebook={notes}
        nameOf={(each) => `Part ${each}`}
        onForget={(index) => setNotes(notes.filter((_, at) => at !== index))}
        onAttach={({ value }) => setAttached(value)}
        system={system}
      />
      {attached !== null && <p>attached {attached}</p>}
    </>
  );
}

const chooser = () => screen.getByRole('combobox', { name: 'Instrument' });
const shown = () => screen.getByRole('status', { name: 'Reading' });

describe('choosing', () => {
  test('the instruments that read the part come first, the likeliest at once', () => {
    render(<Harness first="A2.2-bed" />);
    expect(chooser()).toHaveDisplayValue('Joint gauge');
    const here = within(screen.getByRole('group', { name: 'Read here' })).getAllByRole('option');
    expect(here.map(({ textContent }) => textContent)).toEqual([
      'Joint gauge',
      'Scratch',
      'Probe',
      'Gauge rod',
    ]);
    expect(
      within(screen.getByRole('group', { name: 'Not on this part' })).getAllByRole('option'),
    ).toHaveLength(10);
  });

  test('one that does not fit says what it does read', async () => {
    render(<Harness first="A2.2-bed" />);
    await userEvent.selectOptions(chooser(), 'Square, 3-4-5');
    expect(screen.getByText('It does not read this part. It reads corners.')).toBeVisible();
    expect(screen.queryByRole('button', { name: 'Note it' })).toBe(null);
  });

  test('what is in the hand stays while it fits the next part, else the likeliest takes its place', async () => {
    render(<Harness first="A2.2-bed" />);
    await userEvent.selectOptions(chooser(), 'Gauge rod');
    await userEvent.click(screen.getByRole('button', { name: 'pick A2' }));
    expect(chooser()).toHaveDisplayValue('Gauge rod');
    await userEvent.click(screen.getByRole('button', { name: 'pick A-tie2.1' }));
    expect(chooser()).toHaveDisplayValue('Tape');
  });

  test('a part that one instrument alone can read has the others apart', () => {
    render(<Harness first="A-left-end" />);
    expect(within(screen.getByRole('group', { name: 'Read here' })).getAllByRole('option')).toHaveLength(1);
  });
});

describe('reading', () => {
  // The bed under A2.2 is 10 mm at both ends; a joint gauge is within 0.2 mm.
  test('the reading is shown large with what it is and how far it may be off', () => {
    render(<Harness first="A2.2-bed" />);
    const text = shown().textContent ?? '';
    expect(text).toMatch(/^Bed at the left end(9\.[89]|10(\.[12])?) mm± 0\.2 mm$/);
  });

  test('in inches it stands in sixteenths, with the millimetres beside', () => {
    render(<Harness first="A2.2-bed" system="inches" />);
    expect(shown()).toHaveTextContent(/3\/8 in ?(9\.[89]|10(\.[12])?) mm ± 0\.2/);
  });

  test('arrows move from reading to reading: one stop of the keyboard', async () => {
    render(<Harness first="A2.2-bed" />);
    const radios = screen.getAllByRole('radio');
    expect(radios).toHaveLength(4);
    await userEvent.click(radios[0] as HTMLElement);
    await userEvent.keyboard('{ArrowDown}{ArrowDown}');
    expect(shown()).toHaveTextContent(/^Difference of the two ends/);
  });

  test('the level turned end for end tells the course from its own error', async () => {
    render(<Harness first="A2" />);
    const before = shown().textContent;
    await userEvent.click(screen.getByRole('button', { name: 'Turned end for end', pressed: false }));
    expect(screen.getByRole('button', { name: 'Turned end for end', pressed: true })).toBeVisible();
    expect(shown().textContent).not.toBe(before);
    expect(screen.getByRole('radio', { name: /Both readings, half the sum/ })).toBeVisible();
    expect(screen.getByRole('radio', { name: /own error, half the difference/ })).toBeVisible();
  });
});

describe('two points', () => {
  // The ties stand one over the other, 145 and 215 up: 70 apart.
  test('from one tie to the next: measure from here, then pick the other', async () => {
    render(<Harness first="A-tie2.1" />);
    await userEvent.click(screen.getByRole('button', { name: 'Measure from here' }));
    expect(screen.getByText(/From: Part A-tie2.1. Now pick another part/)).toBeVisible();
    await userEvent.click(screen.getByRole('button', { name: 'pick A-tie3.1' }));
    expect(shown()).toHaveTextContent(/^Across, middle to middle, from Part A-tie2.1/);
    const up = screen.getByRole('radio', { name: /Up or down, middle to middle/ });
    expect(up).toHaveAccessibleName(/ (69|69\.5|70|70\.5|71) mm$/);
    await userEvent.click(up);
    await userEvent.click(screen.getByRole('button', { name: 'Note it' }));
    expect(screen.getByRole('region', { name: 'Notebook: 1' })).toHaveTextContent(
      'Up or down, middle to middle, from Part A-tie2.1',
    );
    await userEvent.click(screen.getByRole('button', { name: 'Let go of the first point' }));
    expect(shown()).toHaveTextContent(/^Length in the bed/);
  });
});

describe('notebook', () => {
  test('what, where and how much are noted once, the latest first', async () => {
    render(<Harness first="A2.2-bed" />);
    await userEvent.click(screen.getByRole('button', { name: 'Note it' }));
    expect(screen.getByRole('button', { name: 'In your notebook' })).toHaveAttribute('aria-disabled', 'true');
    await userEvent.click(screen.getByRole('button', { name: 'In your notebook' }));
    await userEvent.click(screen.getByRole('button', { name: 'pick A-tie2.1' }));
    await userEvent.click(screen.getByRole('button', { name: 'Note it' }));
    const notes = within(screen.getByRole('region', { name: 'Notebook: 2' })).getAllByRole('radio');
    expect(notes).toHaveLength(2);
    expect(notes[0]).toHaveAccessibleName(/^\d+(\.5)? mm ± 1 mm ?Length in the bed ?Part A-tie2.1 · Tape$/);
    expect(notes[1]).toHaveAccessibleName(/Bed at the left end ?Part A2.2-bed · Joint gauge$/);
  });

  test('the note picked is used for a mark, or forgotten; with the last one gone its heading has the focus', async () => {
    render(<Harness first="A-tie2.1" />);
    await userEvent.click(screen.getByRole('button', { name: 'Note it' }));
    await userEvent.click(screen.getByRole('button', { name: 'Use it for my mark' }));
    expect(screen.getByText(/^attached (39|39\.5|40|40\.5|41)$/)).toBeVisible();
    await userEvent.click(screen.getByRole('button', { name: 'Forget it' }));
    expect(screen.getByText(/Nothing noted yet/)).toBeVisible();
    expect(screen.getByRole('heading', { name: 'Notebook' })).toHaveFocus();
  });

  test('the whole tray and notebook are six stops of the keyboard', async () => {
    render(<Harness first="A2.2-bed" />);
    await userEvent.click(screen.getByRole('button', { name: 'Note it' }));
    chooser().focus();
    const stops: string[] = [];
    for (let stop = 0; stop < 8 && document.activeElement !== document.body; stop++) {
      stops.push(document.activeElement?.tagName ?? '');
      await userEvent.tab();
    }
    expect(stops).toEqual(['SELECT', 'INPUT', 'BUTTON', 'INPUT', 'BUTTON', 'BUTTON']);
  });
});
