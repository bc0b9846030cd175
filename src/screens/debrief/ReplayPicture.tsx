/** The picture of a moment that is past: it can be looked around in, and nothing can be done in it. */
import { useEffect, useRef } from 'preact/hooks';
import type { SceneHandle } from '../../drill/sceneTypes.ts';
import type { Snapshot } from '../../drill/types.ts';
import type { Aid } from '../../engine/senses/types.ts';
import type { Desk } from '../types.ts';

const step = Math.PI / 12;
const turns: Readonly<Record<string, readonly [yaw: number, pitch: number]>> = {
  ArrowLeft: [step, 0],
  ArrowRight: [-step, 0],
  ArrowUp: [0, step / 2],
  ArrowDown: [0, -step / 2],
};

export interface ReplayPictureProps {
  readonly desk: Desk;
  readonly snapshot: Snapshot;
  readonly aid: Aid;
  /** Part in the middle of the view; null: as it lies ahead. */
  readonly toward: string | null;
  readonly label: string;
}

export const ReplayPicture = ({ desk, snapshot, aid, toward, label }: ReplayPictureProps) => {
  const host = useRef<HTMLDivElement>(null);
  const handle = useRef<SceneHandle | null>(null);
  const now = useRef({ snapshot, aid });
  now.current = { snapshot, aid };
  const scene = desk.scene.value;
  const mount = scene.is === 'ready' ? scene.mount : null;
  useEffect(() => {
    const el = host.current;
    if (el === null || mount === null) return;
    const mounted = mount(el, {
      snapshot: () => now.current.snapshot,
      onChoose: () => undefined,
      onHover: () => undefined,
      onTurn: () => undefined,
      aid: () => now.current.aid,
      get reducedMotion() {
        return desk.settings.peek().lessMotion;
      },
      get brightness() {
        return desk.settings.peek().brightness;
      },
    });
    handle.current = mounted;
    return () => {
      handle.current = null;
      mounted.dispose();
    };
  }, [mount]);
  useEffect(() => {
    handle.current?.update(snapshot);
    handle.current?.lookToward(toward);
  }, [snapshot, aid, toward, mount]);
  if (mount === null) {
    return (
      <p class="hint">{scene.is === 'absent' ? scene.why : 'The picture is on its way; the one-line works already.'}</p>
    );
  }
  return (
    // biome-ignore lint/a11y/useSemanticElements: no element means a picture that one looks around in
    <div
      ref={host}
      class="replay-picture"
      role="group"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: it is looked around in by keys
      tabIndex={0}
      aria-label={`${label} Arrow keys look around.`}
      onKeyDown={(event) => {
        const by = turns[event.key];
        if (by === undefined) return;
        event.preventDefault();
        handle.current?.turn(...by);
      }}
    />
  );
};
