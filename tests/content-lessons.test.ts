import { readdirSync, readFileSync } from 'node:fs';
import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { beforeAll, describe, expect, test } from 'vitest';
import { GLOSSARY } from '../app/glossary/glossary';
import { drawTerm } from '../app/glossary/term-pictures';
import { minutesFor } from '../app/lessons/check-lesson';
import { drawPicture } from '../app/lessons/draw-picture';
import { LESSON_FAMILIES } from '../app/lessons/lesson-families';
import type { LessonFamily } from '../app/lessons/lesson-family';
import { fileOf, lessonFindings, lessonWall, pictureOfFile, ringsOf } from '../app/lessons/lesson-pictures';
import { LessonText } from '../app/lessons/lesson-text';
import { inOrder, type Lesson, parseLesson } from '../app/lessons/parse-lesson';
import { inWords } from '../app/lessons/picture-in-words';
import { LimitAnswer } from '../components/lesson/limit-answer';
import { DRAWINGS } from '../components/trade/drawings';
import { RULE_SETS } from '../lib/limits/limit';
import { namedLimitOf } from '../lib/limits/limits';

const SLUGS = readdirSync('content/lessons').map((name) => name.replace(/\.mdx$/, ''));
const textOf = (slug: string) => readFileSync(`content/lessons/${slug}.mdx`, 'utf8');

const lessons = new Map<string, Lesson>();
beforeAll(async () => {
  for (const slug of SLUGS) lessons.set(slug, await parseLesson(slug, textOf(slug), SLUGS));
});

/** Words with one meaning only in a lesson, by the entry they lead to. A word like level or line is plain English as well. */
const TRADE_WORDS = (
  [
    ['adhered-veneer', 'adhered veneer|stuck-on units'],
    ['air-space', 'air space'],
    ['arch', 'arch(es)?'],
    ['authority', 'authority having jurisdiction'],
    ['batch', 'batch(es)?'],
    ['bed-joint', 'bed joints?'],
    ['bloom', 'efflorescence'],
    ['brick-ledge', 'ledge'],
    ['bulge', 'bulges?'],
    ['butter', 'butter(ed|s|ing)?'],
    ['centering', 'centering'],
    ['chimney', 'chimneys?'],
    ['coping', 'copings?'],
    ['corbel', 'corbels?'],
    ['course', 'courses?'],
    ['end-dam', 'end dams?'],
    ['flashing', 'flashings?'],
    ['furrow', 'furrow'],
    ['gable', 'gables?'],
    ['gauge-rod', 'story poles?'],
    ['head-joint', 'head joints?'],
    ['hold-point', 'hold points?'],
    ['jamb', 'jambs?'],
    ['jointer', 'jointer'],
    ['lintel', 'lintels?'],
    ['mortar', 'mortar'],
    ['mortarboard', 'mortarboard'],
    ['movement-joint', 'expansion joints?'],
    ['overhang', 'overhang'],
    ['parapet', 'parapets?'],
    ['plumb-bob', 'plumb bob'],
    ['pointing', 'repoint(ed|ing)?'],
    ['scaffold', 'scaffolds?'],
    ['scratch-coat', 'scratch coats?'],
    ['sheathing', 'sheathing'],
    ['shelf-angle', 'shelf angles?'],
    ['sill', 'sills?'],
    ['sliver', 'slivers?'],
    ['spall', 'spalls?'],
    ['steel-angle', 'steel angles?'],
    ['straightedge', 'straightedge'],
    ['stud', 'studs?'],
    ['suction', 'suction'],
    ['tie', 'ties?'],
    ['tooling', 'tooling'],
    ['trowel', 'trowels?'],
    ['unit', 'units?'],
    ['water-barrier', 'water barrier'],
    ['weep', 'weeps?'],
  ] as const
).map(([id, word]) => [id, new RegExp(`\\b(?:${word})\\b`, 'i')] as const);

function lessonOf(slug: string): Lesson {
  const lesson = lessons.get(slug);
  if (lesson === undefined) throw new RangeError(`no lesson ${slug}`);
  return lesson;
}

test('the lessons stand in the order of the plan', () => {
  expect(inOrder([...lessons.values()]).map(({ slug }) => slug)).toEqual([
    'how-to-read-a-wall',
    'working-safely',
    'the-trowel',
    'back-buttering',
    'full-joints',
    'line-level-plumb',
    'setting-out-and-bond',
    'what-carries-the-wall',
    'openings',
    'ties',
    'mortar',
    'wetting-and-suction',
    'keeping-water-out',
    'chimneys-and-parapets',
    'cracks-and-loose-units',
    'repointing',
    'cleaning',
    'hold-points',
    'arches',
    'the-visit',
  ]);
});

// By hand: 1000 ÷ 130 is 7.7 minutes, ten looks of half a minute are 5: 12.7, told as 13. And 130 words with no look are 1.
test('a lesson takes its words at 130 a minute and half a minute for each drawing and limit', () => {
  expect([minutesFor(1000, 10), minutesFor(130, 0), minutesFor(131, 0)]).toEqual([13, 1, 2]);
});

test('every drawing that computes is in a lesson', () => {
  const all = SLUGS.map(textOf).join('');
  expect(DRAWINGS.filter(({ name }) => !all.includes(`<Drawing name="${name}" />`))).toEqual([]);
});

test('two lessons cannot have one place', () => {
  const [one, other] = [lessonOf('ties'), lessonOf('mortar')];
  expect(() => inOrder([one, { ...other, meta: { ...other.meta, order: 10 } }])).toThrow(
    'content/lessons/ties.mdx:1: order: 10 is taken',
  );
});

describe.each(SLUGS)('%s', (slug) => {
  test('names the sources of its limits, and no others', () => {
    const { limits, meta } = lessonOf(slug);
    const shown = limits.flatMap((id) => RULE_SETS.flatMap((rules) => namedLimitOf(rules, id)?.source ?? []));
    expect([...meta.sources].sort()).toEqual([...new Set(shown)].sort());
  });

  test('links each word of the trade where the lesson first uses it', () => {
    const prose = markedProse(textOf(slug));
    const unlinked = TRADE_WORDS.filter(([, word]) => {
      const at = prose.search(word);
      // Inside a link there is an opening bracket before the word, and no closing one between.
      return at >= 0 && prose.lastIndexOf('⟦', at) <= prose.lastIndexOf('⟧', at);
    });
    expect(unlinked.map(([id]) => id)).toEqual([]);
  });

  test('shows limits of every rule set, a pair and a way on', () => {
    const html = renderToStaticMarkup(createElement(LessonText, { code: lessonOf(slug).code }));
    const rows = [...html.matchAll(/data-for="([^"]*)"/g)].flatMap(([, sets = '']) => sets.split(' '));
    const asked = textOf(slug).match(/<Limit /g) ?? [];
    expect(asked.length).toBeGreaterThan(2);
    for (const rules of RULE_SETS) expect(rows.filter((set) => set === rules)).toHaveLength(asked.length);
    expect(html).toContain('<summary>Which one has the fault?</summary>');
    expect(html).toMatch(/href="\/walls\?topic=[a-z-]+&amp;kind=[a-z-]+&amp;difficulty=1&amp;rules=canada"/);
    expect(html).toContain('role="note"');
  });

  test('each of its drawings can be drawn and found by its address', () => {
    for (const picture of lessonOf(slug).pictures) {
      expect(pictureOfFile(fileOf(picture))).toEqual({ picture, system: 'mm' });
      expect(pictureOfFile(fileOf(picture, 'inches'))).toEqual({ picture, system: 'inches' });
      expect(drawPicture(picture).startsWith('<svg')).toBe(true);
    }
  });
});

describe('a drawing to be judged, in words', () => {
  /** How often the lines of one kind of part say what, the runs counted out. */
  const toldOf = (lines: readonly string[], kind: string) =>
    lines
      .filter((line) => line.includes(`, ${kind}: `))
      .flatMap((line) => line.replace(/^.*?: /, '').split('; '))
      .flatMap((run) => {
        const [, times = '1', said = run] = /^(\d+) times (.*)$/.exec(run) ?? [];
        return Array.from({ length: Number(times) }, () => said);
      });

  test.each(['open-joints', 'uneven-joints'] as const)(
    'every part of %s is told, all in the same words and none as right or wrong',
    (family) => {
      for (const state of ['sound', 'spoiled'] as const) {
        const picture = { family, state, view: 'front', ringed: false, close: false } as const;
        const lines = inWords(picture, 'mm');
        const parts = [...lessonWall(picture).parts.values()];
        const heads = toldOf(lines, 'head joints');
        expect(heads.length).toBe(parts.filter(({ kind }) => kind === 'head').length);
        expect(heads.filter((said) => !/^\d+ mm wide, (full|partly open|open)$/.test(said))).toEqual([]);
        const beds = toldOf(lines, 'bed joints');
        expect(beds.length).toBe(parts.filter(({ kind }) => kind === 'bed').length);
        expect(beds.filter((said) => !/^left \d+ mm, right \d+ mm$/.test(said))).toEqual([]);
      }
    },
  );

  test('what is to be found is in it: a joint partly open, and no other of that wall', () => {
    const spoiled = { family: 'open-joints', state: 'spoiled', view: 'front', ringed: false } as const;
    const heads = toldOf(inWords({ ...spoiled, close: false }, 'mm'), 'head joints');
    const faults = lessonFindings('open-joints').filter(({ check }) => check === 'open-head').length;
    expect(heads.filter((said) => said.endsWith('partly open'))).toHaveLength(faults);
    const sound = inWords({ ...spoiled, state: 'sound', close: false }, 'mm');
    expect(toldOf(sound, 'head joints').filter((said) => said.endsWith('partly open'))).toEqual([]);
  });

  test('lengths are the reader’s', () => {
    const picture = {
      family: 'ties',
      state: 'sound',
      view: 'before-cover',
      ringed: false,
      close: false,
    } as const;
    expect(inWords(picture, 'mm').join(' ')).not.toMatch(/\bin\b(?! the)/);
    expect(inWords(picture, 'inches').join(' ')).not.toMatch(/ mm/);
  });
});

/** The words of a lesson as they are read, without front matter, headings, labels of buttons and components; links to the glossary in ⟦ ⟧. */
function markedProse(text: string): string {
  return text
    .replace(/^---[\s\S]*?\n---\n/, '')
    .replace(/^#+ .*$/gm, '')
    .replace(/<Term id="[^"]*">([^<]*)<\/Term>/g, '⟦$1⟧')
    .replace(/<(Practise|Questions)[^>]*>.*?<\/\1>/g, '')
    .replace(/<[^>]*>/g, '')
    .replace(/\[[^\]]*\]\([^)]*\)/g, '');
}

describe.each(Object.keys(LESSON_FAMILIES) as (keyof typeof LESSON_FAMILIES)[])('walls of %s', (family) => {
  const { spoils, good }: LessonFamily = LESSON_FAMILIES[family];

  test('the sound one is sound, the spoiled one has the faults it is to show and no others', () => {
    expect(lessonWall({ family, state: 'sound' }).findings).toEqual([]);
    const found = new Set(lessonFindings(family).map(({ check }) => check));
    expect([...found].sort()).toEqual(spoils.map(({ fault }) => fault).sort());
  });

  test('every good thing the key tells of has its ring', () => {
    const rings = ringsOf({ family, state: 'sound', view: 'front', ringed: true, close: false });
    expect(rings.map(({ number }) => number)).toEqual(good.map((_, index) => index + 1));
  });
});

describe('glossary', () => {
  test('each word stands there once, and each picture can be drawn', () => {
    expect(new Set(GLOSSARY.map(({ id }) => id)).size).toBe(GLOSSARY.length);
    for (const { id } of GLOSSARY) expect(drawTerm(id)).toMatch(/^<svg[^>]* viewBox="/);
  });

  test('both sides of the ocean are heard', () => {
    const byId = new Map(GLOSSARY.map((entry) => [entry.id, entry]));
    // From the vocabulary of the trade brief.
    expect(byId.get('head-joint')).toMatchObject({ american: 'head joint', british: 'perpend, cross joint' });
    expect(byId.get('wythe')).toMatchObject({ american: 'wythe', british: 'leaf, skin' });
  });

  test('the words of the trade brief are there', () => {
    const ids = new Set(GLOSSARY.map(({ id }) => id));
    const asked = [
      'stretcher',
      'header',
      'rowlock',
      'soldier',
      'bat',
      'closer',
      'arris',
      'frog',
      'core-holes',
      'lead',
      'toothing',
    ];
    const more = [
      'line-block',
      'line-pin',
      'trowel',
      'mortarboard',
      'jointer',
      'pointing',
      'furrow',
      'corbel',
      'arch',
      'centering',
    ];
    expect(
      [...asked, ...more, 'sill', 'jamb', 'gable', 'range', 'bee-holes', 'scaffold'].filter(
        (id) => !ids.has(id),
      ),
    ).toEqual([]);
  });

  test('what each picture shows is said in sentences of its own, for those who do not see it', () => {
    const said = GLOSSARY.map(({ shows }) => shows);
    expect(new Set(said).size).toBe(said.length);
    expect(said.filter((text) => text.split(' ').length < 7 || !text.endsWith('.'))).toEqual([]);
    expect(said.filter((text) => /^(drawing|sketch|picture)/i.test(text))).toEqual([]);
  });

  test('no figure is typed into it', () => {
    expect(GLOSSARY.map(({ means }) => means).filter((text) => /\d/.test(text))).toEqual([]);
  });
});

test('a limit asked by one rule set is shown by that one alone, whichever the reader has chosen', () => {
  const html = renderToStaticMarkup(createElement(LimitAnswer, { id: 'lintel-bearing', rules: 'ontario' }));
  // Ontario Building Code 2024: 150 mm (the National Code has 90 mm).
  expect(html).toContain('150');
  expect(html).not.toContain('at least 90');
  expect(html).toContain(`data-for="${RULE_SETS.join(' ')}"`);
});
