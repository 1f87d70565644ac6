'use client';

import { type RefObject, useEffect, useMemo, useRef } from 'react';

type Place = 'stage' | 'marks' | 'review' | 'result' | 'card';

const WHERE: Readonly<Record<Place, string>> = {
  stage: '#stage-heading',
  marks: '#marks-heading',
  review: '#review-heading',
  result: '#result-heading',
  card: '#picked-name',
};

/** The breakpoints of the card's styles: under the wall on a narrow screen, and over it where the screen is also high enough. */
const NARROW = '(max-width: 59.99rem)';
const OVER_IT = `${NARROW} and (min-height: 30rem)`;

/** Between what was picked and the card over the wall, px. */
const GAP = 12;

/** Moves the keyboard's focus to where the reader's last step leads, once that place is drawn. */
export function useFocusMoves() {
  const room = useRef<HTMLDivElement>(null);
  const next = useRef<Place | 'wall' | null>(null);
  const leftFrom = useRef<Element | null>(null);

  useEffect(() => {
    const place = next.current;
    if (place === null) return;
    const there = place === 'wall' ? leftFrom.current : room.current?.querySelector(WHERE[place]);
    // What shows the card or the result may still be on its way.
    if (!there) return;
    next.current = null;
    const byHand = place === 'wall' || place === 'card';
    // On a low screen wall and card follow one another: the focus brings its own into sight.
    const isLow = byHand && matches(NARROW) && !matches(OVER_IT);
    focusOn(there, byHand && !isLow);
    // The card lies over the lower part of a narrow screen: the wall has to move up from under it.
    if (place === 'card' && matches(OVER_IT)) {
      toTop(room.current);
      clearOf(there, room.current);
    }
  });

  return useMemo(
    () => ({
      room: room as RefObject<HTMLDivElement | null>,
      to: (place: Place) => {
        next.current = place;
      },
      toCard: () => {
        const active = document.activeElement;
        if (active?.closest('[data-stage]')) leftFrom.current = active;
        next.current = 'card';
      },
      backToWall: () => {
        next.current = leftFrom.current ? 'wall' : 'stage';
      },
      scrollToWall: () => {
        if (matches(NARROW)) toTop(room.current);
      },
    }),
    [],
  );
}

function focusOn(element: Element, preventScroll: boolean): void {
  if (element instanceof HTMLElement || element instanceof SVGElement) element.focus({ preventScroll });
}

function matches(screen: string): boolean {
  return window.matchMedia(screen).matches;
}

/** Where the view is taller than the space above the card, what was picked moves up too, as far as its top stays in sight. */
function clearOf(name: Element, room: HTMLElement | null): void {
  const picked = room?.querySelector('[data-stage] [data-ring="selected"]')?.getBoundingClientRect();
  const card = name.closest('section')?.getBoundingClientRect();
  if (!picked || !card) return;
  const under = picked.bottom + GAP - card.top;
  const most = picked.top - GAP;
  if (under > 0 && most > 0) window.scrollBy(0, Math.min(under, most));
}

function toTop(room: HTMLElement | null): void {
  room?.querySelector('[data-stage]')?.scrollIntoView({ block: 'start' });
}
