import { TOPIC_WORDS } from '../../components/limits/limit-words';
import { CATALOGUE } from '../../lib/inspect/catalogue';
import { CHECKS } from '../../lib/inspect/finding';
import { ALL_LIMITS, ruleSetTitle } from '../../lib/limits/limits';
import { passageOf } from '../../lib/wall-page/fault-choices';
import { GLOSSARY } from '../glossary/glossary';
import type { Lesson } from '../lessons/parse-lesson';
import type { Entry } from './search-options';

/** All that can be looked up: every lesson, word of the trade, fault, and limit of a rule set. */
export function searchEntries(lessons: readonly Pick<Lesson, 'slug' | 'meta'>[]): readonly Entry[] {
  return [
    ...lessons.map(({ slug, meta }): Entry => {
      const { title, summary, able } = meta;
      return {
        id: `lesson ${slug}`,
        kind: 'lesson',
        name: title,
        alsoCalled: able.join(' '),
        says: summary,
        href: `/lessons/${slug}`,
      };
    }),
    ...GLOSSARY.map(
      ({ id, american, british, means }): Entry => ({
        id: `word ${id}`,
        kind: 'word',
        name: american,
        alsoCalled: british,
        says: means,
        href: `/glossary/${id}`,
      }),
    ),
    ...CHECKS.map((check): Entry => {
      const { name, alsoCalled, looksLike } = CATALOGUE[check];
      return {
        id: `fault ${check}`,
        kind: 'fault',
        name,
        alsoCalled,
        says: looksLike,
        href: passageOf(check),
      };
    }),
    ...ALL_LIMITS.map(
      ({ id, rules, quantity, topic }): Entry => ({
        id: `limit ${rules} ${id}`,
        kind: 'limit',
        name: quantity,
        alsoCalled: TOPIC_WORDS[topic],
        says: ruleSetTitle(rules),
        href: `/limits/${rules}#${id}`,
      }),
    ),
  ];
}
