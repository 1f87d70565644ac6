import { describe, expect, test } from 'vitest';
import { chanceOf } from '../../../lib/generate/chance';
import { RULE_SETS, type RuleSetId } from '../../../lib/limits/limit';
import { checkAnswer } from '../../../lib/questions/check-answer';
import type { Question } from '../../../lib/questions/question';
import { QUESTION_FAMILIES, questionSet } from '../../../lib/questions/question-families';
import { QUESTION_TOPICS } from '../../../lib/questions/topics';

const FAMILIES = QUESTION_TOPICS.flatMap((topic) => QUESTION_FAMILIES[topic]);
const LENGTH_UNITS = { mm: 'mm', inches: 'in' } as const;
const OTHER_UNITS = [
  '%',
  'm²',
  'sq ft',
  'J',
  'ft·lbf',
  'm/s',
  'ft/s',
  'kN',
  'lbf',
  'volumes',
  'ties',
  'holes',
  'times',
  'litres',
  'cu ft',
  'units',
];
const NONSENSE = /NaN|undefined|Infinity|\[object|null|−0 /;

/** Everything that can be wrong with one question; empty when it is sound. */
function faultsOf(question: Question, system: 'mm' | 'inches'): readonly string[] {
  const faults: string[] = [];
  const must = (holds: boolean, fault: string) => {
    if (!holds) faults.push(fault);
  };
  const right = (answer: Parameters<typeof checkAnswer>[1]) => checkAnswer(question, answer).right;
  const verdict = checkAnswer(question, question.answer);
  must(verdict.right, 'its own answer is marked wrong');
  must(verdict.explanation.includes(question.source), 'the source is not told');
  must(question.explanation.length > 10 && question.source.length > 10, 'no explanation or source');
  must(!NONSENSE.test(JSON.stringify(question)), 'nonsense in the text');
  must(!question.source.includes('Not verified'), 'a limit from memory');
  must(!right('no such answer') && !right([]), 'anything is right');
  if (question.kind === 'number') {
    const { answer, tolerance, unit } = question;
    must(Number.isFinite(answer) && answer >= 0, `answer ${answer}`);
    must(tolerance > 0, 'no tolerance');
    must([LENGTH_UNITS[system], 'mm', ...OTHER_UNITS].includes(unit), `unit ${unit}`);
    must(!right(answer + 1.01 * tolerance) && !right(answer - 1.01 * tolerance), 'tolerance not held');
    must(question.mistakes.length > 0, 'no mistake is told');
    for (const { value, why } of question.mistakes) {
      const told = checkAnswer(question, value);
      must(!told.right && told.explanation.startsWith(why), `mistake ${value} is not told`);
    }
    return faults;
  }
  const texts = question.options.map(({ text }) => text);
  const ids = question.options.map(({ id }) => id);
  must(new Set(texts).size === texts.length, `alternatives that read alike: ${texts.join('; ')}`);
  must(new Set(ids).size === ids.length, 'ids that are alike');
  must(texts.length >= 3, `only ${texts.length} alternatives: ${texts.join('; ')}`);
  must(
    question.options.every(({ why }) => why.length > 10),
    'an alternative is not explained',
  );
  if (question.kind === 'choose' || question.kind === 'limit-kind') {
    for (const id of ids) must(right(id) === (id === question.answer), `${id} marked the wrong way`);
  }
  if (question.kind === 'pick') {
    must(question.answer.length > 0 && question.answer.length < ids.length, 'all or none apply');
    must(right([...question.answer].reverse()), 'the order of picks counts');
    for (const id of ids) {
      const one = question.answer.includes(id)
        ? question.answer.filter((each) => each !== id)
        : [...question.answer, id];
      must(!right(one), `right with ${id} the wrong way`);
    }
  }
  if (question.kind === 'order') {
    must(!right(ids), 'shown in the right order');
    must([...question.answer].sort().join() === [...ids].sort().join(), 'steps are lost');
    must(!right([...question.answer].reverse()), 'the reverse is right');
  }
  return faults;
}

function faultsOver(family: (typeof FAMILIES)[number], rules: RuleSetId, seeds: number): readonly string[] {
  if (!family.isAsked(rules)) return [];
  for (let seed = 0; seed < seeds; seed++) {
    const system = seed % 2 === 0 ? 'mm' : 'inches';
    const question = family.ask({ chance: chanceOf(seed, 7), rules, system });
    const faults = faultsOf(question, system);
    if (faults.length > 0) return [`${family.id} ${rules} seed ${seed}`, ...faults, question.prompt];
  }
  return [];
}

test('there are at least sixty families, four or more a topic, each with its own name', () => {
  expect(FAMILIES.length).toBeGreaterThanOrEqual(60);
  expect(new Set(FAMILIES.map(({ id }) => id)).size).toBe(FAMILIES.length);
  expect(QUESTION_TOPICS.filter((topic) => QUESTION_FAMILIES[topic].length < 4)).toEqual([]);
});

describe('500 seeds under the rules of Canada and of the United States', () => {
  test.each(FAMILIES.map((family) => [family.id, family] as const))('%s', (_, family) => {
    expect(faultsOver(family, 'canada', 500)).toEqual([]);
    expect(faultsOver(family, 'united-states', 500)).toEqual([]);
  });
});

test.each(RULE_SETS)('100 seeds of every family under %s', (rules) => {
  expect(FAMILIES.flatMap((family) => faultsOver(family, rules, 100))).toEqual([]);
});

describe('no answer is given away by its form', () => {
  const asked = FAMILIES.filter((family) => family.isAsked('canada')).map((family) =>
    Array.from({ length: 200 }, (_, seed) =>
      family.ask({ chance: chanceOf(seed, 3), rules: 'canada', system: 'mm' }),
    ),
  );

  test('every place is right now and then', () => {
    const stuck = asked.flatMap((questions) => {
      const first = questions[0];
      if (first === undefined || (first.kind !== 'choose' && first.kind !== 'limit-kind')) return [];
      const places = new Set(
        questions.flatMap(({ kind, answer }) => (kind === 'choose' || kind === 'limit-kind' ? [answer] : [])),
      );
      return places.size < 3 ? [first.family] : [];
    });
    expect(stuck).toEqual([]);
  });

  test('the limit itself is not the only round figure, and neither always the greatest nor always the least', () => {
    const told = asked.flatMap((questions) => {
      const limits = questions.filter(({ prompt }) => prompt.endsWith('what is the limit?'));
      const shown = limits.flatMap((question) => {
        if (question.kind !== 'choose') return [];
        const figures = question.options.map(({ text }) => Number.parseFloat(text));
        const right = figures[question.options.findIndex(({ id }) => id === question.answer)] ?? 0;
        return [{ right, others: figures.filter((figure) => figure !== right) }];
      });
      if (shown.length === 0) return [];
      const family = limits[0]?.family;
      const alone = shown.filter(
        ({ right, others }) => right >= 15 && right % 5 === 0 && others.every((other) => other % 5 !== 0),
      );
      const isExtreme = [Math.max, Math.min].some((extreme) =>
        shown.every(({ right, others }) => right === extreme(right, ...others)),
      );
      return alone.length > 0 || isExtreme ? [`${family}: ${alone.length} alone, ${isExtreme}`] : [];
    });
    expect(told).toEqual([]);
  });

  test('no wrong figure is the right one rounded in another unit: 4 in beside 100 mm', () => {
    const near = [...RULE_SETS].flatMap((rules) =>
      FAMILIES.filter((family) => family.isAsked(rules)).flatMap((family) =>
        Array.from({ length: 30 }, (_, seed) =>
          family.ask({ chance: chanceOf(seed, 5), rules, system: 'mm' }),
        ).flatMap((question) => {
          if (question.kind !== 'choose' || !question.prompt.endsWith('what is the limit?')) return [];
          const figures = question.options.map(({ text }) => Number.parseFloat(text));
          const right = figures[question.options.findIndex(({ id }) => id === question.answer)] ?? 0;
          const close = figures.filter((each) => each !== right && Math.abs(each / right - 1) < 0.03);
          return close.length > 0 ? [`${question.family} ${rules}: ${right}, ${close.join()}`] : [];
        }),
      ),
    );
    expect([...new Set(near)]).toEqual([]);
  });

  test('right alternatives are about as long as wrong ones', () => {
    const uneven = asked.flatMap((questions) => {
      const lengths = { right: [0, 0], wrong: [0, 0] };
      for (const question of questions) {
        if (question.kind === 'number' || question.kind === 'order') continue;
        for (const { id, text } of question.options) {
          const side = question.answer.includes(id) ? lengths.right : lengths.wrong;
          side[0] = (side[0] ?? 0) + text.length;
          side[1] = (side[1] ?? 0) + 1;
        }
      }
      const mean = ([sum = 0, count = 0]: readonly number[]) => sum / count;
      const ratio = mean(lengths.right) / mean(lengths.wrong);
      return ratio < 0.7 || ratio > 1.4 ? [`${questions[0]?.family}: ${ratio.toFixed(2)}`] : [];
    });
    expect(uneven).toEqual([]);
  });
});

test('the same seed asks the same, another seed something else', () => {
  const ask = (seed: number) =>
    questionSet('ties', { rules: 'canada', system: 'mm' }, 6, (stream) => chanceOf(seed, stream));
  expect(ask(11)).toEqual(ask(11));
  expect(ask(12)).not.toEqual(ask(11));
  expect(new Set(ask(11).map(({ family }) => family)).size).toBe(6);
});
