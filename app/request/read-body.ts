import { Refusal } from './refusal';

/** The most bytes a body may have where a handler does not say otherwise. */
export const MOST_BYTES = 64 * 1024;

/** How deep lists and records may lie in one another: deeper is no form of ours, and costs memory to walk. */
const MOST_DEEP = 32;

/** No type that only begins so, and no other encoding than the one that is read. */
const JSON_TYPE = /^application\/json(; ?charset="?utf-8"?)?$/i;

/** The JSON a request brings. @throws Refusal when it is too long, no JSON, or holds what no database keeps. */
export async function readBody(request: Request, mostBytes: number): Promise<unknown> {
  if (!JSON_TYPE.test(request.headers.get('content-type') ?? '')) {
    throw new Refusal(415, 'This takes JSON only.');
  }
  const text = await readText(request, mostBytes);
  const body = parseJson(text);
  if (depthOf(text) > MOST_DEEP) throw new Refusal(400, 'This is nested too deeply.');
  // PostgreSQL keeps no NUL in a text, and none of our forms makes one.
  if (/\\u0000/.test(text)) throw new Refusal(400, 'A text holds a sign that cannot be kept.');
  return body;
}

/** Stops reading at the cap, whatever length was announced. */
async function readText(request: Request, mostBytes: number): Promise<string> {
  const chunks: Uint8Array[] = [];
  let bytes = 0;
  for await (const chunk of request.body ?? []) {
    bytes += chunk.byteLength;
    if (bytes > mostBytes)
      throw new Refusal(413, `This is too long: ${Math.floor(mostBytes / 1024)} KB at most.`);
    chunks.push(chunk);
  }
  return Buffer.concat(chunks).toString('utf8');
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    throw new Refusal(400, 'This is not JSON.');
  }
}

/** Counted on brackets outside of texts. One pass: whatever was sent, each sign is looked at once. */
function depthOf(json: string): number {
  let deepest = 0;
  let depth = 0;
  let inText = false;
  for (let at = 0; at < json.length; at += 1) {
    const sign = json[at];
    if (inText && sign === '\\') at += 1;
    else if (sign === '"') inText = !inText;
    else if (!inText && (sign === '[' || sign === '{')) deepest = Math.max(deepest, ++depth);
    else if (!inText && (sign === ']' || sign === '}')) depth -= 1;
  }
  return deepest;
}
