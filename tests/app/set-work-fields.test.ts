import { describe, expect, test } from 'vitest';
import { Refusal } from '../../app/request/refusal';
import { readRoster } from '../../app/set-work/roster-lines';
import { parseWork } from '../../app/set-work/work-fields';
import { readingOf, timeOf } from '../../app/set-work/zone-time';

const TYPED = {
  title: ' Ties and joints ',
  topics: ['joints', 'ties'],
  kinds: ['plain-panel'],
  walls: '4',
  difficulty: '2',
  rules: 'canada',
  same: 'each',
  offline: 'site',
  openingsUp: '',
  minutes: '',
  lessons: ['full-joints'],
  questionTopics: ['joints'],
  opensAt: '',
  dueAt: '2026-12-01T09:00',
  zone: 'America/Toronto',
  grace: '15',
  attempts: '1',
  release: 'when due',
  pass: false,
  passShare: '',
  passMethod: '',
  passPerson: '',
  passDate: '',
};

function refusalOf(changes: object): Readonly<Record<string, string>> {
  try {
    parseWork({ ...TYPED, ...changes });
  } catch (error) {
    if (error instanceof Refusal) return error.fields;
    throw error;
  }
  return {};
}

describe('the form in which set work is made', () => {
  test('is read into a spec and times; no pass mark and no time limit unless asked for', () => {
    expect(parseWork(TYPED)).toEqual({
      title: 'Ties and joints',
      spec: {
        topics: ['joints', 'ties'],
        kinds: ['plain-panel'],
        walls: 4,
        difficulty: 2,
        rules: 'canada',
        sameForAll: false,
        offline: false,
        openingsUp: null,
        minutes: null,
        lessons: ['full-joints'],
        questionTopics: ['joints'],
        attempts: 1,
        passMark: null,
      },
      // Toronto is five hours behind UTC in December.
      times: { opensAt: null, dueAt: Date.UTC(2026, 11, 1, 14), graceMs: 900_000, release: 'when due' },
    });
  });

  test.each([
    [{ title: '  ' }, 'title', 'Write a title, so that learners know which work it is.'],
    [{ topics: [] }, 'topics', 'Choose at least one topic.'],
    [{ kinds: ['castle'] }, 'kinds', undefined],
    [{ walls: '0' }, 'walls', 'Number of walls: write a whole number from 1 to 30.'],
    [{ walls: '31' }, 'walls', 'Number of walls: write a whole number from 1 to 30.'],
    [{ walls: 'four' }, 'walls', 'Number of walls: write a whole number from 1 to 30.'],
    [{ minutes: '0' }, 'minutes', 'Time limit: leave it empty, or write a whole number from 1 to 1440.'],
    [{ dueAt: 'soon' }, 'dueAt', 'This is not a day and a time. Choose both, or leave it empty.'],
    [{ dueAt: '' }, 'dueAt', 'Results are to show when it is due, so say when that is.'],
    [{ opensAt: '2026-12-01T09:00' }, 'dueAt', 'It is due before it opens. Put one of the two right.'],
    [{ zone: 'Nowhere/Town' }, 'zone', 'This device does not say in which time zone it is.'],
    [{ pass: true, passShare: '60' }, 'passMethod', 'Write how the pass mark was found.'],
  ])('%j is refused at %s', (changes, field, message) => {
    const fields = refusalOf(changes);
    expect(Object.keys(fields)).toContain(field);
    if (message !== undefined) expect(fields[field]).toBe(message);
  });

  test('a pass mark is kept with method, person and day', () => {
    const pass = {
      pass: true,
      passShare: '60',
      passMethod: 'Three of us judged each family',
      passPerson: 'A. Invented',
      passDate: '2026-11-20',
    };
    expect(parseWork({ ...TYPED, ...pass }).spec.passMark).toEqual({
      share: 0.6,
      method: 'Three of us judged each family',
      person: 'A. Invented',
      date: '2026-11-20',
    });
  });
});

describe('times of a place', () => {
  test.each([
    // Offsets by hand: Toronto UTC-5 in winter, UTC-4 in summer; London UTC+1 in summer; Kathmandu UTC+5:45.
    ['2026-01-15T12:00', 'America/Toronto', Date.UTC(2026, 0, 15, 17)],
    ['2026-07-15T12:00', 'America/Toronto', Date.UTC(2026, 6, 15, 16)],
    ['2026-07-15T00:30', 'Europe/London', Date.UTC(2026, 6, 14, 23, 30)],
    ['2026-03-01T06:00', 'Asia/Kathmandu', Date.UTC(2026, 2, 1, 0, 15)],
    // 1 November 2026, 1:30 comes twice in Toronto: the first is in summer time.
    ['2026-11-01T01:30', 'America/Toronto', Date.UTC(2026, 10, 1, 5, 30)],
    // 8 March 2026, 2:30 is left out in Toronto: an hour on it is 3:30 in summer time.
    ['2026-03-08T02:30', 'America/Toronto', Date.UTC(2026, 2, 8, 7, 30)],
    ['2028-02-29T10:00', 'UTC', Date.UTC(2028, 1, 29, 10)],
  ])('%s in %s', (reading, zone, time) => {
    expect(timeOf(reading, zone)).toBe(time);
  });

  test.each(['2026-02-30T10:00', '2026-13-01T10:00', '2026-01-01', 'now', ''])('%j is no time', (reading) => {
    expect(timeOf(reading, 'UTC')).toBe(undefined);
  });

  test('there and back', () => {
    expect(readingOf(Date.UTC(2026, 6, 15, 16), 'America/Toronto')).toBe('2026-07-15T12:00');
  });
});

describe('a roster as text', () => {
  test('one name a line; a comma in a name stays', () => {
    expect(readRoster('\uFEFFBirch, Ada\r\n\r\nBo\n')).toEqual({
      lines: [
        { line: 1, name: 'Birch, Ada', time: '' },
        { line: 3, name: 'Bo', time: '' },
      ],
      problems: [],
    });
  });

  test.each([
    ['comma', 'Name,Time %\n"Birch, Ada",150\nBo,\n'],
    ['semicolon', 'Number;Name;Time\n1;Birch, Ada;150\n2;Bo;\n'],
    ['tab', 'name\ttime\nBirch, Ada\t150\nBo\t\n'],
  ])('a table with %s between columns', (_, text) => {
    expect(readRoster(text)).toEqual({
      lines: [
        { line: 2, name: 'Birch, Ada', time: '150' },
        { line: 3, name: 'Bo', time: '' },
      ],
      problems: [],
    });
  });

  test('first and last names in columns of their own', () => {
    expect(readRoster('ID;Surname;First name;Time\n7;Birch;Ada;150\n8;Clay;Bo;\n').lines).toEqual([
      { line: 2, name: 'Ada Birch', time: '150' },
      { line: 3, name: 'Bo Clay', time: '' },
    ]);
  });

  test.each([
    ['Ada,Birch\nBo,Clay', 1, 'Ada,Birch'],
    ['Ada Birch\n\nBo Clay, 150', 3, 'Bo Clay, 150'],
    ['Nom;Temps\nAda;100', 1, 'Nom;Temps'],
    ['First name\tClass\nAda\tA', 1, 'First name Class'],
    ['"Birch, Ada"\n"Clay, Bo"', 1, '"Birch, Ada"'],
  ])('%j is a table without names of its columns: nothing is read', (text, line, row) => {
    expect(readRoster(text)).toEqual({
      lines: [],
      problems: [
        {
          line,
          message: `"${row}" looks like a row of a table. Then the first line has to name the columns, one of them "name". Or leave one name on each line.`,
        },
      ],
    });
  });

  test('a name in quotation marks within a name stays', () => {
    expect(readRoster('Jo "Bud" Hill').lines).toEqual([{ line: 1, name: 'Jo "Bud" Hill', time: '' }]);
  });

  test('an open quotation mark is named by its line, and nothing is read', () => {
    const read = readRoster('name,time\nBo,100\n"Ada,100\n');
    expect(read.lines).toEqual([]);
    expect(read.problems[0]?.message).toMatch(/quotation mark/);
  });
});
