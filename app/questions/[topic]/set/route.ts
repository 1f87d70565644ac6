import { askSet } from '../../ask-set';
import { parseRules, parseSeed, parseTopic } from '../../set-address';

/** As many as a lesson has room for; the page of the topic has more. */
const IN_A_LESSON = 3;

/** A few questions as data, for a lesson that asks them in its own page: `?rules=canada&seed=7`. */
export async function GET(
  request: Request,
  { params }: { readonly params: Promise<{ readonly topic: string }> },
): Promise<Response> {
  const topic = parseTopic((await params).topic);
  const asked = new URL(request.url).searchParams;
  const rules = parseRules(asked.get('rules'));
  const seed = parseSeed(asked.get('seed'));
  if (topic === undefined)
    return Response.json({ problem: 'There are no questions on that.' }, { status: 404 });
  if (rules === undefined || seed === undefined) {
    const problem = 'rules has to be a rule set and seed a whole number, as in ?rules=canada&seed=7';
    return Response.json({ problem }, { status: 400 });
  }
  return Response.json(askSet({ topic, rules, seed }, IN_A_LESSON));
}
