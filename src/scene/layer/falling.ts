/**
 * Rain and snow on the layer above: three sheets of streaks or flakes at different depths, drawn once and slid across the picture;
 * the near one is sparse, fast and large. A still of them stands where motion is reduced.
 */
import type * as Phaser from 'phaser';
import type { Aid } from '../../engine/senses/types.ts';
import type { Air } from '../look/sky.ts';
import { fieldOf, type Look } from '../look/view.ts';
import { stream } from '../materials/noise.ts';

export interface Falls {
  /** 0 to 1. */
  readonly rain: number;
  readonly snow: number;
  readonly windMs: number;
  /** How bright drops look, 0 to 1. */
  readonly light: number;
  /** Where the view looks, radians, so that the sheets turn with it. */
  readonly yaw: number;
  readonly pitch: number;
  /** Radians of the picture's height. */
  readonly field: number;
}

/** What falls as seen on a look through an aid, under a sky of so many lux. */
export const fallsIn = (air: Air, skyLux: number, aid: Aid, look: Look, aspect: number): Falls => ({
  rain: air.rain,
  snow: air.snow,
  windMs: air.windMs,
  light: Math.min(1, 0.25 + 0.25 * Math.log10(1 + skyLux) + (aid === 'lamp' ? 0.35 : 0)),
  yaw: look.yaw,
  pitch: look.pitch,
  field: fieldOf(aspect, look.zoom),
});

/** Depths: count of drops, length in pixels, width, opacity, pixels a second. */
const rainSheets = [
  [46, 92, 1.5, 0.34, 1900],
  [110, 46, 1.1, 0.26, 1350],
  [210, 22, 0.8, 0.2, 900],
] as const;
const snowSheets = [
  [34, 3.1, 0.9, 150],
  [90, 2, 0.75, 100],
  [200, 1.2, 0.6, 64],
] as const;
const EDGE = 512;

const streaks = (c: CanvasRenderingContext2D, sheet: number): void => {
  const [count, length, width, alpha] = rainSheets[sheet] as (typeof rainSheets)[number];
  const next = stream(91 + sheet);
  c.lineCap = 'round';
  for (let i = 0; i < count; i++) {
    const [x, y] = [next() * EDGE, next() * EDGE];
    const l = length * (0.7 + 0.6 * next());
    const g = c.createLinearGradient(0, y, 0, y + l);
    g.addColorStop(0, 'rgba(222,230,238,0)');
    g.addColorStop(0.7, `rgba(222,230,238,${alpha})`);
    g.addColorStop(1, 'rgba(222,230,238,0)');
    for (const dy of [0, -EDGE]) {
      c.save();
      c.translate(0, dy);
      c.strokeStyle = g;
      c.lineWidth = width * (0.7 + 0.6 * next());
      c.beginPath();
      c.moveTo(x, y);
      c.lineTo(x, y + l);
      c.stroke();
      c.restore();
    }
  }
};

const flakes = (c: CanvasRenderingContext2D, sheet: number): void => {
  const [count, radius, alpha] = snowSheets[sheet] as (typeof snowSheets)[number];
  const next = stream(71 + sheet);
  for (let i = 0; i < count; i++) {
    const [x, y, r] = [next() * EDGE, next() * EDGE, radius * (0.6 + 0.7 * next())];
    const g = c.createRadialGradient(x, y, 0, x, y, r * 1.6);
    g.addColorStop(0, `rgba(245,248,252,${alpha})`);
    g.addColorStop(1, 'rgba(245,248,252,0)');
    c.fillStyle = g;
    c.fillRect(x - r * 2, y - r * 2, r * 4, r * 4);
  }
};

export class Falling {
  private readonly scene: Phaser.Scene;
  private sheets: Phaser.GameObjects.TileSprite[] = [];
  private kind: 'rain' | 'snow' | null = null;
  private seconds = 0;

  constructor(scene: Phaser.Scene) {
    this.scene = scene;
  }

  private make(kind: 'rain' | 'snow' | null): void {
    for (const sheet of this.sheets) sheet.destroy();
    this.sheets = [];
    this.kind = kind;
    if (kind === null) return;
    const { textures, scale, add } = this.scene;
    for (const i of [2, 1, 0]) {
      const key = `${kind} ${i}`;
      if (!textures.exists(key)) {
        const texture = textures.createCanvas(key, EDGE, EDGE);
        if (!texture) throw new Error(`no canvas for ${key}`);
        (kind === 'rain' ? streaks : flakes)(texture.getContext(), i);
        texture.refresh();
      }
      const sheet = add.tileSprite(0, 0, scale.width, scale.height, key).setOrigin(0.5).setDepth(-1);
      this.sheets.push(sheet);
    }
  }

  /** Moves on and shows what falls. */
  show(falls: Falls, seconds: number): void {
    const kind = falls.snow > 0 ? 'snow' : falls.rain > 0 ? 'rain' : null;
    if (kind !== this.kind) this.make(kind);
    if (kind === null) return;
    this.seconds += seconds;
    const { width, height } = this.scene.scale;
    const perRadian = height / Math.max(0.05, falls.field);
    const lean = kind === 'rain' ? Math.atan(falls.windMs / 7) : Math.atan(falls.windMs / 1.6) * 0.5;
    // Looking up one sees drops come toward one: they shorten and slow.
    const level = Math.max(0.25, Math.cos(falls.pitch));
    this.sheets.forEach((sheet, k) => {
      const i = 2 - k;
      const speed = kind === 'rain' ? (rainSheets[i]?.[4] ?? 1000) : (snowSheets[i]?.[3] ?? 100);
      const drift = kind === 'snow' ? 14 * Math.sin(this.seconds * (0.7 + 0.2 * i) + i) : 0;
      const reach = Math.hypot(width, height) * 1.15;
      sheet
        .setPosition(width / 2, height / 2)
        .setSize(reach, reach)
        .setRotation(lean * 0.8)
        .setAlpha(Math.min(1, falls.light * (kind === 'rain' ? 0.35 + 0.65 * falls.rain : 1)));
      sheet.tileScaleY = level;
      sheet.tilePositionY = -this.seconds * speed - falls.pitch * perRadian * (1 - 0.2 * i);
      sheet.tilePositionX = falls.yaw * perRadian * (1 - 0.2 * i) + drift;
    });
  }
}
