/**
 * Processor time of the page's main thread within each animation frame, from the browser's own trace: what other programs and the
 * driver's process take on a shared machine is not in it, and waiting is not. Called from a test in the page, run beside the browser.
 */
import type { CDPSession } from 'playwright-core';
import type { BrowserCommand } from 'vitest/node';

interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly ts: number;
  readonly tid: number;
  readonly dur?: number;
  readonly tdur?: number;
}

/** Milliseconds of a frame's callbacks: by the clock, of the processor, and of the latter what collecting garbage took. */
export interface FrameTime {
  readonly clock: number;
  readonly processor: number;
  readonly garbage: number;
}

let session: CDPSession | null = null;
let events: TraceEvent[] = [];

/** Begins to trace the page. */
export const startTrace: BrowserCommand<[]> = async ({ context, page }) => {
  session = await context.newCDPSession(page);
  events = [];
  session.on('Tracing.dataCollected', ({ value }) => events.push(...(value as unknown as TraceEvent[])));
  await session.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: { recordMode: 'recordUntilFull', includedCategories: ['devtools.timeline', 'v8'] },
  });
};

/** Ends it and answers the frames in order. */
export const stopTrace: BrowserCommand<[]> = async (): Promise<readonly FrameTime[]> => {
  if (session === null) throw new Error('no trace was started');
  const traced = session;
  const done = new Promise((resolve) => traced.once('Tracing.tracingComplete', resolve));
  await traced.send('Tracing.end');
  await done;
  await traced.detach();
  session = null;
  const collecting = events.filter(({ name, ph }) => ph === 'X' && /^(Minor|Major)GC$/.test(name));
  return events
    .filter(({ name, ph }) => name === 'FireAnimationFrame' && ph === 'X')
    .map(({ ts, tid, dur = 0, tdur = 0 }) => ({
      clock: dur / 1000,
      processor: tdur / 1000,
      garbage:
        collecting
          .filter((gc) => gc.tid === tid && gc.ts >= ts && gc.ts < ts + dur)
          .reduce((sum, gc) => sum + (gc.tdur ?? gc.dur ?? 0), 0) / 1000,
    }));
};
