/** The host of the picture; its arrow buttons look around for who cannot or will not drag. */
import { useEffect, useRef } from 'preact/hooks';
import type { SceneHandle } from '../../drill/sceneTypes.ts';
import { standById } from '../../engine/world/edit.ts';
import type { Desk, Playing } from '../types.ts';
import { nameOf } from '../words.ts';
import { ViewTools } from './ViewTools.tsx';

const step = Math.PI / 12;
const turns: Readonly<Record<string, readonly [yaw: number, pitch: number]>> = {
  ArrowLeft: [step, 0],
  ArrowRight: [-step, 0],
  ArrowUp: [0, step / 2],
  ArrowDown: [0, -step / 2],
};
const arrows = [
  ['ArrowLeft', '◀', 'Look left'],
  ['ArrowUp', '▲', 'Look up'],
  ['ArrowDown', '▼', 'Look down'],
  ['ArrowRight', '▶', 'Look right'],
] as const;

export const Picture = ({ desk, playing }: { desk: Desk; playing: Playing }) => {
  const host = useRef<HTMLDivElement>(null);
  const handle = useRef<SceneHandle | null>(null);
  const scene = desk.scene.value;
  const mount = scene.is === 'ready' ? scene.mount : null;
  useEffect(() => {
    const el = host.current;
    if (!el || !mount) return;
    const mounted = mount(el, {
      snapshot: () => playing.snapshot.peek(),
      onChoose: (part) => playing.choose(part),
      onHover: (part) => {
        playing.hovered.value = part;
      },
      onTurn: (yaw) => {
        playing.yaw.value = yaw;
      },
      aid: () => playing.aid.peek(),
      get reducedMotion() {
        return desk.settings.peek().lessMotion;
      },
      get brightness() {
        return desk.settings.peek().brightness;
      },
    });
    handle.current = mounted;
    playing.camera.value = mounted.supported ? () => mounted.photograph() : null;
    playing.yaw.value = mounted.yaw();
    if (!mounted.supported) playing.listOpen.value = true;
    const ends = [
      playing.snapshot.subscribe((now) => mounted.update(now)),
      playing.aid.subscribe(() => mounted.update(playing.snapshot.peek())),
      desk.settings.subscribe(() => mounted.update(playing.snapshot.peek())),
      playing.chosen.subscribe((part) => mounted.lookToward(part)),
    ];
    return () => {
      for (const end of ends) end();
      handle.current = null;
      playing.camera.value = null;
      mounted.dispose();
    };
  }, [mount, playing]);
  const turn = (key: string): boolean => {
    const by = turns[key];
    if (by === undefined || handle.current === null) return false;
    handle.current.turn(...by);
    return true;
  };
  if (scene.is === 'absent') return null;
  const snapshot = playing.snapshot.value;
  const stand = standById(snapshot.world, snapshot.stand)?.name ?? '';
  const over = playing.hovered.value;
  return (
    <>
      {/* biome-ignore lint/a11y/useSemanticElements: no element means a picture that one looks around in */}
      <div
        ref={host}
        id="picture"
        class="picture"
        role="group"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the canvas in it is looked around in by keys
        tabIndex={0}
        aria-label={`The picture, seen from: ${stand}. Arrow keys look around; the list, key L, holds everything in it.`}
        onKeyDown={(event) => {
          if (turn(event.key)) event.preventDefault();
        }}
      />
      {scene.is === 'loading' && (
        <p class="picture-note">The picture is on its way. The list and the sheets work already.</p>
      )}
      <p class="over" aria-hidden="true">
        {over === null ? '' : nameOf(snapshot.world, over)}
      </p>
      {mount && <ViewTools playing={playing} />}
      {mount && (
        <fieldset class="arrows">
          <legend class="sr-only">Look around</legend>
          {arrows.map(([key, sign, name]) => (
            <button key={key} type="button" aria-label={name} onClick={() => turn(key)}>
              {sign}
            </button>
          ))}
        </fieldset>
      )}
    </>
  );
};
