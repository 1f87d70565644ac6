import * as z from 'zod';
import { RULE_SETS } from '../../../lib/limits/limit';

const MOST_REASON_SIGNS = 500;
const MOST_COMMENT_SIGNS = 2000;

const attempt = z.string({ error: 'Say which hand-in.' }).min(1, 'Say which hand-in.');
const work = z.string({ error: 'Say which set work.' }).min(1, 'Say which set work.');
const reason = z
  .string({ error: 'Write why: the learner and the next instructor will ask.' })
  .trim()
  .min(3, 'Write why: the learner and the next instructor will ask.')
  .max(MOST_REASON_SIGNS, `Write at most ${MOST_REASON_SIGNS} letters.`);

const PERCENT_WORDS = 'Write the mark as a number from 0 to 100.';

/** A mark in percent, as typed: a comma is as good as a point. Read as a share. */
const percent = z
  .string({ error: PERCENT_WORDS })
  .trim()
  .regex(/^\d{1,3}([.,]\d{1,2})?\s*%?$/, PERCENT_WORDS)
  .transform((text) => Number.parseFloat(text.replace(',', '.')))
  .refine((value) => value <= 100, PERCENT_WORDS)
  .transform((value) => value / 100);

export const overrideFields = z.object({ attempt, score: percent, reason });
export const commentFields = z.object({
  attempt,
  text: z
    .string({ error: 'Write something first.' })
    .trim()
    .min(1, 'Write something first.')
    .max(MOST_COMMENT_SIGNS, `Write at most ${MOST_COMMENT_SIGNS} letters.`),
});
export const releaseFields = z.object({ work });
export const markAgainFields = z.object({
  work,
  reason,
  /** The rule set to mark by; each wall's own when it is left out. */
  rules: z
    .union([z.literal('own'), z.enum(RULE_SETS)], { error: 'Choose one of the rule sets.' })
    .default('own'),
});
export const calendarFields = z.object({
  group: z.string({ error: 'Say which group.' }).min(1, 'Say which group.'),
});
