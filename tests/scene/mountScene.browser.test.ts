import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cdp } from 'vitest/browser';
import type { SceneHandle, SceneView } from '../../src/drill/sceneTypes.ts';
import { componentKind } from '../../src/engine/catalogue/components.ts';
import { partAlong } from '../../src/engine/senses/partAlong.ts';
import { eyeAt } from '../../src/engine/senses/signsFrom.ts';
import type { Aid } from '../../src/engine/senses/types.ts';
import { partById, placeOn } from '../../src/engine/world/edit.ts';
import { anglesTo, directionOf } from '../../src/scene/look/view.ts';
import { mountScene } from '../../src/scene/mountScene.ts';
import { fogWorld, snapshotAt } from './fogWorld.ts';
import { column, photograph, spread } from './photograph.ts';

const world = fogWorld();
const wait = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms));

const hostOf = (): HTMLElement => {
  const host = document.createElement('div');
  host.style.cssText = 'position:fixed;left:0;top:0;width:800px;height:450px';
  host.tabIndex = 0;
  document.body.append(host);
  return host;
};

const chosen: string[] = [];
let stand = 'p2.road';
let aid: Aid = 'eyes';
let frames = 0;
let brightness = 1;
const view: SceneView = {
  snapshot: () => snapshotAt(world, stand),
  onChoose: (part) => chosen.push(part),
  onHover: () => undefined,
  onTurn: () => undefined,
  aid: () => aid,
  reducedMotion: true,
  get brightness() {
    return brightness;
  },
};

/** Until the picture stands in place of its progress. */
const ready = async (host: HTMLElement): Promise<void> => {
  while (host.querySelector('[role=progressbar]')) await wait(50);
  await wait(300);
};

describe('the mounted picture', () => {
  const host = hostOf();
  const raf = window.requestAnimationFrame;
  let scene: SceneHandle;
  /** Until the loop sleeps again. */
  const settled = async (): Promise<void> => {
    for (let still = 0, last = -1; still < 3; ) {
      await wait(50);
      still = frames === last ? still + 1 : 0;
      last = frames;
    }
  };
  const goTo = async (to: string, by: Aid = 'eyes', toward: string | null = null): Promise<void> => {
    stand = to;
    aid = by;
    scene.update(view.snapshot());
    scene.lookToward(toward);
    await settled();
  };
  const pressMiddle = async (): Promise<string | undefined> => {
    chosen.length = 0;
    const top = [...host.querySelectorAll('canvas')].at(-1) as HTMLCanvasElement;
    const at = { clientX: 400, clientY: 225, bubbles: true, button: 0, buttons: 1, view: window };
    top.dispatchEvent(new MouseEvent('mousemove', { ...at, buttons: 0 }));
    await wait(150);
    top.dispatchEvent(new MouseEvent('mousedown', at));
    top.dispatchEvent(new MouseEvent('mouseup', { ...at, buttons: 0 }));
    await wait(200);
    return chosen.at(-1);
  };

  beforeAll(async () => {
    window.requestAnimationFrame = (callback) => {
      frames++;
      return raf.call(window, callback);
    };
    scene = mountScene(host, view);
    await ready(host);
  }, 90_000);
  afterAll(() => {
    window.requestAnimationFrame = raf;
    scene.dispose();
    host.remove();
  });

  it('says that it is there, on two canvases', () => {
    expect(scene.supported).toBe(true);
    expect(host.querySelectorAll('canvas').length).toBe(2);
  });

  it.each(world.stands.map(({ id }) => id))('is no even surface from %s', async (id) => {
    await goTo(id);
    expect(spread(await photograph(host))).toBeGreaterThan(6);
  });

  it.each(['p2.road', 'p2.field', 'p2.butt'])('shows the pole where the engine has it from %s', async (id) => {
    await goTo(id, 'eyes', 'p2.pole');
    const picture = await photograph(host);
    const middle = column(picture, 0.5);
    const sky = (column(picture, 0.22) + column(picture, 0.78)) / 2;
    expect(middle).toBeLessThan(sky - 12);
  });

  it('changes when one walks', async () => {
    await goTo('p2.road');
    const road = await photograph(host);
    await goTo('p2.field');
    const field = await photograph(host);
    let differing = 0;
    for (let i = 0; i < road.data.length; i += 4) {
      if (Math.abs((road.data[i] as number) - (field.data[i] as number)) > 10) differing++;
    }
    expect(differing / (road.data.length / 4)).toBeGreaterThan(0.2);
  });

  it.each([
    ['p2.road', 'p2.transformer'],
    ['p2.field', 'p2.cutout'],
    ['p2.field', 'p2.insulator'],
    ['p1.road', 'p1.tap-cutout'],
    ['a.yard', 'a.meter'],
    ['b.yard', 'b.transfer-switch'],
  ])('chooses from %s what the engine sees in the direction of %s', async (from, part) => {
    await goTo(from, 'eyes', part);
    const eye = eyeAt(world, from);
    const found = partById(world, part);
    const [feature] = componentKind(found.kind).features;
    const { pitch } = anglesTo(eye, placeOn(found, feature?.offset ?? [0, 0, 0]));
    const seen = (): string | null => partAlong(world, eye, directionOf({ yaw: scene.yaw(), pitch, zoom: 1 }));
    expect(await pressMiddle()).toBe(seen());
    scene.turn(0.2, 0);
    expect((await pressMiddle()) ?? null).toBe(seen());
  });

  it('turns by keys, and leaves Tab alone', async () => {
    await goTo('p2.road');
    const before = scene.yaw();
    host.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowLeft', cancelable: true }));
    await wait(100);
    expect(scene.yaw()).toBeGreaterThan(before);
    const tab = new KeyboardEvent('keydown', { key: 'Tab', cancelable: true });
    host.dispatchEvent(tab);
    expect(tab.defaultPrevented).toBe(false);
  });

  it('comes back to where one looked when a part is let go', async () => {
    await goTo('p2.road');
    const before = scene.yaw();
    scene.lookToward('p1.tap-cutout');
    await settled();
    expect(Math.abs(scene.yaw() - before)).toBeGreaterThan(0.3);
    scene.lookToward(null);
    await settled();
    expect(scene.yaw()).toBeCloseTo(before, 6);
  });

  it('goes on looking where one looked when another aid is taken', async () => {
    await goTo('p2.field');
    await goTo('p2.road');
    scene.turn(0.5, 0);
    await settled();
    const yaw = scene.yaw();
    aid = 'glass';
    scene.update(view.snapshot());
    await settled();
    expect(scene.yaw()).toBeCloseTo(yaw, 6);
  });

  it('sleeps when nothing changes', async () => {
    await goTo('p2.road');
    await wait(700);
    frames = 0;
    await wait(600);
    expect(frames).toBeLessThanOrEqual(1);
    scene.turn(0.1, 0);
    await wait(200);
    expect(frames).toBeGreaterThan(0);
  });

  it('leaves a dark rim round the field of the glass', async () => {
    await goTo('p2.road', 'glass', 'p2.insulator');
    const picture = await photograph(host);
    expect(column(picture, 0.02)).toBeLessThan(20);
    expect(column(picture, 0.5)).toBeGreaterThan(40);
    await goTo('p2.road');
  });

  it('is brighter by lamp near the pole than by eye', async () => {
    await goTo('p2.butt', 'eyes', 'p2.pole');
    const bare = column(await photograph(host), 0.5);
    await goTo('p2.butt', 'lamp', 'p2.pole');
    expect(column(await photograph(host), 0.5)).toBeGreaterThan(bare + 8);
  });

  it('has a flashlight that goes where one points while the headlamp stays with the look', async () => {
    await goTo('p2.road', 'lamp', 'p2.pole');
    const bare = column(await photograph(host), 0.5);
    const top = [...host.querySelectorAll('canvas')].at(-1) as HTMLCanvasElement;
    const point = async (clientX: number, clientY: number): Promise<void> => {
      top.dispatchEvent(new MouseEvent('mousemove', { clientX, clientY, bubbles: true, view: window }));
      await wait(150);
      await settled();
    };
    await point(400, 225);
    const lit = column(await photograph(host), 0.5);
    await point(40, 40);
    const away = column(await photograph(host), 0.5);
    expect(lit).toBeGreaterThan(bare + 5);
    expect(Math.abs(away - bare)).toBeLessThan(3);
  });

  it('follows its host to a portrait phone and back', async () => {
    await goTo('p2.road');
    const sizes = (): readonly (readonly [number, number])[] =>
      [...host.querySelectorAll('canvas')].map((c) => [c.clientWidth, c.clientHeight]);
    host.style.width = '390px';
    host.style.height = '600px';
    await wait(300);
    await settled();
    const tall = await photograph(host);
    expect(sizes()).toEqual([
      [390, 600],
      [390, 600],
    ]);
    expect(spread(tall)).toBeGreaterThan(6);
    expect(tall.width / tall.height).toBeCloseTo(390 / 600, 1);
    host.style.width = '800px';
    host.style.height = '450px';
    await wait(300);
    await settled();
    expect(sizes()[0]).toEqual([800, 450]);
  });

  it('takes over the pixels of another screen, and points there as before', async () => {
    await goTo('p2.field', 'eyes', 'p2.cutout');
    const before = await pressMiddle();
    const picture = host.querySelector('canvas') as HTMLCanvasElement;
    const screen = async (deviceScaleFactor: number): Promise<void> => {
      const tools = cdp() as unknown as { send(method: string, of: object): Promise<void> };
      await tools.send('Emulation.setDeviceMetricsOverride', {
        width: 1280,
        height: 720,
        deviceScaleFactor,
        mobile: false,
      });
      // A change that is only emulated is not told to the page: it is found in the next frame.
      scene.update(view.snapshot());
    };
    const size = () => [picture.width, picture.height, picture.clientWidth];
    expect(size()).toEqual([800, 450, 800]);
    await screen(0.5);
    await expect.poll(size, { timeout: 10_000 }).toEqual([400, 225, 800]);
    expect(await pressMiddle()).toBe(before);
    await screen(1);
    await expect.poll(size, { timeout: 10_000 }).toEqual([800, 450, 800]);
    expect(await pressMiddle()).toBe(before);
  });

  it('is brighter at a brighter setting, darker at a darker one', async () => {
    await goTo('p2.road');
    const at = async (setting: number): Promise<number> => {
      brightness = setting;
      scene.update(view.snapshot());
      await settled();
      return column(await photograph(host), 0.2);
    };
    const [dim, usual, bright] = [await at(0.5), await at(1), await at(2)];
    brightness = 1;
    expect(usual).toBeGreaterThan(dim + 8);
    expect(bright).toBeGreaterThan(usual + 8);
  });

  it('is photographed small and no nearer than the bare eye comes, and then shows what it showed', async () => {
    await goTo('p2.road', 'glass', 'p2.insulator');
    const shown = await photograph(host);
    const image = new Image();
    image.src = scene.photograph() ?? '';
    await image.decode();
    expect([image.naturalWidth, image.naturalHeight]).toEqual([480, 320]);
    expect(image.src.length).toBeLessThan(120_000);
    const copy = document.createElement('canvas');
    copy.width = 480;
    copy.height = 320;
    const context = copy.getContext('2d') as CanvasRenderingContext2D;
    context.drawImage(image, 0, 0);
    const photo = context.getImageData(0, 0, 480, 320);
    // Through the glass the insulator fills the middle; on a photo the sky stands beside it.
    expect(Math.abs(column(photo, 0.3) - column(photo, 0.1))).toBeLessThan(12);
    expect(spread(photo)).toBeGreaterThan(1);
    await settled();
    expect(Math.abs(column(await photograph(host), 0.5) - column(shown, 0.5))).toBeLessThan(3);
  });

  it('comes back after its context was lost', async () => {
    await goTo('p2.road');
    const world3d = host.querySelector('canvas') as HTMLCanvasElement;
    const lose = world3d.getContext('webgl2')?.getExtension('WEBGL_lose_context');
    lose?.loseContext();
    await wait(300);
    scene.turn(0.1, 0);
    await wait(200);
    lose?.restoreContext();
    await wait(1500);
    await goTo('p2.field');
    expect(spread(await photograph(host))).toBeGreaterThan(6);
  });
});

describe('a picture taken down or refused', () => {
  it('lets the page answer while it is made ready', async () => {
    const host = hostOf();
    const scene = mountScene(host, view);
    let turns = 0;
    while (host.querySelector('[role=progressbar]')) {
      await wait(0);
      turns++;
    }
    expect(turns).toBeGreaterThan(20);
    scene.dispose();
    host.remove();
  }, 60_000);

  it('leaves no canvas behind', async () => {
    const host = hostOf();
    const scene = mountScene(host, view);
    await wait(1200);
    expect(host.querySelectorAll('canvas').length).toBe(2);
    scene.dispose();
    await wait(400);
    expect(host.childElementCount).toBe(0);
    host.remove();
  });

  it('mounts nothing where no WebGL is given', () => {
    const host = hostOf();
    const { getContext } = HTMLCanvasElement.prototype;
    HTMLCanvasElement.prototype.getContext = (() => null) as typeof getContext;
    const scene = mountScene(host, view);
    HTMLCanvasElement.prototype.getContext = getContext;
    expect(scene.supported).toBe(false);
    expect(host.childElementCount).toBe(0);
    scene.update(view.snapshot());
    scene.turn(1, 0);
    scene.dispose();
    host.remove();
  });
});
