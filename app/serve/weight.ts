/** Pages and pictures that are the same for everybody and never change, each a wall or more to lay and draw. */
const KEPT =
  /^\/(walls\/[^/]+(\/places\/[^/]+)?|practise\/(pair|guided)\/[^/]+|practise\/build|sound-wall\.svg)$/;

/** What else lays walls, or reads a whole group: pages of set work, its drawings and exports, an attempt begun, walls marked again. */
const HEAVY =
  /^\/(my-work\/.|desk\/(work|learners|groups)\/|api\/(attempts|work|export|book\/(marks|mark-again))(\/|$))/;

/** `light`: answered by this process. `heavy`: by a page maker. `kept`: by a page maker, once. Whatever the method: asked in another way a page costs the same. */
export function weightOf(path: string): 'light' | 'heavy' | 'kept' {
  if (KEPT.test(path)) return 'kept';
  return HEAVY.test(path) ? 'heavy' : 'light';
}
