/** Starts the app: the start sheet first; picture and sound are fetched when a drill is taken. */
import { signal } from '@preact/signals';
import { render } from 'preact';
import { Screen } from '../screens/Screen.tsx';
import '../screens/styles/screens.css';
import type { Desk, Playing } from '../screens/types.ts';
import { createDesk } from './desk.ts';
import { createDrawer } from './drawer.ts';
import { drawWorker } from './drawWorker.ts';
import { handOut } from './handOut.ts';
import { afterPaint, createJudge } from './judge.ts';
import { judgeWorker } from './judgeWorker.ts';
import { browserStore, createKept, logKey } from './kept.ts';
import { createKeptWeights } from './keptWeights.ts';
import { builtIn } from './library.ts';
import { createProver } from './prover.ts';
import { proverWorker } from './proverWorker.ts';
import { sceneFor } from './scenes.ts';
import { createShelf } from './shelf.ts';
import { captionsOf, soundDrill } from './sounds.ts';

const start = (root: HTMLElement): void => {
  const kept = createKept(browserStore());
  const playing = signal<Playing | null>(null);
  const scene = sceneFor(playing);
  const shelf = createShelf(kept);
  const desk = createDesk({
    library: builtIn(),
    kept,
    weights: createKeptWeights(kept),
    shelf,
    playing,
    lessMotion: matchMedia('(prefers-reduced-motion: reduce)').matches,
    narrow: () => matchMedia('(max-width: 600px)').matches,
    scene: scene.state,
    wantScene: scene.want,
    captions: captionsOf(playing),
    handOut,
    judge: createJudge({ worker: judgeWorker, afterPaint }),
    onKeptElsewhere: (changed) =>
      window.addEventListener('storage', ({ key }) => {
        if (key === null || key === logKey) changed();
      }),
    seed: () => crypto.getRandomValues(new Uint32Array(1))[0] ?? 1,
  });
  const working: Desk = {
    ...desk,
    prover: createProver(proverWorker),
    drawer: createDrawer({ worker: drawWorker, shelve: shelf.add }),
  };
  soundDrill(desk, kept, desk.problem);
  window.addEventListener('unhandledrejection', ({ reason }) => {
    desk.problem.value = `Something failed in the background (${reason instanceof Error ? reason.message : String(reason)}). The log is kept.`;
  });
  render(<Screen desk={working} />, root);
};

const root = document.getElementById('app');
if (root === null) throw new Error('the page has no place for the app');
start(root);
