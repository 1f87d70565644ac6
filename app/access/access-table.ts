/**
 * Who may pass. The rule looks at the person and at every record the address or the body names (`group`, `work`, `learner`,
 * `attempt`: see RECORDS in lib/store/record-owner.ts): all of them must lie in one group, and
 * - 'instructor' has to be an instructor of that group (lead or co-instructor; the owner of the site passes for all groups),
 * - 'lead' has to be its lead,
 * - 'learner' has to be a learner of that group; an attempt or a learner named has to be their own.
 */
export type Rule = 'anyone' | 'owner' | 'instructor' | 'lead' | 'learner';

/**
 * Every page and every route handler of the site, once. tests/app/access-table.test.ts holds it against the files on disk: a route
 * without a row fails, and so does a row without a route. Pages by address, handlers by method and address, as Next spells them.
 */
export const ACCESS = {
  '/': 'anyone',
  '/drawings': 'anyone',
  '/drawings/[name]': 'anyone',
  '/glossary': 'anyone',
  '/lessons': 'anyone',
  '/lessons/[slug]': 'anyone',
  '/limits': 'anyone',
  '/limits/[rules]': 'anyone',
  '/questions': 'anyone',
  '/instruments': 'anyone',
  '/practise': 'anyone',
  '/practise/build': 'anyone',
  '/practise/guided': 'anyone',
  '/practise/guided/[code]': 'anyone',
  '/practise/pair': 'anyone',
  '/practise/pair/[code]': 'anyone',
  '/practise/quick': 'anyone',
  '/questions/[topic]': 'anyone',
  '/safety': 'anyone',
  '/sources': 'anyone',
  '/walls': 'anyone',
  '/walls/[code]': 'anyone',
  'GET /lessons/pictures/[picture]': 'anyone',
  'GET /questions/[topic]/set': 'anyone',
  'GET /sound-wall.svg': 'anyone',

  // People. What 'anyone' opens here is guarded by a secret of its own: the start code, a password, a link, a PIN.
  '/set-up': 'anyone',
  '/sign-in': 'anyone',
  '/sign-in/code': 'anyone',
  '/reset/[token]': 'anyone',
  '/join': 'anyone',
  '/join/[code]': 'anyone',
  '/my-data': 'learner',
  '/desk/account': 'instructor',
  '/desk/people': 'owner',
  '/desk/groups/[group]/instructors': 'lead',
  'POST /api/people/set-up': 'anyone',
  'POST /api/people/sign-in': 'anyone',
  'POST /api/people/sign-in-code': 'anyone',
  'POST /api/people/sign-out': 'anyone',
  'POST /api/account/second-step/begin': 'instructor',
  'POST /api/account/second-step/confirm': 'instructor',
  'POST /api/account/second-step/turn-off': 'instructor',
  'POST /api/account/name': 'instructor',
  'POST /api/account/email': 'instructor',
  'POST /api/account/password': 'instructor',
  'POST /api/account/end-sessions': 'instructor',
  'POST /api/people/invite': 'owner',
  'POST /api/people/reset-link': 'owner',
  'POST /api/people/new-password': 'anyone',
  'POST /api/people/end-sessions': 'owner',
  'POST /api/people/take-off-second-step': 'owner',
  'POST /api/people/close-account': 'owner',
  'POST /api/people/co-instructor': 'lead',
  'POST /api/people/reset-pin': 'instructor',
  'POST /api/join/enter': 'anyone',
  'GET /api/join/my-data': 'learner',
  'POST /api/join/end-sessions': 'learner',
  'POST /api/join/delete-my-data': 'learner',

  // Groups and set work.
  '/desk': 'instructor',
  '/desk/groups/[group]': 'instructor',
  '/desk/groups/[group]/set': 'instructor',
  '/desk/work/[work]': 'instructor',
  '/desk/work/[work]/print': 'instructor',
  '/my-work': 'learner',
  '/my-work/[work]': 'learner',
  '/my-work/[work]/[place]': 'learner',
  'POST /api/groups': 'instructor',
  'POST /api/groups/roster': 'instructor',
  'POST /api/groups/time': 'instructor',
  'POST /api/groups/remove-learner': 'instructor',
  'POST /api/groups/put-back': 'instructor',
  'POST /api/groups/undo-joins': 'instructor',
  'POST /api/groups/joining': 'instructor',
  'POST /api/groups/join-code': 'instructor',
  'POST /api/groups/close': 'lead',
  'POST /api/groups/reopen': 'lead',
  'POST /api/work': 'instructor',
  'POST /api/work/edit': 'instructor',
  'POST /api/work/set': 'instructor',
  'POST /api/work/close': 'instructor',
  'POST /api/work/due': 'instructor',
  'GET /api/work/[work]/picture': 'instructor',
  'POST /api/attempts': 'learner',
  'GET /api/attempts/[attempt]/walls/[place]': 'learner',

  // Handing in.
  'POST /api/hand-in': 'learner',
  'GET /api/health': 'anyone',

  // Mark book.
  '/desk/groups/[group]/book': 'instructor',
  '/desk/work/[work]/book': 'instructor',
  '/desk/work/[work]/walls/[place]': 'instructor',
  '/desk/work/[work]/show': 'instructor',
  '/desk/learners/[learner]': 'instructor',
  'GET /api/book/marks/[work]/[place]': 'instructor',
  'POST /api/book/override': 'instructor',
  'POST /api/book/comment': 'instructor',
  'POST /api/book/release': 'instructor',
  'POST /api/book/mark-again': 'instructor',
  'POST /api/book/calendar-link': 'instructor',
  'GET /api/export/[group]/[file]': 'instructor',
  'GET /api/export/schema/mark-book-1.json': 'anyone',
  // The token is the secret: a calendar program cannot sign in.
  'GET /api/calendar/[token]': 'anyone',
} as const satisfies Readonly<Record<string, Rule>>;

export type Route = keyof typeof ACCESS;
export type PageRoute = Extract<Route, `/${string}`>;
export type HandlerRoute = Exclude<Route, PageRoute>;
