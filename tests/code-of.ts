/** A `/` after one of these begins a pattern; after anything else it divides. */
const BEFORE_PATTERN = /(^|[=(,:[!&|?{};+\-*%>~^]|\b(return|typeof|case|in|of))\s*$/;

/**
 * Blanks comments and what stands in quotes or patterns: what is left is what the machine is told to do. The values put
 * into a template stay. Every line keeps its number, so that a place in the code is the same place in the file.
 */
export function codeOf(text: string): string {
  return readCode(text).code;
}

/** Every pattern between slashes, as it is written. */
export function patternsOf(text: string): readonly string[] {
  return readCode(text).patterns;
}

function readCode(text: string): { readonly code: string; readonly patterns: readonly string[] } {
  let code = '';
  const patterns: string[] = [];
  let at = 0;
  /** For each open `${`: how many braces inside it are open. */
  const depths: number[] = [];

  const skip = (silent: RegExp) => {
    silent.lastIndex = at;
    const [found = text.charAt(at)] = silent.exec(text) ?? [];
    code += ' '.concat(found.replace(/[^\n]/g, ''));
    at += found.length;
    return found;
  };
  /** From a backtick or the end of a value to the next value or the closing backtick. */
  const skipTemplate = () => {
    skip(/[`}](?:\\[\s\S]|\$(?!\{)|[^`\\$])*(?:`|\$\{)/y);
    if (text.slice(at - 2, at) === '${') depths.push(0);
  };

  while (at < text.length) {
    const char = text.charAt(at);
    const pair = text.slice(at, at + 2);
    const inside = depths.at(-1);
    if (pair === '//') skip(/\/\/[^\n]*/y);
    else if (pair === '/*') skip(/\/\*[\s\S]*?\*\//y);
    else if (char === "'") skip(/'(?:\\.|[^'\\\n])*'/y);
    else if (char === '"') skip(/"(?:\\.|[^"\\\n])*"/y);
    else if (char === '/' && pair !== '/>' && BEFORE_PATTERN.test(code))
      patterns.push(skip(/\/(?:\\.|\[(?:\\.|[^\]\\\n])*\]|[^/\\\n[])+\/\w*/y));
    else if (char === '`') skipTemplate();
    else if (char === '}' && inside === 0) {
      depths.pop();
      skipTemplate();
    } else {
      if (inside !== undefined && char === '{') depths.push((depths.pop() ?? 0) + 1);
      if (inside !== undefined && char === '}') depths.push((depths.pop() ?? 0) - 1);
      code += char;
      at += 1;
    }
  }
  return { code, patterns };
}
