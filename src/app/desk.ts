/** The desk: takes drills, keeps them, goes on with them, opens and saves logs. Knows no markup. */
import { computed, effect, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import { createDrill } from '../drill/createDrill.ts';
import type { Snapshot } from '../drill/types.ts';
import { act } from '../engine/acts/act.ts';
import { appendEntry, newLog } from '../engine/acts/log.ts';
import { logLimits, parseLog } from '../engine/acts/logForm.ts';
import type { Act, Log } from '../engine/acts/types.ts';
import { limits } from '../engine/scenario/limits.ts';
import { usualWeights } from '../engine/score/weights.ts';
import { build } from '../engine/world/build.ts';
import type { World } from '../engine/world/types.ts';
import { createPhotos, photosFrom, photosText } from '../screens/photos/createPhotos.ts';
import { createPlaying } from '../screens/playing.ts';
import { settingsFrom } from '../screens/settings.ts';
import type { Caption, Desk, Offered, Playing, SceneState, Settings, Way } from '../screens/types.ts';
import type { Judge } from './judge.ts';
import type { Kept } from './kept.ts';
import type { KeptWeights } from './keptWeights.ts';
import { type Library, offeredFrom } from './library.ts';
import { SEED } from './prover.ts';
import type { Shelf } from './shelf.ts';

export interface DeskParts {
  readonly library: Library;
  readonly kept: Kept;
  readonly shelf: Shelf;
  readonly weights: KeptWeights;
  /** The drill on the screen; the desk alone writes it. */
  readonly playing: Signal<Playing | null>;
  readonly lessMotion: boolean;
  readonly narrow: () => boolean;
  readonly scene: ReadonlySignal<SceneState>;
  /** Has the picture fetched where no drill is on the screen. */
  readonly wantScene: () => void;
  readonly captions: ReadonlySignal<readonly Caption[]>;
  /** Hands a file to the person. */
  readonly handOut: (name: string, text: string) => void;
  /** A seed of a new drill. */
  readonly seed: () => number;
  readonly judge: Judge;
  /** Calls back when another tab or window has changed the kept log. */
  readonly onKeptElsewhere: (changed: () => void) => void;
}

interface How {
  readonly way: Way;
  readonly until: number | null;
}

/** Practice is kept nowhere. */
const isKept = (way: Way): boolean => way === 'scored' || way === 'exam';

const settingsKey = 'loose-tie.settings';
/** Holds the number of acts of a kept drill that has ended. */
const endedKey = 'loose-tie.ended';

/** Holds the photos of the kept drill. */
const photosKey = 'loose-tie.photos';

const fileName = ({ scenario, entries }: Log): string => `loose-tie-${scenario}-${entries.length}-acts.json`;

/** A log of acts done one after the other; what is refused is left out. */
const logOf = (start: World, acts: readonly Act[], seed: number): Log => {
  let [world, log] = [start, newLog(start, seed)];
  for (const each of acts) {
    const done = act(world, each);
    if (!done.ok) continue;
    world = done.world;
    log = appendEntry(log, each, world);
  }
  return log;
};

/** How the scenario of a log may be got that was drawn and is not kept here. */
const fromWhere = ({ variant }: Log): string =>
  variant === undefined ? '' : ` It was drawn from ${variant.of} by number ${variant.seed}: draw it again first.`;

/** Everything the screens ask for, over the parts of this device. */
export const createDesk = (parts: DeskParts): Desk => {
  const { kept, library, playing } = parts;
  const settings: Signal<Settings> = signal(settingsFrom(kept.text(settingsKey), parts.lessMotion));
  const problem = signal<string | null>(
    library.problems.length > 0 ? `A scenario cannot be read: ${library.problems.join('; ')}` : null,
  );
  const running = signal<Log | null>(kept.log());
  /** The drill that a practice run went on from. */
  let scored: Log | null = null;
  let warned = false;
  /** Two tabs keep one log between them: whoever acted last has it. Said once for each time one was overtaken. */
  let overtaken = false;

  effect(() => {
    kept.saveText(settingsKey, JSON.stringify(settings.value));
  });

  parts.onKeptElsewhere(() => {
    const theirs = kept.log();
    const mine = playing.peek()?.snapshot.peek();
    if (mine === undefined) {
      running.value = theirs;
    } else if (theirs !== null && mine.stage !== 'debrief' && !overtaken) {
      overtaken = true;
      problem.value =
        'A drill goes on in another tab or window of this browser, and only the one acted in last is kept on this device. Close one of them; save the log of this one first if you want it.';
    }
  });

  /** Scenarios that somebody opened from files of their own. */
  const opened = new Map<string, Offered>();
  const offeredWith = (wanted: string): Offered | undefined =>
    [...library.offered, ...parts.shelf.offered.peek(), ...opened.values()].find(({ hash }) => hash === wanted);
  const offeredOf = (log: Log): Offered | undefined => offeredWith(log.scenarioHash);

  const keep = ({ log, stage }: Snapshot): void => {
    overtaken = false;
    kept.saveText(endedKey, stage === 'debrief' ? String(log.entries.length) : '');
    running.value = log;
    const saved = kept.saveLog(log);
    if (saved.ok) {
      warned = false;
    } else if (!warned) {
      warned = true;
      problem.value = `The drill cannot be kept on this device (${saved.why}). It goes on as long as this page is open; save its log as a file before you close it.`;
    }
  };

  /** Time is up: the drill ends with what had been reported by then. */
  const callTime = (until: number | null): void => {
    const now = playing.peek();
    if (until === null || now === null) return;
    const { world } = now.snapshot.peek();
    if (world.ended !== null || world.clock.minute < until) return;
    now.send({ act: 'hand-over' });
    problem.value = `Time is up: the exam ends after ${until} minutes, with what you had reported by then.`;
  };

  const play = (
    { scenario, hash, par }: Offered,
    seed: number,
    log?: Log,
    how: How = { way: 'scored', until: null },
  ): boolean => {
    const { way, until } = how;
    const created = createDrill({ world: build(scenario, hash, seed), seed, par, log, judgedElsewhere: true });
    if (!created.ok) {
      problem.value = `That log cannot be played again: ${created.problem.words}.`;
      return false;
    }
    const { drill } = created;
    parts.judge.begin({ scenario, hash, seed, par, log: log ?? null, weights: parts.weights.now.peek() });
    const askJudge = (): void => {
      const { stage, score } = drill.snapshot();
      if (stage === 'debrief' && score === null) parts.judge.ended(drill.replay(), (worked) => drill.judged(worked));
    };
    const whose = `${hash}-${seed}`;
    const photos = createPhotos(log === undefined ? [] : photosFrom(kept.text(photosKey), whose), (taken) => {
      if (!isKept(way)) return;
      const saved = kept.saveText(photosKey, photosText(taken, whose));
      if (!saved.ok)
        problem.value = `Photos cannot be kept on this device (${saved.why}); save those you want as files.`;
    });
    playing.value = createPlaying(drill, {
      photos,
      way,
      until,
      captions: parts.captions,
      narrow: parts.narrow,
      onActed: (act) => {
        if (isKept(way)) keep(drill.snapshot());
        parts.judge.act(act);
        askJudge();
        callTime(until);
      },
      onDefect: (error) => {
        console.error(error);
        const words = error instanceof Error ? error.message : String(error);
        problem.value = `The program failed in that act (${words}). Everything before it is in the log; load the page again to go on from there.`;
      },
    });
    askJudge();
    return true;
  };

  const playLog = (log: Log): boolean => {
    const offered = offeredOf(log);
    if (offered === undefined) {
      problem.value = `That log was made with another scenario, or another version of it (${log.scenario}).${fromWhere(log)}`;
      return false;
    }
    return play(offered, log.seed, log);
  };

  const leave = (): void => {
    parts.judge.leave();
    playing.value = null;
  };

  return {
    library: library.offered,
    settings,
    playing,
    scene: parts.scene,
    wantScene: parts.wantScene,
    problem,
    keptDrill: computed(() => {
      const log = running.value;
      if (log === null || log.entries.length === 0) return null;
      return {
        title: offeredOf(log)?.scenario.title ?? log.scenario,
        acts: log.entries.length,
        ended: kept.text(endedKey) === String(log.entries.length),
      };
    }),
    take: (offered, exam) => {
      problem.value = null;
      if (exam === undefined) play(offered, parts.seed());
      else play(offered, exam.seed, undefined, { way: 'exam', until: exam.minutes });
    },
    goOnFrom: (acts) => {
      const now = playing.value;
      const log = now?.snapshot.value.log;
      const offered = log && offeredOf(log);
      if (!now || !log || !offered) return;
      problem.value = null;
      if (isKept(now.way)) scored = log;
      play(
        offered,
        log.seed,
        { ...log, entries: log.entries.slice(0, acts) },
        { way: now.way === 'shown' ? 'shown' : 'practice', until: null },
      );
    },
    goOn: () => {
      problem.value = null;
      if (running.value !== null) playLog(running.value);
    },
    backToScored: () => {
      problem.value = null;
      // What a proof showed was opened beside no drill.
      if (scored !== null) playLog(scored);
      else leave();
    },
    forget: () => {
      running.value = null;
      kept.forgetLog();
      kept.saveText(photosKey, '');
    },
    openLog: async (file) => {
      problem.value = null;
      if (file.size > 4 * logLimits.characters) {
        problem.value = `${file.name} is far too long for a log of a drill.`;
        return;
      }
      const read = parseLog(await file.text());
      if (!read.ok) {
        problem.value = `${file.name} is no log of a drill: ${read.problems.slice(0, 3).join('; ')}`;
        return;
      }
      playLog(read.log);
    },
    saveLog: () => {
      const log = playing.value?.snapshot.value.log ?? running.value;
      if (log !== null) parts.handOut(fileName(log), `${JSON.stringify(log, null, 1)}\n`);
    },
    weights: computed(() => {
      const { name } = parts.weights.now.value;
      return { name, isUsual: name === usualWeights.name };
    }),
    openWeights: async (file) => {
      problem.value = await parts.weights.open(file);
    },
    usualWeights: () => {
      problem.value = null;
      parts.weights.backToUsual();
    },
    shelf: parts.shelf.offered,
    openScenario: async (file) => {
      if (file.size > 4 * limits.fileLength) {
        return { ok: false, problems: [`${file.name} is far too long for a scenario.`] };
      }
      const read = offeredFrom(await file.text(), file.name);
      if (read.ok) opened.set(read.offered.hash, read.offered);
      return read;
    },
    openMoment: (offered, acts) => {
      problem.value = null;
      const log = logOf(build(offered.scenario, offered.hash, SEED), acts, SEED);
      scored = null;
      play(offered, SEED, log, { way: 'shown', until: null });
    },
    saveScenario: ({ scenario, text }) => {
      if (text !== undefined) parts.handOut(`${scenario.id}.yaml`, text);
    },
    putAway: ({ hash }) => parts.shelf.remove(hash),
    offeredWith,
    someSeed: () => parts.seed() % 10_000,
    tryAgain: () => {
      const log = playing.value?.snapshot.value.log;
      const offered = log && offeredOf(log);
      if (offered) play(offered, parts.seed());
    },
    leave,
  };
};
