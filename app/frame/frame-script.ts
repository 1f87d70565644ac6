import { TARGETS_KEY, THEME_KEY, THEMES } from './theme';

/**
 * Runs before the first paint, so that a page chosen dark does not flash light, nor its buttons jump; and keeps what the reader chooses at
 * the foot of a page. Plain script in the head of every page, so that pages to read need no other. The attributes on <html> are the one
 * truth: the style sheet reads them. Storage may be forbidden: then a choice holds for this visit.
 */
export const FRAME_SCRIPT = `(() => {
const root = document.documentElement.dataset;
const kept = (key) => { try { return localStorage.getItem(key) } catch {} };
const set = (name, value) => { if (value) root[name] = value; else delete root[name] };
const choose = (name, key, value) => {
  set(name, value);
  try { if (value) localStorage.setItem(key, value); else localStorage.removeItem(key) } catch {}
};
const theme = kept(${JSON.stringify(THEME_KEY)});
if (${JSON.stringify(THEMES)}.includes(theme)) set('theme', theme);
if (kept(${JSON.stringify(TARGETS_KEY)}) === 'gloves') set('targets', 'gloves');
const who = () => set('who', (/(?:^|; )(?:__Host-)?who=(desk|learner)/.exec(document.cookie) ?? [])[1]);
who();
document.addEventListener('visibilitychange', who);
document.addEventListener('change', ({ target }) => {
  if (target.name === 'site-theme') choose('theme', ${JSON.stringify(THEME_KEY)}, target.value);
  if (target.name === 'site-targets') choose('targets', ${JSON.stringify(TARGETS_KEY)}, target.checked ? 'gloves' : '');
});
document.addEventListener('DOMContentLoaded', () => {
  for (const field of document.getElementsByName('site-theme')) field.value = root.theme ?? '';
  for (const field of document.getElementsByName('site-targets')) field.checked = root.targets === 'gloves';
});
})()`;
