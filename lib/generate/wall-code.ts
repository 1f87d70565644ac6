import { RULE_SETS } from '../limits/limit';
import { WALL_KINDS } from '../wall/model';
import { type Brief, BriefError, ENGINE, MAX_SEED } from './brief';
import { engineOfTopic, TOPICS_BY_CODE } from './topics';

/**
 * The wall code holds the engine version and the whole brief, short enough to read out: nine signs and a check sign, written 3-4-3. Signs are the digits
 * and letters that are not mistaken for one another; there are 31 of them, a prime, so a check sign weighted by place (the principle of ISO 2108:2005's
 * ten-digit book number) catches every single wrong sign and every swap of two.
 */
const SIGNS = '23456789ABCDEFGHJKMNPQRSTUVWXYZ';
const BASE = SIGNS.length;
const BODY = 9;
/** Room kept for more of each kind without a new engine version. */
const ROOM = { engine: 8, topic: 16, kind: 12, difficulty: 5, rules: 8 } as const;
/** Spreads neighbouring seeds over the code so that two walls of one set are not one sign apart; inverse modulo 2^27. */
const SPREAD = 0x2545f49;

export function codeOf(brief: Brief): string {
  let number = scrambled(brief.seed);
  number = number * ROOM.rules + RULE_SETS.indexOf(brief.rules);
  number = number * ROOM.difficulty + (brief.difficulty - 1);
  number = number * ROOM.kind + WALL_KINDS.indexOf(brief.kind);
  number = number * ROOM.topic + TOPICS_BY_CODE.indexOf(brief.topic);
  number = number * ROOM.engine + (brief.engine ?? ENGINE);
  let body = '';
  for (let place = 0; place < BODY; place++) {
    body = signAt(number % BASE) + body;
    number = Math.floor(number / BASE);
  }
  const whole = body + checkSign(body);
  return `${whole.slice(0, 3)}-${whole.slice(3, 7)}-${whole.slice(7)}`;
}

/** Reads a wall code; case, spaces and hyphens do not matter. @throws BriefError that says what is wrong with it. */
export function parseCode(text: string): Brief {
  if (text.length > 40) throw new BriefError('wall code: too long; a code has ten signs, like 3K7-Q2WF-9TB');
  const signs = text.toUpperCase().replace(/[\s-]/g, '');
  const stranger = [...signs].find((sign) => !SIGNS.includes(sign));
  if (stranger !== undefined) {
    throw new BriefError(`wall code "${text}": the sign "${stranger}" is never used (no 0, 1, I, L or O)`);
  }
  if (signs.length !== BODY + 1) {
    throw new BriefError(`wall code "${text}": has ${signs.length} signs, a code has ${BODY + 1}`);
  }
  const body = signs.slice(0, BODY);
  if (checkSign(body) !== signs[BODY]) {
    throw new BriefError(`wall code "${text}": mistyped, the check sign does not fit`);
  }
  let number = 0;
  for (const sign of body) number = number * BASE + SIGNS.indexOf(sign);
  const take = (room: number) => {
    const value = number % room;
    number = Math.floor(number / room);
    return value;
  };
  const engine = take(ROOM.engine);
  const topic = TOPICS_BY_CODE[take(ROOM.topic)];
  const kind = WALL_KINDS[take(ROOM.kind)];
  const difficulty = take(ROOM.difficulty) + 1;
  const rules = RULE_SETS[take(ROOM.rules)];
  if (engine > ENGINE) {
    throw new BriefError(
      `wall code "${text}": made for engine ${engine}, and this is engine ${ENGINE}; a newer version of this site opens it`,
    );
  }
  if (
    engine === 0 ||
    topic === undefined ||
    engine < engineOfTopic(topic) ||
    kind === undefined ||
    rules === undefined ||
    number > MAX_SEED
  ) {
    throw new BriefError(`wall code "${text}": names no wall`);
  }
  const brief = { topic, kind, difficulty, rules, seed: unscrambled(number) };
  return engine === ENGINE ? brief : { ...brief, engine };
}

function signAt(index: number): string {
  return SIGNS.charAt(index);
}

function checkSign(body: string): string {
  let sum = 0;
  for (let place = 0; place < body.length; place++) sum += (place + 2) * SIGNS.indexOf(body.charAt(place));
  return signAt((BASE - (sum % BASE)) % BASE);
}

function scrambled(seed: number): number {
  return Math.imul(seed, SPREAD) & MAX_SEED;
}

function unscrambled(number: number): number {
  return Math.imul(number, INVERSE) & MAX_SEED;
}

/** Newton's iteration for the inverse of an odd number modulo a power of two: each step doubles the right bits. */
const INVERSE = [0, 1, 2, 3, 4].reduce(
  (inverse) => Math.imul(inverse, 2 - Math.imul(SPREAD, inverse)),
  SPREAD,
);
