// @vitest-environment happy-dom
/** Photos on the sheets: taken by key, laid beside a finding, there again when the drill is gone on with. */
import { beforeEach, describe, expect, test } from 'vitest';
import type { Playing } from '../../../src/screens/types.ts';
import { type MadeDesk, makeDesk } from '../../app/makeDesk.ts';
import { quarryRoad } from '../../app/quarryRoad.ts';
import { button, doing, press, show } from '../show.tsx';

let made: MadeDesk;
let root: HTMLElement;

const image = 'data:image/jpeg;base64,/9j/4AAQ';

beforeEach(() => {
  made = makeDesk(quarryRoad);
  root = show(made.desk);
});

const toScene = (): Playing => {
  doing(() => button(root, /^Take this drill/).click());
  doing(() => button(root, 'Acknowledge the call').click());
  doing(() => button(root, 'Park outside the fall line').click());
  const playing = made.playing();
  doing(() => {
    playing.camera.value = () => image;
  });
  return playing;
};

describe('a photo taken by key', () => {
  test('lies on the findings sheet with its part and place in words, and no condition', () => {
    const playing = toScene();
    doing(() => playing.choose('p2.transformer'));
    press(document.body, 't');
    const photo = root.querySelector<HTMLImageElement>('.photo img');
    expect(photo?.src).toBe(image);
    expect(photo?.alt).toMatch(/^Photo: Transformer.*, from: road side, pole QR-14, 05:\d\d, by eye$/);
  });

  test('is no act: the log stays as it was', () => {
    const playing = toScene();
    const before = playing.snapshot.value.log;
    press(document.body, 't');
    expect(playing.photos.taken.value.length).toBe(1);
    expect(playing.snapshot.value.log).toBe(before);
  });

  test('lies beside the finding on the same part, and beside none when that is chosen', () => {
    const playing = toScene();
    doing(() => playing.choose('p2.transformer'));
    doing(() => playing.send({ act: 'call-finding', on: 'p2.transformer', condition: 'sound' }));
    press(document.body, 't');
    expect(root.querySelectorAll('.findings .photo').length).toBe(1);
    const select = root.querySelector<HTMLSelectElement>('.photos select');
    doing(() => {
      if (select) select.selectedIndex = 0;
      select?.dispatchEvent(new Event('change', { bubbles: true }));
    });
    expect(root.querySelectorAll('.findings .photo').length).toBe(0);
  });

  test('is there again when the kept drill is gone on with, and gone with it', () => {
    toScene();
    press(document.body, 't');
    doing(() => made.desk.leave());
    doing(() => made.desk.goOn());
    expect(made.playing().photos.taken.value.length).toBe(1);
    doing(() => made.desk.leave());
    doing(() => made.desk.forget());
    doing(() => made.desk.take(quarryRoad.offered[0] as never));
    expect(made.playing().photos.taken.value.length).toBe(0);
  });

  test('is refused in words where there is no picture', () => {
    const playing = toScene();
    doing(() => {
      playing.camera.value = null;
    });
    press(document.body, 't');
    expect(playing.photos.taken.value.length).toBe(0);
    expect(root.querySelector('.last')?.textContent).toContain('no picture to take a photo of');
  });
});

describe('the whole screen', () => {
  test('is asked for by the button, and given back by it', async () => {
    let filled: Element | null = null;
    const asked: string[] = [];
    const changed = (): boolean => document.dispatchEvent(new Event('fullscreenchange'));
    Object.defineProperties(document, {
      fullscreenEnabled: { configurable: true, value: true },
      fullscreenElement: { configurable: true, get: () => filled },
      exitFullscreen: {
        configurable: true,
        value: async () => {
          asked.push('back');
          filled = null;
          changed();
        },
      },
    });
    document.documentElement.requestFullscreen = async () => {
      asked.push('whole');
      filled = document.documentElement;
      changed();
    };
    const { ViewTools } = await import('../../../src/screens/scene/ViewTools.tsx');
    const { render } = await import('preact');
    const host = document.createElement('div');
    doing(() => render(<ViewTools playing={made.take()} />, host));
    doing(() => button(host, 'Full screen').click());
    await Promise.resolve();
    doing(() => undefined);
    expect(button(host, 'Full screen').getAttribute('aria-pressed')).toBe('true');
    doing(() => button(host, 'Full screen').click());
    expect(asked).toEqual(['whole', 'back']);
  });
});
