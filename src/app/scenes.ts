/** The picture: fetched once a call is on the screen, so that ticket and sheets never wait for it. */
import { effect, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { Playing, SceneState } from '../screens/types.ts';

/** Whether this browser draws in three dimensions at all. */
const draws = (): boolean => {
  try {
    const context = document.createElement('canvas').getContext('webgl2');
    context?.getExtension('WEBGL_lose_context')?.loseContext();
    return context !== null;
  } catch {
    return false;
  }
};

/** The picture, fetched when the first drill is taken or when it is wanted otherwise. */
export interface SceneSource {
  readonly state: ReadonlySignal<SceneState>;
  want(): void;
}

export const sceneFor = (playing: ReadonlySignal<Playing | null>): SceneSource => {
  const state: Signal<SceneState> = signal({ is: 'loading' });
  let asked = false;
  const open = async (): Promise<void> => {
    if (!draws()) {
      state.value = { is: 'absent', why: 'This browser does not draw in three dimensions (WebGL).' };
      return;
    }
    const { mountScene } = await import('../scene/mountScene.ts');
    state.value = { is: 'ready', mount: mountScene };
  };
  const want = (): void => {
    if (asked) return;
    asked = true;
    open().catch((error: unknown) => {
      console.error(error);
      state.value = { is: 'absent', why: 'The picture could not be loaded.' };
    });
  };
  effect(() => {
    if (playing.value !== null) want();
  });
  return { state, want };
};
