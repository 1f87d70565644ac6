import type { Browser } from 'playwright-core';

interface TraceEvent {
  readonly name: string;
  readonly ts: number;
}

/** What a zoom showed, ms. */
export interface Zoomed {
  /** From one frame on the screen to the next: the 95th of a hundred. */
  readonly frame95: number;
  /** From the last step to the picture drawn at rest, on the screen. */
  readonly rest: number;
}

/** Times of a zoom as the screen had it: from the browser's trace of the frames it really presented, not from when the script was done. */
export async function presented(browser: Browser, zoom: () => Promise<unknown>): Promise<Zoomed> {
  const session = await browser.newBrowserCDPSession();
  const events: TraceEvent[] = [];
  session.on('Tracing.dataCollected', ({ value }) => events.push(...(value as unknown as TraceEvent[])));
  const complete = new Promise((resolve) => session.once('Tracing.tracingComplete', resolve));
  await session.send('Tracing.start', {
    traceConfig: {
      includedCategories: ['blink.user_timing', 'disabled-by-default-display.framedisplayed'],
      excludedCategories: ['*'],
    },
  });
  await zoom();
  await session.send('Tracing.end');
  await complete;
  await session.detach();
  return zoomedIn(events);
}

function zoomedIn(events: readonly TraceEvent[]): Zoomed {
  const marked = (mark: string) => {
    const found = events.find(({ name }) => name === mark);
    if (found === undefined) throw new Error(`the trace has no ${mark}`);
    return found.ts;
  };
  const [start, last, end] = [marked('zoom-start'), marked('zoom-last'), marked('zoom-end')];
  const shown = events.filter(({ name }) => name === 'Display::FrameDisplayed').map(({ ts }) => ts);
  shown.sort((a, b) => a - b);
  const times = [start, ...shown.filter((ts) => ts > start && ts <= end)];
  const gaps = times.slice(1).map((ts, index) => (ts - (times[index] ?? ts)) / 1000);
  gaps.sort((a, b) => a - b);
  return {
    frame95: gaps[Math.floor(gaps.length * 0.95)] ?? Number.NaN,
    rest: ((shown.at(-1) ?? Number.NaN) - last) / 1000,
  };
}
